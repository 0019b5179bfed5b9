//! Writing a letter in two steps, for shells that show how far it is: drawing takes a while and changes nothing, keeping is a moment.

use crate::act::Next;
use crate::place::Place;
use crate::screens::{Screens, Trouble};
use acts::judge::Judged;
use acts::{Moment, letter};
use trade::ids::VisitId;
use trade::words::Language;

/// A letter that is drawn and not yet kept.
pub struct DrawnLetter {
    visit: VisitId,
    language: Language,
    judged: Judged,
    drawn: letter::Drawn,
}

impl Screens {
    /// Draws the letter of a visit without keeping it.
    ///
    /// # Errors
    /// Where the visit is not in the book, a picture cannot be read or the page cannot be set.
    pub fn draw_letter(
        &self,
        visit: VisitId,
        language: Language,
        moment: Moment,
    ) -> Result<DrawnLetter, Trouble> {
        let (judged, drawn) = self.read(|book| letter::draw(book, visit, language, moment))?;
        Ok(DrawnLetter {
            visit,
            language,
            judged,
            drawn,
        })
    }

    /// Keeps it word for word, as the tap that writes a letter does.
    ///
    /// # Errors
    /// Where the visit is still open or the book cannot be written; then nothing is kept.
    pub fn keep_letter(&mut self, letter: DrawnLetter, moment: Moment) -> Result<Next, Trouble> {
        let words = self.words()?;
        let DrawnLetter {
            visit,
            language,
            judged,
            drawn,
        } = letter;
        self.write(|book| letter::keep(book, &judged, drawn, language, moment))?;
        Ok(Next::saved(Place::Letter { visit }, words, "saved-letter"))
    }
}
