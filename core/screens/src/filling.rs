//! Filling a form for the screen: what was half typed stands in its fields, else what is known. Every form of a screen is made here.

use crate::block::{Choice, Field, FieldKind, Form};
use crate::form::FormOf;
use crate::screens::Context;

/// A form whose fields show what was half typed, else what is known.
pub(crate) struct Filling<'a> {
    context: &'a Context<'a>,
    form: FormOf,
    fields: Vec<Field>,
}

impl<'a> Filling<'a> {
    pub(crate) fn new(context: &'a Context<'a>, form: FormOf) -> Self {
        Self {
            context,
            form,
            fields: Vec::new(),
        }
    }

    /// A field in which something is known.
    pub(crate) fn field(self, name: &str, label: &str, known: &str, kind: FieldKind) -> Self {
        let label = self.context.text(label);
        self.labelled(name, label, known, kind)
    }

    /// A field whose label was put into words already.
    pub(crate) fn labelled(
        mut self,
        name: &str,
        label: String,
        known: &str,
        kind: FieldKind,
    ) -> Self {
        let half_typed = self.half_typed(name);
        self.fields.push(Field {
            name: name.to_owned(),
            label,
            value: half_typed.unwrap_or_else(|| known.to_owned()),
            kind,
        });
        self
    }

    /// A field in which nothing is known.
    pub(crate) fn blank(self, name: &str, label: &str, kind: FieldKind) -> Self {
        self.field(name, label, "", kind)
    }

    /// A small whole number that is known.
    pub(crate) fn number(self, name: &str, label: &str, known: u8) -> Self {
        self.field(name, label, &known.to_string(), FieldKind::Line)
    }

    /// A choice of which none is known.
    pub(crate) fn one_of(self, name: &str, label: &str, choices: Vec<Choice>) -> Self {
        self.blank(name, label, FieldKind::OneOf { choices })
    }

    pub(crate) fn done(self, title: String, submit: &str) -> Form {
        Form {
            form: self.form,
            title,
            fields: self.fields,
            submit: self.context.text(submit),
        }
    }

    fn half_typed(&self, field: &str) -> Option<String> {
        let key = self.form.draft_key(field);
        self.context.book.draft(&key).ok().flatten()
    }
}
