//! Filling a form for the screen: what was half typed stands in its fields, else what is known.

use crate::block::{Field, FieldKind, Form};
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

    pub(crate) fn field(
        mut self,
        name: &'static str,
        label: &str,
        known: &str,
        kind: FieldKind,
    ) -> Self {
        let half_typed = self
            .context
            .book
            .draft(&self.form.draft_key(name))
            .ok()
            .flatten();
        self.fields.push(Field {
            name,
            label: self.context.text(label),
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
