//! The price list as a file: comma-separated, with a published header (docs/price-list.md), read and written.

mod build;
mod cell;
mod error;
mod write;

pub use error::{Column, PriceListError, PriceListErrors, Problem};
pub use write::write_list;

use build::Builder;
use cell::Row;
use trade::price_list::PriceList;

/// Most mistakes told at once.
const MOST_ERRORS: usize = 100;

/// Reads a price list. Columns stand in any order; those that a list does not use may be left out. Lines that begin with `#` are his own notes.
///
/// # Errors
/// Every mistake with its line and column, in the order of the lines, up to a hundred of them.
pub fn read_list(bytes: &[u8]) -> Result<PriceList, PriceListErrors> {
    let mut text = as_text(bytes)
        .map_err(|error| PriceListErrors(vec![error]))?
        .to_owned();
    // With a line end of its own, a quotation mark that is open in the last line runs over it and is seen.
    text.push('\n');
    let mut errors = Vec::new();
    let rows = rows(&text, &mut errors);
    let mut builder = Builder::default();
    for row in rows {
        builder.take(row, &mut errors);
    }
    let list = builder.finish(&mut errors);
    errors.sort_by_key(|error| error.line.unwrap_or(u64::MAX));
    errors.truncate(MOST_ERRORS);
    match list {
        Some(list) if errors.is_empty() => Ok(list),
        _ => Err(PriceListErrors(errors)),
    }
}

fn as_text(bytes: &[u8]) -> Result<&str, PriceListError> {
    let bytes = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes);
    std::str::from_utf8(bytes).map_err(|error| {
        let before = bytes.get(..error.valid_up_to()).unwrap_or_default();
        let lines = before.split(|byte| *byte == b'\n').count() as u64;
        PriceListError::at(lines, None, Problem::NotText)
    })
}

/// The rows under the header. Without a header that can be read there are none.
fn rows(text: &str, errors: &mut Vec<PriceListError>) -> Vec<Row> {
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .comment(Some(b'#'))
        .from_reader(text.as_bytes());
    let mut header: Option<Vec<Column>> = None;
    let mut rows = Vec::new();
    for record in reader.records().map_while(Result::ok) {
        let start = record.position().map_or(0, csv::Position::byte);
        let line = line_of(text, start);
        match &header {
            None => match read_header(&record, line) {
                Ok(columns) => header = Some(columns),
                Err(problems) => {
                    errors.extend(problems);
                    return Vec::new();
                }
            },
            Some(columns) => match Row::read(&record, columns, line) {
                Ok(row) => rows.extend(row),
                Err(error) => errors.push(error),
            },
        }
    }
    if header.is_none() {
        errors.push(PriceListError::at(1, None, Problem::NoHeader));
    }
    rows
}

/// The line that a record begins on, counted from 1. The reader's own position is that of the notes and empty lines before it.
fn line_of(text: &str, from: u64) -> u64 {
    let from = usize::try_from(from).unwrap_or(usize::MAX).min(text.len());
    let before = text.get(..from).unwrap_or_default();
    let skipped = text
        .get(from..)
        .unwrap_or_default()
        .lines()
        .take_while(|line| line.trim_end_matches('\r').is_empty() || line.starts_with('#'))
        .count();
    let lines = before.matches('\n').count() + skipped;
    1 + lines as u64
}

fn read_header(record: &csv::StringRecord, line: u64) -> Result<Vec<Column>, Vec<PriceListError>> {
    let at = |problem| PriceListError::at(line, None, problem);
    if record.len() == 1 && record.iter().any(|cell| cell.contains(';')) {
        return Err(vec![at(Problem::Semicolons)]);
    }
    let mut errors = Vec::new();
    let mut columns = Vec::new();
    for cell in record.iter().map(str::trim) {
        match Column::named(cell) {
            Some(column) if columns.contains(&column) => {
                errors.push(at(Problem::ColumnTwice(column)));
            }
            Some(column) => columns.push(column),
            None => errors.push(at(Problem::NoSuchColumn(cell.to_owned()))),
        }
    }
    for needed in [Column::Row, Column::Key] {
        if !columns.contains(&needed) {
            errors.push(at(Problem::ColumnMissing(needed)));
        }
    }
    if errors.is_empty() {
        Ok(columns)
    } else {
        Err(errors)
    }
}
