//! What forbids climbing, and the cautions beside a verdict.

#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod roof;
mod verdict_house;

use judge::safety::stops;
use roof::near;
use trade::answer::Answer;
use trade::mark::Rung;
use trade::verdict::{Question, Source, Strength};
use trade::visit::{SafetyAnswer, SafetyCheck, Sky};
use verdict_house::{House, rules, said};

fn stopped(make_it_so: impl FnOnce(&mut House)) -> Vec<trade::verdict::Reason> {
    let mut house = House::sound();
    make_it_so(&mut house);
    let visit = house.roof.history.visit(house.visit).unwrap().clone();
    let stops = stops(&visit, &house.books.rules());
    for stop in &stops {
        said(&stop.says);
    }
    stops
}

#[test]
fn nothing_recorded_stops_nobody() {
    assert!(stopped(|_| {}).is_empty());
}

#[test]
fn each_check_that_fails_stops_the_climb() {
    let rows = [
        (SafetyCheck::LadderStands, "stop-ladder"),
        (SafetyCheck::LinesClear, "stop-lines"),
        (SafetyCheck::WeatherHolds, "stop-weather"),
        (SafetyCheck::SurfaceDry, "stop-wet"),
        (SafetyCheck::PitchSafe, "stop-steep"),
        (SafetyCheck::DeckBears, "stop-deck"),
        (SafetyCheck::NoSuspectFibres, "stop-fibres"),
    ];
    for (check, rule) in rows {
        let answered = |holds: Answer| {
            stopped(|house| {
                house.visit_mut().safety = vec![SafetyAnswer { check, holds }];
            })
        };
        let stops = answered(Answer::No);
        assert_eq!(rules(&stops), [rule]);
        assert_eq!(stops[0].strength, Strength::Forbids);
        assert!(answered(Answer::Yes).is_empty());
        assert!(answered(Answer::Unknown).is_empty());
    }
}

#[test]
fn the_weather_as_recorded_stops_too() {
    let rows = [
        (Sky::Thunder, "stop-thunder"),
        (Sky::Wet, "stop-wet"),
        (Sky::Frozen, "stop-frozen"),
    ];
    for (sky, rule) in rows {
        let stops = stopped(|house| house.visit_mut().weather.sky = sky);
        assert_eq!(rules(&stops), [rule]);
    }
    assert_eq!(
        rules(&stopped(|house| house.visit_mut().weather.windy = true)),
        ["stop-wind"]
    );
    // Thirty minutes after the last thunder: OSHA/NOAA FS-3863.
    let thunder = stopped(|house| house.visit_mut().weather.sky = Sky::Thunder);
    assert!(said(&thunder[0].says).contains("30 minutes"));
}

#[test]
fn the_last_answer_counts() {
    let stops = stopped(|house| {
        house.visit_mut().safety = [Answer::No, Answer::Yes]
            .map(|holds| SafetyAnswer {
                check: SafetyCheck::LadderStands,
                holds,
            })
            .to_vec();
    });
    assert!(stops.is_empty());
}

#[test]
fn too_cold_or_too_hot_to_lift_a_tab() {
    // House policy: 5 to 32 °C.
    for (celsius, told) in [(4, true), (5, false), (32, false), (33, true)] {
        let stops = stopped(|house| house.visit_mut().weather.celsius = Some(celsius));
        assert_eq!(!stops.is_empty(), told, "{celsius}");
        assert!(stops.iter().all(|stop| stop.strength == Strength::Advises));
    }
}

#[test]
fn no_rule_on_fall_protection_is_held_against_an_inspection() {
    // 29 CFR 1926.500(a)(1): inspection before work starts or after it is done is outside the subpart.
    for check in SafetyCheck::ALL {
        let stops = stopped(|house| {
            house.visit_mut().safety = vec![SafetyAnswer {
                check,
                holds: Answer::No,
            }];
        });
        for stop in stops {
            if let Source::Code(section) = stop.source {
                assert!(
                    !section.section.starts_with("1926.5"),
                    "{}",
                    section.section
                );
            }
        }
    }
}

#[test]
fn the_work_itself_is_tied_off_on_a_steep_roof() {
    // 29 CFR 1926.501(b)(13); steep is over 4:12 (1926.500(b)).
    for (pitch, told) in [(4.0, false), (4.1, true)] {
        let mut house = House::sound();
        for slope in [house.roof.front, house.roof.rear] {
            house.set_pitch(slope, pitch);
        }
        assert!(
            !cautions(&house).contains(&"tie-off".to_owned()),
            "nobody works on a sound roof"
        );
        house.fault("pipe-boot", "boot-split");
        assert_eq!(cautions(&house).contains(&"tie-off".to_owned()), told);
    }
}

fn cautions(house: &House) -> Vec<String> {
    let verdict = house.verdict();
    verdict
        .cautions
        .iter()
        .map(|caution| caution.rule.clone())
        .collect()
}

#[test]
fn old_paint_may_hold_lead() {
    // 40 CFR 745.83: before 1978.
    for (built, told) in [(Some(1977), true), (Some(1978), false), (None, false)] {
        let mut house = House::sound();
        house.roof.history.property.built = built;
        assert!(!cautions(&house).contains(&"lead-paint".to_owned()));
        house.fault("fascia", "fascia-rotten");
        assert_eq!(
            cautions(&house).contains(&"lead-paint".to_owned()),
            told,
            "{built:?}"
        );
    }
}

#[test]
fn what_else_must_be_said() {
    type Make = fn(&mut House);
    let rows: [(&str, Make); 5] = [
        ("keep-clear", |house| {
            house.fault("gutter", "gutter-hanging");
        }),
        ("soft-underfoot", |house| {
            let front = house.roof.front;
            house.again(front, "deck", near(Rung::Failing), &["deck-soft-spot"]);
        }),
        ("power-line", |house| {
            house.visit_mut().safety = vec![SafetyAnswer {
                check: SafetyCheck::LinesClear,
                holds: Answer::No,
            }];
        }),
        ("tabs-not-lifted", |house| {
            house.answers("covering", Question::Brittle, Answer::Yes);
        }),
        // A flue near a new covering, though nothing is wrong with it.
        ("fuel-vents", |house| {
            let front = house.roof.front;
            house.look_at(Some(front), "fuel-vent", near(Rung::Sound), &[]);
            house.again(
                front,
                "covering",
                near(Rung::Failed),
                &["covering-worn-out"],
            );
        }),
    ];
    for (rule, make_it_so) in rows {
        let mut house = House::sound();
        assert!(!cautions(&house).contains(&rule.to_owned()));
        make_it_so(&mut house);
        assert!(
            cautions(&house).contains(&rule.to_owned()),
            "{rule}: {:?}",
            cautions(&house)
        );
    }
}
