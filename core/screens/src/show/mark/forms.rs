//! The forms of Mark: words, measures, layers, work done.

use super::Page;
use crate::block::{Choice, FieldKind, Form};
use crate::filling::Filling;
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

    fn words_form(&self) -> Form {
        let form = FormOf::Say {
            visit: self.visit.id,
            spot: Some(self.spot.clone()),
            structure: None,
        };
        let known = self.record.map_or("", |record| record.words.as_str());
        Filling::new(self.context, form)
            .field("words", "say-words", known, FieldKind::Words)
            .done(self.context.text("say-it"), "say-keep")
    }

    fn measure_form(&self) -> Form {
        let form = FormOf::Measure {
            visit: self.visit.id,
            spot: self.spot.clone(),
        };
        let of = self.choices(&MeasureOf::ALL, |of| of.key().to_owned());
        let got = self.choices(&Got::ALL, |got| got.key().to_owned());
        Filling::new(self.context, form)
            .one_of("of", "measure-of", of)
            .blank("length", "measure-length", FieldKind::Line)
            .one_of("got", "measure-got", got)
            .done(self.context.text("measure-title"), "measure-keep")
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
        Filling::new(self.context, form)
            .one_of("count", "layers-count", counts)
            .one_of("covering", "layers-covering", coverings)
            .one_of("learned", "layers-learned", learned)
            .blank("colour", "layers-colour", FieldKind::Line)
            .one_of("between", "layers-between", self.between())
            .one_of("rebuilt", "layers-rebuilt", self.no_yes())
            .blank("where", "layers-where", FieldKind::Line)
            .blank("exposure", "layers-exposure", FieldKind::Line)
            .blank("butts", "layers-butts", FieldKind::Line)
            .done(self.context.text("layers-title"), "layers-keep")
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
        Filling::new(self.context, form)
            .one_of("did", "work-did", self.done())
            .one_of("by", "work-by", by)
            .blank("when", "work-when", FieldKind::Day)
            .one_of("exact", "work-exact", self.exact())
            .one_of("evidence", "work-evidence", evidence)
            .done(self.context.text("work-title"), "work-keep")
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
