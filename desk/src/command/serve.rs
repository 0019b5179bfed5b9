//! Serving the screens as a page on this computer.

use super::answer::say;
use super::{Common, Failure};
use crate::clock::Clock;
use crate::page::hex;
use crate::page::{self, Serving};
use clap::Args;
use screens::Screens;

/// Serving.
#[derive(Args, Debug)]
pub(super) struct Serve {
    /// The port; 0 takes a free one
    #[arg(long, default_value_t = 4180)]
    port: u16,
}

pub(super) fn run(common: &Common, asked: &Serve) -> Result<(), Failure> {
    until_ended(common.screens()?, common.clock(), asked.port)
}

/// Serves until the process is ended.
pub(super) fn until_ended(screens: Screens, clock: Clock, port: u16) -> Result<(), Failure> {
    let token = token()?;
    let runtime = tokio::runtime::Runtime::new()
        .map_err(|error| Failure::new(format!("the page could not be started: {error}")))?;
    runtime
        .block_on(page::serve(
            Serving {
                screens,
                clock,
                port,
                token,
            },
            |address| {
                say(&format!(
                    "Open {address}\nOnly this computer can reach it. End it with Ctrl-C."
                ));
            },
        ))
        .map_err(|error| {
            Failure::new(format!(
                "port {port} could not be used ({error}); try --port 0"
            ))
        })
}

fn token() -> Result<String, Failure> {
    let mut bytes = [0_u8; 24];
    getrandom::fill(&mut bytes)
        .map_err(|error| Failure::new(format!("this computer gave no random number: {error}")))?;
    Ok(hex(&bytes))
}
