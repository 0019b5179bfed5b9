//! The letter as one tree of typed blocks. PDF, page and short text are all drawn from it, so that they say the same.

use crate::plain::Plain;
use jiff::civil::Date;
use serde::Serialize;
use trade::drawing::Drawing;
use trade::ids::PhotoId;
use trade::ladder::Ladder;
use trade::words::Language;

/// A letter.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Content {
    /// Its language.
    pub language: Language,
    /// What tells it from every other letter: visit, day and language.
    pub ident: String,
    /// Its title.
    pub title: Plain,
    /// The day it bears.
    pub on: Date,
    /// The same, written out.
    pub date: Plain,
    /// Who writes.
    pub letterhead: Letterhead,
    /// To whom, in lines.
    pub to: Vec<Plain>,
    /// What was looked at, when, by whom and from where; what this letter takes the place of.
    pub about: Vec<Plain>,
    /// Page one: what an owner asks.
    pub answers: Vec<Answer>,
    /// What is offered at what price until when: for the short text.
    pub offered: Vec<InShort>,
    /// What follows, in order.
    pub sections: Vec<Section>,
    /// What stands at the foot of every page, beside the page's number.
    pub footer: Plain,
    /// The few words that renderers need.
    pub labels: Labels,
}

/// Who writes.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Letterhead {
    /// The firm.
    pub firm: Plain,
    /// Person, address, telephone, mail, licence: what there is of it.
    pub lines: Vec<Plain>,
    /// The telephone alone, for the short text.
    pub phone: Plain,
}

/// An offer in a line.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct InShort {
    /// Until when it holds.
    pub until: Plain,
    /// Each course with its price, what is advised first.
    pub courses: Vec<Plain>,
}

/// What an owner asks, in the order it is answered.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Asks {
    /// Is it leaking now, and where from?
    Leaking,
    /// What is wrong?
    Wrong,
    /// What do you advise?
    Advice,
    /// What can wait, and what if I wait?
    Waiting,
    /// Can it be patched, for how long, for how much?
    Patch,
    /// How long will it last?
    Lasting,
    /// Is the wood bad?
    Wood,
    /// Do I need a permit?
    Permit,
    /// Is it under warranty or insured?
    Warranty,
    /// What did you not see?
    NotSeen,
}

/// One question of the owner's and what is answered.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Answer {
    /// Which.
    pub asks: Asks,
    /// The question.
    pub question: Plain,
    /// The answer.
    pub says: Vec<Line>,
}

/// One line, with what leads it.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Line {
    /// Set bold before it: "Now", "Yes".
    pub lead: Option<Plain>,
    /// What it says.
    pub says: Plain,
    /// Set bold after it: what it costs, and until when that holds.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub price: Option<Plain>,
}

/// A part of the letter after page one.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Section {
    /// Which.
    pub is: SectionIs,
    /// Its heading.
    pub heading: Plain,
    /// What it holds.
    pub blocks: Vec<Block>,
}

/// The parts of the letter after page one, in order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum SectionIs {
    /// What must be said for safety.
    Cautions,
    /// What changed since the last look.
    Changes,
    /// The roof on plan, its measures, and what a new covering takes.
    Plan,
    /// What was found, part by part.
    Findings,
    /// Why we advise what we advise.
    Why,
    /// What is offered, at what price.
    Offer,
    /// What we don't sell, and why.
    Refused,
    /// The look that could change it.
    NextLook,
    /// How far this letter reaches.
    Limits,
    /// Accept or decline.
    Decision,
}

/// One block of a section.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum Block {
    /// A heading under the section's.
    Heading {
        /// What it says.
        says: Plain,
    },
    /// A paragraph.
    Words {
        /// What it says.
        says: Plain,
    },
    /// A list of lines.
    List {
        /// The lines.
        lines: Vec<Line>,
    },
    /// A drawing.
    Drawing(Drawn),
    /// Rows under a head.
    Table(Table),
    /// A course that is offered.
    Offered(Offered),
    /// What became of one part.
    Change(Change),
    /// What was found on one part.
    Finding(Finding),
    /// Parts told in one line each.
    Roster {
        /// The parts.
        parts: Vec<PartLine>,
    },
    /// Reasons, each with what it stands on.
    Reasons {
        /// The reasons.
        reasons: Vec<ReasonLine>,
    },
    /// A course that is not sold.
    Refused(Refused),
    /// Things to say yes or no to.
    Choices {
        /// One box each.
        choices: Vec<Line>,
    },
    /// Lines to sign on.
    Signatures {
        /// Who signs.
        who: Vec<Plain>,
        /// The word for the day beside it.
        date: Plain,
    },
    /// The firm's own text.
    Own {
        /// Its paragraphs.
        paragraphs: Vec<Plain>,
    },
}

/// A drawing and what it shows.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Drawn {
    /// The drawing.
    pub drawing: Drawing,
    /// What it is called.
    pub title: Plain,
    /// What a person hears who cannot see it.
    pub alt: Plain,
}

/// Rows under a head.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Table {
    /// What stands over each column, the first that of the names.
    pub head: Vec<Plain>,
    /// The rows.
    pub rows: Vec<Row>,
}

/// One row of a table.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Row {
    /// What the row is of.
    pub name: Plain,
    /// What more there is to say of it, under its name.
    pub note: Option<Plain>,
    /// What stands under the further columns.
    pub cells: Vec<Plain>,
}

/// A course that is offered. What it costs the firm is no business of a letter.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Offered {
    /// When and what.
    pub course: Plain,
    /// What the owner pays; `None` where that is not known.
    pub price: Option<Plain>,
    /// Why there is no price.
    pub unpriced: Vec<Plain>,
    /// What must be said beside the price: against advice and why all the same, the smallest charge, the tax.
    pub beside: Vec<Plain>,
    /// What speaks against it, where it is offered against advice.
    pub against: Vec<ReasonLine>,
    /// What it includes, leaves out, leaves unsolved and costs over the years, each under its word.
    pub told: Vec<Told>,
}

/// Lines under a word.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Told {
    /// The word.
    pub lead: Plain,
    /// The lines.
    pub lines: Vec<Plain>,
}

/// A ladder and its word: never the one without the other.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Rated {
    /// The picture.
    pub ladder: Ladder,
    /// The word.
    pub word: Plain,
}

/// A part's address and name.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PartName {
    /// Slope letter and number, as on the plan: "B 3".
    pub address: Plain,
    /// What it is and which one.
    pub name: Plain,
}

/// One part in one line.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PartLine {
    /// Which part.
    pub part: PartName,
    /// How it stands.
    pub rated: Rated,
    /// What more there is to say.
    pub says: Option<Plain>,
}

/// What became of one part since the last look.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Change {
    /// Which part.
    pub part: PartName,
    /// How it stood then.
    pub then: Rated,
    /// How it stands now.
    pub now: Rated,
    /// What became of it, in a word or two.
    pub became: Plain,
    /// What more there is to say.
    pub says: Vec<Plain>,
    /// A picture from then and one from now, where there are both.
    pub pictures: Vec<Picture>,
}

/// What was found on one part.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Finding {
    /// Which part.
    pub part: PartName,
    /// How it stands.
    pub rated: Rated,
    /// How it was seen.
    pub seen: Plain,
    /// The roofer's own words.
    pub words: Option<Plain>,
    /// What was measured.
    pub measures: Vec<Plain>,
    /// The defects.
    pub defects: Vec<DefectTold>,
    /// What cures it, what buys time, what makes it worse.
    pub remedies: Vec<Line>,
    /// When and why the record was corrected.
    pub corrected: Option<Plain>,
    /// The pictures.
    pub pictures: Vec<Picture>,
}

/// A defect, told to its owner.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct DefectTold {
    /// Its name and how far it reaches.
    pub name: Plain,
    /// What it is, why it matters, how water gets in.
    pub says: Vec<Line>,
}

/// A picture beside its finding.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Picture {
    /// Which.
    pub photo: PhotoId,
    /// EXIF orientation as recorded, for a file that does not say it itself.
    pub orientation: u8,
    /// What stands under it.
    pub caption: Plain,
    /// What a person hears who cannot see it.
    pub alt: Plain,
}

/// A reason and what it stands on.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ReasonLine {
    /// What it says.
    pub says: Plain,
    /// Code section, local amendment, what was seen, trade practice, house policy, the owner's word.
    pub source: Plain,
    /// The parts behind it.
    pub parts: Vec<Plain>,
}

/// A course that is not sold.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Refused {
    /// The course, to be struck through.
    pub course: Plain,
    /// Whether a rule forbids it or judgement refuses it.
    pub how: Plain,
    /// Why.
    pub reasons: Vec<ReasonLine>,
}

/// The few words that renderers need.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Labels {
    /// Before the rung of an earlier look.
    pub then: Plain,
    /// Before the rung of this look.
    pub now: Plain,
    /// In place of a picture that can't be shown.
    pub no_picture: Plain,
    /// Where characters were left out that the printed letter has no letters for.
    pub unprintable: Plain,
    /// Before what speaks against a course that is offered all the same.
    pub against: Plain,
    /// Ends the short text.
    pub short_end: Plain,
}

impl Content {
    /// One of page one's answers.
    pub fn answer(&self, asks: Asks) -> Option<&Answer> {
        self.answers.iter().find(|answer| answer.asks == asks)
    }

    /// One section, where the letter has it.
    pub fn section(&self, is: SectionIs) -> Option<&Section> {
        self.sections.iter().find(|section| section.is == is)
    }

    /// Every picture, in the order it is shown; one shown twice is named twice.
    pub fn pictures(&self) -> impl Iterator<Item = &Picture> {
        self.sections
            .iter()
            .flat_map(|section| &section.blocks)
            .flat_map(|block| match block {
                Block::Change(change) => change.pictures.as_slice(),
                Block::Finding(finding) => finding.pictures.as_slice(),
                _ => &[],
            })
    }
}
