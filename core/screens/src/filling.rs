//! Filling a form for the screen: what was half typed stands in its fields, else what is known.

use crate::block::{Field, FieldKind, Form};
use crate::form::FormOf;
use crate::screens::Context;

/// What was half typed into a field, where something was.
pub(crate) fn half_typed(context: &Context<'_>, form: &FormOf, field: &str) -> Option<String> {
    context.book.draft(&form.draft_key(field)).ok().flatten()
}

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
        let half_typed = half_typed(self.context, &self.form, name);
        self.fields.push(Field {
            name: name.to_owned(),
            label,
            value: half_typed.unwrap_or_else(|| known.to_owned()),
            kind,
        });
        self
    }

    pub(crate) fn done(self, title: String, submit: &str) -> Form {
        Form {
            form: self.form,
            title,
            fields: self.fields,
            submit: self.context.text(submit),
        }
    }
}
