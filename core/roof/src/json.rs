//! JSON read member by member, so that what is wrong is told with its path.

use crate::error::{FileFault, ShapeError, Wanted};
use serde_json::{Map, Value};
use trade::units::{Length, Pitch};

/// A value in a file, and where it stands.
#[derive(Clone, Debug)]
pub(crate) struct At<'a> {
    value: &'a Value,
    path: String,
}

/// A text as JSON. The mark that some editors begin a file with is passed over.
pub(crate) fn parse(text: &str) -> Result<Value, ShapeError> {
    serde_json::from_str(text.strip_prefix('\u{feff}').unwrap_or(text)).map_err(|error| {
        ShapeError::File {
            path: String::new(),
            fault: FileFault::NoJson {
                line: error.line(),
                column: error.column(),
            },
        }
    })
}

impl<'a> At<'a> {
    /// The whole of a file.
    pub(crate) fn root(value: &'a Value) -> Self {
        Self {
            value,
            path: String::new(),
        }
    }

    /// A fault here.
    pub(crate) fn fault(&self, fault: FileFault) -> ShapeError {
        ShapeError::File {
            path: self.path.clone(),
            fault,
        }
    }

    fn wants(&self, wanted: Wanted) -> ShapeError {
        self.fault(FileFault::Wants(wanted))
    }

    fn object(&self) -> Result<&'a Map<String, Value>, ShapeError> {
        self.value
            .as_object()
            .ok_or_else(|| self.wants(Wanted::Object))
    }

    /// A member that need not be there; null is as good as nothing.
    pub(crate) fn member(&self, name: &str) -> Result<Option<Self>, ShapeError> {
        let value = self.object()?.get(name).filter(|value| !value.is_null());
        Ok(value.map(|value| Self {
            value,
            path: if self.path.is_empty() {
                name.to_owned()
            } else {
                format!("{}.{name}", self.path)
            },
        }))
    }

    /// A member that must be there.
    pub(crate) fn needed(&self, name: &str) -> Result<Self, ShapeError> {
        self.member(name)?
            .ok_or_else(|| self.fault(FileFault::Missing(name.to_owned())))
    }

    /// That no member is there but these.
    pub(crate) fn only(&self, known: &[&str]) -> Result<(), ShapeError> {
        let unknown = self
            .object()?
            .keys()
            .find(|key| !known.contains(&key.as_str()));
        unknown.map_or(Ok(()), |key| {
            let known: Vec<&str> = known
                .iter()
                .filter(|key| !key.starts_with('$'))
                .copied()
                .collect();
            Err(self.unknown(key, &known))
        })
    }

    fn unknown(&self, name: &str, known: &[&str]) -> ShapeError {
        self.fault(FileFault::Unknown {
            name: name.to_owned(),
            known: known.join(", "),
        })
    }

    /// The items of a list.
    pub(crate) fn items(&self) -> Result<Vec<Self>, ShapeError> {
        let items = self
            .value
            .as_array()
            .ok_or_else(|| self.wants(Wanted::List))?;
        Ok(items
            .iter()
            .enumerate()
            .map(|(at, value)| Self {
                value,
                path: format!("{}[{at}]", self.path),
            })
            .collect())
    }

    pub(crate) fn text(&self) -> Result<&'a str, ShapeError> {
        self.value.as_str().ok_or_else(|| self.wants(Wanted::Text))
    }

    pub(crate) fn is_text(&self) -> bool {
        self.value.is_string()
    }

    pub(crate) fn is_list(&self) -> bool {
        self.value.is_array()
    }

    /// A number. JSON has none that is not finite, but one may be too large to be read as such.
    pub(crate) fn number(&self) -> Result<f64, ShapeError> {
        self.value
            .as_f64()
            .filter(|number| number.is_finite())
            .ok_or_else(|| self.wants(Wanted::Number))
    }

    /// One of the words that a kind of thing is written with.
    pub(crate) fn word<T: Copy>(&self, words: &[(&str, T)]) -> Result<T, ShapeError> {
        let text = self.text()?;
        words
            .iter()
            .find(|(word, _)| *word == text)
            .map(|(_, meant)| *meant)
            .ok_or_else(|| {
                let known: Vec<&str> = words.iter().map(|(word, _)| *word).collect();
                self.unknown(text, &known)
            })
    }

    /// A pitch as people write it.
    pub(crate) fn pitch(&self) -> Result<Pitch, ShapeError> {
        let text = self.text()?;
        text.parse()
            .map_err(|_| self.fault(FileFault::Pitch(text.to_owned())))
    }

    /// A length as people write it; less than nothing after a minus.
    pub(crate) fn length(&self) -> Result<Length, ShapeError> {
        let text = self.text()?;
        let (size, sign) = match text.trim_start().strip_prefix(['-', '−']) {
            Some(size) => (size, -1),
            None => (text, 1),
        };
        size.parse::<Length>()
            .map(|length| Length::of_nanometres(sign * length.nanometres()))
            .map_err(|_| self.fault(FileFault::Length(text.to_owned())))
    }
}
