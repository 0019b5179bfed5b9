//! The part of a roof that is covered: its laid planes, and the lines that bound them.

use super::{Basis, TakeoffError};
use std::collections::BTreeMap;
use trade::firm::Edition;
use trade::ids::SlopeId;
use trade::laid::Laid;
use trade::roof::{LineKind, Plane, RoofLine, RoofPlan};
use trade::takeoff::{Item, Need, RoofTask, Spread, TaskAmount, Untied};
use trade::units::{Length, Pitch};
use trade::verdict::Source;
use trade::words::Said;

/// Asphalt shingles take at least 2:12 (IRC R905.2.2).
const LOWEST: Pitch = Pitch::rise(2);

/// What is covered, and by what it is counted.
pub(crate) struct Site<'a> {
    pub plan: &'a RoofPlan,
    pub laid: &'a Laid,
    pub basis: &'a Basis<'a>,
    /// The planes that are laid, by their place in the plan.
    pub planes: Vec<(usize, &'a Plane)>,
}

impl<'a> Site<'a> {
    pub fn of(
        plan: &'a RoofPlan,
        laid: &'a Laid,
        basis: &'a Basis<'a>,
    ) -> Result<Self, TakeoffError> {
        if Item::shingle_of(laid.pieces.covering).is_none() {
            return Err(TakeoffError::NoShingle(laid.pieces.covering));
        }
        let planes = laid
            .planes
            .iter()
            .map(|laid| {
                let plane = plan.planes.get(laid.plane);
                plane
                    .map(|plane| (laid.plane, plane))
                    .ok_or(TakeoffError::OtherPlan(laid.plane))
            })
            .collect::<Result<Vec<_>, _>>()?;
        if planes.is_empty() {
            return Err(TakeoffError::NothingLaid);
        }
        let low: Vec<_> = planes
            .iter()
            .filter(|(_, plane)| plane.pitch < LOWEST)
            .map(|(_, plane)| (plane.letter.clone(), plane.pitch))
            .collect();
        if !low.is_empty() {
            return Err(TakeoffError::TooLow(low));
        }
        sizes_can_be_laid(basis)?;
        Ok(Self {
            plan,
            laid,
            basis,
            planes,
        })
    }

    pub fn edition(&self) -> Edition {
        self.basis.profile.edition
    }

    /// The letters of the planes that are laid.
    pub fn letters_laid(&self) -> Vec<String> {
        self.letters(|at, _| self.is_laid(at))
    }

    /// The letters of the planes of slopes that are not laid.
    pub fn letters_left(&self) -> Vec<String> {
        self.letters(|at, plane| !self.is_laid(at) && plane.slope.is_some())
    }

    /// The planes of no slope that are not laid.
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "no roof has so many square feet, nor fewer than none"
    )]
    pub fn untied(&self) -> Option<Untied> {
        let is_untied = |at: usize, plane: &Plane| !self.is_laid(at) && plane.slope.is_none();
        let planes = self.plan.planes.iter().enumerate();
        let area: f64 = planes
            .filter(|(at, plane)| is_untied(*at, plane))
            .map(|(_, plane)| plane.slope_area.in_square_feet())
            .sum();
        let letters = self.letters(is_untied);
        (!letters.is_empty()).then(|| Untied {
            letters,
            square_feet: area.round() as u32,
        })
    }

    fn letters(&self, is_meant: impl Fn(usize, &Plane) -> bool) -> Vec<String> {
        let planes = self.plan.planes.iter().enumerate();
        planes
            .filter(|(at, plane)| is_meant(*at, plane))
            .map(|(_, plane)| plane.letter.clone())
            .collect()
    }

    fn is_laid(&self, at: usize) -> bool {
        self.planes.iter().any(|(laid, _)| *laid == at)
    }

    /// What is covered, in squares.
    pub fn squares(&self) -> Spread {
        self.planes
            .iter()
            .map(|(_, plane)| self.plane_squares(plane))
            .sum()
    }

    /// One plane in squares, as exactly as it was measured.
    pub fn plane_squares(&self, plane: &Plane) -> Spread {
        Spread::within(plane.slope_area.in_squares(), self.plan.area_within())
    }

    /// The lines of some kinds that bound a laid plane.
    pub fn lines(&self, kinds: &'static [LineKind]) -> impl Iterator<Item = &'a RoofLine> {
        let laid: Vec<usize> = self.planes.iter().map(|(at, _)| *at).collect();
        self.plan.lines.iter().filter(move |line| {
            kinds.contains(&line.kind) && line.planes.iter().any(|plane| laid.contains(plane))
        })
    }

    /// The length of a line in feet, as exactly as it was measured: a sloping one hangs on its pitch too.
    pub fn feet(&self, line: &RoofLine) -> Spread {
        let sloping = matches!(
            line.kind,
            LineKind::Rake | LineKind::Hip | LineKind::Valley | LineKind::Step
        );
        let pitch = if sloping { self.plan.pitch_within } else { 0.0 };
        Spread::within(line.length.in_feet(), self.plan.length_within + pitch)
    }

    /// The steepest laid plane along a line: from there it is worked.
    pub fn pitch_at(&self, line: &RoofLine) -> Option<Pitch> {
        line.planes
            .iter()
            .filter(|at| self.is_laid(**at))
            .filter_map(|at| self.plan.planes.get(*at))
            .map(|plane| plane.pitch)
            .max()
    }

    /// The pitch where a part stands: that of its slope's plane; the steepest there is where the plan does not show its slope.
    pub fn pitch_of(&self, slope: Option<SlopeId>) -> Option<Pitch> {
        let pitch = |(_, plane): &(usize, &Plane)| plane.pitch;
        let own = self
            .planes
            .iter()
            .filter(|(_, plane)| slope.is_some() && plane.slope == slope);
        own.map(pitch)
            .max()
            .or_else(|| self.planes.iter().map(pitch).max())
    }

    /// Whether the plan shows a line of some kinds on a slope's plane; of any laid plane where the part belongs to none.
    pub fn shows(&self, kinds: &'static [LineKind], slope: Option<SlopeId>) -> bool {
        self.lines(kinds).any(|line| {
            let mut planes = line
                .planes
                .iter()
                .filter_map(|at| self.plan.planes.get(*at));
            slope.is_none() || planes.any(|plane| plane.slope == slope)
        })
    }

    /// Whether a part on a slope lies on what is covered; what belongs to no one slope does.
    pub fn reaches(&self, slope: Option<SlopeId>) -> bool {
        slope.is_none()
            || self
                .plan
                .planes
                .iter()
                .enumerate()
                .all(|(at, plane)| plane.slope != slope || self.is_laid(at))
    }

    /// A need: the amount with the waste that the list adds, in whole packs.
    pub fn need(&self, item: Item, amount: Spread, reason: Said, source: Source) -> Need {
        let supply = self.basis.supplies.supply(item);
        let waste = if item.is_laid() { 0.0 } else { supply.waste };
        let amount = amount.scaled(1.0 + waste);
        let packs = amount.in_packs(supply.pack);
        Need {
            item,
            size: None,
            amount,
            pack: supply.pack,
            packs,
            order: self.basis.choices.order_at.of(packs),
            reason,
            source,
        }
    }

    /// Work along lines, by the pitch it is done at.
    pub fn along<'l>(
        &self,
        task: RoofTask,
        lines: impl Iterator<Item = &'l RoofLine>,
    ) -> Vec<TaskAmount> {
        let mut by_pitch: BTreeMap<Option<Pitch>, Spread> = BTreeMap::new();
        for line in lines {
            let sum = by_pitch.entry(self.pitch_at(line)).or_default();
            *sum = *sum + self.feet(line);
        }
        by_pitch
            .into_iter()
            .map(|(pitch, amount)| TaskAmount {
                task,
                pitch,
                amount,
            })
            .collect()
    }

    /// Work on planes, by their pitch.
    pub fn over(&self, task: RoofTask, squares: impl Fn(&Plane) -> Spread) -> Vec<TaskAmount> {
        self.planes
            .iter()
            .map(|(_, plane)| TaskAmount {
                task,
                pitch: Some(plane.pitch),
                amount: squares(plane),
            })
            .filter(|task| !task.amount.is_nothing())
            .collect()
    }
}

fn sizes_can_be_laid(basis: &Basis<'_>) -> Result<(), TakeoffError> {
    for &item in Item::ALL {
        let supply = basis.supplies.supply(item);
        let too_small = |size: Option<Length>, lap: Length| size.is_some_and(|size| size <= lap);
        let holds_nothing = !(supply.pack > 0.0 && supply.pack.is_finite());
        // A doubled sheet laps by half its width and an inch more.
        let needs = supply.lap.max(Length::inches(2));
        if holds_nothing
            || !(0.0..=1.0).contains(&supply.waste)
            || too_small(supply.width, needs)
            || too_small(supply.length, supply.lap.max(supply.end_lap))
        {
            return Err(TakeoffError::BadSupply(item));
        }
    }
    Ok(())
}
