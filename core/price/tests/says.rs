//! All that the room says can be said, in both languages.

#![cfg(test)]

mod support;

use price::takeoff::TakeoffError;
use price::worth::WorthError;
use price::{Basis, Choices, OfferError, Standing, Supplies, TearOffError, takeoff};
use rust_decimal::Decimal;
use support::{example_list, gable, icy, id, laid, line};
use trade::catalogue::{Months, RemedyKey};
use trade::firm::{Edition, Profile};
use trade::laid::{Pieces, ValleyIs};
use trade::offer::{
    CostKind, CostLine, Lasts, LeftOut, MoneySpread, Nevertheless, PatchingAgain, Unpriced,
    Unsolved, Yearly,
};
use trade::price_list::{Gain, Share, TaxOn};
use trade::roof::LineKind;
use trade::stack::Covering;
use trade::takeoff::{
    Binding, Item, Layers, OrderAt, Packs, PlaneLoad, RoofTask, Spread, TearOff, Unit, Untied,
    amount_said, sized,
};
use trade::units::{Length, Money, Pitch};
use trade::verdict::{Course, LicensedTrade, Narrowed, Task};
use trade::words::{Language, Said, Words};

fn can_be_said(said: &Said) {
    for language in Language::ALL {
        let text = Words::of(language).say(said);
        assert!(!text.contains('['), "{} has no words: {text}", said.key);
        assert!(
            !text.contains('{'),
            "{} lacks an argument: {text}",
            said.key
        );
    }
}

fn named(_: trade::ids::PartId) -> Said {
    Said::verbatim("part 3")
}

fn task(trade: Option<LicensedTrade>) -> Task {
    Task {
        part: id(3),
        remedy: None,
        trade,
    }
}

fn money() -> MoneySpread {
    MoneySpread::exactly(Money(Decimal::from(250)))
}

#[test]
fn every_name_has_its_words() {
    let mut keys: Vec<String> = Vec::new();
    keys.extend(Item::ALL.iter().map(|item| item.key().to_owned()));
    keys.extend(
        Item::ALL
            .iter()
            .map(|item| format!("{}.many", item.pack_key())),
    );
    keys.extend(RoofTask::ALL.iter().map(|task| task.key().to_owned()));
    keys.extend(Unit::ALL.iter().map(|unit| unit.key().to_owned()));
    keys.extend(Unit::ALL.iter().map(|unit| format!("{}.one", unit.key())));
    keys.extend(CostKind::ALL.iter().map(|kind| kind.key().to_owned()));
    keys.extend(TaxOn::ALL.iter().map(|on| on.key().to_owned()));
    keys.extend(OrderAt::ALL.iter().map(|at| at.key().to_owned()));
    keys.extend(Binding::ALL.iter().map(|by| by.key().to_owned()));
    let share = Share::default();
    keys.extend([Gain::Margin(share), Gain::Markup(share)].map(|gain| gain.key().to_owned()));
    for key in keys {
        can_be_said(&Said::new(key));
    }
    for item in Item::ALL {
        can_be_said(&sized(*item, Some(Length::inches(3))));
        can_be_said(&Said::new(item.pack_key()).with("count", 1));
        can_be_said(&Said::new(item.pack_key()).with("count", 4));
    }
    let words = Words::of(Language::English);
    let amount = |spread, unit| words.say(&amount_said(spread, unit));
    assert_eq!(
        amount(Spread::exactly(1.0), Unit::Square),
        "1 square of 100 square feet"
    );
    assert_eq!(
        amount(Spread::within(25.0, 0.04), Unit::Square),
        "24 to 26 squares of 100 square feet"
    );
    assert_eq!(amount(Spread::exactly(12.49), Unit::Foot), "12 feet");
}

/// A low gable and a steep one, with pipes, a wide chimney, vents and everything stated.
#[test]
fn every_reason_and_gap_has_its_words() {
    let chimney = |width: Option<i64>, depth: Option<i64>| price::standing::Chimney {
        part: id(5),
        slope: None,
        width: width.map(|width| trade::units::Measured {
            value: Length::inches(width),
            got: trade::units::Got::Tape,
            within: 0.0,
        }),
        depth: depth.map(Length::inches),
        astride_ridge: trade::answer::Answer::No,
    };
    let standing = Standing {
        pipes: vec![price::standing::Pipe {
            part: id(6),
            slope: None,
            diameter: None,
        }],
        chimneys: vec![chimney(Some(40), Some(30)), chimney(None, None)],
        high_vents: 2,
        ..Standing::default()
    };
    let choices = Choices {
        counter_flashing: Length::feet(9),
        deck_sheets: Some(Spread::exactly(2.0)),
        sealant: 3,
        cement: 1,
        ..Choices::default()
    };
    let mut reasons = 0;
    for (pitch, profile) in [
        (3, icy(Edition::E2018)),
        (9, icy(Edition::E2012)),
        (9, Profile::default()),
    ] {
        let mut plan = gable(40.0, 28.0, Pitch::rise(pitch), Length::inches(20));
        plan.lines
            .push(line(LineKind::Valley, [0.0; 3], [9.0, 9.0, 4.0], &[0, 1]));
        plan.lines
            .push(line(LineKind::Step, [0.0; 3], [0.0, 9.0, 4.0], &[0]));
        plan.lines
            .push(line(LineKind::Wall, [0.0, 9.0, 4.0], [6.0, 9.0, 4.0], &[0]));
        let list = example_list();
        let supplies = Supplies::of(&list);
        let basis = Basis {
            profile: &profile,
            supplies: &supplies,
            standing: &standing,
            choices: &choices,
        };
        for valleys in ValleyIs::ALL {
            let mut laid = laid(&plan, Pieces::strip(), 0.05);
            laid.valleys = valleys;
            let takeoff = takeoff(&plan, &laid, &basis).expect("a takeoff");
            for need in &takeoff.needs {
                for said in [
                    &need.reason,
                    &need.name(),
                    &need.says_amount(),
                    &need.says_order(),
                ] {
                    can_be_said(said);
                }
            }
            for gap in &takeoff.gaps {
                can_be_said(&gap.why);
            }
            reasons += takeoff.needs.len();
        }
    }
    assert!(reasons > 90, "only {reasons} reasons");
}

#[test]
fn every_error_has_its_words() {
    let errors = [
        TakeoffError::NothingLaid.says(),
        TakeoffError::OtherPlan(2).says(),
        TakeoffError::NotOnPlan(vec!["A".into(), "B".into()]).says(),
        TakeoffError::NoShingle(Covering::Slate).says(),
        TakeoffError::TooLow(vec![("A".into(), Pitch::rise(1))]).says(),
        TakeoffError::BadSupply(Item::IceBarrier).says(),
        TearOffError::Asbestos.says(),
        TearOffError::LayersNotCounted("B".into()).says(),
        TearOffError::WeightNotKnown(Covering::Unclear).says(),
        TearOffError::NoSuchPlane(3).says(),
        TearOffError::Trailer.says(),
        WorthError::Rate(Share(Decimal::ONE)).says(),
        WorthError::Time.says(),
        WorthError::TooGreat.says(),
        OfferError::NoReason(Course::Repair).says(),
        OfferError::NotRefused(Course::Repair).says(),
        OfferError::OtherStructure.says(),
        OfferError::NothingToDo.says(),
        OfferError::TooGreat.says(),
        OfferError::Worth(WorthError::Time).says(),
        OfferError::Forbidden {
            course: Course::Recover,
            narrowed: Narrowed::Whole,
            reasons: Vec::new(),
        }
        .says(),
    ];
    errors.iter().for_each(can_be_said);
}

#[test]
fn what_is_left_out_unsolved_and_unpriced_has_its_words() {
    let remedy = RemedyKey::from("new-boot");
    let pitches = [None, Some(Pitch::rise(8))];
    let mut unpriced = vec![
        Unpriced::NoMaterial {
            item: Item::PipeBoot,
            size: Some(Length::inches(3)),
        },
        Unpriced::OtherPack {
            item: Item::StripShingle,
        },
        Unpriced::NotCounted {
            part: id(3),
            remedy: remedy.clone(),
            unit: Unit::Foot,
        },
        Unpriced::NoRemedyNamed { part: id(3) },
        Unpriced::NoWorkNamed,
        Unpriced::NoDisposal,
        Unpriced::NoSheetPrice,
        Unpriced::NoTakeoff,
        Unpriced::NoTearOff,
        Unpriced::Gap {
            item: Item::Cricket,
            why: Box::new(Said::new("gap-chimney-width")),
        },
    ];
    for pitch in pitches {
        unpriced.push(Unpriced::NoHours {
            task: RoofTask::SetBoot,
            pitch,
        });
        unpriced.push(Unpriced::NoRemedy {
            remedy: remedy.clone(),
            pitch,
        });
    }
    for what in &unpriced {
        can_be_said(&what.says(&named));
        can_be_said(&what.says_to_owner(&named));
    }
    let left_out = [
        LeftOut::OtherTrade {
            task: task(Some(LicensedTrade::Mason)),
        },
        LeftOut::OtherTrade { task: task(None) },
        LeftOut::NotSeen { part: id(3) },
        LeftOut::OtherSlopes {
            letters: vec!["B".into(), "C".into()],
        },
        LeftOut::Untied(Untied {
            letters: vec!["D".into()],
            square_feet: 120,
        }),
        LeftOut::VentArea,
        LeftOut::MoreSheets {
            included: 2,
            each: Money(Decimal::from(90)),
        },
    ];
    for what in &left_out {
        can_be_said(&what.says(&named, "USD"));
    }
    for by in [None, Some(Course::TearOff)] {
        can_be_said(&Unsolved { part: id(3), by }.says(&named));
    }
    let against = Nevertheless {
        narrowed: Narrowed::Whole,
        because: "It is to be sold.".into(),
        against: Vec::new(),
    };
    can_be_said(&against.says());
}

#[test]
fn what_it_costs_a_year_and_what_patching_costs_has_its_words() {
    let list = example_list();
    let rate = list.interest.expect("a rate");
    let life = &list.lives[0];
    let yearly = Yearly {
        lasts: Lasts {
            years: Spread {
                least: 15.0,
                likely: 20.0,
                most: 25.0,
            },
            source: life.source.clone(),
        },
        rate,
        cost: money(),
    };
    can_be_said(&yearly.says("USD"));
    let again = PatchingAgain {
        remedy: RemedyKey::from("sealant"),
        part: id(3),
        once: money(),
        holds: Months {
            least: 12,
            most: 36,
        },
        years: 20,
        times: (7, 20),
        sum: money(),
        worth_now: money(),
        rate,
    };
    let said = Words::of(Language::English).say(&again.says("USD"));
    assert!(said.contains("7 to 20 times in 20 years"), "{said}");
    let load = PlaneLoad {
        letter: "A".into(),
        layers: Layers { least: 1, most: 1 },
        on_slope: Spread::exactly(2.0),
        on_plan: Spread::exactly(2.2),
        with_another: Some(Spread::exactly(4.5)),
        excepted: Some(true),
    };
    load.says().iter().for_each(can_be_said);
}

/// One is never said as many, in either language.
#[test]
fn a_single_one_is_said_as_one() {
    let one = TearOff {
        squares: Spread::exactly(1.0),
        layers: Layers { least: 1, most: 1 },
        layer_squares: Spread::exactly(1.0),
        pounds: Spread::exactly(1.0),
        cubic_yards: Spread::exactly(1.0),
        loads: Packs::exactly(1),
        bound_by: Binding::Weight,
        tasks: Vec::new(),
    };
    let two = TearOff {
        layers: Layers { least: 1, most: 2 },
        loads: Packs::exactly(2),
        ..one.clone()
    };
    let say = |tear_off: &TearOff| {
        Language::ALL.map(|language| Words::of(language).say(&tear_off.says()))
    };
    let [english, spanish] = say(&one);
    assert_eq!(
        english,
        "1 square with 1 layer: 1 pound, 1 cubic yard, 1 load, bound by weight"
    );
    assert_eq!(
        spanish,
        "1 cuadro con 1 capa: 1 libra, 1 yarda cúbica, 1 carga, con el límite por el peso"
    );
    let [english, spanish] = say(&two);
    assert!(
        english.contains("1 to 2 layers") && english.contains("2 loads"),
        "{english}"
    );
    assert!(
        spanish.contains("1 a 2 capas") && spanish.contains("2 cargas"),
        "{spanish}"
    );
}

#[test]
fn a_line_of_cost_says_one_as_one() {
    let line = |unit: &str, quantity: f64| CostLine {
        kind: CostKind::Material,
        what: Said::verbatim("it"),
        quantity: Spread::exactly(quantity),
        unit: Said::new(unit),
        each: Money(Decimal::ONE),
        amount: money(),
    };
    let say =
        |unit, quantity| Words::of(Language::English).say(&line(unit, quantity).says_quantity());
    for (unit, quantity, wanted) in [
        ("pack-bundle.many", 1.0, "1 bundle"),
        ("pack-bundle.many", 2.0, "2 bundles"),
        ("unit-hour", 1.0, "1 hour"),
        ("unit-hour", 1.5, "1.5 hours"),
        ("unit-load", 1.0, "1 load"),
        ("unit-job.one", 1.0, "1 job"),
    ] {
        assert_eq!(say(unit, quantity), wanted);
    }
}

/// Shingles that are all bought as such leave nothing to say of starter and caps.
#[test]
fn nothing_more_is_not_said() {
    let plan = gable(40.0, 30.0, Pitch::rise(6), Length::inches(12));
    let say = |supplies: &Supplies| {
        let takeoff = takeoff(
            &plan,
            &laid(&plan, Pieces::strip(), 0.05),
            &Basis {
                profile: &icy(Edition::E2018),
                supplies,
                standing: &Standing::default(),
                choices: &Choices::default(),
            },
        )
        .unwrap();
        let reason = support::need(&takeoff, Item::StripShingle).reason.clone();
        Language::ALL.map(|language| Words::of(language).say(&reason))
    };
    let cut = say(&Supplies::default());
    assert!(cut[0].contains("more for starter and caps") && cut[1].contains("más para arranque"));
    let bought = say(&Supplies::of(&example_list()));
    assert!(
        !bought[0].contains("more for") && !bought[1].contains("más para"),
        "{bought:?}"
    );
}
