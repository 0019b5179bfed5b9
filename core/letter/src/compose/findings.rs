//! What was found, by structure, slope and part, with its pictures beside it.

use super::led;
use super::writer::Writer;
use crate::content::{Block, DefectTold, Finding, Line, PartLine, Picture};
use crate::plain::Plain;
use trade::catalogue::{Defect, Effect, Months};
use trade::ids::PhotoId;
use trade::mark::{Condition, DefectSeen, Mark, Measure, NotSeen, Rung, Seen};
use trade::property::Part;
use trade::words::Said;

/// Every part with something to tell, and the sound ones in a line each.
pub fn blocks(writer: &Writer) -> Vec<Block> {
    let mut blocks = Vec::new();
    for structure in &writer.structures {
        let marks: Vec<(&Part, &Mark)> = writer.marks_on(structure.id).collect();
        let (told, plain): (Vec<_>, Vec<_>) = marks
            .into_iter()
            .filter(is_listed)
            .partition(|(_, mark)| is_told(mark));
        if told.is_empty() && plain.is_empty() {
            continue;
        }
        if writer.has_many_structures() {
            blocks.push(Block::Heading {
                says: writer.say(&writer.structure(structure.id)),
            });
        }
        let mut before: Option<&Part> = None;
        for (part, mark) in told {
            if before.is_none_or(|before| before.slope != part.slope) {
                blocks.push(slope_heading(writer, part));
            }
            blocks.push(Block::Finding(finding(writer, part, mark)));
            before = Some(part);
        }
        if !plain.is_empty() {
            blocks.push(Block::Heading {
                says: writer.text("letter-roster"),
            });
            let parts = plain
                .into_iter()
                .map(|(part, mark)| part_line(writer, part, mark))
                .collect();
            blocks.push(Block::Roster { parts });
        }
    }
    blocks
}

/// What lies outside the scope of the visit, or was not reached when it was closed, is told on page one, not part by part.
fn is_listed((_, mark): &(&Part, &Mark)) -> bool {
    !matches!(
        mark.condition.not_seen(),
        Some(NotSeen::OutsideScope | NotSeen::NotReached)
    ) || !mark.photos.is_empty()
}

/// Whether a part gets a block of its own.
fn is_told(mark: &Mark) -> bool {
    mark.condition.rung() > Some(Rung::Sound)
        || !mark.defects.is_empty()
        || !mark.photos.is_empty()
        || !mark.words.trim().is_empty()
        || mark.corrected.is_some()
}

fn slope_heading(writer: &Writer, part: &Part) -> Block {
    let history = writer.material.history;
    let slope = part.slope.and_then(|slope| history.slope(slope));
    let says = match slope {
        Some(slope) => writer.slope_heading(slope),
        None => writer.text("letter-no-slope"),
    };
    Block::Heading { says }
}

fn finding(writer: &Writer, part: &Part, mark: &Mark) -> Finding {
    Finding {
        part: writer.name(part),
        rated: writer.rated(mark.condition),
        seen: seen(writer, mark.condition),
        defects: mark
            .defects
            .iter()
            .map(|seen| defect_told(writer, seen))
            .collect(),
        remedies: remedies(writer, part, mark),
        measures: mark
            .measures
            .iter()
            .map(|measure| measured(writer, measure))
            .collect(),
        words: Some(Plain::new(&mark.words)).filter(|words| !words.is_empty()),
        corrected: mark.corrected.as_ref().map(|correction| {
            let why = Plain::new(&correction.why).to_string();
            writer.say(
                &Said::new("letter-corrected")
                    .with("date", correction.on)
                    .with("why", why),
            )
        }),
        pictures: mark
            .photos
            .iter()
            .filter_map(|&photo| picture(writer, mark, photo, None))
            .collect(),
    }
}

/// How a part was seen, or why it was not.
fn seen(writer: &Writer, condition: Condition) -> Plain {
    match condition {
        Condition::Seen { seen, .. } => writer.text(&format!("{}.what", seen.key())),
        Condition::NotSeen { why } => writer.sentence(
            &Said::new("letter-because").with("why", Said::new(format!("{}.what", why.key()))),
        ),
        Condition::Gone => writer.text("became-gone.what"),
    }
}

fn part_line(writer: &Writer, part: &Part, mark: &Mark) -> PartLine {
    let not_close = mark
        .condition
        .seen()
        .is_some_and(|seen| !Seen::is_close(seen));
    let says = match mark.condition {
        Condition::NotSeen { why } => Some(writer.small_text(why.key())),
        Condition::Seen { seen, .. } if not_close => Some(writer.small_text(seen.key())),
        Condition::Seen { .. } | Condition::Gone => None,
    };
    PartLine {
        part: writer.name(part),
        rated: writer.rated(mark.condition),
        says,
    }
}

/// The defect's name, how far it reaches, and what the catalogue tells an owner of it.
fn defect_told(writer: &Writer, seen: &DefectSeen) -> DefectTold {
    let message = seen.defect.message();
    let extent = writer.small(&Said::new(seen.extent.key()));
    let name = Said::new("letter-defect")
        .with("defect", Said::new(message.clone()))
        .with("extent", extent);
    let told = [
        ("what", "letter-what"),
        ("why", "letter-why-it-matters"),
        ("water", "letter-water"),
    ];
    let says = told.into_iter().filter_map(|(attribute, lead)| {
        let says = writer.text_if_any(&format!("{message}.{attribute}"))?;
        Some(led(writer.text(lead), says))
    });
    DefectTold {
        name: writer.say(&name),
        says: says.collect(),
    }
}

/// The remedies advised, or else the catalogue's cures; then what buys time and what makes it worse.
fn remedies(writer: &Writer, part: &Part, mark: &Mark) -> Vec<Line> {
    let mut lines: Vec<Line> = Vec::new();
    let defects: Vec<&Defect> = writer.defects(mark).collect();
    for remedy in &mark.advised {
        let effect = defects
            .iter()
            .find_map(|defect| defect.effect_on(&part.kind, remedy));
        lines.push(led(
            writer.text("letter-advised"),
            with_effect(writer, &remedy.message(), effect),
        ));
    }
    for treats in defects
        .iter()
        .flat_map(|defect| &defect.remedies)
        .filter(|treats| treats.fits(&part.kind))
    {
        if mark.advised.contains(&treats.remedy)
            || (treats.effect == Effect::Cures && !mark.advised.is_empty())
        {
            continue;
        }
        let lead = match treats.effect {
            Effect::Cures => "letter-cures",
            Effect::BuysTime { .. } => "letter-buys-time",
            Effect::Worsens => "letter-worsens",
        };
        let effect = matches!(treats.effect, Effect::BuysTime { .. }).then_some(&treats.effect);
        let said = led(
            writer.text(lead),
            with_effect(writer, &treats.remedy.message(), effect),
        );
        if !lines.contains(&said) {
            lines.push(said);
        }
    }
    lines
}

fn with_effect(writer: &Writer, remedy: &str, effect: Option<&Effect>) -> Plain {
    let remedy = Said::new(remedy);
    match effect {
        Some(Effect::Cures) => writer.say(&Said::new("letter-remedy-cures").with("remedy", remedy)),
        Some(Effect::BuysTime {
            months: span,
            source,
        }) => writer.say(
            &Said::new("letter-remedy-buys-time")
                .with("remedy", remedy)
                .with("months", months(*span))
                .with("source", source_named(source)),
        ),
        Some(Effect::Worsens) => {
            writer.say(&Said::new("letter-remedy-worsens").with("remedy", remedy))
        }
        None => writer.say(&remedy),
    }
}

/// Where a patch's usual life is from; the catalogue writes "common practice" where no document says it.
fn source_named(source: &str) -> Said {
    if source == "common practice" {
        Said::new("letter-common-practice")
    } else {
        Said::verbatim(source)
    }
}

/// A span of months: in years where both ends are whole years.
pub fn months(span: Months) -> Said {
    let (key, by) = if span.least.is_multiple_of(12) && span.most.is_multiple_of(12) {
        ("letter-years", 12)
    } else {
        ("letter-months", 1)
    };
    if span.least == span.most {
        Said::new(format!("{key}-exact")).with("most", span.most / by)
    } else {
        Said::new(key)
            .with("least", span.least / by)
            .with("most", span.most / by)
    }
}

/// A measure with how it was got and how exact it is.
fn measured(writer: &Writer, measure: &Measure) -> Plain {
    let said = Said::new("letter-measure")
        .with("of", Said::new(measure.of.key()))
        .with("value", measure.value.value)
        .with("got", writer.small(&Said::new(measure.value.got.key())));
    match percent(measure.value.within) {
        0 => writer.say(&said),
        within => writer.say(
            &Said::new("letter-measure-within")
                .with("measure", said)
                .with("within", within),
        ),
    }
}

/// A share as whole per cent, never less than it is.
#[allow(clippy::cast_possible_truncation)]
fn percent(share: f64) -> i64 {
    (share.clamp(0.0, 1.0) * 100.0).ceil() as i64
}

/// A picture with its caption; `lead` stands before the roofer's own. `None` where the record has no such picture.
pub fn picture(writer: &Writer, mark: &Mark, id: PhotoId, lead: Option<Said>) -> Option<Picture> {
    let history = writer.material.history;
    let photo = history.photos.iter().find(|photo| photo.id == id)?;
    let part = history.part(mark.part)?;
    let own = Plain::new(&photo.caption);
    let what = if own.is_empty() {
        writer.named(part)
    } else {
        Said::verbatim(own.to_string())
    };
    let caption = match lead {
        Some(lead) => Said::new("letter-caption-led")
            .with("lead", lead)
            .with("what", what.clone()),
        None => what.clone(),
    };
    let alt = Said::new("letter-alt")
        .with("part", writer.named(part))
        .with("what", what);
    Some(Picture {
        photo: id,
        orientation: photo.orientation,
        caption: writer.say(&caption),
        alt: writer.say(&alt),
    })
}
