//! Writes the Kotlin and the Swift that belong to one built library: `generate LIBRARY FOLDER`. Both are read from that library itself, so
//! that they cannot drift from it; a stripped one tells nothing.

use std::process::ExitCode;
use uniffi_bindgen::bindings::{GenerateOptions, TargetLanguage, generate};

fn main() -> ExitCode {
    let asked: Vec<String> = std::env::args().skip(1).collect();
    let [library, folder] = asked.as_slice() else {
        eprintln!("generate LIBRARY FOLDER");
        return ExitCode::FAILURE;
    };
    for (language, name) in [
        (TargetLanguage::Kotlin, "kotlin"),
        (TargetLanguage::Swift, "swift"),
    ] {
        let written = generate(GenerateOptions {
            languages: vec![language],
            source: library.into(),
            out_dir: format!("{folder}/{name}").into(),
            ..GenerateOptions::default()
        });
        if let Err(error) = written {
            eprintln!("{name}: {error:#}");
            return ExitCode::FAILURE;
        }
    }
    ExitCode::SUCCESS
}
