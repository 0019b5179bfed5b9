//! Corrections that overtook a letter.

use super::named;
use super::record::Record;
use jiff::civil::Date;
use trade::doorstep::{Line, Tells};
use trade::letter::Letter;
use trade::mark::{Correction, Mark};
use trade::verdict::StandsOn;
use trade::words::Said;

pub(super) fn lines(record: &Record<'_>) -> Vec<Line> {
    let corrections = record
        .history
        .marks
        .iter()
        .filter_map(|mark| Some((mark, mark.corrected.as_ref()?)))
        .filter(|(_, correction)| correction.on <= record.today());
    let mut lines: Vec<Line> = corrections
        .filter_map(|(mark, correction)| overtaken(record, mark, correction))
        .collect();
    lines.extend(out_of_date(record, &lines));
    lines
}

/// A corrected mark, where a letter told of it before and none has since.
fn overtaken(record: &Record<'_>, mark: &Mark, correction: &Correction) -> Option<Line> {
    let letter = last_letter(record, |letter| letter.visit == mark.visit)?;
    if letter.on > correction.on || was_told_since(record, correction.on) {
        return None;
    }
    let part = record.history.part(mark.part)?;
    Some(Line {
        tells: Tells::Corrected,
        says: Said::new("doorstep-corrected")
            .with("part", named::part(record, part))
            .with("on", correction.on)
            .with("why", correction.why.as_str())
            .with("letter", letter.on),
        stands_on: vec![StandsOn::Mark(mark.id), StandsOn::Visit(letter.visit)],
    })
}

/// A letter that was overtaken by something else than a mark told above.
fn out_of_date(record: &Record<'_>, told: &[Line]) -> Option<Line> {
    let letter = last_letter(record, |_| true)?;
    let since = letter.out_of_date.filter(|on| *on <= record.today())?;
    let visit = StandsOn::Visit(letter.visit);
    let is_told = told.iter().any(|line| line.stands_on.contains(&visit));
    (!is_told).then(|| Line {
        tells: Tells::Corrected,
        says: Said::new("doorstep-letter-out-of-date")
            .with("letter", letter.on)
            .with("since", since),
        stands_on: vec![visit],
    })
}

fn last_letter<'a>(record: &Record<'a>, fits: impl Fn(&Letter) -> bool) -> Option<&'a Letter> {
    record
        .letters
        .iter()
        .rev()
        .copied()
        .find(|letter| fits(letter))
}

fn was_told_since(record: &Record<'_>, corrected: Date) -> bool {
    record.letters.iter().any(|letter| letter.on > corrected)
}
