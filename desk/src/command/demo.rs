//! The demo: a firm, a town and its roofs, all invented, played into a new book.

use super::answer::say;
use super::{Common, look, make, serve};
use crate::clock::Clock;
use crate::failure::Failure;
use crate::plain;
use acts::{Book, Key, letter};
use clap::Args;
use fixtures::play::Player;
use screens::{Place, Screens};
use std::path::{Path, PathBuf};
use trade::ids::PropertyId;
use trade::words::Said;

/// The demo.
#[derive(Args, Debug)]
pub(super) struct Demo {
    /// Only write: do not open the page
    #[arg(long)]
    no_serve: bool,
    /// Stop at the call that the main story turns on, so that you can make the visit yourself
    #[arg(long)]
    at_call: bool,
    /// The folder to write to: the book, its key, and the main story's letter. What an earlier demo left there is replaced
    #[arg(long, value_name = "FOLDER", default_value = "demo-book")]
    out: PathBuf,
    /// The port of the page; 0 takes a free one
    #[arg(long, default_value_t = 4180)]
    port: u16,
}

const BOOK: &str = "book";
const KEY: &str = "demo.key";

pub(super) fn run(common: &Common, asked: &Demo) -> Result<(), Failure> {
    let demo = fixtures::demo();
    let clock = Clock {
        today: Some(common.today.unwrap_or(demo.today)),
    };
    let mut player = Player::new(&demo);
    let mut book = new_book(&asked.out, &player)?;
    let words = super::words_of(&book)?;
    let call = player.until_call(&mut book)?;
    let mut screens = Screens::of(book);
    let doorstep = screens.doorstep(call.property, Some(&call.request), clock.now())?;
    say(&plain::doorstep(&doorstep));
    if !asked.at_call {
        let mut book = screens.into_book();
        player.rest(&mut book)?;
        screens = Screens::of(book);
        let drawn = tell(&screens, call.property, clock)?;
        make::write(&asked.out, &drawn)?;
        let file = shown(&asked.out.join("letter.pdf"));
        say("");
        say(&words.say(&Said::new("desk-demo-letter").with("file", file)));
    }
    say(&words.say(
        &Said::new("desk-demo-book")
            .with("folder", shown(&asked.out.join(BOOK)))
            .with("key", shown(&asked.out.join(KEY)))
            .with("day", demo.today.to_string()),
    ));
    if asked.no_serve {
        return Ok(());
    }
    serve::until_ended(screens, clock, asked.port)
}

fn shown(path: &Path) -> String {
    path.display().to_string()
}

fn new_book(out: &Path, player: &Player<'_>) -> Result<Book, Failure> {
    clear(out)?;
    std::fs::create_dir_all(out).map_err(|error| Failure::io(out, &error))?;
    let key = Key::generate()?;
    key.write_file(&out.join(KEY))?;
    Ok(player.new_book(&out.join(BOOK), &key)?)
}

/// Removes what an earlier demo left. Only a folder that holds the demo's own key is taken for one.
fn clear(out: &Path) -> Result<(), Failure> {
    let folder = out.join(BOOK);
    let key = out.join(KEY);
    if folder.exists() {
        if !key.exists() {
            return Err(Failure::new(
                Said::new("desk-demo-other").with("folder", shown(out)),
            ));
        }
        std::fs::remove_dir_all(&folder).map_err(|error| Failure::io(&folder, &error))?;
    }
    if key.exists() {
        std::fs::remove_file(&key).map_err(|error| Failure::io(&key, &error))?;
    }
    Ok(())
}

/// Tells how the main story goes on: second look, verdict; and draws its letter.
fn tell(screens: &Screens, main: PropertyId, clock: Clock) -> Result<letter::Drawn, Failure> {
    let book = screens.book();
    let visit = look::last_visit(book, main)?;
    let language = book.firm()?.language;
    let (judged, drawn) = letter::draw(book, visit, language, clock.now())?;
    let mut places = vec![Place::ThenAndNow { visit }];
    places.extend(
        judged
            .visit
            .structures
            .iter()
            .map(|&structure| Place::Verdict { visit, structure }),
    );
    for place in places {
        say(&look::shown(&screens.show(&place, clock.now())?));
    }
    say(&drawn.text);
    Ok(drawn)
}
