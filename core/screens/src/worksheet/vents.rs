//! How the attic is vented, told field by field and kept as one.

use super::ranges::number;
use super::{Takes, one_of};
use crate::form::{Typed, value_of};
use trade::answer::Answer;
use trade::firm::Edition;
use trade::takeoff::plain;
use trade::units::{Area, Length};
use trade::words::Said;
use trade::worksheet::{Ventilation, Worksheet};

/// Half of it high, half of it low: within the bounds of every edition (IRC R806.2).
const EVEN: f64 = 0.5;
/// The greatest attic, in square feet, and the greatest open area, in square inches, that are no slip of the thumb.
const MOST: f64 = 1e6;

/// One field of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Vent {
    /// The vented space.
    Area,
    /// The share of the open area that is high.
    HighShare,
    /// How far the high vents stand above those at the eave.
    AboveEave,
    /// How far the high vents stand below the ridge.
    BelowRidge,
    /// Whether there is a vapour retarder.
    Retarder,
    /// Open area of one high vent.
    High,
    /// Open area of one intake vent.
    Low,
    /// Open area of high vents that stay.
    HighStays,
    /// Open area of intake vents that stay.
    LowStays,
}

/// The fields that an edition of the code asks for: up to 2009 how far high and low vents stand apart, since then how near the ridge.
pub(crate) fn vent_fields(edition: Edition) -> impl Iterator<Item = Vent> {
    let not_asked = if edition <= Edition::E2009 {
        Vent::BelowRidge
    } else {
        Vent::AboveEave
    };
    Vent::ALL.into_iter().filter(move |vent| *vent != not_asked)
}

impl Vent {
    /// All of them, the space first: without it nothing else counts.
    pub(super) const ALL: [Self; 9] = [
        Self::Area,
        Self::HighShare,
        Self::AboveEave,
        Self::BelowRidge,
        Self::Retarder,
        Self::High,
        Self::Low,
        Self::HighStays,
        Self::LowStays,
    ];

    pub(super) fn name(self) -> &'static str {
        match self {
            Self::Area => "attic-area",
            Self::HighShare => "high-share",
            Self::AboveEave => "above-eave-vents",
            Self::BelowRidge => "below-ridge",
            Self::Retarder => "vapour-retarder",
            Self::High => "high-vent",
            Self::Low => "low-vent",
            Self::HighStays => "high-stays",
            Self::LowStays => "low-stays",
        }
    }

    pub(super) fn label(self) -> String {
        format!("worksheet-{}", self.name())
    }

    pub(super) fn takes(self) -> Takes {
        match self {
            Self::Retarder => one_of(&[Answer::Unknown, Answer::Yes, Answer::No], Answer::key),
            _ => Takes::Line,
        }
    }

    pub(super) fn text(self, vents: Option<&Ventilation>) -> String {
        let Some(vents) = vents else {
            return match self {
                Self::Retarder => value_of(&Answer::Unknown),
                _ => String::new(),
            };
        };
        let length = |length: Option<Length>| length.map(Length::imperial).unwrap_or_default();
        let open = |area: f64| {
            if area > 0.0 {
                plain(area, 2)
            } else {
                String::new()
            }
        };
        match self {
            Self::Area => plain(vents.area.in_square_feet(), 1),
            Self::HighShare => plain(vents.high_share * 100.0, 1),
            Self::AboveEave => length(vents.above_eave_vents),
            Self::BelowRidge => length(vents.below_ridge),
            Self::Retarder => value_of(&vents.retarder),
            Self::High => open(vents.high_vent),
            Self::Low => open(vents.low_vent),
            Self::HighStays => open(vents.high_stays),
            Self::LowStays => open(vents.low_stays),
        }
    }
}

/// Which field is wrong, and how.
type WrongVent = (Vent, Said);

/// Reads all of it, where any of it was typed. Without the attic's area nothing may be told of its vents.
pub(super) fn read(typed: &Typed<'_>, sheet: &mut Worksheet) -> Result<(), WrongVent> {
    let before = sheet.vents;
    let told = |vent: Vent| {
        let mut values = typed.0.iter();
        values.find(|(name, _)| name == vent.name()).map_or_else(
            || vent.text(before.as_ref()),
            |(_, text)| text.trim().to_owned(),
        )
    };
    let is_untouched = Vent::ALL
        .into_iter()
        .all(|vent| told(vent) == vent.text(before.as_ref()));
    if is_untouched {
        return Ok(());
    }
    let Some(area) = positive(Vent::Area, &told(Vent::Area))? else {
        let is_blank = |vent: &Vent| told(*vent) == vent.text(None);
        if Vent::ALL.iter().all(is_blank) {
            sheet.vents = None;
            return Ok(());
        }
        return Err((Vent::Area, Said::new("wrong-attic-first")));
    };
    sheet.vents = Some(Ventilation {
        area: Area::square_feet(area),
        high_share: share(&told(Vent::HighShare))?.unwrap_or(EVEN),
        above_eave_vents: length(Vent::AboveEave, &told(Vent::AboveEave))?,
        below_ridge: length(Vent::BelowRidge, &told(Vent::BelowRidge))?,
        retarder: super::chosen(&told(Vent::Retarder))
            .map_err(|problem| (Vent::Retarder, problem))?,
        high_vent: positive(Vent::High, &told(Vent::High))?.unwrap_or(0.0),
        low_vent: positive(Vent::Low, &told(Vent::Low))?.unwrap_or(0.0),
        high_stays: positive(Vent::HighStays, &told(Vent::HighStays))?.unwrap_or(0.0),
        low_stays: positive(Vent::LowStays, &told(Vent::LowStays))?.unwrap_or(0.0),
    });
    Ok(())
}

fn positive(vent: Vent, text: &str) -> Result<Option<f64>, WrongVent> {
    if text.is_empty() {
        return Ok(None);
    }
    number(text)
        .filter(|number| *number > 0.0 && *number <= MOST)
        .map(Some)
        .ok_or_else(|| (vent, Said::new("wrong-area-counted")))
}

fn share(text: &str) -> Result<Option<f64>, WrongVent> {
    if text.is_empty() {
        return Ok(None);
    }
    number(text.trim_end_matches('%').trim_end())
        .filter(|per_cent| (0.0..=100.0).contains(per_cent))
        .map(|per_cent| Some(per_cent / 100.0))
        .ok_or_else(|| (Vent::HighShare, Said::new("wrong-per-cent")))
}

fn length(vent: Vent, text: &str) -> Result<Option<Length>, WrongVent> {
    super::length(text).map_err(|problem| (vent, problem))
}
