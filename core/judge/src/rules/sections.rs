//! Where a rule stands in the code that is adopted: editions move section numbers.

use trade::firm::Edition;
use trade::verdict::{CodeSection, Source};

/// A rule of the International Residential Code, by what it is about.
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
    /// A re-cover where nothing bars it, and the ways that the bar on layers does not reach.
    RecoverAllowed,
    /// Flashings that are rusted, damaged or deteriorated are not reused.
    FlashingReuse,
    /// Roof replacement takes all layers off to the deck.
    Replacement,
    /// No asphalt shingles below 2:12, doubled underlayment below 4:12.
    ShingleSlope,
    /// How underlayment is laid.
    Underlayment,
    /// Ice barrier.
    IceBarrier,
    /// Nails: what they are and how deep they go.
    Nails,
    /// Nails: how many and where.
    NailCount,
    /// Thickness of base and cap flashing.
    BaseFlashing,
    /// Width of a valley lining.
    ValleyLining,
    /// Flashing against a side wall.
    SidewallFlashing,
    /// Drip edge.
    DripEdge,
    /// Kick-out at an eave that dies into a wall.
    KickOut,
    /// Cricket behind a chimney or other penetration.
    Cricket,
    /// Size of a cricket behind a chimney.
    CricketHeight,
    /// Height of a chimney.
    ChimneyHeight,
    /// Height of a gas vent.
    GasVentHeight,
    /// Net free area of attic vents.
    VentArea,
    /// Air space over insulation.
    AirSpace,
}

/// The section of one rule in one edition.
///
/// R907 (re-roofing) became R908 with the edition of 2015, which also moved underlayment and ice barrier out of R905.2.
/// Sections of editions other than those named beside each rule are from memory.
pub fn section(rule: Irc, edition: Edition) -> &'static str {
    let until_2012 = edition <= Edition::E2012;
    let moved = |old, new| if until_2012 { old } else { new };
    match rule {
        Irc::RecoverBase => moved("R907.3 item 1", "R908.3.1.1 item 1"),
        Irc::RecoverOverTile => moved("R907.3 item 2", "R908.3.1.1 item 2"),
        Irc::RecoverLayers => moved("R907.3 item 3", "R908.3.1.1 item 3"),
        Irc::RecoverHail => "R907.3 item 4",
        Irc::RecoverAllowed => moved("R907.3", "R908.3.1"),
        Irc::FlashingReuse => moved("R907.5", "R908.5"),
        Irc::Replacement => moved("R907.3", "R908.3"),
        Irc::ShingleSlope => "R905.2.2",
        Irc::Underlayment => moved("R905.2.7", "R905.1.1"),
        Irc::IceBarrier => moved("R905.2.7.1", "R905.1.2"),
        Irc::Nails => "R905.2.5",
        Irc::NailCount => "R905.2.6",
        Irc::BaseFlashing => "R905.2.8.1",
        Irc::ValleyLining => "R905.2.8.2",
        Irc::SidewallFlashing => "R905.2.8.3",
        Irc::DripEdge => "R905.2.8.5",
        Irc::KickOut => "R903.2.1",
        Irc::Cricket => "R903.2.2",
        Irc::CricketHeight => "R1003.20",
        Irc::ChimneyHeight => "R1003.9",
        Irc::GasVentHeight => "G2427.6",
        Irc::VentArea => "R806.2",
        Irc::AirSpace => "R806.3",
    }
}

/// One rule in one edition, as a source.
pub fn irc(rule: Irc, edition: Edition) -> Source {
    document("IRC", Some(edition.year()), section(rule, edition))
}

/// A section of another document.
pub fn document(document: &str, edition: Option<u16>, section: &str) -> Source {
    Source::Code(CodeSection {
        document: document.to_owned(),
        edition,
        section: section.to_owned(),
    })
}
