//! Which course for a structure: from the least that truly works upward. Common practice, no source, but where one is named.

mod roof;
mod verdict_house;

use roof::{day, near, not_seen, remedy, seen};
use trade::answer::Answer;
use trade::firm::Edition;
use trade::mark::{Extent, NotSeen, Rung, Seen};
use trade::property::StructureKind;
use trade::stack::Covering;
use trade::verdict::{Course, LicensedTrade, Narrowed, Question, Source, Strength, Verdict, When};
use trade::visit::{Ask, Scope, WetWhen};
use trade::work::{By, WorkOn};
use verdict_house::{House, ON, courses, reason, refusal, rules, step};

#[test]
fn what_is_sound_is_left_until_the_next_look() {
    let house = House::sound();
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::Leave]);
    // Three years by house policy.
    assert_eq!(verdict.steps[0].until, Some(day("2027-05-01")));
    assert_eq!(verdict.steps[0].when, When::Later);
    assert!(verdict.refused.is_empty() && verdict.cautions.is_empty());
    assert!(verdict.unseen.is_empty());
}

#[test]
fn what_ages_is_looked_at_again_sooner() {
    let mut house = House::sound();
    let front = house.roof.front;
    house.again(front, "covering", near(Rung::Ageing), &[]);
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::Leave]);
    assert_eq!(verdict.steps[0].until, Some(day("2025-11-01")));
}

#[test]
fn small_wear_is_upkeep() {
    let mut house = House::sound();
    let front = house.roof.front;
    house.again(front, "gutter", near(Rung::Ageing), &["gutter-clogged"]);
    house.again(front, "covering", near(Rung::Ageing), &["moss-growing"]);
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::Maintain]);
    let remedies: Vec<_> = verdict.steps[0]
        .tasks
        .iter()
        .map(|task| task.remedy.as_ref().unwrap().as_str())
        .collect();
    assert_eq!(remedies, ["clean-gutter", "remove-moss"]);
}

#[test]
fn a_local_cause_is_repaired() {
    let mut house = House::sound();
    let boot = house.fault("pipe-boot", "boot-split");
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::Repair]);
    let step = &verdict.steps[0];
    assert_eq!(step.when, When::ThisSeason);
    assert_eq!(step.tasks.len(), 1);
    assert_eq!(step.tasks[0].part, boot);
    assert_eq!(step.tasks[0].remedy.as_ref().unwrap().as_str(), "new-boot");
    assert!(rules(&step.reasons).contains(&"repair-local"));
    // Sealant alone is refused by judgement; code says nothing of it.
    let sealant = refusal(&verdict, Course::Repair, Narrowed::SealantAlone).unwrap();
    assert!(!sealant.forbidden);
}

#[test]
fn the_remedy_advised_goes_before_the_catalogues() {
    let mut house = House::sound();
    let boot = house.fault("pipe-boot", "boot-split");
    let mark = house.roof.history.marks.last_mut().unwrap();
    mark.advised = vec!["boot-collar".into()];
    let verdict = house.verdict();
    assert_eq!(
        step(&verdict, Course::Repair).tasks[0].remedy,
        Some("boot-collar".into())
    );
    assert_eq!(step(&verdict, Course::Repair).tasks[0].part, boot);
}

#[test]
fn what_is_open_is_made_safe_now_and_put_right_this_season() {
    let mut house = House::sound();
    let front = house.roof.front;
    house.again(front, "covering", near(Rung::Failed), &["shingle-missing"]);
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::MakeSafe, Course::Repair]);
    let (cover, repair) = (&verdict.steps[0], &verdict.steps[1]);
    assert_eq!(cover.when, When::Now);
    // Six weeks by house policy.
    assert_eq!(cover.until, Some(day("2024-06-12")));
    assert_eq!(cover.tasks[0].remedy, Some("temporary-cover".into()));
    assert_eq!(repair.when, When::ThisSeason);
    assert_eq!(repair.tasks[0].remedy, Some("replace-shingles".into()));
}

#[test]
fn water_that_nothing_explains_is_traced_before_anything_is_sold() {
    let mut house = House::sound();
    house.visit_mut().request.leaking = Answer::Yes;
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::MakeSafe, Course::LookFirst]);
    assert!(reason(&verdict, "look-water-unexplained").is_some());
    // Fresh traces in the attic say the same.
    let mut house = House::sound();
    let attic = house.part(None, "attic-deck");
    house
        .roof
        .mark(house.visit, attic, near(Rung::Failing), &["water-dripping"]);
    assert_eq!(house.course(), Course::LookFirst);
    // A split boot explains it.
    let mut house = House::sound();
    house.visit_mut().request.leaking = Answer::Yes;
    house.fault("pipe-boot", "boot-split");
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::MakeSafe, Course::Repair]);
    assert!(reason(&verdict, "limit-water-not-proved").is_some());
}

#[test]
fn water_in_dry_cold_is_no_leak() {
    let mut house = House::sound();
    let request = &mut house.visit_mut().request;
    request.leaking = Answer::Yes;
    request.wet_when = vec![WetWhen::DryCold];
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::Leave]);
    assert!(reason(&verdict, "limit-dry-cold").is_some());
}

#[test]
fn a_covering_that_is_done_comes_off() {
    let mut house = House::sound();
    for slope in [house.roof.front, house.roof.rear] {
        house.again(
            slope,
            "covering",
            near(Rung::Failed),
            &["covering-worn-out"],
        );
    }
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::TearOff]);
    assert_eq!(verdict.steps[0].when, When::ThisSeason);
    assert_eq!(verdict.steps[0].tasks.len(), 2);
    let recover = refusal(&verdict, Course::Recover, Narrowed::Whole).unwrap();
    assert!(
        !recover.forbidden,
        "the firm sells none; code would allow it"
    );
    assert_eq!(recover.reasons[0].source, Source::HousePolicy);
    assert!(refusal(&verdict, Course::Repair, Narrowed::Whole).is_some());
}

#[test]
fn one_slope_may_be_done_alone() {
    let mut house = House::sound();
    let front = house.roof.front;
    let rear = house.roof.rear;
    house.again(
        front,
        "covering",
        near(Rung::Failed),
        &["covering-worn-out"],
    );
    let boot = house
        .roof
        .part_at(house.roof.house, Some(rear), "pipe-boot");
    house
        .roof
        .mark(house.visit, boot, near(Rung::Failing), &["boot-split"]);
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::TearOff, Course::Repair]);
    let parts: Vec<_> = verdict.steps[0]
        .tasks
        .iter()
        .map(|task| task.part)
        .collect();
    assert_eq!(parts, [house.part(Some(front), "covering")]);
    assert_eq!(verdict.steps[0].slopes, [front]);
    assert_eq!(verdict.covered_slopes(), [front]);
    assert_eq!(verdict.steps[1].tasks[0].part, boot);
    assert!(reason(&verdict, "some-slopes-only").is_some());
}

#[test]
fn what_takes_a_new_covering() {
    // Each ground alone, beside a failing flashing that would otherwise be repaired.
    type MakeSo = fn(&mut House);
    let rows: [(&str, MakeSo); 8] = [
        ("deck-wet-broad", |house| {
            let front = house.roof.front;
            house.again(front, "deck", near(Rung::Failed), &["deck-soft-broad"]);
        }),
        ("rebuilt-step", |house| {
            house.fault("earlier-repair", "section-rebuilt-higher");
        }),
        ("brittle", |house| {
            house.answers("covering", Question::Brittle, Answer::Yes);
        }),
        ("too-low", |house| {
            let front = house.roof.front;
            house.set_pitch(front, 1.5);
        }),
        ("layers-no-repair", |house| {
            let front = house.roof.front;
            house.stack(front, &[Covering::AsphaltStrip; 3]);
        }),
        ("must-last", |house| {
            house.visit_mut().request.must_last = Answer::Yes;
            let front = house.roof.front;
            house.again(front, "covering", near(Rung::Ageing), &["granules-lost"]);
        }),
        ("many-places", |house| {
            for defect in ["boot-split", "boot-split", "boot-split"] {
                house.fault("pipe-boot", defect);
            }
        }),
        ("many-places", |house| {
            let part = house.roof.part("fastening");
            let broad = [("nails-high", Extent::Broad)];
            house
                .roof
                .mark_reaching(house.visit, part, near(Rung::Failing), &broad);
        }),
    ];
    for (rule, make_it_so) in rows {
        let mut house = House::sound();
        house.fault("sidewall-flashing", "step-flashing-missing");
        assert_eq!(house.course(), Course::Repair, "before {rule}");
        make_it_so(&mut house);
        let verdict = house.verdict();
        assert_eq!(verdict.main_course(), Some(Course::TearOff), "{rule}");
        let tear_off = step(&verdict, Course::TearOff);
        assert!(
            rules(&tear_off.reasons).contains(&rule),
            "{rule}: {:?}",
            rules(&tear_off.reasons)
        );
        assert!(
            refusal(&verdict, Course::Repair, Narrowed::Whole).is_some()
                || rule == "layers-no-repair"
        );
    }
}

#[test]
fn several_patches_on_one_cause() {
    let mut house = House::sound();
    let front = house.roof.front;
    house.roof.history.visits.clear();
    let first = house.roof.visit("2019-05-01");
    let boot = house
        .roof
        .part_at(house.roof.house, Some(front), "pipe-boot");
    house
        .roof
        .mark(first, boot, near(Rung::Failing), &["boot-split"]);
    house
        .roof
        .work(boot, remedy("sealant"), By::NotUs, "2020-04-01");
    house
        .roof
        .work(boot, remedy("sealant"), By::NotUs, "2022-04-01");
    house.visit = house.roof.visit(ON);
    let again = house.visit;
    for mark in &mut house.roof.history.marks {
        if mark.visit != first {
            mark.visit = again;
        }
    }
    for stack in &mut house.roof.history.stacks {
        stack.visit = again;
    }
    house
        .roof
        .mark(again, boot, near(Rung::Failing), &["boot-split"]);
    let verdict = house.verdict();
    assert_eq!(verdict.main_course(), Some(Course::TearOff));
    let why = reason(&verdict, "patched-often").unwrap();
    assert_eq!(why.source, Source::HousePolicy);
    // A firm that would patch once more repairs it, and says how often it was patched.
    house.books.policy.patch_limit = 3;
    let verdict = house.verdict();
    assert_eq!(verdict.main_course(), Some(Course::Repair));
    assert!(reason(&verdict, "patched-before").is_some());
}

#[test]
fn three_layers_are_made_safe_and_no_more() {
    let mut house = House::sound();
    let front = house.roof.front;
    house.stack(front, &[Covering::AsphaltStrip; 3]);
    house.again(front, "covering", near(Rung::Failed), &["shingle-missing"]);
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::MakeSafe, Course::TearOff]);
    let repair = refusal(&verdict, Course::Repair, Narrowed::BeyondMakingSafe).unwrap();
    assert!(!repair.forbidden, "code does not forbid it");
    assert_eq!(repair.reasons[0].source, Source::HousePolicy);
    // IRC R908.3.1.1 item 3.
    let recover = refusal(&verdict, Course::Recover, Narrowed::Whole).unwrap();
    assert!(recover.forbidden);
}

#[test]
fn two_layers_with_a_local_fault_are_repaired_and_the_owner_hears_of_the_next_covering() {
    let mut house = House::sound();
    for slope in [house.roof.front, house.roof.rear] {
        house.stack(slope, &[Covering::AsphaltStrip; 2]);
    }
    house.fault("pipe-boot", "boot-split");
    let verdict = house.verdict();
    assert_eq!(verdict.main_course(), Some(Course::Repair));
    assert!(reason(&verdict, "two-layers-repair").is_some());
    let next = reason(&verdict, "limit-next-is-tear-off").unwrap();
    let Source::Code(section) = &next.source else {
        panic!("{:?}", next.source);
    };
    assert_eq!(section.section, "R908.3.1.1 item 3");
    // A firm that leaves two layers alone says so as its own policy.
    house.books.policy.no_repair_layers = 2;
    let verdict = house.verdict();
    assert_eq!(verdict.main_course(), Some(Course::TearOff));
}

#[test]
fn a_recover_is_sold_only_where_every_condition_is_known() {
    let done = |house: &mut House| {
        for slope in [house.roof.front, house.roof.rear] {
            house.again(
                slope,
                "covering",
                near(Rung::Failed),
                &["covering-worn-out"],
            );
        }
        house.books.policy.sells_recover = true;
    };
    let mut house = House::sound();
    done(&mut house);
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::Recover]);
    assert!(reason(&verdict, "recover-advised-against").is_some());
    assert!(refusal(&verdict, Course::Recover, Narrowed::OldFlashings).is_some());
    // The attic not seen: whether the deck is wet there is not known.
    let mut house = House::sound();
    done(&mut house);
    let attic = house.part(None, "attic-deck");
    house
        .roof
        .mark(house.visit, attic, not_seen(NotSeen::Locked), &[]);
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::TearOff]);
    assert!(reason(&verdict, "recover-not-known").is_some());
    let look = verdict.next_look.unwrap();
    assert_eq!(look.turns_to, Course::Recover);
    assert_eq!(look.looks.len(), 1);
    assert_eq!(look.looks[0].question, Question::DeckWet);
}

#[test]
fn what_is_seen_only_from_afar_is_never_left() {
    let mut house = House::sound();
    for mark in &mut house.roof.history.marks {
        mark.condition = seen(Rung::Sound, Seen::Afar);
    }
    house.roof.history.stacks.clear();
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::LookFirst]);
    assert!(reason(&verdict, "limit-seen-from-afar").is_some());
    assert!(verdict.next_look.is_some());
    // A covering that is plainly done is plain from there too.
    let front = house.roof.front;
    house.again(
        front,
        "covering",
        seen(Rung::Failed, Seen::Afar),
        &["covering-worn-out"],
    );
    assert_eq!(house.course(), Course::TearOff);
    // A few shingles missing must be looked at, and made safe until then.
    let mut house = House::unseen();
    let part = house.roof.part("covering");
    house.roof.mark(
        house.visit,
        part,
        seen(Rung::Failed, Seen::Afar),
        &["shingle-missing"],
    );
    assert_eq!(
        courses(&house.verdict()),
        [Course::MakeSafe, Course::LookFirst]
    );
}

#[test]
fn where_nothing_was_seen_nothing_is_said() {
    let house = House::unseen();
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::LookFirst]);
    assert!(reason(&verdict, "limit-nothing-seen").is_some());
    let mut house = House::sound();
    for mark in &mut house.roof.history.marks {
        mark.condition = not_seen(NotSeen::Wet);
    }
    house.roof.history.stacks.clear();
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::LookFirst]);
    assert_eq!(verdict.unseen.len(), house.roof.history.parts.len());
}

#[test]
fn structures_are_judged_apart() {
    let mut house = House::sound();
    let garage = house.roof.structure(StructureKind::DetachedGarage);
    let slope = house.roof.slope(garage, trade::property::Side::Front, 'C');
    let covering = house.roof.part_at(garage, Some(slope), "covering");
    house.roof.mark(
        house.visit,
        covering,
        near(Rung::Failed),
        &["covering-worn-out"],
    );
    assert_eq!(house.course(), Course::Leave);
    let verdict = house.verdict_of(garage);
    assert_eq!(verdict.main_course(), Some(Course::TearOff));
    // A garage that was taken down has nothing to be judged.
    for structure in &mut house.roof.history.structures {
        if structure.id == garage {
            structure.gone = Some(day("2024-01-01"));
        }
    }
    assert!(house.verdict_of(garage).steps.is_empty());
}

#[test]
fn masonry_is_the_masons_and_our_flashing_waits_for_him() {
    let mut house = House::sound();
    house.fault("masonry-chimney", "mortar-washed-out");
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::Refer, Course::Leave]);
    assert_eq!(verdict.steps[0].tasks[0].trade, Some(LicensedTrade::Mason));
    house.fault("chimney-flashing", "chimney-flashing-rusted");
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::Refer, Course::Repair]);
    assert!(rules(&verdict.steps[1].reasons).contains(&"waits-for-trade"));
    // A pipe elsewhere waits for nobody.
    let mut house = House::sound();
    house.fault("masonry-chimney", "mortar-washed-out");
    house.fault("pipe-boot", "boot-split");
    let verdict = house.verdict();
    assert!(!rules(&step(&verdict, Course::Repair).reasons).contains(&"waits-for-trade"));
}

#[test]
fn fuel_vents_and_suspect_fibres_stop_the_work_they_touch() {
    let mut house = House::sound();
    house.fault("fuel-vent", "vent-too-low");
    let verdict = house.verdict();
    let refer = step(&verdict, Course::Refer);
    assert_eq!(refer.tasks[0].trade, Some(LicensedTrade::FuelVent));
    assert_eq!(caution(&verdict, "fuel-vents"), Some(Strength::Forbids));

    let mut house = House::sound();
    let front = house.roof.front;
    house.again(
        front,
        "covering",
        near(Rung::Ageing),
        &["suspect-asbestos-covering"],
    );
    house.fault("pipe-boot", "boot-split");
    let verdict = house.verdict();
    let refer = step(&verdict, Course::Refer);
    assert_eq!(refer.tasks[0].trade, Some(LicensedTrade::Asbestos));
    assert_eq!(caution(&verdict, "asbestos"), Some(Strength::Forbids));
    assert!(rules(&step(&verdict, Course::Repair).reasons).contains(&"waits-for-trade"));

    let mut house = House::sound();
    let air = house.part(None, "attic-air");
    house.roof.mark(
        house.visit,
        air,
        near(Rung::Ageing),
        &["suspect-vermiculite"],
    );
    let verdict = house.verdict();
    assert_eq!(caution(&verdict, "vermiculite"), Some(Strength::Forbids));
    assert!(courses(&verdict).contains(&Course::Refer));
}

/// How strongly a caution speaks.
fn caution(verdict: &Verdict, rule: &str) -> Option<Strength> {
    let found = verdict.cautions.iter().find(|caution| caution.rule == rule);
    found.map(|caution| caution.strength)
}

#[test]
fn a_recent_roof_badly_laid_is_the_installers_to_answer_for() {
    let mut house = House::sound();
    let structure = house.roof.house;
    house.roof.work_on(
        WorkOn::Structure(structure),
        remedy("tear-off"),
        By::NotUs,
        "2022-09-01",
        None,
    );
    let fastening = house.fault("fastening", "nails-high");
    let verdict = house.verdict();
    assert_eq!(courses(&verdict), [Course::Refer]);
    assert_eq!(verdict.steps[0].tasks[0].part, fastening);
    assert_eq!(verdict.steps[0].tasks[0].trade, None);
    assert!(reason(&verdict, "installer-answers").is_some());
    assert!(reason(&verdict, "limit-warranty").is_some());
    // Repaired only as asked.
    house.visit_mut().request.asks = vec![Ask {
        kind: "fastening".into(),
        remedy: Some("renail".into()),
    }];
    assert_eq!(house.course(), Course::Repair);
    // Our own work is ours to put right.
    house.visit_mut().request.asks.clear();
    house.roof.history.works[0].by = By::Us;
    let verdict = house.verdict();
    assert_eq!(verdict.main_course(), Some(Course::Repair));
    assert!(reason(&verdict, "we-laid-it").is_some());
    // An old roof is nobody's to answer for.
    house.roof.history.works[0].by = By::NotUs;
    house.roof.history.works[0].when = day("2012-09-01");
    assert_eq!(house.course(), Course::Repair);
}

#[test]
fn a_sale_is_told_of_the_lenders_rule() {
    // HUD Handbook 4000.1, seen in quotations.
    let mut house = House::sound();
    house.visit_mut().request.sale = true;
    assert_eq!(reason(&house.verdict(), "sale-under-two-years"), None);
    let front = house.roof.front;
    house.again(
        front,
        "covering",
        near(Rung::Failed),
        &["covering-worn-out"],
    );
    assert!(reason(&house.verdict(), "sale-under-two-years").is_some());
    house.visit_mut().request.sale = false;
    assert_eq!(reason(&house.verdict(), "sale-under-two-years"), None);
    let mut unseen = House::unseen();
    unseen.visit_mut().request.sale = true;
    assert!(reason(&unseen.verdict(), "sale-not-seen").is_some());
}

#[test]
fn an_earlier_finding_stands_until_the_part_is_seen_again_or_put_right() {
    let mut house = House::sound();
    let front = house.roof.front;
    let boot = house
        .roof
        .part_at(house.roof.house, Some(front), "pipe-boot");
    let mark = house
        .roof
        .mark(house.visit, boot, near(Rung::Failing), &["boot-split"]);
    // The mark was made two years before, on a visit of its own.
    let before = house.roof.visit("2022-05-01");
    let last = house.roof.history.visits.pop().unwrap();
    house.roof.history.visits.insert(0, last);
    let at = roof::at_minute(day("2022-05-01"), 600);
    for known in &mut house.roof.history.marks {
        if known.id == mark {
            known.visit = before;
            known.at = at;
        }
    }
    let verdict = house.verdict();
    assert_eq!(verdict.main_course(), Some(Course::Repair));
    assert_eq!(verdict.unseen, [boot]);
    assert!(reason(&verdict, "limit-earlier-look").is_some());
    // A cure known since: the finding stands no more, and nobody has seen how it is.
    house
        .roof
        .work(boot, remedy("new-boot"), By::NotUs, "2023-05-01");
    let verdict = house.verdict();
    assert_eq!(verdict.main_course(), Some(Course::Leave));
    assert_eq!(verdict.unseen, [boot]);
}

#[test]
fn a_clean_look_lapses() {
    let mut house = House::sound();
    // Looked at whole; and again later, at a boot alone.
    let later = |on: &str, house: &mut House| {
        let visit = house.roof.visit(on);
        house.roof.history.visits.iter_mut().for_each(|known| {
            if known.id == visit {
                known.scope = Scope::RequestOnly;
            }
        });
        let boot = house.roof.part("pipe-boot");
        house.roof.mark(visit, boot, near(Rung::Sound), &[]);
        house.visit = visit;
        house.course()
    };
    assert_eq!(later("2024-08-01", &mut house), Course::Leave);
    assert_eq!(later("2026-08-01", &mut house), Course::LookFirst);
}

#[test]
fn what_was_asked_for_and_does_not_cure_is_refused_with_its_usual_life() {
    let mut house = House::sound();
    house.fault("pipe-boot", "boot-split");
    house.visit_mut().request.asks = vec![Ask {
        kind: "pipe-boot".into(),
        remedy: Some("sealant".into()),
    }];
    let verdict = house.verdict();
    let refused = refusal(&verdict, Course::Repair, Narrowed::SealantAlone).unwrap();
    assert_eq!(refused.reasons[0].rule, "asked-does-not-cure");
}

#[test]
fn the_edition_of_2024_is_to_be_looked_up() {
    let mut house = House::sound();
    for slope in [house.roof.front, house.roof.rear] {
        house.again(
            slope,
            "covering",
            near(Rung::Failed),
            &["covering-worn-out"],
        );
    }
    assert_eq!(reason(&house.verdict(), "check-adopted-text"), None);
    house.books.profile.edition = Edition::E2024;
    assert!(reason(&house.verdict(), "check-adopted-text").is_some());
}
