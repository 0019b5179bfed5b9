//! Reads addresses from standard input, one a line, and prints what each comes to as a line of JSON: for the outside checks.

use book::address::{Direction, House, normalise_text};
use std::io::{self, BufRead, Write};

fn main() -> io::Result<()> {
    let mut out = io::stdout().lock();
    for line in io::stdin().lock().lines() {
        let normal = normalise_text(&line?);
        let said = serde_json::json!({
            "house": normal.house.as_ref().map(House::as_str),
            "before": normal.street.before.map(Direction::short),
            "name": normal.street.name,
            "suffix": normal.street.suffix,
            "after": normal.street.after.map(Direction::short),
            "unit": normal.unit,
            "town": normal.town,
            "region": normal.region,
            "postcode": normal.postcode,
            "key": normal.key(),
        });
        writeln!(out, "{said}")?;
    }
    Ok(())
}
