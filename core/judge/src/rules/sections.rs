//! Where a rule stands in the code that is adopted: editions move section numbers.

use trade::firm::Edition;
use trade::verdict::{CodeSection, Source};

/// A rule of the residential code, by what it is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Irc {
    /// No new covering over a water-soaked or deteriorated base.
    RecoverBase,
    /// No new covering over slate, clay, cement or asbestos-cement tile.
    RecoverOverTile,
    /// No new covering over two or more layers.
    RecoverLayers,
    /// No asphalt shingles over an old covering in moderate or severe hail exposure.
    RecoverHail,
    /// Flashings that are rusted, damaged or deteriorated are not reused.
    FlashingReuse,
    /// Roof replacement takes all layers off to the deck.
    Replacement,
    /// No asphalt shingles below 2:12.
    ShingleSlope,
}

/// The section of one rule in one edition. R907 became R908 with the edition of 2015.
pub fn irc(rule: Irc, edition: Edition) -> Source {
    let until_2012 = edition <= Edition::E2012;
    let section = match rule {
        Irc::RecoverBase if until_2012 => "R907.3 item 1",
        Irc::RecoverBase => "R908.3.1.1 item 1",
        Irc::RecoverOverTile if until_2012 => "R907.3 item 2",
        Irc::RecoverOverTile => "R908.3.1.1 item 2",
        Irc::RecoverLayers if until_2012 => "R907.3 item 3",
        Irc::RecoverLayers => "R908.3.1.1 item 3",
        Irc::RecoverHail => "R907.3 item 4",
        Irc::FlashingReuse if until_2012 => "R907.5",
        Irc::FlashingReuse => "R908.5",
        Irc::Replacement if until_2012 => "R907.3",
        Irc::Replacement => "R908.3",
        Irc::ShingleSlope => "R905.2.2",
    };
    Source::Code(CodeSection {
        document: "IRC".to_owned(),
        edition: Some(edition.year()),
        section: section.to_owned(),
    })
}
