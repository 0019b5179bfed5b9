//! Laying a new covering over the old one: IRC R908, R907 up to 2012.

mod roof;
mod verdict_house;

use roof::near;
use trade::answer::Answer;
use trade::firm::Edition;
use trade::mark::Rung;
use trade::stack::Covering;
use trade::verdict::{CodeSection, Course, Narrowed, Question, Source, Strength, Verdict};
use verdict_house::{House, reason, refusal, step};

/// A covering that is done, over one sound dry layer, in a firm that sells a re-cover.
fn done() -> House {
    let mut house = House::sound();
    for slope in [house.roof.front, house.roof.rear] {
        house.again(
            slope,
            "covering",
            near(Rung::Failed),
            &["covering-worn-out"],
        );
    }
    house.books.policy.sells_recover = true;
    house
}

fn lay(house: &mut House, coverings: &[Covering]) {
    house.roof.history.stacks.clear();
    for slope in [house.roof.front, house.roof.rear] {
        house.stack(slope, coverings);
    }
}

/// The rule and section that forbid a re-cover.
fn forbidden_by(verdict: &Verdict) -> Option<(&str, &Source)> {
    let refused = refusal(verdict, Course::Recover, Narrowed::Whole)?;
    let first = &refused.reasons[0];
    refused
        .forbidden
        .then_some((first.rule.as_str(), &first.source))
}

fn irc(edition: Edition, section: &str) -> Source {
    Source::Code(CodeSection {
        document: "IRC".to_owned(),
        edition: Some(edition.year()),
        section: section.to_owned(),
    })
}

#[test]
fn one_sound_dry_layer_may_be_covered_in_every_edition() {
    for edition in Edition::ALL {
        let mut house = done();
        house.books.profile.edition = edition;
        house.books.profile.hail = Answer::No;
        let verdict = house.verdict();
        assert_eq!(verdict.main_course(), Some(Course::Recover), "{edition:?}");
        let section = if edition <= Edition::E2012 {
            "R907.3"
        } else {
            "R908.3.1"
        };
        let allowed = reason(&verdict, "recover-allowed").unwrap();
        assert_eq!(allowed.source, irc(edition, section));
        // 2024 changed the section (proposal RB281-22); its text was not seen.
        let look_up = reason(&verdict, "check-adopted-text").is_some();
        assert_eq!(look_up, edition == Edition::E2024);
    }
}

#[test]
fn two_layers_one_wet_one_slate_may_not() {
    // R908.3.1.1 items 1 to 3 (2015 on); R907.3 items 1 to 3 (2006 seen, 2009 and 2012 memory).
    type Spoil = fn(&mut House);
    let rows: [(&str, &str, Spoil); 4] = [
        ("recover-two-layers", "item 3", |house| {
            lay(house, &[Covering::AsphaltLaminated, Covering::AsphaltStrip]);
        }),
        ("recover-wet-base", "item 1", |house| {
            let front = house.roof.front;
            house.again(front, "deck", near(Rung::Failing), &["deck-soft-spot"]);
        }),
        ("recover-barred-base", "item 2", |house| {
            lay(house, &[Covering::Slate]);
        }),
        ("recover-barred-base", "item 2", |house| {
            lay(house, &[Covering::AsbestosCement]);
        }),
    ];
    for edition in Edition::ALL {
        for (rule, item, spoil) in rows {
            let mut house = done();
            house.books.profile.edition = edition;
            spoil(&mut house);
            let verdict = house.verdict();
            let of = if edition <= Edition::E2012 {
                "R907.3"
            } else {
                "R908.3.1.1"
            };
            assert_eq!(
                forbidden_by(&verdict),
                Some((rule, &irc(edition, &format!("{of} {item}")))),
                "{edition:?}"
            );
            assert_eq!(verdict.main_course(), Some(Course::TearOff));
        }
    }
}

#[test]
fn shake_bars_it_up_to_2012() {
    for edition in Edition::ALL {
        let mut house = done();
        house.books.profile.edition = edition;
        lay(&mut house, &[Covering::WoodShake]);
        let barred = forbidden_by(&house.verdict()).is_some();
        assert_eq!(barred, edition <= Edition::E2012, "{edition:?}");
    }
}

#[test]
fn hail_bars_it_in_2006_and_2009() {
    for edition in Edition::ALL {
        let mut house = done();
        house.books.profile.edition = edition;
        house.books.profile.hail = Answer::Yes;
        let verdict = house.verdict();
        if edition <= Edition::E2009 {
            let source = irc(edition, "R907.3 item 4");
            assert_eq!(forbidden_by(&verdict), Some(("recover-hail", &source)));
        } else {
            assert_eq!(forbidden_by(&verdict), None);
        }
        // Not known whether hail: not sold, and not called forbidden.
        house.books.profile.hail = Answer::Unknown;
        let verdict = house.verdict();
        assert_eq!(forbidden_by(&verdict), None);
        let sold = verdict.main_course() == Some(Course::Recover);
        assert_eq!(sold, edition > Edition::E2009);
    }
}

#[test]
fn local_amendments_go_before_the_model_code() {
    let amendment = Source::LocalAmendment {
        place: "Tarn Hollow".to_owned(),
    };
    let mut house = done();
    house.books.profile.place = "Tarn Hollow".to_owned();
    house.books.profile.layers_allowed = Some(1);
    assert_eq!(
        forbidden_by(&house.verdict()),
        Some(("recover-no-second-layer", &amendment))
    );
    house.books.profile.layers_allowed = Some(2);
    assert_eq!(forbidden_by(&house.verdict()), None);
    lay(&mut house, &[Covering::AsphaltStrip; 2]);
    assert_eq!(
        forbidden_by(&house.verdict()),
        Some(("recover-layers-here", &amendment))
    );
    house.books.profile.layers_allowed = Some(3);
    assert_eq!(house.course(), Course::Recover);
    lay(&mut house, &[Covering::AsphaltStrip; 3]);
    assert_eq!(
        forbidden_by(&house.verdict()),
        Some(("recover-layers-here", &amendment))
    );
}

#[test]
fn what_the_bar_on_layers_does_not_reach_is_said_from_2021() {
    // R908.3.1 (2021): complete systems, metal or tile over shake, coatings.
    for edition in Edition::ALL {
        let mut house = done();
        house.books.profile.edition = edition;
        lay(&mut house, &[Covering::AsphaltStrip; 2]);
        let told = reason(&house.verdict(), "recover-other-ways").is_some();
        assert_eq!(told, edition >= Edition::E2021, "{edition:?}");
    }
}

#[test]
fn judgement_holds_what_no_rule_forbids() {
    let rows = [
        ("covering", Question::NotFlat, "recover-not-flat"),
        ("layers", Question::FlashingStays, "recover-flashing-stays"),
        ("attic-frame", Question::FrameWeak, "recover-frame-weak"),
        ("layers", Question::MakerRefuses, "recover-maker-refuses"),
    ];
    for (kind, question, rule) in rows {
        let mut house = done();
        house.answers(kind, question, Answer::Yes);
        let verdict = house.verdict();
        assert_eq!(verdict.main_course(), Some(Course::TearOff), "{question:?}");
        let refused = refusal(&verdict, Course::Recover, Narrowed::Whole).unwrap();
        assert!(!refused.forbidden);
        assert_eq!(refused.reasons[0].rule, rule);
        assert_eq!(refused.reasons[0].source, Source::Practice);
        // Not answered, it is not sold either, and the question is named.
        let mut house = done();
        house.answers(kind, question, Answer::Unknown);
        let verdict = house.verdict();
        assert_eq!(verdict.main_course(), Some(Course::TearOff), "{question:?}");
        assert!(reason(&verdict, "recover-not-known").is_some());
        assert!(verdict.unknown.contains(&question));
    }
}

#[test]
fn spoilt_flashings_are_not_kept() {
    // R908.5, R907.5 in 2006 (seen as read by a building official).
    let mut house = done();
    let verdict = house.verdict();
    let kept = refusal(&verdict, Course::Recover, Narrowed::OldFlashings).unwrap();
    assert!(!kept.forbidden, "sound flashings may be kept by the code");
    house.fault("chimney-flashing", "chimney-flashing-rusted");
    for (edition, section) in [(Edition::E2006, "R907.5"), (Edition::E2018, "R908.5")] {
        house.books.profile.edition = edition;
        house.books.profile.hail = Answer::No;
        let verdict = house.verdict();
        let kept = refusal(&verdict, Course::Recover, Narrowed::OldFlashings).unwrap();
        assert!(kept.forbidden);
        assert_eq!(kept.reasons[0].source, irc(edition, section));
    }
}

#[test]
fn a_light_second_layer_needs_no_new_proof_of_the_frame() {
    // IEBC 706.2 exception 2.
    let verdict = done().verdict();
    let excepted = reason(&verdict, "recover-frame-excepted").unwrap();
    let Source::Code(section) = &excepted.source else {
        panic!("{:?}", excepted.source);
    };
    assert_eq!(
        (section.document.as_str(), section.section.as_str()),
        ("IEBC", "706.2 exception 2")
    );
}

#[test]
fn a_tear_off_takes_all_layers_off() {
    let mut house = done();
    lay(&mut house, &[Covering::AsphaltStrip; 2]);
    let verdict = house.verdict();
    let step = step(&verdict, Course::TearOff);
    let all_off = step
        .reasons
        .iter()
        .find(|reason| reason.rule == "all-layers-off")
        .unwrap();
    assert_eq!(all_off.source, irc(Edition::E2018, "R908.3"));
    assert_eq!(all_off.strength, Strength::Requires);
}

#[test]
fn code_bars_covering_over_layers_never_repairing_them() {
    // Computed from R908.3.1.1: it speaks of re-covering alone.
    let mut house = House::sound();
    lay(&mut house, &[Covering::AsphaltStrip; 3]);
    house.fault("pipe-boot", "boot-split");
    let verdict = house.verdict();
    for refused in verdict
        .refused
        .iter()
        .filter(|one| one.course == Course::Repair)
    {
        assert!(!refused.forbidden);
        for reason in &refused.reasons {
            assert!(!matches!(reason.source, Source::Code(_)), "{}", reason.rule);
        }
    }
}
