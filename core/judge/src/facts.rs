//! The facts of a structure as of one visit: to each question yes, no or unknown, and the records that say so.
//!
//! Worst governs: one "yes" anywhere is a yes. A "no" needs a close look at every part in scope that could show a "yes",
//! so what is seen from afar, told or inferred never gives one. Unknown stays unknown.

use crate::as_of::{AsOf, Standing};
use crate::rules::shingles;
use crate::{faults::Fault, layers};
use std::collections::{BTreeMap, BTreeSet};
use trade::answer::Answer;
use trade::catalogue::StopKey;
use trade::ids::{PartId, SlopeId};
use trade::mark::{Extent, Rung, Seen};
use trade::property::{Part, StructureKind};
use trade::stack::{Covering, Learned, Stack};
use trade::verdict::{Question, StandsOn};
use trade::visit::WetWhen;

/// One record's answer to one question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Evidence {
    /// The question.
    pub question: Question,
    /// Yes or no.
    pub answer: Answer,
    /// The slope it speaks of; `None` where it speaks of the whole structure.
    pub slope: Option<SlopeId>,
    /// The part it speaks of.
    pub part: Option<PartId>,
    /// How it was seen.
    pub seen: Seen,
    /// The record.
    pub on: StandsOn,
}

/// The answer to one question, and what it stands on.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Fact {
    /// The answer.
    pub answer: Answer,
    /// The records that give it, in a fixed order.
    pub evidence: Vec<Evidence>,
}

impl Fact {
    /// The records behind it, each once.
    pub fn stands_on(&self) -> Vec<StandsOn> {
        let records: BTreeSet<StandsOn> = self.evidence.iter().map(|one| one.on).collect();
        records.into_iter().collect()
    }

    /// The surest way in which it was seen.
    pub fn seen(&self) -> Option<Seen> {
        self.evidence.iter().map(|one| one.seen).min()
    }

    /// The parts it speaks of, each once.
    pub fn parts(&self) -> BTreeSet<PartId> {
        self.evidence.iter().filter_map(|one| one.part).collect()
    }

    /// The slopes it speaks of; empty where it speaks of the whole structure.
    pub fn slopes(&self) -> BTreeSet<SlopeId> {
        if self.evidence.iter().any(|one| one.slope.is_none()) {
            return BTreeSet::new();
        }
        self.evidence.iter().filter_map(|one| one.slope).collect()
    }
}

/// Answers alone, one to each question.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct Answers([Answer; Question::ALL.len()]);

impl Answers {
    /// The answer to one question.
    pub fn get(&self, question: Question) -> Answer {
        self.0[question as usize]
    }

    /// The same with one answer more, and with what follows from it: three layers are two or more, a deck wet beyond a
    /// spot is wet somewhere. `None` where it contradicts an answer that is there.
    #[must_use]
    pub fn with(mut self, question: Question, answer: Answer) -> Option<Self> {
        self.set(question, answer)?;
        for (greater, lesser) in IMPLIED {
            if question == greater && answer.is_yes() {
                self.set(lesser, Answer::Yes)?;
            }
            if question == lesser && answer.is_no() {
                self.set(greater, Answer::No)?;
            }
        }
        Some(self)
    }

    fn set(&mut self, question: Question, answer: Answer) -> Option<()> {
        let slot = &mut self.0[question as usize];
        if !slot.is_unknown() && *slot != answer {
            return None;
        }
        *slot = answer;
        Some(())
    }
}

/// Pairs of which the first, if so, makes the second so.
pub const IMPLIED: [(Question, Question); 2] = [
    (Question::ThreeLayers, Question::TwoLayers),
    (Question::DeckWetBroad, Question::DeckWet),
];

/// All facts of a structure.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Facts {
    all: BTreeMap<Question, Fact>,
    /// The layers over the structure.
    pub layers: layers::LayerCount,
    /// Where on the walk each open question is settled here: at the first part that could show it and was not cleared.
    pub settled_at: BTreeMap<Question, StopKey>,
}

impl Facts {
    /// Gathers them.
    pub fn gather(as_of: &AsOf<'_>, faults: &[Fault<'_>]) -> Self {
        let mut evidence = from_looks(as_of);
        evidence.extend(from_stacks(as_of));
        evidence.extend(from_request(as_of));
        evidence.extend(from_places(as_of, faults));
        evidence.extend(from_patches(as_of, faults));
        let evidence = with_implied(evidence);
        let mut facts: BTreeMap<Question, Fact> = Question::ALL
            .into_iter()
            .map(|question| (question, resolve(as_of, question, &evidence)))
            .collect();
        settle_counted(&mut facts);
        let open = Question::ALL
            .into_iter()
            .filter(|question| facts[question].answer.is_unknown());
        Self {
            settled_at: open
                .filter_map(|question| Some((question, open_stop(as_of, question, &evidence)?)))
                .collect(),
            all: facts,
            layers: layers::count(as_of.stacks()),
        }
    }

    /// One fact.
    pub fn fact(&self, question: Question) -> &Fact {
        &self.all[&question]
    }

    /// One answer.
    pub fn answer(&self, question: Question) -> Answer {
        self.all[&question].answer
    }

    /// The answers alone.
    pub fn answers(&self) -> Answers {
        let mut answers = Answers::default();
        for (&question, fact) in &self.all {
            answers.0[question as usize] = fact.answer;
        }
        answers
    }
}

fn from_looks(as_of: &AsOf<'_>) -> Vec<Evidence> {
    as_of
        .standing
        .iter()
        .flat_map(|standing| {
            Question::ALL.into_iter().filter_map(|question| {
                let answer = says(as_of, standing, question);
                (!answer.is_unknown()).then_some(Evidence {
                    question,
                    answer,
                    slope: standing.part.slope,
                    part: Some(standing.part.id),
                    seen: standing.seen,
                    on: StandsOn::Mark(standing.mark.id),
                })
            })
        })
        .collect()
}

/// What one look answers to one question.
fn says(as_of: &AsOf<'_>, standing: &Standing<'_>, question: Question) -> Answer {
    let told = standing
        .mark
        .answers
        .iter()
        .rev()
        .find(|answered| answered.question == question)
        .map(|answered| answered.answer);
    if told == Some(Answer::Yes) || shows(as_of, standing, question) {
        return Answer::Yes;
    }
    let asked_elsewhere = as_of.rules.catalogue.stop_for(question).is_none();
    if told == Some(Answer::No) && asked_elsewhere {
        return Answer::No;
    }
    let may_clear = standing.seen.is_close() && standing.fresh;
    let clears = standing
        .kind
        .is_some_and(|kind| kind.clears.contains(&question));
    if may_clear && (told == Some(Answer::No) || told.is_none() && clears) {
        return clean(standing, question);
    }
    Answer::Unknown
}

/// A covering in a bad way for no named local fault is not cleared of being done, though nobody called it done.
fn clean(standing: &Standing<'_>, question: Question) -> Answer {
    let local = !standing.defects.is_empty()
        && standing
            .defects
            .iter()
            .all(|found| found.extent != Extent::Broad);
    if question == Question::CoveringDone && standing.rung >= Rung::Failing && !local {
        Answer::Unknown
    } else {
        Answer::No
    }
}

fn shows(as_of: &AsOf<'_>, standing: &Standing<'_>, question: Question) -> bool {
    let signed = standing.defects.iter().any(|found| {
        as_of
            .rules
            .catalogue
            .defect(&found.defect)
            .is_some_and(|defect| defect.signs.contains(&question))
    });
    let given_up = question == Question::CoveringDone
        && standing.rung == Rung::Failed
        && standing.defects.is_empty()
        && standing
            .kind
            .is_some_and(|kind| kind.clears.contains(&Question::CoveringDone));
    signed || given_up
}

fn from_stacks(as_of: &AsOf<'_>) -> Vec<Evidence> {
    as_of
        .stacks()
        .into_iter()
        .filter(|stack| stack.learned != Learned::OwnersWord)
        .flat_map(|stack| {
            stack_answers(as_of, stack).map(move |(question, answer)| Evidence {
                question,
                answer,
                slope: stack.slope,
                part: None,
                seen: Seen::Touched,
                on: StandsOn::Stack(stack.id),
            })
        })
        .collect()
}

fn stack_answers<'a>(
    as_of: &'a AsOf<'_>,
    stack: &'a Stack,
) -> impl Iterator<Item = (Question, Answer)> + use<'a> {
    let spot = layers::at_spot(stack);
    let at_least = move |least: u8| match &spot {
        Some(spot) if spot.layers >= least => Answer::Yes,
        Some(spot) if spot.to_the_deck => Answer::No,
        _ => Answer::Unknown,
    };
    let top = layers::coverings(stack).next();
    let asbestos = layers::coverings(stack).any(|covering| covering == Covering::AsbestosCement);
    let answers = [
        (Question::TwoLayers, at_least(2)),
        (Question::ThreeLayers, at_least(3)),
        (
            Question::BarredBase,
            top.map_or(Answer::Unknown, |top| {
                crate::profile::bars_covering_over(top, as_of.rules.profile.edition)
            }),
        ),
        (
            Question::Asbestos,
            if asbestos {
                Answer::Yes
            } else {
                Answer::Unknown
            },
        ),
        (Question::TooLow, too_low(as_of, stack, top)),
    ];
    answers
        .into_iter()
        .filter(|(_, answer)| !answer.is_unknown())
}

fn too_low(as_of: &AsOf<'_>, stack: &Stack, top: Option<Covering>) -> Answer {
    let pitch = stack
        .slope
        .and_then(|slope| as_of.history.slope(slope))
        .and_then(|slope| slope.pitch.as_ref());
    match (top, pitch) {
        (Some(covering), Some(pitch)) if covering.is_asphalt_shingle() => shingles::too_low(pitch),
        _ => Answer::Unknown,
    }
}

/// The caller's word that water comes in. His word that none does is no look: water stands in attics unseen.
fn from_request(as_of: &AsOf<'_>) -> Option<Evidence> {
    let request = &as_of.visit.request;
    let only_in_dry_cold = !request.wet_when.is_empty()
        && request
            .wet_when
            .iter()
            .all(|when| *when == WetWhen::DryCold);
    (request.leaking.is_yes() && !only_in_dry_cold && is_the_one_meant(as_of)).then_some(Evidence {
        question: Question::WaterComesIn,
        answer: Answer::Yes,
        slope: None,
        part: None,
        seen: Seen::Told,
        on: StandsOn::Visit(as_of.visit.id),
    })
}

/// The answers that a decision goes by: where the caller said what he knows of water, and it is not here, nobody asks again.
pub fn as_the_caller_said(as_of: &AsOf<'_>, answers: Answers) -> Answers {
    if as_of.visit.request.leaking.is_unknown() {
        return answers;
    }
    answers
        .with(Question::WaterComesIn, Answer::No)
        .unwrap_or(answers)
}

/// A call names no structure: it is the only one of the visit, else the house, else the first.
fn is_the_one_meant(as_of: &AsOf<'_>) -> bool {
    let structures = &as_of.visit.structures;
    let house = structures.iter().find(|id| {
        as_of
            .history
            .structure(**id)
            .is_some_and(|structure| structure.kind == StructureKind::House)
    });
    house.or(structures.first()) == Some(&as_of.structure)
}

/// Separate places on one slope, by the firm's limit or where one fault reaches over a quarter of it.
fn from_places(as_of: &AsOf<'_>, faults: &[Fault<'_>]) -> Vec<Evidence> {
    let limit = usize::from(as_of.rules.policy.places_limit);
    let mut by_slope: BTreeMap<SlopeId, Vec<&Fault<'_>>> = BTreeMap::new();
    for fault in faults.iter().filter(|fault| fault.is_repair_of_covering()) {
        if let Some(slope) = fault.part.slope {
            by_slope.entry(slope).or_default().push(fault);
        }
    }
    by_slope
        .into_iter()
        .filter(|(_, faults)| {
            let places: usize = faults.iter().map(|fault| fault.places()).sum();
            places >= limit.max(1) || faults.iter().any(|fault| fault.extent == Extent::Broad)
        })
        .flat_map(|(slope, faults)| {
            faults.into_iter().map(move |fault| Evidence {
                question: Question::ManyPlaces,
                answer: Answer::Yes,
                slope: Some(slope),
                part: Some(fault.part.id),
                seen: fault.seen,
                on: StandsOn::Mark(fault.mark.id),
            })
        })
        .collect()
}

/// One cause that is still open was patched as often as the firm will.
fn from_patches(as_of: &AsOf<'_>, faults: &[Fault<'_>]) -> Vec<Evidence> {
    let limit = usize::from(as_of.rules.policy.patch_limit.max(1));
    faults
        .iter()
        .filter(|fault| {
            as_of
                .thread(fault.part)
                .is_some_and(|thread| thread.patches.len() >= limit)
        })
        .map(|fault| Evidence {
            question: Question::PatchedOften,
            answer: Answer::Yes,
            slope: fault.part.slope,
            part: Some(fault.part.id),
            seen: fault.seen,
            on: StandsOn::Mark(fault.mark.id),
        })
        .collect()
}

fn with_implied(mut evidence: Vec<Evidence>) -> Vec<Evidence> {
    let implied: Vec<Evidence> = evidence
        .iter()
        .filter_map(|one| {
            let question = IMPLIED.into_iter().find_map(|(greater, lesser)| {
                (one.question == greater && one.answer.is_yes())
                    .then_some(lesser)
                    .or((one.question == lesser && one.answer.is_no()).then_some(greater))
            })?;
            Some(Evidence {
                question,
                ..one.clone()
            })
        })
        .collect();
    evidence.extend(implied);
    evidence
}

fn resolve(as_of: &AsOf<'_>, question: Question, evidence: &[Evidence]) -> Fact {
    let of = |answer: Answer| -> Vec<Evidence> {
        let mut found: Vec<Evidence> = evidence
            .iter()
            .filter(|one| one.question == question && one.answer == answer)
            .cloned()
            .collect();
        found.sort_by_key(|one| (one.on, one.slope, one.part));
        found.dedup();
        found
    };
    let yes = of(Answer::Yes);
    if !yes.is_empty() {
        return Fact {
            answer: Answer::Yes,
            evidence: yes,
        };
    }
    let no = of(Answer::No);
    if !no.is_empty() && nothing_left_to_look_at(as_of, question, &no) {
        return Fact {
            answer: Answer::No,
            evidence: no,
        };
    }
    Fact::default()
}

/// Whether every slope in scope, and every part in scope that can show it, was cleared.
fn nothing_left_to_look_at(as_of: &AsOf<'_>, question: Question, no: &[Evidence]) -> bool {
    if as_of.rules.catalogue.stop_for(question).is_none() {
        return true;
    }
    let every_slope = as_of.slopes().iter().all(|slope| {
        no.iter()
            .any(|one| one.slope.is_none() || one.slope == Some(slope.id))
    });
    let every_part = as_of
        .parts_that_show(question)
        .into_iter()
        .all(|part| is_cleared(part, no));
    every_slope && every_part
}

fn is_cleared(part: &Part, no: &[Evidence]) -> bool {
    no.iter().any(|one| {
        one.part == Some(part.id)
            || one.part.is_none() && (one.slope.is_none() || one.slope == part.slope)
    })
}

/// The stop of the first part that could show a question and was not cleared of it; `None` where no such part is known.
fn open_stop(as_of: &AsOf<'_>, question: Question, evidence: &[Evidence]) -> Option<StopKey> {
    let no: Vec<Evidence> = evidence
        .iter()
        .filter(|one| one.question == question && one.answer.is_no())
        .cloned()
        .collect();
    let stops = as_of.rules.catalogue.stops();
    as_of
        .parts_that_show(question)
        .into_iter()
        .filter(|part| !is_cleared(part, &no))
        .filter_map(|part| as_of.rules.catalogue.kind(&part.kind))
        .map(|kind| &kind.stop)
        .min_by_key(|key| stops.iter().position(|stop| &stop.key == *key))
        .cloned()
}

/// Counted from the record itself: no more patches are known than these.
fn settle_counted(facts: &mut BTreeMap<Question, Fact>) {
    let fact = facts.entry(Question::PatchedOften).or_default();
    if fact.answer.is_unknown() {
        fact.answer = Answer::No;
    }
}
