//! The exports as text: a record, an enum or an object a paragraph, in the order of their names.

use std::collections::BTreeMap;
use std::fmt::Write;
use uniffi_meta::{EnumMetadata, FieldMetadata, FnParamMetadata, Metadata, RecordMetadata, Type};

const HEADING: &str = "# What crosses to Kotlin and Swift, read from the built library.\n\
                       # Written by `./dev bindings --accept`; a new line here is a change to look over.\n";

/// All exports.
pub fn exports(found: Vec<Metadata>) -> String {
    let mut all: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for one in found {
        let (head, mut lines) = match one {
            Metadata::Record(record) => (record.name.clone(), of_record(&record)),
            Metadata::Enum(kinds) => (kinds.name.clone(), of_enum(&kinds)),
            Metadata::Object(object) => (object.name.clone(), vec![format!("{:?}", object.imp)]),
            Metadata::Func(func) => (
                "functions".to_owned(),
                vec![call(
                    &func.name,
                    &func.inputs,
                    func.return_type.as_ref(),
                    func.throws.as_ref(),
                )],
            ),
            Metadata::Constructor(made) => (
                made.self_name.clone(),
                vec![call(
                    &format!("new {}", made.name),
                    &made.inputs,
                    None,
                    made.throws.as_ref(),
                )],
            ),
            Metadata::Method(method) => (
                method.self_name.clone(),
                vec![call(
                    &method.name,
                    &method.inputs,
                    method.return_type.as_ref(),
                    method.throws.as_ref(),
                )],
            ),
            Metadata::TraitMethod(method) => (
                method.trait_name.clone(),
                vec![call(
                    &method.name,
                    &method.inputs,
                    method.return_type.as_ref(),
                    method.throws.as_ref(),
                )],
            ),
            Metadata::Namespace(_) | Metadata::UdlFile(_) => continue,
            other => ("other".to_owned(), vec![format!("{other:?}")]),
        };
        all.entry(head).or_default().append(&mut lines);
    }
    let mut text = HEADING.to_owned();
    for (head, lines) in all {
        let _ = writeln!(text, "\n{head}");
        for line in lines {
            let _ = writeln!(text, "    {line}");
        }
    }
    text
}

/// The order of a record's fields is the order of its bytes, so it is kept.
fn of_record(record: &RecordMetadata) -> Vec<String> {
    record.fields.iter().map(field).collect()
}

fn of_enum(kinds: &EnumMetadata) -> Vec<String> {
    kinds
        .variants
        .iter()
        .map(|variant| {
            let fields: Vec<_> = variant.fields.iter().map(field).collect();
            if fields.is_empty() {
                format!("| {}", variant.name)
            } else {
                format!("| {} {{ {} }}", variant.name, fields.join(", "))
            }
        })
        .collect()
}

fn field(field: &FieldMetadata) -> String {
    format!("{}: {}", field.name, name(&field.ty))
}

fn call(
    what: &str,
    inputs: &[FnParamMetadata],
    answers: Option<&Type>,
    throws: Option<&Type>,
) -> String {
    let inputs: Vec<_> = inputs
        .iter()
        .map(|input| format!("{}: {}", input.name, name(&input.ty)))
        .collect();
    let answers = answers.map_or(String::new(), |answers| format!(" -> {}", name(answers)));
    let throws = throws.map_or_else(
        || " NEVER FAILS".to_owned(),
        |throws| format!(" or {}", name(throws)),
    );
    format!("{what}({}){answers}{throws}", inputs.join(", "))
}

fn name(kind: &Type) -> String {
    match kind {
        Type::Optional { inner_type } => format!("{}?", name(inner_type)),
        Type::Sequence { inner_type } => format!("[{}]", name(inner_type)),
        Type::Record { name, .. }
        | Type::Enum { name, .. }
        | Type::Object { name, .. }
        | Type::Custom { name, .. } => name.clone(),
        plain => format!("{plain:?}"),
    }
}
