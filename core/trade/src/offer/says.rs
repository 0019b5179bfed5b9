//! What an offer says to the owner, sentence by sentence. The caller knows how a part is called.

use super::{
    CostLine, LeftOut, MoneySpread, Nevertheless, Offer, PatchingAgain, PricedCourse, Unpriced,
    Unsolved, Yearly,
};
use crate::ids::PartId;
use crate::takeoff::{Spread, sized};
use crate::units::{Money, Pitch};
use crate::words::{Arg, Said};

/// How a part is called.
pub type Named<'a> = &'a dyn Fn(PartId) -> Said;

impl Offer {
    /// Until when it holds.
    pub fn says_until(&self) -> Said {
        Said::new("offer-valid-until").with("date", self.valid_until)
    }
}

impl PricedCourse {
    /// What must be said beside the price: against advice, the smallest charge, the tax, the sheets that are included.
    pub fn says_beside(&self, currency: &str) -> Vec<Said> {
        let mut says: Vec<Said> = self.nevertheless.iter().map(Nevertheless::says).collect();
        let Some(sums) = &self.sums else {
            return says;
        };
        let at_minimum = |charge: Money| Arg::from(MoneySpread::exactly(charge).says(currency));
        if sums.to_minimum.most.0.is_sign_positive() && !sums.to_minimum.most.0.is_zero() {
            says.push(Said::new("offer-minimum").with("amount", at_minimum(sums.before_tax.most)));
        } else if !sums.to_minimum.least.0.is_zero() {
            says.push(
                Said::new("offer-minimum-in-part")
                    .with("amount", at_minimum(sums.before_tax.least)),
            );
        }
        if let Some((rate, on)) = sums.taxed {
            says.push(
                Said::new("offer-tax")
                    .with("rate", rate.to_string())
                    .with("on", Said::new(on.key())),
            );
        }
        says
    }
}

impl Nevertheless {
    /// That it is advised against, and why it is offered all the same.
    pub fn says(&self) -> Said {
        Said::new("offer-nevertheless").with("because", self.because.as_str())
    }
}

impl Unsolved {
    /// What is not put right, and with which course it would be.
    pub fn says(&self, named: Named<'_>) -> Said {
        match self.by {
            None => Said::new("offer-unsolved").with("part", named(self.part)),
            Some(course) => Said::new("offer-unsolved-by")
                .with("part", named(self.part))
                .with("course", Said::new(course.key())),
        }
    }
}

impl LeftOut {
    /// What is left out.
    pub fn says(&self, named: Named<'_>, currency: &str) -> Said {
        match self {
            Self::OtherTrade { task } => match task.trade {
                Some(trade) => Said::new("left-out-other-trade")
                    .with("part", named(task.part))
                    .with("trade", Said::new(format!("{}.who", trade.key()))),
                None => Said::new("left-out-not-ours").with("part", named(task.part)),
            },
            Self::NotSeen { part } => Said::new("left-out-not-seen").with("part", named(*part)),
            Self::OtherSlopes { letters } => {
                let letters: Vec<Said> = letters.iter().map(Said::verbatim).collect();
                Said::new("left-out-slopes").with("letters", letters)
            }
            Self::Untied(planes) => planes.says(),
            Self::VentArea => Said::new("left-out-vent-area"),
            Self::MoreSheets { included, each } => Said::new("left-out-more-sheets")
                .with("included", *included)
                .with("each", MoneySpread::exactly(*each).says(currency)),
        }
    }
}

impl Unpriced {
    /// What has no price yet, and what to do about it, for the roofer.
    pub fn says(&self, named: Named<'_>) -> Said {
        match self {
            Self::NoMaterial { item, size } => {
                Said::new("unpriced-material").with("item", sized(*item, *size))
            }
            Self::OtherPack { item } => {
                Said::new("unpriced-other-pack").with("item", Said::new(item.key()))
            }
            Self::NoHours { task, pitch } => {
                at_pitch("unpriced-hours", *pitch).with("task", Said::new(task.key()))
            }
            Self::NoRemedy { remedy, pitch } => {
                at_pitch("unpriced-remedy", *pitch).with("remedy", Said::new(remedy.message()))
            }
            Self::NotCounted { part, remedy, unit } => Said::new("unpriced-not-counted")
                .with("unit", Said::new(unit.key()))
                .with("part", named(*part))
                .with("remedy", Said::new(remedy.message())),
            Self::NoRemedyNamed { part } => {
                Said::new("unpriced-no-remedy-named").with("part", named(*part))
            }
            Self::NoWorkNamed => Said::new("unpriced-no-work-named"),
            Self::NoDisposal => Said::new("unpriced-no-disposal"),
            Self::NoSheetPrice => Said::new("unpriced-no-sheet-price"),
            Self::NoTakeoff => Said::new("unpriced-no-takeoff"),
            Self::NoTearOff => Said::new("unpriced-no-tear-off"),
            Self::Gap { item, why } => Said::new("unpriced-gap")
                .with("item", Said::new(item.key()))
                .with("why", (**why).clone()),
        }
    }
}

impl Unpriced {
    /// What has no price yet, for the owner: what must be done about it is the roofer's own concern.
    pub fn says_to_owner(&self, named: Named<'_>) -> Said {
        match self {
            Self::NoMaterial { item, size } => {
                Said::new("still-to-come-item").with("item", sized(*item, *size))
            }
            Self::OtherPack { item } | Self::Gap { item, .. } => {
                Said::new("still-to-come-item").with("item", Said::new(item.key()))
            }
            Self::NoHours { task, .. } => {
                Said::new("still-to-come-work").with("work", Said::new(task.key()))
            }
            Self::NoRemedy { remedy, .. } => {
                Said::new("still-to-come-work").with("work", Said::new(remedy.message()))
            }
            Self::NotCounted { part, remedy, .. } => Said::new("still-to-come-measure")
                .with("work", Said::new(remedy.message()))
                .with("part", named(*part)),
            Self::NoRemedyNamed { part } => {
                Said::new("still-to-come-part").with("part", named(*part))
            }
            Self::NoWorkNamed => Said::new("still-to-come-what"),
            Self::NoDisposal => Said::new("still-to-come-disposal"),
            Self::NoSheetPrice => Said::new("still-to-come-sheet"),
            Self::NoTakeoff => Said::new("still-to-come-covering"),
            Self::NoTearOff => Said::new("still-to-come-tear-off"),
        }
    }
}

impl CostLine {
    /// How much of it: "2.5 to 3 hours", "1 bundle".
    pub fn says_quantity(&self) -> Said {
        let key = self.unit.key.as_str();
        let is_one = self.quantity == Spread::exactly(1.0);
        match key.strip_suffix(".many") {
            // What things are bought in says its number itself.
            Some(pack) if is_one => Said::new(pack).with("count", 1),
            None if !key.contains('.') => self.quantity.counted(1, key),
            _ => Said::new("price-amount")
                .with("amount", self.quantity.says(1))
                .with("unit", self.unit.clone()),
        }
    }
}

fn at_pitch(key: &str, pitch: Option<Pitch>) -> Said {
    match pitch {
        Some(pitch) => Said::new(format!("{key}-at")).with("pitch", pitch),
        None => Said::new(key),
    }
}

impl Yearly {
    /// What it costs a year, over which life, at which rate, and who says how long it lasts.
    pub fn says(&self, currency: &str) -> Said {
        let source = self.lasts.source.as_str();
        let key = if source.is_empty() {
            "offer-yearly-here"
        } else {
            "offer-yearly"
        };
        Said::new(key)
            .with("years", self.lasts.years.counted(0, "unit-year"))
            .with("cost", self.cost.says(currency))
            .with("rate", self.rate.to_string())
            .with("source", source)
    }
}

impl PatchingAgain {
    /// What patching again comes to, in all and worth now.
    pub fn says(&self, currency: &str) -> Said {
        let times = Spread {
            least: f64::from(self.times.0),
            likely: f64::from(self.times.0),
            most: f64::from(self.times.1),
        };
        let years = Spread::exactly(f64::from(self.years));
        Said::new("offer-patching")
            .with("once", self.once.says(currency))
            .with("times", times.counted(0, "unit-time"))
            .with("years", years.counted(0, "unit-year"))
            .with("sum", self.sum.says(currency))
            .with("now", self.worth_now.says(currency))
            .with("rate", self.rate.to_string())
    }
}
