//! Ladderbook on a computer: a command line over the acts, and the same screens as a local page.

mod clock;
mod command;
mod failure;
mod keys;
mod page;
mod plain;
mod tongue;

use clap::Parser;
use std::process::ExitCode;

fn main() -> ExitCode {
    let asked = command::Ladderbook::parse();
    match command::run(asked) {
        Ok(()) => ExitCode::SUCCESS,
        Err(failure) => {
            eprintln!("{}", failure.told());
            ExitCode::FAILURE
        }
    }
}
