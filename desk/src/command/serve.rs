//! Serving the screens as a page on this computer.

use super::Common;
use super::answer::say;
use crate::clock::Clock;
use crate::failure::Failure;
use crate::page::hex;
use crate::page::{self, Serving};
use crate::tongue;
use clap::Args;
use screens::Screens;
use trade::words::Said;

/// Serving.
#[derive(Args, Debug)]
pub(super) struct Serve {
    /// The port; 0 takes a free one
    #[arg(long, default_value_t = 4180)]
    port: u16,
}

pub(super) fn run(common: &Common, asked: &Serve) -> Result<(), Failure> {
    common.with_screens(|screens| until_ended(screens, common.clock(), asked.port))
}

/// Serves until the process is ended.
pub(super) fn until_ended(screens: Screens, clock: Clock, port: u16) -> Result<(), Failure> {
    let token = token()?;
    let words = super::words_of(screens.book())?;
    let runtime = tokio::runtime::Runtime::new().map_err(|error| {
        Failure::new(Said::new("desk-page-not-started").with("why", acts::system(&error)))
    })?;
    runtime
        .block_on(page::serve(
            Serving {
                screens,
                clock,
                port,
                token,
                outside: tongue::words(),
            },
            |address| say(&words.say(&Said::new("desk-serving").with("address", address))),
        ))
        .map_err(|error| {
            Failure::new(
                Said::new("desk-page-port")
                    .with("port", port.to_string())
                    .with("why", acts::system(&error)),
            )
        })
}

fn token() -> Result<String, Failure> {
    let mut bytes = [0_u8; 24];
    getrandom::fill(&mut bytes).map_err(|error| {
        Failure::new(Said::new("desk-page-random").with("detail", error.to_string()))
    })?;
    Ok(hex(&bytes))
}
