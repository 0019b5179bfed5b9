//! Mark: one part. What it is like, by rung or by what you see.

mod forms;

use crate::action::Action;
use crate::block::{Button, Form, Onto, Picture, Row, Shutter};
use crate::name;
use crate::place::Place;
use crate::screens::Context;
use acts::walk::Spot;
use acts::{ActError, likely, visit};
use serde::Serialize;
use trade::answer::Answer;
use trade::catalogue::{Catalogue, Defect, DefectKey, Effect, Family, Kind, KindKey};
use trade::history::History;
use trade::ladder::Ladder;
use trade::mark::{Condition, DefectSeen, Extent, Mark as Record, NotSeen, Rung, Seen};
use trade::verdict::Question;
use trade::visit::Visit;
use trade::words::Said;
use trade::work::WorkOn;

/// A defect that is named, and how far it reaches.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct DefectRow {
    /// Its name.
    pub name: String,
    /// What it is and why it matters.
    pub what: String,
    /// What the picture must show.
    pub photo: String,
    /// How far it reaches.
    pub extents: Vec<Button>,
    /// Over the remedies.
    pub advise_title: String,
    /// The remedies that can be advised, each with what it does; where none is chosen, the cure is meant.
    pub advise: Vec<Button>,
    /// Taking it off.
    pub remove: Button,
}

/// A question asked on the spot.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct QuestionRow {
    /// The question.
    pub asks: String,
    /// The answers.
    pub answers: Vec<Button>,
}

/// The state of Mark.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Mark {
    /// Part and how it was seen.
    pub under: String,
    /// The heading.
    pub title: String,
    /// What was found then.
    pub then: Option<Row>,
    /// The four rungs.
    pub rungs: Vec<Button>,
    /// The heading over the families.
    pub families_title: String,
    /// The six families.
    pub families: Vec<Button>,
    /// The heading over the defects.
    pub defects_title: String,
    /// The likely six, or those of the family chosen.
    pub defects: Vec<Button>,
    /// The defects named.
    pub named: Vec<DefectRow>,
    /// Questions asked on the spot.
    pub questions: Vec<QuestionRow>,
    /// The heading over how it was seen.
    pub seen_title: String,
    /// How it was seen.
    pub seen: Vec<Button>,
    /// The heading over why it was not seen.
    pub not_seen_title: String,
    /// Why it was not seen, and gone.
    pub not_seen: Vec<Button>,
    /// Pictures taken.
    pub pictures: Vec<Picture>,
    /// What was measured, read or done.
    pub facts: Vec<String>,
    /// Measures, layers, work done, words.
    pub forms: Vec<Form>,
    /// The shutter.
    pub shutter: Shutter,
    /// Back to the walk.
    pub back: Button,
    /// Taking back.
    pub undo: Button,
}

pub(crate) fn show(
    context: &Context<'_>,
    visit: trade::ids::VisitId,
    spot: &Spot,
    family: Option<Family>,
) -> Result<Mark, ActError> {
    let (history, visit) = visit::find_open(context.book, visit)?;
    let part = match spot {
        Spot::Known { part } => Some(
            history
                .part(*part)
                .ok_or_else(|| ActError::not_there("there-part"))?,
        ),
        Spot::Unborn { .. } => None,
    };
    let kind = match spot {
        Spot::Unborn { kind, .. } => kind.clone(),
        Spot::Known { .. } => part.map_or_else(|| KindKey::from(""), |part| part.kind.clone()),
    };
    let kind = Catalogue::standard()
        .kind(&kind)
        .ok_or_else(|| ActError::not_there("there-kind"))?;
    let record = part.and_then(|part| history.mark_on(part.id, visit.id));
    let page = Page {
        context,
        history: &history,
        visit: &visit,
        spot,
        kind,
        record,
    };
    let back = crate::act::back_on_walk(context.book, visit.id, spot)?;
    Ok(Mark {
        under: page.under(),
        title: context.text("mark-title"),
        then: page.then(),
        rungs: page.rungs(),
        families_title: context.text("mark-families"),
        families: page.families(family),
        defects_title: page.defects_title(family),
        defects: page.defects(family)?,
        named: page.named(),
        questions: page.questions(),
        seen_title: context.text("mark-seen"),
        seen: page.seen(),
        not_seen_title: context.text("mark-not-seen"),
        not_seen: page.not_seen(),
        pictures: page.pictures(),
        facts: page.facts(),
        forms: page.forms(),
        shutter: Shutter {
            label: context.text("shutter"),
            keep: context.text("shutter-keep"),
            onto: Onto::Part {
                visit: visit.id,
                spot: spot.clone(),
            },
        },
        back: Button::new(context.text("back-walk"), Action::Go { to: back }),
        undo: Button::new(
            context.text("undo"),
            Action::Undo {
                visit: visit.id,
                stay: Box::new(page.place(None)),
            },
        ),
    })
}

struct Page<'a> {
    context: &'a Context<'a>,
    history: &'a History,
    visit: &'a Visit,
    spot: &'a Spot,
    kind: &'a Kind,
    record: Option<&'a Record>,
}

impl Page<'_> {
    fn place(&self, family: Option<Family>) -> Place {
        Place::Mark {
            visit: self.visit.id,
            spot: self.spot.clone(),
            family,
        }
    }

    fn condition(&self) -> Option<Condition> {
        self.record.map(|record| record.condition)
    }

    fn has(&self, defect: &DefectKey) -> bool {
        self.record
            .is_some_and(|record| record.defects.iter().any(|seen| &seen.defect == defect))
    }

    fn under(&self) -> String {
        let part = name::spot(self.context.words, self.history, self.spot);
        match self.condition().and_then(Condition::seen) {
            Some(seen) => self.context.say(
                &Said::new("mark-under-seen")
                    .with("part", part)
                    .with("seen", Said::new(seen.key())),
            ),
            None => part,
        }
    }

    /// What the last real look before this visit found.
    fn then(&self) -> Option<Row> {
        let Spot::Known { part } = self.spot else {
            return None;
        };
        let earlier = self
            .history
            .marks
            .iter()
            .rev()
            .find(|mark| mark.part == *part && mark.visit != self.visit.id && mark.is_real())?;
        let on = self.history.visit(earlier.visit)?.on;
        let defects: Vec<Said> = earlier
            .defects
            .iter()
            .map(|seen| Said::new(seen.defect.message()))
            .collect();
        Some(Row {
            title: self.context.say(&Said::new("mark-then").with("on", on)),
            says: match (defects.is_empty(), earlier.condition.rung()) {
                (false, _) => self.context.words.list(&defects),
                (true, Some(rung)) => self.context.text(rung.key()),
                (true, None) => self.context.text("condition-gone"),
            },
            ladder: Some(earlier.condition.into()),
            action: None,
        })
    }

    fn rungs(&self) -> Vec<Button> {
        let now = self.condition().and_then(Condition::rung);
        Rung::ALL
            .into_iter()
            .map(|rung| {
                Button::new(
                    self.context.text(rung.key()),
                    Action::SetRung {
                        visit: self.visit.id,
                        spot: self.spot.clone(),
                        rung,
                    },
                )
                .ladder(Ladder::from(rung))
                .chosen(now == Some(rung))
            })
            .collect()
    }

    fn families(&self, chosen: Option<Family>) -> Vec<Button> {
        Family::ALL
            .into_iter()
            .filter(|family| self.of_family(*family).next().is_some())
            .map(|family| {
                let to = self.place((chosen != Some(family)).then_some(family));
                Button::new(self.context.text(family.key()), Action::Go { to })
                    .chosen(chosen == Some(family))
            })
            .collect()
    }

    fn of_family(&self, family: Family) -> impl Iterator<Item = &'static Defect> + '_ {
        Catalogue::standard()
            .defects()
            .iter()
            .filter(move |defect| defect.family == family && defect.parts.contains(&self.kind.key))
    }

    fn defects_title(&self, family: Option<Family>) -> String {
        match family {
            None => self.context.text("mark-likely"),
            Some(family) => self.context.text(family.key()),
        }
    }

    fn defects(&self, family: Option<Family>) -> Result<Vec<Button>, ActError> {
        let keys: Vec<DefectKey> = match family {
            Some(family) => self
                .of_family(family)
                .map(|defect| defect.key.clone())
                .collect(),
            None => likely::six(self.context.book, self.visit.id, self.spot)?,
        };
        Ok(keys
            .into_iter()
            .map(|defect| self.defect_button(defect))
            .collect())
    }

    fn defect_button(&self, defect: DefectKey) -> Button {
        let chosen = self.has(&defect);
        Button::new(
            self.context.text(&defect.message()),
            Action::ToggleDefect {
                visit: self.visit.id,
                spot: self.spot.clone(),
                defect: defect.clone(),
            },
        )
        .note(self.as_in(&defect))
        .chosen(chosen)
    }

    /// "as in 2023": this part had the same defect before.
    fn as_in(&self, defect: &DefectKey) -> Option<String> {
        let Spot::Known { part } = self.spot else {
            return None;
        };
        let earlier = self.history.marks.iter().rev().find(|mark| {
            mark.part == *part
                && mark.visit != self.visit.id
                && mark.defects.iter().any(|seen| &seen.defect == defect)
        })?;
        let year = self.history.visit(earlier.visit)?.on.year();
        Some(
            self.context
                .say(&Said::new("mark-as-in").with("year", year.to_string())),
        )
    }

    fn named(&self) -> Vec<DefectRow> {
        let Some(record) = self.record else {
            return Vec::new();
        };
        record
            .defects
            .iter()
            .map(|seen| self.named_row(record, seen))
            .collect()
    }

    fn named_row(&self, record: &Record, seen: &DefectSeen) -> DefectRow {
        let message = seen.defect.message();
        DefectRow {
            name: self.context.text(&message),
            what: self.context.text(&format!("{message}.what")),
            photo: self.context.text(&format!("{message}.photo")),
            extents: Extent::ALL
                .into_iter()
                .map(|extent| {
                    Button::new(
                        self.context.text(extent.key()),
                        Action::SetExtent {
                            visit: self.visit.id,
                            spot: self.spot.clone(),
                            defect: seen.defect.clone(),
                            extent,
                        },
                    )
                    .chosen(seen.extent == extent)
                })
                .collect(),
            advise_title: self.context.text("mark-advise"),
            advise: self.advise(record, &seen.defect),
            remove: Button::new(
                self.context.text("mark-take-off"),
                Action::ToggleDefect {
                    visit: self.visit.id,
                    spot: self.spot.clone(),
                    defect: seen.defect.clone(),
                },
            ),
        }
    }

    /// What cures a defect and what buys time; what makes it worse is never offered.
    fn advise(&self, record: &Record, defect: &DefectKey) -> Vec<Button> {
        let Some(defect) = Catalogue::standard().defect(defect) else {
            return Vec::new();
        };
        defect
            .remedies
            .iter()
            .filter(|treats| treats.fits(&self.kind.key))
            .filter_map(|treats| {
                let does = match treats.effect {
                    Effect::Cures => "advise-cures",
                    Effect::BuysTime { .. } => "advise-buys-time",
                    Effect::Worsens => return None,
                };
                let action = Action::ToggleAdvised {
                    visit: self.visit.id,
                    spot: self.spot.clone(),
                    remedy: treats.remedy.clone(),
                };
                Some(
                    Button::new(self.context.text(&treats.remedy.message()), action)
                        .note(Some(self.context.text(does)))
                        .chosen(record.advised.contains(&treats.remedy)),
                )
            })
            .collect()
    }

    /// Asked only of a part that was seen: what was not seen answers nothing.
    fn questions(&self) -> Vec<QuestionRow> {
        if self.condition().and_then(Condition::rung).is_none() {
            return Vec::new();
        }
        acts::mark::asked_of(self.kind)
            .map(|question| QuestionRow {
                asks: self.context.text(question.key()),
                answers: [Answer::Yes, Answer::No, Answer::Unknown]
                    .into_iter()
                    .map(|answer| self.answer_button(question, answer))
                    .collect(),
            })
            .collect()
    }

    fn answer_button(&self, question: Question, answer: Answer) -> Button {
        let given = self
            .record
            .and_then(|record| {
                record
                    .answers
                    .iter()
                    .find(|given| given.question == question)
            })
            .map_or(Answer::Unknown, |given| given.answer);
        let label = match answer {
            Answer::Yes => "answer-yes",
            Answer::No => "answer-no",
            Answer::Unknown => "answer-unknown",
        };
        Button::new(
            self.context.text(label),
            Action::AnswerQuestion {
                visit: self.visit.id,
                spot: self.spot.clone(),
                question,
                answer,
            },
        )
        .chosen(given == answer)
    }

    fn seen(&self) -> Vec<Button> {
        let Some(now) = self.condition().and_then(Condition::seen) else {
            return Vec::new();
        };
        Seen::ALL
            .into_iter()
            .map(|seen| {
                Button::new(
                    self.context.text(seen.key()),
                    Action::SetSeen {
                        visit: self.visit.id,
                        spot: self.spot.clone(),
                        seen,
                    },
                )
                .chosen(now == seen)
            })
            .collect()
    }

    fn not_seen(&self) -> Vec<Button> {
        let now = self.condition().and_then(Condition::not_seen);
        let mut buttons: Vec<Button> = NotSeen::ALL
            .into_iter()
            .filter(|why| *why != NotSeen::NotReached)
            .map(|why| {
                Button::new(
                    self.context.text(why.key()),
                    Action::SetNotSeen {
                        visit: self.visit.id,
                        spot: self.spot.clone(),
                        why,
                    },
                )
                .chosen(now == Some(why))
            })
            .collect();
        buttons.push(
            Button::new(
                self.context.text("condition-gone"),
                Action::SetGone {
                    visit: self.visit.id,
                    spot: self.spot.clone(),
                },
            )
            .chosen(self.condition() == Some(Condition::Gone)),
        );
        buttons
    }

    fn pictures(&self) -> Vec<Picture> {
        let alt = name::spot(self.context.words, self.history, self.spot);
        self.record
            .map(|record| {
                record
                    .photos
                    .iter()
                    .map(|&photo| Picture {
                        photo,
                        alt: alt.clone(),
                    })
                    .collect()
            })
            .unwrap_or_default()
    }

    fn facts(&self) -> Vec<String> {
        let mut facts = Vec::new();
        if let Some(record) = self.record {
            facts.extend(record.measures.iter().map(|measure| {
                self.context.say(
                    &Said::new("fact-measure")
                        .with("of", Said::new(measure.of.key()))
                        .with("length", measure.value.value),
                )
            }));
            facts.extend(Some(record.words.clone()).filter(|words| !words.is_empty()));
        }
        if let Spot::Known { part } = self.spot {
            facts.extend(
                self.history
                    .works
                    .iter()
                    .filter(|work| work.on == WorkOn::Part(*part))
                    .map(|work| self.context.say(&acts::judge::work_said(work))),
            );
        }
        facts
    }
}
