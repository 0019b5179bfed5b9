//! Laws that every verdict keeps, over generated records.

#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod roof;
mod verdict_house;

use jiff::{Span, civil::Date};
use judge::as_of::AsOf;
use judge::course::{Sight, decide};
use judge::facts::Facts;
use judge::{Rules, faults, situation};
use proptest::prelude::*;
use proptest::sample::Index;
use roof::{Books, Roof, at_minute, day};
use trade::answer::Answer;
use trade::catalogue::{Catalogue, DefectKey};
use trade::firm::{Edition, HousePolicy, Profile};
use trade::history::History;
use trade::ids::{StackId, VisitId};
use trade::mark::{Condition, DefectSeen, Extent, Measure, MeasureOf, NotSeen, Rung, Seen};
use trade::property::Side;
use trade::stack::{Covering, Layer, LayerIs, Learned, Stack};
use trade::units::{Got, Length, Measured, Pitch};
use trade::verdict::{Answered, Course, Narrowed, Question, Verdict};
use trade::visit::{Ask, Request, Scope};
use trade::work::{By, Did, WorkOn};
use verdict_house::{reasons, said};

/// One mark: which part of which kind, on which visit, how it was, and what was said with it.
#[derive(Clone, Debug)]
struct Look {
    kind: Index,
    slope: Index,
    visit: Index,
    minute: usize,
    condition: Condition,
    defects: Vec<(Index, Extent)>,
    answers: Vec<(Index, Answer)>,
    measures: Vec<(Index, i64)>,
}

#[derive(Clone, Debug)]
struct Reading {
    slope: Index,
    visit: Index,
    coverings: Vec<Index>,
    learned: Learned,
    deck: bool,
}

#[derive(Clone, Debug)]
struct Doing {
    part: Index,
    whole: bool,
    remedy: Option<Index>,
    by: By,
    year: i16,
}

/// A whole record and what it is judged by.
#[derive(Clone, Debug)]
struct Record {
    slopes: usize,
    pitches: Vec<Option<f64>>,
    visits: usize,
    scope: Scope,
    request: Request,
    looks: Vec<Look>,
    readings: Vec<Reading>,
    doings: Vec<Doing>,
    profile: Profile,
    policy: HousePolicy,
}

fn an_answer() -> impl Strategy<Value = Answer> {
    prop_oneof![Just(Answer::Yes), Just(Answer::No), Just(Answer::Unknown)]
}

fn a_condition() -> impl Strategy<Value = Condition> {
    let rung = prop::sample::select(&Rung::ALL[..]);
    let way = prop_oneof![
        4 => Just(Seen::Near),
        1 => prop::sample::select(&Seen::ALL[..])
    ];
    prop_oneof![
        8 => (rung, way).prop_map(|(rung, seen)| Condition::Seen { rung, seen }),
        1 => prop::sample::select(&NotSeen::ALL[..]).prop_map(|why| Condition::NotSeen { why }),
        1 => Just(Condition::Gone),
    ]
}

fn an_extent() -> impl Strategy<Value = Extent> {
    prop_oneof![
        4 => Just(Extent::Spot),
        1 => Just(Extent::Several),
        1 => Just(Extent::Broad)
    ]
}

prop_compose! {
    fn a_look()(
        kind in any::<Index>(),
        slope in any::<Index>(),
        visit in any::<Index>(),
        minute in 0_usize..600,
        condition in a_condition(),
        defects in prop::collection::vec((any::<Index>(), an_extent()), 0..3),
        answers in prop::collection::vec((any::<Index>(), an_answer()), 0..3),
        measures in prop::collection::vec((any::<Index>(), 0_i64..200), 0..3),
    ) -> Look {
        Look { kind, slope, visit, minute, condition, defects, answers, measures }
    }
}

prop_compose! {
    fn a_reading()(
        slope in any::<Index>(),
        visit in any::<Index>(),
        coverings in prop::collection::vec(any::<Index>(), 0..4),
        learned in prop_oneof![
            Just(Learned::CutEdge), Just(Learned::Lifted), Just(Learned::OwnersWord)
        ],
        deck in any::<bool>(),
    ) -> Reading {
        Reading { slope, visit, coverings, learned, deck }
    }
}

prop_compose! {
    fn a_doing()(
        part in any::<Index>(),
        whole in prop::bool::weighted(0.2),
        remedy in prop::option::of(any::<Index>()),
        by in prop::sample::select(&By::ALL[..]),
        year in 2014_i16..2024,
    ) -> Doing {
        Doing { part, whole, remedy, by, year }
    }
}

prop_compose! {
    fn a_profile()(
        edition in prop::sample::select(&Edition::ALL[..]),
        layers_allowed in prop::option::weighted(0.3, 1_u8..4),
        ice_barrier in an_answer(),
        hail in an_answer(),
    ) -> Profile {
        Profile {
            place: "Tarn Hollow".to_owned(),
            edition,
            layers_allowed,
            ice_barrier,
            hail,
            ..Profile::default()
        }
    }
}

prop_compose! {
    fn a_policy()(
        sells_recover in any::<bool>(),
        no_repair_layers in 1_u8..5,
        patch_limit in 1_u8..4,
        places_limit in 1_u8..6,
    ) -> HousePolicy {
        HousePolicy {
            sells_recover,
            no_repair_layers,
            patch_limit,
            places_limit,
            ..HousePolicy::default()
        }
    }
}

prop_compose! {
    fn a_request()(
        leaking in an_answer(),
        sale in any::<bool>(),
        must_last in an_answer(),
        kind in prop::option::of(any::<Index>()),
        remedy in prop::option::of(any::<Index>()),
    ) -> Request {
        let catalogue = Catalogue::standard();
        let asks = kind.map(|kind| Ask {
            kind: kind.get(catalogue.kinds()).key.clone(),
            remedy: remedy.map(|remedy| remedy.get(catalogue.remedies()).key.clone()),
        });
        Request { leaking, sale, must_last, asks: asks.into_iter().collect(), ..Request::default() }
    }
}

prop_compose! {
    fn a_record()(
        slopes in 1_usize..4,
        pitches in prop::collection::vec(prop::option::of(0.5_f64..14.0), 3),
        visits in 1_usize..4,
        scope in prop::sample::select(&Scope::ALL[..]),
        request in a_request(),
        looks in prop::collection::vec(a_look(), 0..24),
        readings in prop::collection::vec(a_reading(), 0..4),
        doings in prop::collection::vec(a_doing(), 0..4),
        profile in a_profile(),
        policy in a_policy(),
    ) -> Record {
        Record { slopes, pitches, visits, scope, request, looks, readings, doings, profile, policy }
    }
}

/// The record written down as a history, and its last visit.
fn written(record: &Record) -> (Roof, VisitId) {
    let mut roof = Roof::new();
    roof.history.slopes.clear();
    for (at, letter) in ('A'..).take(record.slopes).enumerate() {
        let id = roof.slope(roof.house, Side::ALL[at], letter);
        let slope = roof
            .history
            .slopes
            .iter_mut()
            .find(|one| one.id == id)
            .unwrap();
        slope.pitch = record.pitches[at].map(|rise| Measured {
            value: Pitch::from_rise(rise).unwrap(),
            got: Got::Eye,
            within: 0.05,
        });
    }
    let mut visit = None;
    for year in 0..record.visits {
        visit = Some(roof.visit(&format!("{}-05-01", 2024 - 3 * (record.visits - 1 - year))));
    }
    let visit = visit.unwrap();
    let last = roof.history.visits.last_mut().unwrap();
    last.scope = record.scope;
    last.request = record.request.clone();
    record
        .looks
        .iter()
        .for_each(|look| write_look(&mut roof, look));
    record
        .readings
        .iter()
        .for_each(|reading| write_reading(&mut roof, reading));
    record
        .doings
        .iter()
        .for_each(|doing| write_doing(&mut roof, doing));
    (roof, visit)
}

fn write_look(roof: &mut Roof, look: &Look) {
    let catalogue = Catalogue::standard();
    let kind = look.kind.get(catalogue.kinds());
    let slope = kind
        .on_slope
        .then(|| look.slope.get(&roof.history.slopes).id);
    let known = roof
        .history
        .parts
        .iter()
        .find(|part| part.kind == kind.key && part.slope == slope)
        .map(|part| part.id);
    let part = known.unwrap_or_else(|| roof.part_at(roof.house, slope, kind.key.as_str()));
    let (visit, on) = {
        let visit = look.visit.get(&roof.history.visits);
        (visit.id, visit.on)
    };
    let id = roof.mark(visit, part, look.condition, &[]);
    let mark = roof
        .history
        .marks
        .iter_mut()
        .find(|mark| mark.id == id)
        .unwrap();
    mark.at = at_minute(on, look.minute);
    let fitting: Vec<DefectKey> = catalogue
        .defects_of(&kind.key)
        .map(|defect| defect.key.clone())
        .collect();
    if look.condition.rung().is_some_and(|rung| rung > Rung::Sound) && !fitting.is_empty() {
        for (which, extent) in &look.defects {
            let defect = which.get(&fitting).clone();
            if !mark.defects.iter().any(|known| known.defect == defect) {
                mark.defects.push(DefectSeen {
                    defect,
                    extent: *extent,
                });
            }
        }
    }
    for (which, answer) in &look.answers {
        if let Some(question) = (!kind.asks.is_empty()).then(|| *which.get(&kind.asks)) {
            mark.answers.push(Answered {
                question,
                answer: *answer,
            });
        }
    }
    for (which, inches) in &look.measures {
        mark.measures.push(Measure {
            of: *which.get(&MeasureOf::ALL[..]),
            value: Measured {
                value: Length::inches(*inches),
                got: Got::Tape,
                within: 0.02,
            },
        });
    }
}

fn write_reading(roof: &mut Roof, reading: &Reading) {
    let mut layers: Vec<LayerIs> = reading
        .coverings
        .iter()
        .map(|covering| LayerIs::Covering(*covering.get(&Covering::ALL[..])))
        .collect();
    layers.extend(reading.deck.then_some(LayerIs::Deck));
    let stack = Stack {
        id: StackId::from(roof.id()),
        visit: reading.visit.get(&roof.history.visits).id,
        structure: roof.house,
        slope: Some(reading.slope.get(&roof.history.slopes).id),
        spot: String::new(),
        rebuilt: false,
        layers: layers
            .into_iter()
            .map(|is| Layer {
                is,
                colour: None,
                thickness: None,
            })
            .collect(),
        edge: None,
        learned: reading.learned,
    };
    roof.history.stacks.push(stack);
}

fn write_doing(roof: &mut Roof, doing: &Doing) {
    if roof.history.parts.is_empty() {
        return;
    }
    let on = if doing.whole {
        WorkOn::Structure(roof.house)
    } else {
        WorkOn::Part(doing.part.get(&roof.history.parts).id)
    };
    let did = doing.remedy.map_or(Did::Replaced, |remedy| {
        Did::Remedy(remedy.get(Catalogue::standard().remedies()).key.clone())
    });
    roof.work_on(on, did, doing.by, &format!("{}-08-01", doing.year), None);
}

fn today() -> Date {
    day("2024-05-03")
}

fn books(record: &Record) -> Books {
    Books {
        profile: record.profile.clone(),
        policy: record.policy.clone(),
    }
}

fn judged(record: &Record) -> (Verdict, Roof, VisitId) {
    let (roof, visit) = written(record);
    let books = books(record);
    let verdict = judge::verdict(&roof.history, roof.house, visit, today(), &books.rules());
    (verdict, roof, visit)
}

/// The rules that say that a question is so.
fn claims(question: Question) -> &'static [&'static str] {
    match question {
        Question::WaterComesIn => &["water-comes-in", "limit-water-not-proved"],
        Question::OpenToRain => &["open-to-rain"],
        Question::MayFall => &["may-fall", "keep-clear"],
        Question::CoveringDone => &["covering-done", "covering-done-over-layers"],
        Question::Brittle => &["brittle"],
        Question::NotFlat => &["recover-not-flat"],
        Question::TwoLayers => &[
            "recover-two-layers",
            "covering-done-over-layers",
            "limit-next-is-tear-off",
            "two-layers-repair",
        ],
        Question::ThreeLayers | Question::PatchedOften => &[],
        Question::DeckWet => &["deck-wet", "recover-wet-base", "soft-underfoot"],
        Question::DeckWetBroad => &["deck-wet-broad"],
        Question::ManyPlaces => &["many-places"],
        Question::TooLow => &["too-low", "recover-too-low"],
        Question::RebuiltStep => &["rebuilt-step", "recover-rebuilt-step"],
        Question::Unmatchable => &["unmatchable"],
        Question::BarredBase => &["recover-barred-base"],
        Question::FlashingStays => &["recover-flashing-stays"],
        Question::FrameWeak => &["recover-frame-weak", "frame-weak"],
        Question::MakerRefuses => &["recover-maker-refuses"],
        Question::Asbestos => &["asbestos"],
        Question::Vermiculite => &["vermiculite"],
    }
}

fn answers(history: &History, roof: &Roof, visit: VisitId, rules: &Rules<'_>) -> Facts {
    let as_of = AsOf::read(history, roof.house, visit, rules).unwrap();
    Facts::gather(&as_of, &faults::faults(&as_of))
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: 512,
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    fn what_is_forbidden_is_never_a_step(record in a_record()) {
        let (verdict, ..) = judged(&record);
        for refused in &verdict.refused {
            if refused.narrowed == Narrowed::Whole {
                prop_assert!(verdict.steps.iter().all(|step| step.course != refused.course)
                    || refused.course == Course::Repair);
            }
            prop_assert!(!refused.reasons.is_empty());
        }
    }

    #[test]
    fn nothing_is_left_that_was_not_seen_closely(record in a_record()) {
        let (verdict, roof, visit) = judged(&record);
        let close = roof.history.marks.iter().any(|mark| {
            mark.visit == visit && mark.condition.seen().is_some_and(Seen::is_close)
        });
        let leaves = verdict.steps.iter().any(|step| step.course == Course::Leave);
        prop_assert!(close || !leaves);
    }

    #[test]
    fn no_order_of_the_records_matters(
        (record, order) in (a_record(), any::<u64>())
    ) {
        let (roof, visit) = written(&record);
        let books = books(&record);
        let verdict = |history: &History| {
            judge::verdict(history, roof.house, visit, today(), &books.rules())
        };
        let mut shuffled = roof.history.clone();
        // Any fixed shuffle will do: by a hash of the identifier and the number drawn.
        let key = |id: uuid::Uuid| id.as_u128().wrapping_mul(u128::from(order | 1)) % 1_000_003;
        shuffled.marks.sort_by_key(|mark| key(mark.id.0));
        shuffled.stacks.sort_by_key(|stack| key(stack.id.0));
        shuffled.works.sort_by_key(|work| key(work.id.0));
        shuffled.parts.sort_by_key(|part| key(part.id.0));
        prop_assert_eq!(verdict(&roof.history), verdict(&shuffled));
        prop_assert_eq!(verdict(&roof.history), verdict(&roof.history));
    }

    #[test]
    fn what_nobody_answered_is_no_reason(record in a_record()) {
        let (verdict, roof, visit) = judged(&record);
        let books = books(&record);
        let facts = answers(&roof.history, &roof, visit, &books.rules());
        for question in Question::ALL {
            if !facts.answer(question).is_yes() {
                for rule in claims(question) {
                    let told = verdict_house::reason(&verdict, rule);
                    prop_assert!(told.is_none(), "{rule} though {question:?} is {:?}", facts.answer(question));
                }
            }
        }
    }

    #[test]
    fn every_reason_reads_as_english(record in a_record()) {
        let (verdict, ..) = judged(&record);
        for reason in reasons(&verdict) {
            said(&reason.says);
        }
        for step in &verdict.steps {
            prop_assert!(!step.reasons.is_empty(), "{:?}", step.course);
        }
    }

    #[test]
    fn the_steps_run_in_time_and_making_safe_is_never_the_end(record in a_record()) {
        let (verdict, ..) = judged(&record);
        prop_assert!(verdict.steps.is_sorted_by_key(|step| step.when));
        prop_assert!(!verdict.steps.is_empty());
        let last = verdict.steps.last().unwrap();
        prop_assert!(last.course != Course::MakeSafe);
        for step in &verdict.steps {
            if step.course == Course::MakeSafe {
                let weeks = i64::from(record.policy.make_safe_weeks);
                prop_assert_eq!(step.until, today().checked_add(Span::new().weeks(weeks)).ok());
            }
        }
    }

    #[test]
    fn the_main_course_is_the_one_decided(record in a_record()) {
        let (verdict, roof, visit) = judged(&record);
        let books = books(&record);
        let rules = books.rules();
        let as_of = AsOf::read(&roof.history, roof.house, visit, &rules).unwrap();
        let found = faults::faults(&as_of);
        let facts = Facts::gather(&as_of, &found);
        let decided = decide(&situation::read(&as_of, &found, &facts), &facts.answers());
        prop_assert_eq!(verdict.main_course(), Some(decided.course));
        if let Some(look) = verdict.next_look {
            prop_assert!(look.turns_to != decided.course);
        }
        if as_of.sight() == Sight::Nothing {
            prop_assert!(decided.course == Course::LookFirst || decided.course == Course::TearOff);
        }
    }

    #[test]
    fn more_layers_never_make_a_recover_allowed(
        (record, which) in (a_record(), any::<Index>())
    ) {
        let (before, mut roof, visit) = judged(&record);
        if roof.history.stacks.is_empty() {
            return Ok(());
        }
        let stacks = roof.history.stacks.len();
        let covering = LayerIs::Covering(Covering::AsphaltStrip);
        let layer = Layer { is: covering, colour: None, thickness: None };
        roof.history.stacks[which.index(stacks)].layers.insert(0, layer);
        let books = books(&record);
        let after = judge::verdict(&roof.history, roof.house, visit, today(), &books.rules());
        let sells = |verdict: &Verdict| {
            verdict.steps.iter().any(|step| step.course == Course::Recover)
        };
        let forbids = |verdict: &Verdict| {
            verdict.refused.iter().any(|refused| {
                refused.course == Course::Recover && refused.forbidden
                    && refused.reasons.iter().any(|reason| reason.rule.starts_with("recover-two"))
            })
        };
        prop_assert!(sells(&before) || !sells(&after));
        prop_assert!(!forbids(&before) || !sells(&after));
    }
}
