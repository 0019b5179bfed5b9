//! Walk: one tall ladder climbed from the bottom up; the present stop lies under the thumb.

use crate::action::Action;
use crate::block::{Button, Choice, FieldKind, Form, Onto, Shutter};
use crate::filling::Filling;
use crate::form::FormOf;
use crate::name;
use crate::place::Place;
use crate::screens::Context;
use acts::walk::{self as plan, Planned, PlannedStop, Spot};
use acts::{ActError, visit};
use serde::Serialize;
use trade::catalogue::{Catalogue, StopKey};
use trade::history::History;
use trade::ids::{StructureId, VisitId};
use trade::ladder::Ladder;
use trade::mark::NotSeen;
use trade::property::Side;
use trade::thread::Thread;
use trade::visit::Visit;
use trade::words::Said;

/// A stop on the ladder.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StopRow {
    /// Its name.
    pub name: String,
    /// How far it is answered.
    pub says: String,
    /// Whether all there is answered: a solid rung.
    pub done: bool,
    /// Whether he stands here.
    pub here: bool,
    /// Going there.
    pub go: Action,
}

/// A part under the thumb.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SpotRow {
    /// Its ladder.
    pub ladder: Ladder,
    /// Its name.
    pub name: String,
    /// What is said of it: its rung now.
    pub says: String,
    /// Why to look at it again.
    pub look_again: Option<String>,
    /// Sound, in one tap.
    pub sound: Button,
    /// More than that.
    pub mark: Button,
}

/// The present stop.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Here {
    /// "Here: …".
    pub title: String,
    /// The parts.
    pub spots: Vec<SpotRow>,
    /// Why nothing more here was seen.
    pub not_seen: Vec<Button>,
    /// The heading over it.
    pub not_seen_title: String,
    /// A part that is not on the list.
    pub add: Form,
    /// Where to climb next; `None` where every stop is done.
    pub next: Option<Button>,
}

/// The state of Walk.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Walk {
    /// Address, scope, structure.
    pub under: String,
    /// How far the walk is.
    pub title: String,
    /// The structures.
    pub structures: Vec<Button>,
    /// The stops, from the ground up.
    pub stops: Vec<StopRow>,
    /// The present stop; `None` where there is nothing to look at.
    pub here: Option<Here>,
    /// The shutter.
    pub shutter: Shutter,
    /// Saying something.
    pub say: Form,
    /// Taking back.
    pub undo: Button,
    /// More: tray, slopes, closing.
    pub more_title: String,
    /// The buttons under it.
    pub more: Vec<Button>,
    /// Closing the visit.
    pub close_title: String,
    /// The ways to close.
    pub close: Vec<Button>,
}

pub(crate) fn show(
    context: &Context<'_>,
    visit: VisitId,
    structure: StructureId,
    stop: Option<&StopKey>,
) -> Result<Walk, ActError> {
    let (history, visit) = visit::find_open(context.book, visit)?;
    let threads = acts::judge::threads(&history, visit.id, &context.going);
    let stops = plan::plan(&history, &visit, Catalogue::standard())
        .into_iter()
        .find(|walk| walk.structure == structure)
        .map(|walk| walk.stops)
        .ok_or_else(|| ActError::not_there("there-structure"))?;
    let here = here(&stops, stop);
    let place = Place::Walk {
        visit: visit.id,
        structure,
        stop: here.map(|here| here.stop.clone()),
    };
    let page = Page {
        context,
        history: &history,
        visit: &visit,
        structure,
        threads: &threads,
    };
    Ok(Walk {
        under: page.under(),
        title: page.title(&stops),
        structures: page.structures(),
        stops: stops.iter().map(|stop| page.stop_row(stop, here)).collect(),
        here: here.map(|here| page.here(here, &place, next(&stops, here))),
        shutter: Shutter {
            label: context.text("shutter"),
            keep: context.text("shutter-keep"),
            onto: Onto::Tray { visit: visit.id },
        },
        say: page.say(),
        undo: Button::new(
            context.text("undo"),
            Action::Undo {
                visit: visit.id,
                stay: Box::new(place),
            },
        ),
        more_title: context.text("walk-more"),
        more: page.more(),
        close_title: context.text("walk-close"),
        close: page.close(),
    })
}

/// The stop named, or the first that is not done, or the last.
fn here<'a>(stops: &'a [PlannedStop], stop: Option<&StopKey>) -> Option<&'a PlannedStop> {
    stops
        .iter()
        .find(|planned| Some(&planned.stop) == stop)
        .or_else(|| stops.iter().find(|planned| !planned.is_done()))
        .or_else(|| stops.last())
}

/// The first stop above that is not done, or the first of all.
fn next<'a>(stops: &'a [PlannedStop], here: &PlannedStop) -> Option<&'a PlannedStop> {
    let open = |stop: &&PlannedStop| stop.stop != here.stop && !stop.is_done();
    stops
        .iter()
        .skip_while(|stop| stop.stop != here.stop)
        .find(open)
        .or_else(|| stops.iter().find(open))
}

struct Page<'a> {
    context: &'a Context<'a>,
    history: &'a History,
    visit: &'a Visit,
    structure: StructureId,
    threads: &'a [Thread],
}

impl Page<'_> {
    fn under(&self) -> String {
        self.context.say(
            &Said::new("walk-under")
                .with("address", self.history.property.address.line.clone())
                .with("scope", Said::new(self.visit.scope.key()))
                .with(
                    "structure",
                    name::structure(self.context.words, self.history, self.structure),
                ),
        )
    }

    fn title(&self, stops: &[PlannedStop]) -> String {
        let done = stops.iter().filter(|stop| stop.is_done()).count();
        self.context.say(
            &Said::new("walk-title")
                .with("done", i64::try_from(done).unwrap_or(0))
                .with("all", i64::try_from(stops.len()).unwrap_or(0)),
        )
    }

    fn structures(&self) -> Vec<Button> {
        self.visit
            .structures
            .iter()
            .map(|&structure| {
                Button::new(
                    name::structure(self.context.words, self.history, structure),
                    Action::Go {
                        to: Place::Walk {
                            visit: self.visit.id,
                            structure,
                            stop: None,
                        },
                    },
                )
                .chosen(structure == self.structure)
            })
            .collect()
    }

    fn stop_row(&self, stop: &PlannedStop, here: Option<&PlannedStop>) -> StopRow {
        let again = stop
            .spots
            .iter()
            .filter(|spot| self.again(spot).is_some())
            .count();
        let said = if stop.is_done() {
            Said::new("walk-stop-done")
        } else if again > 0 {
            Said::new("walk-stop-again").with("again", i64::try_from(again).unwrap_or(0))
        } else if stop.answered() == 0 {
            Said::new("walk-stop-not-yet")
        } else {
            Said::new("walk-stop-open")
        };
        StopRow {
            name: self.context.text(&stop.stop.message()),
            says: self.context.say(
                &said
                    .with("answered", i64::try_from(stop.answered()).unwrap_or(0))
                    .with("all", i64::try_from(stop.spots.len()).unwrap_or(0)),
            ),
            done: stop.is_done(),
            here: here == Some(stop),
            go: Action::Go {
                to: Place::Walk {
                    visit: self.visit.id,
                    structure: self.structure,
                    stop: Some(stop.stop.clone()),
                },
            },
        }
    }

    /// Why a part is to be looked at again: it had a finding that still stands.
    fn again(&self, planned: &Planned) -> Option<String> {
        let Spot::Known { part } = &planned.spot else {
            return None;
        };
        if planned.mark.is_some() {
            return None;
        }
        let thread = self.threads.iter().find(|thread| thread.part == *part)?;
        let rung = thread
            .rung_then
            .filter(|rung| *rung != trade::mark::Rung::Sound)?;
        let earlier = self.history.mark(thread.earlier?)?;
        let on = self.history.visit(earlier.visit)?.on;
        Some(
            self.context.say(
                &Said::new("walk-look-again")
                    .with("rung", Said::new(rung.key()))
                    .with("year", on.year().to_string()),
            ),
        )
    }

    fn here(&self, stop: &PlannedStop, place: &Place, next: Option<&PlannedStop>) -> Here {
        let stop_name = self.context.text(&stop.stop.message());
        let reasons = [
            NotSeen::OutOfReach,
            NotSeen::TooSteep,
            NotSeen::Wet,
            NotSeen::Locked,
            NotSeen::Unsafe,
            NotSeen::OutsideScope,
        ];
        Here {
            title: self
                .context
                .say(&Said::new("walk-here").with("stop", stop_name)),
            spots: stop.spots.iter().map(|spot| self.spot_row(spot)).collect(),
            not_seen_title: self.context.text("walk-not-seen"),
            not_seen: reasons
                .into_iter()
                .map(|why| {
                    Button::new(
                        self.context.text(why.key()),
                        Action::StopNotSeen {
                            visit: self.visit.id,
                            place: Box::new(place.clone()),
                            why,
                        },
                    )
                })
                .collect(),
            add: self.add(&stop.stop),
            next: next.map(|next| self.next(next)),
        }
    }

    fn next(&self, stop: &PlannedStop) -> Button {
        let said = Said::new("walk-next").with("stop", self.context.text(&stop.stop.message()));
        Button::new(
            self.context.say(&said),
            Action::Go {
                to: Place::Walk {
                    visit: self.visit.id,
                    structure: self.structure,
                    stop: Some(stop.stop.clone()),
                },
            },
        )
    }

    fn spot_row(&self, planned: &Planned) -> SpotRow {
        let mark = planned.mark.and_then(|mark| self.history.mark(mark));
        let says = match mark.map(|mark| mark.condition) {
            Some(trade::mark::Condition::Seen { rung, .. }) => self.context.text(rung.key()),
            Some(trade::mark::Condition::NotSeen { why }) => self
                .context
                .say(&Said::new("walk-not-seen-why").with("why", Said::new(why.key()))),
            Some(trade::mark::Condition::Gone) => self.context.text("condition-gone"),
            None => self.context.text("walk-stop-not-yet"),
        };
        let is_sound =
            mark.and_then(|mark| mark.condition.rung()) == Some(trade::mark::Rung::Sound);
        SpotRow {
            ladder: mark.map_or(Ladder::NotSeen, |mark| mark.condition.into()),
            name: name::spot(self.context.words, self.history, &planned.spot),
            says,
            look_again: self.again(planned),
            sound: Button::new(
                self.context.text("rung-sound"),
                Action::Sound {
                    visit: self.visit.id,
                    spot: planned.spot.clone(),
                },
            )
            .chosen(is_sound),
            mark: Button::new(
                self.context.text("walk-mark"),
                Action::Go {
                    to: Place::Mark {
                        visit: self.visit.id,
                        spot: planned.spot.clone(),
                        family: None,
                    },
                },
            ),
        }
    }

    fn add(&self, stop: &StopKey) -> Form {
        // Those of this stop first. The others after them: a stop where nothing is known yet is not on the walk.
        let (here, elsewhere): (Vec<_>, Vec<_>) = Catalogue::standard()
            .kinds()
            .iter()
            .partition(|kind| &kind.stop == stop);
        let kinds = here
            .into_iter()
            .chain(elsewhere)
            .map(|kind| Choice {
                value: kind.key.to_string(),
                label: self.context.text(&kind.key.message()),
            })
            .collect();
        let slopes = name::slopes(self.context.words, self.history, self.structure);
        let form = FormOf::AddPart {
            visit: self.visit.id,
            structure: self.structure,
        };
        Filling::new(self.context, form)
            .one_of("kind", "add-part-kind", kinds)
            .one_of("slope", "add-part-slope", slopes)
            .blank("which", "add-part-which", FieldKind::Line)
            .done(self.context.text("walk-add-part"), "add-part-button")
    }

    fn say(&self) -> Form {
        let form = FormOf::Say {
            visit: self.visit.id,
            spot: None,
            structure: Some(self.structure),
        };
        Filling::new(self.context, form)
            .blank("words", "say-words", FieldKind::Words)
            .done(self.context.text("say-it"), "say-keep")
    }

    fn more(&self) -> Vec<Button> {
        let visit = self.visit.id;
        let go = |label: &str, to| Button::new(self.context.text(label), Action::Go { to });
        let mut more = vec![
            go("tray-title", Place::Tray { visit }),
            go("then-and-now-title", Place::ThenAndNow { visit }),
            go(
                "verdict-title",
                Place::Verdict {
                    visit,
                    structure: self.structure,
                },
            ),
            go("safety-title", Place::Safety { visit }),
            go(
                "back-doorstep",
                Place::Doorstep {
                    property: self.history.property.id,
                },
            ),
        ];
        more.extend(
            Side::ALL
                .into_iter()
                .filter(|side| self.lacks(*side))
                .map(|side| {
                    Button::new(
                        self.context
                            .say(&Said::new("add-slope").with("side", Said::new(side.key()))),
                        Action::AddSlope {
                            visit,
                            structure: self.structure,
                            side,
                        },
                    )
                }),
        );
        more.extend(
            trade::property::StructureKind::ALL
                .into_iter()
                .filter_map(|kind| {
                    let stands = self
                        .history
                        .structures
                        .iter()
                        .any(|structure| structure.kind == kind);
                    (!stands).then(|| {
                        Button::new(
                            self.context.say(
                                &Said::new("add-structure")
                                    .with("structure", Said::new(kind.key())),
                            ),
                            Action::AddStructure { visit, kind },
                        )
                    })
                }),
        );
        more
    }

    fn lacks(&self, side: Side) -> bool {
        !self
            .history
            .slopes
            .iter()
            .any(|slope| slope.structure == self.structure && slope.side == side)
    }

    fn close(&self) -> Vec<Button> {
        [
            ("close-outside-scope", NotSeen::OutsideScope),
            ("close-not-reached", NotSeen::NotReached),
        ]
        .into_iter()
        .map(|(label, rest)| {
            Button::new(
                self.context.text(label),
                Action::Close {
                    visit: self.visit.id,
                    rest,
                },
            )
        })
        .collect()
    }
}
