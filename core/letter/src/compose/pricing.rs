//! Prices as the letter names them: of an offer that still holds, and never of what a rule forbids.

use super::writer::Writer;
use crate::plain::Plain;
use trade::catalogue::RemedyKey;
use trade::ids::{PartId, StructureId};
use trade::offer::{MoneySpread, Offer, Patching, PatchingAgain, PricedCourse};
use trade::verdict::{Course, Narrowed, Step, Task, Verdict};
use trade::words::Said;

impl<'a> Writer<'a> {
    /// Every recorded offer.
    pub fn recorded(&self) -> impl Iterator<Item = &'a Offer> + use<'a> {
        self.material.roofs.iter().filter_map(|roofed| roofed.offer)
    }

    /// The offers that still hold on the letter's day.
    pub fn offers(&self) -> impl Iterator<Item = &'a Offer> + use<'a> {
        let on = self.material.on;
        self.recorded().filter(move |offer| offer.valid_until >= on)
    }

    /// The courses of an offer that may be offered: none that a rule forbids, whatever was recorded before the rule was known to bite.
    pub fn courses(&self, offer: &'a Offer) -> impl Iterator<Item = &'a PricedCourse> + use<'a> {
        let verdict = self.verdict(offer.structure);
        let courses = offer.courses.iter();
        courses.filter(move |course| verdict.is_none_or(|verdict| !is_forbidden(verdict, course)))
    }

    fn verdict(&self, structure: StructureId) -> Option<&'a Verdict> {
        let mut verdicts = self.material.verdicts.iter();
        verdicts.find(|verdict| verdict.structure == structure)
    }

    /// The offered course of a step, where the very same work is offered.
    pub fn offered_for(
        &self,
        verdict: &Verdict,
        step: &Step,
    ) -> Option<(&'a Offer, &'a PricedCourse)> {
        self.offers()
            .filter(|offer| offer.structure == verdict.structure)
            .find_map(|offer| {
                let course = self.courses(offer).find(|course| is_of(course, step))?;
                Some((offer, course))
            })
    }

    /// "1,240.00 USD."; that there is no price yet, where one is missing; nothing where nothing is ours to price.
    pub fn price(&self, offer: &Offer, course: &PricedCourse) -> Option<Plain> {
        self.price_or_none_yet(course, |price| {
            Said::new("letter-price").with("price", price.says(&offer.currency))
        })
    }

    /// The same with the day until which it holds.
    pub fn price_until(&self, offer: &Offer, course: &PricedCourse) -> Option<Plain> {
        self.price_or_none_yet(course, |price| {
            Said::new("letter-price-until")
                .with("price", price.says(&offer.currency))
                .with("date", offer.valid_until)
        })
    }

    fn price_or_none_yet(
        &self,
        course: &PricedCourse,
        says: impl Fn(MoneySpread) -> Said,
    ) -> Option<Plain> {
        match course.price() {
            Some(price) => Some(self.say(&says(price))),
            None if course.unpriced.is_empty() => None,
            None => Some(self.text("letter-price-none-yet")),
        }
    }

    /// The course that puts on a patch and nothing else, where it is offered.
    pub fn patching_course(&self, remedy: &RemedyKey) -> Option<(&'a Offer, &'a PricedCourse)> {
        let is_patch = |task: &Task| task.remedy.as_ref() == Some(remedy);
        self.offers().find_map(|offer| {
            let mut courses = self.courses(offer);
            let course = courses.find(|course| {
                !course.includes.is_empty() && course.includes.iter().all(is_patch)
            })?;
            Some((offer, course))
        })
    }

    /// What a patch costs: as it is offered, else each time, where an offer compares with it.
    pub fn price_of_patch(&self, remedy: &RemedyKey) -> Option<Plain> {
        if let Some((offer, course)) = self.patching_course(remedy) {
            return self.price_or_none_yet(course, |price| {
                let key = match course.nevertheless {
                    Some(_) => "letter-price-against",
                    None => "letter-price",
                };
                Said::new(key).with("price", price.says(&offer.currency))
            });
        }
        self.offers().find_map(|offer| {
            let again = self.courses(offer).find_map(patched_again)?;
            let each =
                Said::new("letter-price-each-time").with("price", again.once.says(&offer.currency));
            (again.remedy == *remedy).then(|| self.say(&each))
        })
    }

    /// Every course with its price, over all offers that hold.
    pub fn priced(&self) -> Vec<Priced<'a>> {
        let of_one = |offer| {
            self.courses(offer).filter_map(move |course| {
                Some(Priced {
                    offer,
                    course,
                    price: course.price()?,
                })
            })
        };
        self.offers().flat_map(of_one).collect()
    }

    /// A part as an offer names it.
    pub fn named_in_offer(&self, part: PartId) -> Said {
        self.named_by_id(part)
            .unwrap_or_else(|| Said::new("letter-part-unknown"))
    }

    /// Whether a refused course is offered all the same, so that it does not stand among what is not sold.
    pub fn is_offered_all_the_same(
        &self,
        structure: StructureId,
        course: Course,
        narrowed: Narrowed,
    ) -> bool {
        self.offers()
            .filter(|offer| offer.structure == structure)
            .flat_map(|offer| self.courses(offer))
            .any(|offered| {
                offered.course == course
                    && offered
                        .nevertheless
                        .as_ref()
                        .is_some_and(|against| against.narrowed == narrowed)
            })
    }
}

/// A course of an offer, and its price.
#[derive(Clone, Copy)]
pub struct Priced<'a> {
    /// The offer.
    pub offer: &'a Offer,
    /// The course.
    pub course: &'a PricedCourse,
    /// What the owner pays.
    pub price: MoneySpread,
}

/// Patching again, where it was priced.
pub fn patched_again(course: &PricedCourse) -> Option<&PatchingAgain> {
    match course.patching.as_ref()? {
        Patching::Again(again) => Some(again),
        Patching::NotPriced { .. } => None,
    }
}

/// What of a course is offered: all of it, or the part that judgement refuses.
pub fn narrowed(course: &PricedCourse) -> Narrowed {
    let against = course.nevertheless.as_ref();
    against.map_or(Narrowed::Whole, |against| against.narrowed)
}

fn is_forbidden(verdict: &Verdict, course: &PricedCourse) -> bool {
    let mut forbidden = verdict.refused.iter().filter(|refused| refused.forbidden);
    forbidden.any(|refused| {
        refused.course == course.course
            && (refused.narrowed == Narrowed::Whole || refused.narrowed == narrowed(course))
    })
}

/// Whether an offered course is a step of the verdict with just its work: a price holds for the work that was priced.
fn is_of(course: &PricedCourse, step: &Step) -> bool {
    let ours = || step.tasks.iter().filter(|task| task.trade.is_none());
    course.nevertheless.is_none()
        && (course.when, course.course) == (step.when, step.course)
        && same(&course.includes, ours())
}

fn same<'t>(includes: &[Task], ours: impl Iterator<Item = &'t Task>) -> bool {
    includes.iter().eq(ours)
}
