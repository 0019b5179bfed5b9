//! Offers: what is offered and what is not, and how a price is made.

#![cfg(test)]

mod support;

use jiff::civil::date;
use price::{Asking, Choices, OfferError, Patch, Supplies, Wanted, offers};
use rust_decimal::Decimal;
use support::{
    add_part, asking, boot, covering, example_list, gable, history, id, made, mild, step, task,
    verdict,
};
use trade::catalogue::RemedyKey;
use trade::mark::Extent;
use trade::offer::{CostKind, Lasts, LeftOut, Patching, Unpriced};
use trade::price_list::{Gain, RoundTo, Share};
use trade::takeoff::{ByRemedy, Item, Spread, Unit};
use trade::units::{Length, Money, Pitch};
use trade::verdict::{Course, LicensedTrade, Narrowed, Reason, Refused, Source, Strength, When};
use trade::words::{Language, Said, Words};
use trade::worksheet::{Between, Count};

fn decimal(text: &str) -> Decimal {
    text.parse().expect("a decimal")
}

fn money(text: &str) -> Money {
    Money(decimal(text))
}

fn refused(course: Course, narrowed: Narrowed, forbidden: bool) -> Refused {
    Refused {
        course,
        narrowed,
        forbidden,
        reasons: vec![Reason {
            rule: "rule".into(),
            says: Said::verbatim("Because of that."),
            source: Source::Practice,
            strength: if forbidden {
                Strength::Forbids
            } else {
                Strength::Advises
            },
            stands_on: Vec::new(),
        }],
    }
}

/// Worked by hand from the example list. One boot at 6:12, walkable: 1.2 h at 40.00 is 48.00; small material 4.00; a boot for pipes up to 4 in
/// 13.00; two shingles open a bundle, 37.00. Subtotal 102.00, overhead 12 % 12.24, cost 114.24; at a margin of 30 % 163.20; minimum 300.00; tax 6.5 %
/// on 54.00 of material 3.51.
#[test]
fn a_boot_by_hand() {
    let (history, part) = boot();
    let verdict = verdict(vec![step(
        When::ThisSeason,
        Course::Repair,
        vec![task(part, Some("new-boot"))],
    )]);
    let list = example_list();
    let offer = made(&asking(&verdict, &history, &list));
    assert_eq!(offer.valid_until, date(2026, 7, 2));
    let course = &offer.courses[0];
    assert!(course.unpriced.is_empty(), "{:?}", course.unpriced);
    let sums = course.sums.as_ref().expect("sums");
    let likely = |amount: trade::offer::MoneySpread| {
        assert!(amount.is_exact());
        amount.likely
    };
    assert_eq!(likely(sums.subtotal), money("102.00"));
    assert_eq!(likely(sums.overhead), money("12.24"));
    assert_eq!(likely(sums.cost), money("114.24"));
    assert_eq!(likely(sums.gain), money("48.96"));
    assert_eq!(likely(sums.to_minimum), money("136.80"));
    assert_eq!(likely(sums.before_tax), money("300.00"));
    assert_eq!(likely(sums.tax), money("3.51"));
    assert_eq!(likely(sums.price), money("303.51"));
    let said: Vec<String> = course
        .says_beside("USD")
        .iter()
        .map(|said| Words::of(Language::English).say(said))
        .collect();
    assert!(
        said[0].contains("smallest charge of 300.00 USD"),
        "{said:?}"
    );
}

/// Cost 65 at a margin of 35 % is 100; at a markup of 35 % 87.75: the difference between the two, computed.
#[test]
fn margin_and_markup_are_not_the_same() {
    let (history, part) = boot();
    let verdict = verdict(vec![step(
        When::ThisSeason,
        Course::Repair,
        vec![task(part, Some("new-boot"))],
    )]);
    let mut list = example_list();
    (list.minimum, list.overhead, list.tax) = (None, Share::default(), None);
    list.rounding.to = RoundTo::Cent;
    list.uses.clear();
    list.remedies
        .retain(|row| row.remedy.as_str() != "new-boot" || row.band.is_none());
    for row in &mut list.remedies {
        (row.sundries, row.hours) = (None, decimal("1.625"));
    }
    for (gain, price) in [
        (Gain::Margin(Share(decimal("0.35"))), "100.31"),
        (Gain::Markup(Share(decimal("0.35"))), "88.02"),
    ] {
        list.gain = gain;
        let offer = made(&asking(&verdict, &history, &list));
        // 1.63 hours, to the hundredth, at 40.00.
        let sums = offer.courses[0].sums.clone().expect("sums");
        assert_eq!(sums.cost.likely, money("65.20"));
        assert_eq!(sums.price.likely, money(price));
    }
}

#[test]
fn a_row_that_is_missing_is_named_and_nothing_is_guessed() {
    let (history, part) = boot();
    let verdict = verdict(vec![step(
        When::ThisSeason,
        Course::Repair,
        vec![task(part, Some("new-boot"))],
    )]);
    let mut list = example_list();
    list.remedies
        .retain(|row| row.remedy.as_str() != "new-boot");
    let course = made(&asking(&verdict, &history, &list)).courses.remove(0);
    assert_eq!(course.sums, None);
    let pitch = Some(Pitch::rise(6));
    let remedy = RemedyKey::from("new-boot");
    assert_eq!(course.unpriced, [Unpriced::NoRemedy { remedy, pitch }]);
    let named = |_| Said::verbatim("the boot");
    let said = Words::of(Language::English).say(&course.unpriced[0].says(&named));
    assert_eq!(
        said,
        "Not priced yet: the price list has no row at 6:12 for: New pipe boot."
    );
    let mut list = example_list();
    list.materials.retain(|row| row.item != Item::PipeBoot);
    let course = made(&asking(&verdict, &history, &list)).courses.remove(0);
    let size = Some(Length::inches(3));
    assert_eq!(
        course.unpriced,
        [Unpriced::NoMaterial {
            item: Item::PipeBoot,
            size
        }]
    );
    assert_eq!(course.price(), None);
}

#[test]
fn places_are_counted_and_many_must_be() {
    let mut history = history(Pitch::rise(6));
    let list = example_list();
    let several = add_part(
        &mut history,
        1,
        "covering",
        Some(("shingle-missing", Extent::Several)),
        Vec::new(),
    );
    let broad = add_part(
        &mut history,
        2,
        "covering",
        Some(("shingle-missing", Extent::Broad)),
        Vec::new(),
    );
    let tasks = vec![
        task(several, Some("replace-shingles")),
        task(broad, Some("replace-shingles")),
    ];
    let verdict = verdict(vec![step(When::ThisSeason, Course::Repair, tasks)]);
    let asked = asking(&verdict, &history, &list);
    let course = made(&asked).courses.remove(0);
    let remedy = RemedyKey::from("replace-shingles");
    assert_eq!(
        course.unpriced,
        [Unpriced::NotCounted {
            part: broad,
            remedy: remedy.clone(),
            unit: Unit::Place
        }]
    );
    let counts = [Count {
        part: broad,
        remedy,
        amount: Spread::exactly(6.0),
    }];
    let course = made(&Asking {
        counts: &counts,
        ..asked
    })
    .courses
    .remove(0);
    assert!(course.sums.is_some());
    // Two to three places and six, an hour each.
    assert!((course.hours.least - 8.0).abs() < 1e-9 && (course.hours.most - 9.0).abs() < 1e-9);
}

#[test]
fn what_a_rule_forbids_is_never_offered() {
    let (history, part) = boot();
    let list = example_list();
    let mut judged = verdict(vec![step(
        When::ThisSeason,
        Course::Repair,
        vec![task(part, Some("new-boot"))],
    )]);
    judged
        .refused
        .push(refused(Course::Recover, Narrowed::Whole, true));
    let wanted = [Wanted {
        course: Course::Recover,
        narrowed: Narrowed::Whole,
        because: "The owner insists.".into(),
        when: When::Later,
        tasks: Vec::new(),
    }];
    let asked = asking(&judged, &history, &list);
    let with = Asking {
        wanted: &wanted,
        ..asked
    };
    let error = offers(id(77), date(2026, 6, 2), &with).expect_err("forbidden");
    assert!(matches!(
        error,
        OfferError::Forbidden {
            course: Course::Recover,
            ..
        }
    ));
    let said = Words::of(Language::English).say(&error.says());
    assert!(said.contains("Because of that."), "{said}");
    assert!(
        made(&asked)
            .courses
            .iter()
            .all(|course| course.course != Course::Recover)
    );
    // Not even as a step, should a verdict contradict itself.
    let mut contrary = judged.clone();
    contrary
        .steps
        .push(step(When::Later, Course::Recover, Vec::new()));
    let asked = asking(&contrary, &history, &list);
    assert!(matches!(
        offers(id(77), date(2026, 6, 2), &asked),
        Err(OfferError::Forbidden { .. })
    ));
}

#[test]
fn what_judgement_refuses_is_offered_with_a_recorded_reason_only() {
    let (history, part) = boot();
    let list = example_list();
    let mut judged = verdict(vec![step(
        When::ThisSeason,
        Course::Repair,
        vec![task(part, Some("new-boot"))],
    )]);
    judged
        .refused
        .push(refused(Course::Repair, Narrowed::SealantAlone, false));
    let wanted = |because: &str, narrowed| {
        [Wanted {
            course: Course::Repair,
            narrowed,
            because: because.into(),
            when: When::Now,
            tasks: vec![task(part, Some("sealant"))],
        }]
    };
    let asked = asking(&judged, &history, &list);
    let offer = |wanted: &[Wanted]| offers(id(77), date(2026, 6, 2), &Asking { wanted, ..asked });
    assert_eq!(
        offer(&wanted("  ", Narrowed::SealantAlone)),
        Err(OfferError::NoReason(Course::Repair))
    );
    assert_eq!(
        offer(&wanted("x", Narrowed::Whole)),
        Err(OfferError::NotRefused(Course::Repair))
    );
    let offered =
        offer(&wanted("The house is sold in May.", Narrowed::SealantAlone)).expect("an offer");
    // In order of time, never side by side.
    let order: Vec<_> = offered.courses.iter().map(|course| course.when).collect();
    assert_eq!(order, [When::Now, When::ThisSeason]);
    let course = &offered.courses[0];
    let nevertheless = course.nevertheless.as_ref().expect("a reason");
    assert_eq!(nevertheless.because, "The house is sold in May.");
    assert_eq!(nevertheless.against.len(), 1);
    // Sealant buys time: the boot stays unsolved until the repair.
    assert_eq!(course.unsolved.len(), 1);
    assert_eq!(course.unsolved[0].by, Some(Course::Repair));
    assert!(offered.courses[1].unsolved.is_empty());
    let said = Words::of(Language::English).say(&course.says_beside("USD")[0]);
    assert!(said.contains("The house is sold in May."), "{said}");
}

#[test]
fn another_trade_and_what_was_not_seen_are_left_out() {
    let (mut history, part) = boot();
    let chimney = add_part(&mut history, 2, "masonry-chimney", None, Vec::new());
    let unseen = add_part(&mut history, 3, "gutter", None, Vec::new());
    let mut mason = task(chimney, Some("repoint"));
    mason.trade = Some(LicensedTrade::Mason);
    let mut judged = verdict(vec![
        step(When::ThisSeason, Course::Refer, vec![mason.clone()]),
        step(
            When::ThisSeason,
            Course::Repair,
            vec![task(part, Some("new-boot"))],
        ),
    ]);
    judged.unseen.push(unseen);
    let list = example_list();
    let offer = made(&asking(&judged, &history, &list));
    let (refer, repair) = (&offer.courses[0], &offer.courses[1]);
    assert_eq!((refer.price(), refer.unpriced.len()), (None, 0));
    assert_eq!(refer.leaves_out, [LeftOut::OtherTrade { task: mason }]);
    assert!(refer.includes.is_empty());
    assert_eq!(repair.leaves_out, [LeftOut::NotSeen { part: unseen }]);
    assert_eq!(repair.unsolved.len(), 1);
    assert_eq!(
        (repair.unsolved[0].part, repair.unsolved[0].by),
        (chimney, Some(Course::Refer))
    );
}

#[test]
fn a_covering_is_priced_from_what_was_counted() {
    let (history, part) = boot();
    let (takeoff, down) = covering(40.0, 28.0, Pitch::rise(6), 0.02);
    let judged = verdict(vec![step(
        When::ThisSeason,
        Course::TearOff,
        vec![task(part, None)],
    )]);
    let list = example_list();
    let patch = Patch {
        part,
        remedy: RemedyKey::from("sealant"),
        holds: None,
    };
    let asked = Asking {
        takeoff: Some(&takeoff),
        tear_off: Some(&down),
        patch: Some(&patch),
        ..asking(&judged, &history, &list)
    };
    let course = made(&asked).courses.remove(0);
    assert!(course.unpriced.is_empty(), "{:?}", course.unpriced);
    let sums = course.sums.as_ref().expect("sums");
    assert_eq!(sums.sheets.least, money("90.00"));
    assert_eq!(sums.sheets.most, money("360.00"));
    assert!(sums.price.least < sums.price.likely && sums.price.likely < sums.price.most);
    assert!(course.leaves_out.contains(&LeftOut::MoreSheets {
        included: 4,
        each: money("90.00")
    }));
    let yearly = course.yearly.as_ref().expect("a year's cost");
    // P·i / (1 − (1 + i)^−n): 5 % over 20 years is 0.0802426 (computed; tables of compound interest have 0.0802).
    let wanted = list
        .rounding
        .cents(sums.price.likely.0 * decimal("0.0802425872"));
    assert!((yearly.cost.likely.0 - wanted.0).abs() <= decimal("0.01"));
    let Some(Patching::Again(again)) = &course.patching else {
        panic!("{:?}", course.patching)
    };
    assert_eq!(again.years, 20);
    assert!(again.times.0 <= again.times.1 && again.worth_now.likely < again.sum.likely);
    let without = Asking {
        takeoff: None,
        tear_off: None,
        ..asked
    };
    let course = made(&without).courses.remove(0);
    assert_eq!(course.unpriced, [Unpriced::NoTakeoff, Unpriced::NoTearOff]);
    assert_eq!(course.price(), None);
}

#[test]
fn flashing_that_is_not_on_the_plan_is_priced_whole() {
    let mut history = history(Pitch::rise(6));
    let dormer = add_part(&mut history, 1, "sidewall-flashing", None, Vec::new());
    let vent = add_part(&mut history, 2, "ridge-vent", None, Vec::new());
    let chimney = add_part(&mut history, 3, "chimney-flashing", None, Vec::new());
    let gutter = add_part(&mut history, 4, "gutter", None, Vec::new());
    let standing = price::Standing::of(&history, support::structure());
    let plan = gable(40.0, 28.0, Pitch::rise(6), Length::ZERO);
    let list = example_list();
    let (profile, supplies, choices) = (mild(), Supplies::of(&list), Choices::default());
    let basis = price::Basis {
        profile: &profile,
        supplies: &supplies,
        standing: &standing,
        choices: &choices,
    };
    let laid = support::laid(&plan, trade::laid::Pieces::strip(), 0.0);
    let takeoff = price::takeoff(&plan, &laid, &basis).expect("a takeoff");
    let along: Vec<_> = takeoff
        .by_remedy
        .iter()
        .map(|along| (along.part, along.remedy.as_str()))
        .collect();
    assert_eq!(
        along,
        [
            (dormer, "new-step-flashing"),
            (vent, "new-ridge-vent"),
            (chimney, "new-chimney-flashing")
        ]
    );
    assert!(takeoff.by_remedy.iter().all(|along| along.part != gutter));
    assert!((takeoff.by_remedy[1].feet.expect("feet").likely - 40.0).abs() < 1e-6);
    let judged = verdict(vec![step(When::ThisSeason, Course::Recover, Vec::new())]);
    let asked = Asking {
        takeoff: Some(&takeoff),
        ..asking(&judged, &history, &list)
    };
    let course = made(&asked).courses.remove(0);
    assert!(course.unpriced.is_empty(), "{:?}", course.unpriced);
    // 40 ft of ridge vent at 0.15 h.
    assert!(course.lines.iter().any(|line| {
        line.kind == CostKind::Labour
            && line.what.key == "remedy-new-ridge-vent"
            && (line.quantity.likely - 6.0).abs() < 1e-9
    }));
}

/// A re-cover sees no deck: nothing that lies on it is ordered, laid or priced (common practice).
#[test]
fn a_recover_takes_nothing_that_lies_on_the_deck() {
    let (history, _) = boot();
    let (takeoff, _) = covering(40.0, 28.0, Pitch::rise(6), 0.0);
    let judged = verdict(vec![step(When::Later, Course::Recover, Vec::new())]);
    let list = example_list();
    let asked = Asking {
        takeoff: Some(&takeoff),
        ..asking(&judged, &history, &list)
    };
    let course = made(&asked).courses.remove(0);
    assert!(course.unpriced.is_empty(), "{:?}", course.unpriced);
    let on_deck = [Item::Underlayment, Item::IceBarrier, Item::DeckSheet];
    for item in on_deck {
        assert!(takeoff.of(item).next().is_some(), "{item:?}");
        assert!(course.needs.iter().all(|need| need.item != item));
    }
    let works = [
        "task-lay-underlayment",
        "task-lay-ice-barrier",
        "task-tear-off",
    ];
    let what = |key: &str| {
        course
            .lines
            .iter()
            .any(|line| format!("{:?}", line.what).contains(key))
    };
    assert!(what("task-lay-shingles") && !works.into_iter().any(what));
    assert_eq!(
        course.sums.expect("sums").sheets,
        trade::offer::MoneySpread::ZERO
    );
    assert_eq!(course.tear_off, None);
}

/// A repair has a cost a year only by his own judgement of how long it lasts, and says that it is his.
#[test]
fn a_repair_costs_so_much_a_year_once_he_says_how_long_it_lasts() {
    let (history, part) = boot();
    let verdict = verdict(vec![step(
        When::ThisSeason,
        Course::Repair,
        vec![task(part, Some("new-boot"))],
    )]);
    let list = example_list();
    let asked = asking(&verdict, &history, &list);
    assert_eq!(made(&asked).courses[0].yearly, None);
    let lasts = Lasts {
        years: Between { least: 5, most: 8 }.spread(),
        source: String::new(),
    };
    let offer = made(&Asking {
        repair_lasts: Some(&lasts),
        ..asked
    });
    let yearly = offer.courses[0].yearly.clone().expect("a cost a year");
    assert_eq!(
        (yearly.lasts.years.least, yearly.lasts.years.most),
        (5.0, 8.0)
    );
    let price = offer.courses[0].price().expect("a price");
    assert!(
        yearly.cost.most < price.most && yearly.cost.least > Money(price.least.0 / decimal("8"))
    );
    let says = Words::of(Language::English).say(&yearly.says("USD"));
    assert!(
        says.starts_with("It should last 5 to 8 years here, as we judge it"),
        "{says}"
    );
}

/// A part that is renewed along with a covering and whose length is not on the plan is priced by what he counted.
#[test]
fn what_comes_along_is_priced_by_his_count() {
    let mut history = history(Pitch::rise(6));
    let valley = add_part(&mut history, 1, "open-valley", None, Vec::new());
    let (mut takeoff, tear_off) = covering(40.0, 30.0, Pitch::rise(6), 0.0);
    let remedy = RemedyKey::from("new-valley");
    takeoff.by_remedy.push(ByRemedy {
        part: valley,
        remedy: remedy.clone(),
        feet: None,
    });
    let verdict = verdict(vec![step(When::ThisSeason, Course::TearOff, Vec::new())]);
    let list = example_list();
    let asked = Asking {
        takeoff: Some(&takeoff),
        tear_off: Some(&tear_off),
        ..asking(&verdict, &history, &list)
    };
    let missing = Unpriced::NotCounted {
        part: valley,
        remedy: remedy.clone(),
        unit: Unit::Foot,
    };
    assert_eq!(made(&asked).courses[0].unpriced, [missing]);
    let counts = [Count {
        part: valley,
        remedy,
        amount: Spread::exactly(14.0),
    }];
    let course = made(&Asking {
        counts: &counts,
        ..asked
    })
    .courses
    .remove(0);
    assert_eq!(course.unpriced, []);
    assert!(course.sums.is_some());
}
