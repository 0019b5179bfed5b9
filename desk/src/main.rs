//! Ladderbook on a computer: a command line over the acts, and the same screens as a local page.

mod clock;
mod command;
mod keys;
mod page;
mod plain;

use clap::Parser;
use command::Failure;
use std::process::ExitCode;

fn main() -> ExitCode {
    let asked = command::Ladderbook::parse();
    match command::run(asked) {
        Ok(()) => ExitCode::SUCCESS,
        Err(Failure(says)) => {
            eprintln!("{says}");
            ExitCode::FAILURE
        }
    }
}
