//! The forms of Mark: words, measures, layers, work done.

use super::Page;
use crate::block::{Choice, Field, FieldKind, Form};
use crate::filling::half_typed;
use crate::form::{FormOf, value_of};
use serde::Serialize;
use trade::catalogue::{Catalogue, KindKey, RemedyKey};
use trade::mark::MeasureOf;
use trade::stack::{Covering, Learned};
use trade::units::Got;
use trade::work::{By, Evidence};

impl Page<'_> {
    pub(super) fn forms(&self) -> Vec<Form> {
        let mut forms = vec![self.words_form(), self.measure_form(), self.work_form()];
        if self.kind.key == KindKey::from("layers") {
            forms.insert(0, self.layers_form());
        }
        forms
    }

    fn field(&self, form: &FormOf, name: &str, label: &str, kind: FieldKind) -> Field {
        Field {
            name: name.to_owned(),
            label: self.context.text(label),
            value: half_typed(self.context, form, name).unwrap_or_default(),
            kind,
        }
    }

    fn words_form(&self) -> Form {
        let form = FormOf::Say {
            visit: self.visit.id,
            spot: Some(self.spot.clone()),
            structure: None,
        };
        let mut field = self.field(&form, "words", "say-words", FieldKind::Words);
        if field.value.is_empty() {
            field.value = self
                .record
                .map(|record| record.words.clone())
                .unwrap_or_default();
        }
        Form {
            title: self.context.text("say-it"),
            fields: vec![field],
            submit: self.context.text("say-keep"),
            form,
        }
    }

    fn measure_form(&self) -> Form {
        let form = FormOf::Measure {
            visit: self.visit.id,
            spot: self.spot.clone(),
        };
        let of = self.choices(&MeasureOf::ALL, |of| of.key().to_owned());
        let got = self.choices(&Got::ALL, |got| got.key().to_owned());
        Form {
            title: self.context.text("measure-title"),
            fields: vec![
                self.field(&form, "of", "measure-of", FieldKind::OneOf { choices: of }),
                self.field(&form, "length", "measure-length", FieldKind::Line),
                self.field(
                    &form,
                    "got",
                    "measure-got",
                    FieldKind::OneOf { choices: got },
                ),
            ],
            submit: self.context.text("measure-keep"),
            form,
        }
    }

    fn layers_form(&self) -> Form {
        let form = FormOf::Layers {
            visit: self.visit.id,
            spot: self.spot.clone(),
        };
        let coverings = self.choices(&Covering::ALL, |covering| covering.key().to_owned());
        let learned = self.choices(&Learned::ALL, |learned| learned.key().to_owned());
        let counts = ["1", "2", "3", "4"]
            .into_iter()
            .map(|count| Choice {
                value: count.to_owned(),
                label: count.to_owned(),
            })
            .collect();
        Form {
            title: self.context.text("layers-title"),
            fields: vec![
                self.field(
                    &form,
                    "count",
                    "layers-count",
                    FieldKind::OneOf { choices: counts },
                ),
                self.field(
                    &form,
                    "covering",
                    "layers-covering",
                    FieldKind::OneOf { choices: coverings },
                ),
                self.field(
                    &form,
                    "learned",
                    "layers-learned",
                    FieldKind::OneOf { choices: learned },
                ),
                self.field(&form, "colour", "layers-colour", FieldKind::Line),
                self.field(
                    &form,
                    "between",
                    "layers-between",
                    FieldKind::OneOf {
                        choices: self.between(),
                    },
                ),
                self.field(
                    &form,
                    "rebuilt",
                    "layers-rebuilt",
                    FieldKind::OneOf {
                        choices: self.no_yes(),
                    },
                ),
                self.field(&form, "where", "layers-where", FieldKind::Line),
                self.field(&form, "exposure", "layers-exposure", FieldKind::Line),
                self.field(&form, "butts", "layers-butts", FieldKind::Line),
            ],
            submit: self.context.text("layers-keep"),
            form,
        }
    }

    /// What lies under the top layer, where something does.
    fn between(&self) -> Vec<Choice> {
        [
            ("", "choice-none"),
            ("membrane", "layer-membrane"),
            ("sheathing", "layer-sheathing"),
        ]
        .map(|(value, label)| self.choice(value, label))
        .into()
    }

    fn no_yes(&self) -> Vec<Choice> {
        [("no", "answer-no"), ("yes", "answer-yes")]
            .map(|(value, label)| self.choice(value, label))
            .into()
    }

    fn exact(&self) -> Vec<Choice> {
        [("yes", "work-on-that-day"), ("no", "work-by-that-day")]
            .map(|(value, label)| self.choice(value, label))
            .into()
    }

    fn choice(&self, value: &str, label: &str) -> Choice {
        Choice {
            value: value.to_owned(),
            label: self.context.text(label),
        }
    }

    fn work_form(&self) -> Form {
        let form = FormOf::Work {
            visit: self.visit.id,
            spot: self.spot.clone(),
        };
        let by = self.choices(&By::ALL, |by| by.key().to_owned());
        let evidence = self.choices(&Evidence::ALL, |evidence| evidence.key().to_owned());
        Form {
            title: self.context.text("work-title"),
            fields: vec![
                self.field(
                    &form,
                    "did",
                    "work-did",
                    FieldKind::OneOf {
                        choices: self.done(),
                    },
                ),
                self.field(&form, "by", "work-by", FieldKind::OneOf { choices: by }),
                self.field(&form, "when", "work-when", FieldKind::Day),
                self.field(
                    &form,
                    "exact",
                    "work-exact",
                    FieldKind::OneOf {
                        choices: self.exact(),
                    },
                ),
                self.field(
                    &form,
                    "evidence",
                    "work-evidence",
                    FieldKind::OneOf { choices: evidence },
                ),
            ],
            submit: self.context.text("work-keep"),
            form,
        }
    }

    /// What can have been done to such a part: the remedies of its defects, and what is no remedy.
    fn done(&self) -> Vec<Choice> {
        let mut remedies: Vec<&RemedyKey> = Catalogue::standard()
            .defects_of(&self.kind.key)
            .flat_map(|defect| defect.remedies.iter().map(|treats| &treats.remedy))
            .collect();
        remedies.sort();
        remedies.dedup();
        let other = ["replaced", "covered", "taken-down", "something"].map(|did| Choice {
            value: did.to_owned(),
            label: self.context.text(&format!("did-{did}")),
        });
        other
            .into_iter()
            .chain(remedies.into_iter().map(|remedy| Choice {
                value: remedy.to_string(),
                label: self.context.text(&remedy.message()),
            }))
            .collect()
    }

    fn choices<T: Serialize>(&self, all: &[T], key: impl Fn(&T) -> String) -> Vec<Choice> {
        all.iter()
            .map(|one| Choice {
                value: value_of(one),
                label: self.context.text(&key(one)),
            })
            .collect()
    }
}
