//! The published shape of a visit file is checked in: whoever changes it sees what he changes for others.

use std::path::Path;

/// Set `LADDERBOOK_ACCEPT=1` to accept the shape as it is now.
#[test]
fn the_published_schema_is_the_one_of_this_program() {
    let path = Path::new("../../docs/visit-file.schema.json");
    let schema = acts::record::file::schema();
    let now = serde_json::to_string_pretty(&schema).expect("the schema is JSON") + "\n";
    if std::env::var_os("LADDERBOOK_ACCEPT").is_some() {
        std::fs::write(path, &now).expect("the schema is written");
    }
    let published = std::fs::read_to_string(path).expect("the schema is published");
    assert_eq!(
        published, now,
        "run again with LADDERBOOK_ACCEPT=1 if this change is meant"
    );
}
