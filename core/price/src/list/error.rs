//! What is wrong with a price list, and where.

use trade::takeoff::Unit;
use trade::words::Said;

/// A column of the file.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Column {
    /// What kind of row it is.
    Row,
    /// What it is about.
    Key,
    /// What of it: a band, a material, what tax is on.
    Of,
    /// The greatest size it serves.
    Size,
    /// In what it is counted.
    Unit,
    /// How much.
    Amount,
    /// Width of a roll.
    Width,
    /// Length of a roll or piece.
    Length,
    /// Money.
    Price,
    /// Hours for one.
    Hours,
    /// A share, a pitch, a rate's name, a choice.
    Value,
    /// The firm's own name for it, or a source.
    Name,
}

impl Column {
    /// All of them, in the order they are written.
    pub const ALL: [Self; 12] = [
        Self::Row,
        Self::Key,
        Self::Of,
        Self::Size,
        Self::Unit,
        Self::Amount,
        Self::Width,
        Self::Length,
        Self::Price,
        Self::Hours,
        Self::Value,
        Self::Name,
    ];

    /// Its name in the header.
    pub fn name(self) -> &'static str {
        match self {
            Self::Row => "row",
            Self::Key => "key",
            Self::Of => "of",
            Self::Size => "size",
            Self::Unit => "unit",
            Self::Amount => "amount",
            Self::Width => "width",
            Self::Length => "length",
            Self::Price => "price",
            Self::Hours => "hours",
            Self::Value => "value",
            Self::Name => "name",
        }
    }

    pub(crate) fn named(name: &str) -> Option<Self> {
        Self::ALL
            .into_iter()
            .find(|column| column.name().eq_ignore_ascii_case(name))
    }
}

/// What is wrong.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Problem {
    /// It is not text in UTF-8.
    NotText,
    /// There is no header.
    NoHeader,
    /// The cells are parted by semicolons.
    Semicolons,
    /// The header has a column that is not known.
    NoSuchColumn(String),
    /// The header lacks a column.
    ColumnMissing(Column),
    /// The header has a column twice.
    ColumnTwice(Column),
    /// The row has more cells than the header.
    TooManyCells,
    /// A quotation mark is not closed.
    OpenQuote,
    /// No such kind of row.
    NoSuchRow(String),
    /// No such key in such a row.
    NoSuchKey(String),
    /// The cell is empty and must not be.
    Empty,
    /// The cell is filled and has no meaning in such a row.
    NoMeaning(String),
    /// Not a number.
    NotANumber(String),
    /// More than two decimals of money.
    TooManyDecimals(String),
    /// A number beyond what is reckoned with, or nothing where something is wanted.
    OutOfRange(String),
    /// Not a share in per cent.
    NotAShare(String),
    /// A margin of the whole price or more, or another share beyond what makes sense.
    ShareOutOfRange(String),
    /// Not a length.
    NotALength(String),
    /// Not a pitch.
    NotAPitch(String),
    /// Not one of the words that may stand there.
    NotOneOf(String, &'static str),
    /// Counted in another unit than it must be.
    WrongUnit(String, Unit),
    /// The same row stands further up.
    Twice(u64),
    /// The list gives both a margin and a markup.
    MarginAndMarkup(u64),
    /// No band of that name.
    NoSuchBand(String),
    /// No rate of that name.
    NoSuchRate(String),
    /// The bands do not rise, or one without an end is not the last.
    BandsOutOfOrder,
    /// Waste is given for what is laid piece by piece.
    WasteIsComputed,
    /// The pack does not hold what its width and length make.
    PackDisagrees(String),
    /// Not a currency's three letters.
    NotACurrency(String),
    /// The years are not in order, or not "15-25".
    NotYears(String),
    /// A row that every list has is not there.
    RowMissing(&'static str),
}

/// One mistake in a price list.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("line {line:?}, column {column:?}: {problem:?}")]
pub struct PriceListError {
    /// The line, counted from 1 with the header; `None` where something is missing from the whole list.
    pub line: Option<u64>,
    /// The column, where it is one cell's mistake.
    pub column: Option<Column>,
    /// What is wrong.
    pub problem: Problem,
}

impl PriceListError {
    pub(crate) fn at(line: u64, column: Option<Column>, problem: Problem) -> Self {
        Self {
            line: Some(line),
            column,
            problem,
        }
    }

    /// What it says to the roofer: where, what, and what to write instead.
    pub fn says(&self) -> Said {
        let what = self.problem.says();
        match (self.line, self.column) {
            (None, _) => Said::new("price-list-at-whole").with("what", what),
            (Some(line), None) => Said::new("price-list-at-line")
                .with("line", line.to_string())
                .with("what", what),
            (Some(line), Some(column)) => Said::new("price-list-at-cell")
                .with("line", line.to_string())
                .with("column", column.name())
                .with("what", what),
        }
    }
}

impl Problem {
    fn says(&self) -> Said {
        let text = |key: &str, text: &str| Said::new(key).with("text", text);
        match self {
            Self::NotText => Said::new("price-list-not-text"),
            Self::NoHeader => Said::new("price-list-no-header"),
            Self::Semicolons => Said::new("price-list-semicolons"),
            Self::NoSuchColumn(name) => text("price-list-no-such-column", name),
            Self::ColumnMissing(column) => text("price-list-column-missing", column.name()),
            Self::ColumnTwice(column) => text("price-list-column-twice", column.name()),
            Self::TooManyCells => Said::new("price-list-too-many-cells"),
            Self::OpenQuote => Said::new("price-list-open-quote"),
            Self::NoSuchRow(row) => text("price-list-no-such-row", row),
            Self::NoSuchKey(key) => text("price-list-no-such-key", key),
            Self::Empty => Said::new("price-list-empty"),
            Self::NoMeaning(cell) => text("price-list-no-meaning", cell),
            Self::NotANumber(cell) => text("price-list-not-a-number", cell),
            Self::TooManyDecimals(cell) => text("price-list-too-many-decimals", cell),
            Self::OutOfRange(cell) => text("price-list-out-of-range", cell),
            Self::NotAShare(cell) => text("price-list-not-a-share", cell),
            Self::ShareOutOfRange(cell) => text("price-list-share-out-of-range", cell),
            Self::NotALength(cell) => text("price-list-not-a-length", cell),
            Self::NotAPitch(cell) => text("price-list-not-a-pitch", cell),
            Self::NotOneOf(cell, may) => text("price-list-not-one-of", cell).with("may", *may),
            Self::WrongUnit(cell, unit) => {
                text("price-list-wrong-unit", cell).with("unit", unit.name())
            }
            Self::Twice(line) => Said::new("price-list-twice").with("line", line.to_string()),
            Self::MarginAndMarkup(line) => {
                Said::new("price-list-margin-and-markup").with("line", line.to_string())
            }
            Self::NoSuchBand(cell) => text("price-list-no-such-band", cell),
            Self::NoSuchRate(cell) => text("price-list-no-such-rate", cell),
            Self::BandsOutOfOrder => Said::new("price-list-bands-out-of-order"),
            Self::WasteIsComputed => Said::new("price-list-waste-is-computed"),
            Self::PackDisagrees(holds) => text("price-list-pack-disagrees", holds),
            Self::NotACurrency(cell) => text("price-list-not-a-currency", cell),
            Self::NotYears(cell) => text("price-list-not-years", cell),
            Self::RowMissing(row) => text("price-list-row-missing", row),
        }
    }
}

/// Every mistake in a price list, by line.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("the price list has {} mistakes", .0.len())]
pub struct PriceListErrors(pub Vec<PriceListError>);

impl PriceListErrors {
    /// What they say to the roofer, one sentence each.
    pub fn says(&self) -> Vec<Said> {
        self.0.iter().map(PriceListError::says).collect()
    }
}
