//! How long the core alone takes to show a place: `show FOLDER MILLIS TIMES PLACE...` prints the median of each in microseconds, a line a place.
//! FOLDER is one that `ladderbook demo --out` wrote, MILLIS the moment since 1970. `./dev bench` holds the same calls from Kotlin against it.

use acts::{Book, Key, Moment};
use jiff::{Timestamp, tz::Offset};
use screens::{Place, Screens};
use std::error::Error;
use std::path::Path;
use std::time::Instant;

fn main() -> Result<(), Box<dyn Error>> {
    let asked: Vec<String> = std::env::args().skip(1).collect();
    let [folder, millis, times, places @ ..] = asked.as_slice() else {
        return Err("show FOLDER MILLIS TIMES PLACE...".into());
    };
    let (folder, times) = (Path::new(folder), times.parse()?);
    let now = Moment::new(Timestamp::from_millisecond(millis.parse()?)?, Offset::UTC);
    let key = Key::from_file(&folder.join("demo.key"))?;
    let screens = Screens::of(Book::open(&folder.join("book"), &key)?);
    for place in places {
        println!("{:.1}", median(&screens, &place.parse()?, now, times)?);
    }
    Ok(())
}

/// The middle of so many calls, after as many that are not counted.
fn median(
    screens: &Screens,
    place: &Place,
    now: Moment,
    times: usize,
) -> Result<f64, screens::Trouble> {
    for _ in 0..times {
        screens.show(place, now)?;
    }
    let mut spans = Vec::with_capacity(times);
    for _ in 0..times {
        let begun = Instant::now();
        screens.show(place, now)?;
        spans.push(begun.elapsed());
    }
    spans.sort();
    Ok(spans[times / 2].as_secs_f64() * 1e6)
}
