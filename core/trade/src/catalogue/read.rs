//! Reading the catalogue from its data files, and what is checked of them.

use super::{Catalogue, Defect, Effect, Kind, KindKey, Remedy, Stop};
use serde::Deserialize;
use serde::de::DeserializeOwned;
use std::collections::{BTreeMap, BTreeSet};

/// One data file: its name, for a message, and its text.
#[derive(Clone, Copy, Debug)]
pub struct DataFile<'a> {
    /// Its name.
    pub name: &'a str,
    /// Its text, TOML.
    pub text: &'a str,
}

/// The data files of a catalogue.
#[derive(Clone, Copy, Debug)]
pub struct DataFiles<'a> {
    /// The stops of the walk.
    pub stops: DataFile<'a>,
    /// The kinds of part.
    pub kinds: DataFile<'a>,
    /// The remedies.
    pub remedies: DataFile<'a>,
    /// The defects, in as many files as there are areas of a roof.
    pub defects: &'a [DataFile<'a>],
}

macro_rules! data {
    ($file:literal) => {
        DataFile {
            name: $file,
            text: include_str!(concat!("../../catalogue/", $file)),
        }
    };
}

impl DataFiles<'static> {
    /// The files that are built in.
    pub const STANDARD: Self = Self {
        stops: data!("stops.toml"),
        kinds: data!("kinds.toml"),
        remedies: data!("remedies.toml"),
        defects: &[
            data!("defects/covering.toml"),
            data!("defects/fastening.toml"),
            data!("defects/layers.toml"),
            data!("defects/deck.toml"),
            data!("defects/edges.toml"),
            data!("defects/gutters.toml"),
            data!("defects/valleys.toml"),
            data!("defects/pipes.toml"),
            data!("defects/fuel_vents.toml"),
            data!("defects/chimneys.toml"),
            data!("defects/flashings.toml"),
            data!("defects/skylights.toml"),
            data!("defects/walls.toml"),
            data!("defects/low_slopes.toml"),
            data!("defects/ridges.toml"),
            data!("defects/attachments.toml"),
            data!("defects/earlier_repairs.toml"),
            data!("defects/attic.toml"),
            data!("defects/surroundings.toml"),
        ],
    };
}

/// What is wrong with the data files of a catalogue. Nothing of a damaged catalogue is used.
#[derive(Debug, thiserror::Error)]
pub enum CatalogueError {
    /// A file is no TOML of the shape that is asked for.
    #[error("{file}: {source}")]
    File {
        /// Which file.
        file: String,
        /// What is wrong with it, and where.
        source: Box<toml::de::Error>,
    },
    /// Two entries bear the same key.
    #[error("{what} {key} stands twice: give one of them a key of its own")]
    Twice {
        /// What they are: "stop", "kind", "remedy", "defect".
        what: &'static str,
        /// Their key.
        key: String,
    },
    /// An entry names something that is not there.
    #[error("{entry} names a {what} that is not there: {key}")]
    NotThere {
        /// The entry.
        entry: String,
        /// What it names.
        what: &'static str,
        /// The key it names it by.
        key: String,
    },
    /// A defect is found on no part, so nobody could reach it.
    #[error("defect {defect} is found on no part: name at least one kind")]
    NoPart {
        /// Which defect.
        defect: String,
    },
    /// Nothing cures a defect on a kind of part it is found on.
    #[error(
        "nothing cures defect {defect} on {kind}: name a remedy, another trade's work if need be"
    )]
    NoCure {
        /// Which defect.
        defect: String,
        /// On which kind.
        kind: String,
    },
    /// A remedy of a defect is limited to a kind of part that the defect is not found on.
    #[error(
        "remedy {remedy} of defect {defect} is meant for {kind}, where the defect is not found"
    )]
    RemedyElsewhere {
        /// Which defect.
        defect: String,
        /// Which remedy.
        remedy: String,
        /// Which kind.
        kind: String,
    },
    /// A patch holds for no time, or its shortest time is longer than its longest, or nobody says where the time is from.
    #[error(
        "how long remedy {remedy} holds on defect {defect} is not clear: say [least, most] in months and its source"
    )]
    HoldsUnclear {
        /// Which defect.
        defect: String,
        /// Which remedy.
        remedy: String,
    },
    /// How often a defect is met is outside 1 to 5.
    #[error("defect {defect} is said to be met {common} on a scale of 1 to 5")]
    Common {
        /// Which defect.
        defect: String,
        /// What is said.
        common: u8,
    },
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct StopFile {
    stop: Vec<Stop>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct KindFile {
    kind: Vec<Kind>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct DefectFile {
    defect: Vec<Defect>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RemedyFile {
    remedy: Vec<Remedy>,
}

impl Catalogue {
    /// Reads a catalogue and checks that its entries fit together.
    ///
    /// # Errors
    /// The first thing found wrong: a file that cannot be read, or an entry that does not fit.
    pub fn read(files: &DataFiles<'_>) -> Result<Self, CatalogueError> {
        let stops = parse::<StopFile>(files.stops)?.stop;
        let kinds = parse::<KindFile>(files.kinds)?.kind;
        let remedies = parse::<RemedyFile>(files.remedies)?.remedy;
        let mut defects = Vec::new();
        for file in files.defects {
            defects.extend(parse::<DefectFile>(*file)?.defect);
        }
        once("stop", stops.iter().map(|stop| stop.key.as_str()))?;
        once("kind", kinds.iter().map(|kind| kind.key.as_str()))?;
        once("remedy", remedies.iter().map(|remedy| remedy.key.as_str()))?;
        once("defect", defects.iter().map(|defect| defect.key.as_str()))?;
        kinds.iter().try_for_each(|kind| stands(kind, &stops))?;
        for defect in &defects {
            is_found(defect, &kinds)?;
            is_treated(defect, &remedies)?;
        }
        let by_defect: BTreeMap<_, _> = defects
            .iter()
            .enumerate()
            .map(|(at, defect)| (defect.key.clone(), at))
            .collect();
        Ok(Self {
            stops,
            kinds,
            defects,
            remedies,
            by_defect,
        })
    }
}

fn parse<T: DeserializeOwned>(file: DataFile<'_>) -> Result<T, CatalogueError> {
    toml::from_str(file.text).map_err(|source| CatalogueError::File {
        file: file.name.to_owned(),
        source: Box::new(source),
    })
}

fn once<'a>(
    what: &'static str,
    mut keys: impl Iterator<Item = &'a str>,
) -> Result<(), CatalogueError> {
    let mut seen = BTreeSet::new();
    match keys.find(|key| !seen.insert(*key)) {
        Some(key) => Err(CatalogueError::Twice {
            what,
            key: key.to_owned(),
        }),
        None => Ok(()),
    }
}

fn stands(kind: &Kind, stops: &[Stop]) -> Result<(), CatalogueError> {
    if stops.iter().any(|stop| stop.key == kind.stop) {
        return Ok(());
    }
    Err(CatalogueError::NotThere {
        entry: format!("kind {}", kind.key),
        what: "stop",
        key: kind.stop.to_string(),
    })
}

fn is_found(defect: &Defect, kinds: &[Kind]) -> Result<(), CatalogueError> {
    if defect.parts.is_empty() {
        return Err(CatalogueError::NoPart {
            defect: defect.key.to_string(),
        });
    }
    if !(1..=5).contains(&defect.common) {
        return Err(CatalogueError::Common {
            defect: defect.key.to_string(),
            common: defect.common,
        });
    }
    for part in &defect.parts {
        is_known(defect, part, kinds)?;
        if defect.cures_on(part).next().is_none() {
            return Err(CatalogueError::NoCure {
                defect: defect.key.to_string(),
                kind: part.to_string(),
            });
        }
    }
    Ok(())
}

fn is_known(defect: &Defect, part: &KindKey, kinds: &[Kind]) -> Result<(), CatalogueError> {
    if kinds.iter().any(|kind| &kind.key == part) {
        return Ok(());
    }
    Err(CatalogueError::NotThere {
        entry: format!("defect {}", defect.key),
        what: "kind",
        key: part.to_string(),
    })
}

fn is_treated(defect: &Defect, remedies: &[Remedy]) -> Result<(), CatalogueError> {
    for treats in &defect.remedies {
        if !remedies.iter().any(|known| known.key == treats.remedy) {
            return Err(CatalogueError::NotThere {
                entry: format!("defect {}", defect.key),
                what: "remedy",
                key: treats.remedy.to_string(),
            });
        }
        if let Some(kind) = treats.on.iter().find(|kind| !defect.parts.contains(kind)) {
            return Err(CatalogueError::RemedyElsewhere {
                defect: defect.key.to_string(),
                remedy: treats.remedy.to_string(),
                kind: kind.to_string(),
            });
        }
        if !holds_clearly(&treats.effect) {
            return Err(CatalogueError::HoldsUnclear {
                defect: defect.key.to_string(),
                remedy: treats.remedy.to_string(),
            });
        }
    }
    Ok(())
}

fn holds_clearly(effect: &Effect) -> bool {
    match effect {
        Effect::BuysTime { months, source } => {
            months.least > 0 && months.least <= months.most && !source.trim().is_empty()
        }
        Effect::Cures | Effect::Worsens => true,
    }
}
