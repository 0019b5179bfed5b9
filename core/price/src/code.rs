//! Where a rule that a takeoff counts by stands in the code that is adopted: editions move section numbers.

use trade::firm::Edition;
use trade::verdict::{CodeSection, Source};

/// A rule of the International Residential Code, by what it is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Irc {
    /// How underlayment is lapped, and doubled on a low slope.
    Underlayment,
    /// How far an ice barrier reaches.
    IceBarrier,
    /// How many nails a strip takes.
    NailCount,
    /// Lining of a valley.
    ValleyLining,
    /// Flashing along a side wall.
    SidewallFlashing,
    /// Drip edge, in the code since 2012.
    DripEdge,
    /// Kick-out, in the code since 2012.
    KickOut,
    /// Cricket behind a chimney.
    Cricket,
    /// Net free area of attic vents.
    VentArea,
}

/// The rule in one edition as a source; trade practice where that edition does not have it.
///
/// Underlayment and ice barrier stood in R905.2.7 up to 2012. Sections of editions other than those seen are from memory.
pub fn irc(rule: Irc, edition: Edition) -> Source {
    let until_2012 = edition <= Edition::E2012;
    let since_2012 = edition >= Edition::E2012;
    let section = match rule {
        Irc::Underlayment if until_2012 => "R905.2.7",
        Irc::Underlayment => "R905.1.1",
        Irc::IceBarrier if until_2012 => "R905.2.7.1",
        Irc::IceBarrier => "R905.1.2",
        Irc::NailCount => "R905.2.6",
        Irc::ValleyLining => "R905.2.8.2",
        Irc::SidewallFlashing => "R905.2.8.3",
        Irc::DripEdge if since_2012 => "R905.2.8.5",
        Irc::KickOut if since_2012 => "R903.2.1",
        Irc::DripEdge | Irc::KickOut => return Source::Practice,
        Irc::Cricket => "R903.2.2, R1003.20",
        Irc::VentArea => "R806.2",
    };
    Source::Code(CodeSection {
        document: "IRC".to_owned(),
        edition: Some(edition.year()),
        section: section.to_owned(),
    })
}
