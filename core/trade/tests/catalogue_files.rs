//! Reading a catalogue: a damaged data file is refused with a typed error that names the place.

use trade::catalogue::{Catalogue, CatalogueError, DataFile, DataFiles};

/// Reads the standard files with one more defect file, and gives what is wrong.
fn with_defect(text: &str) -> CatalogueError {
    let mut defects = DataFiles::STANDARD.defects.to_vec();
    defects.push(DataFile {
        name: "more.toml",
        text,
    });
    Catalogue::read(&DataFiles {
        defects: &defects,
        ..DataFiles::STANDARD
    })
    .expect_err("a damaged file was taken")
}

fn defect_text(parts: &str, common: u8, remedies: &str) -> String {
    format!(
        "[[defect]]\nkey = \"probe\"\nparts = [{parts}]\nfamily = \"split\"\ncause = \"wind\"\nurgency = \"later\"\n\
         rung = \"ageing\"\ncommon = {common}\nremedies = [{remedies}]\n"
    )
}

const CURE: &str = r#"{ remedy = "renail", effect = "cures" }"#;

#[test]
fn a_file_that_is_no_catalogue_is_named_with_its_place() {
    let error = with_defect("[[defect]]\nkey = \"probe\"\ncolour = \"red\"\n");
    assert!(matches!(&error, CatalogueError::File { file, .. } if file == "more.toml"));
    assert!(error.to_string().contains("line"), "{error}");
}

#[test]
fn a_key_that_stands_twice_is_refused() {
    let twice = defect_text("\"covering\"", 1, CURE).replace("probe", "boot-split");
    assert!(
        matches!(with_defect(&twice), CatalogueError::Twice { what: "defect", key } if key == "boot-split")
    );
    let stop = DataFile {
        name: "stops.toml",
        text: "stop = [{ key = \"eave\", quick = true }, { key = \"eave\", quick = true }]",
    };
    let error = Catalogue::read(&DataFiles {
        stops: stop,
        ..DataFiles::STANDARD
    })
    .expect_err("two eaves");
    assert!(matches!(error, CatalogueError::Twice { what: "stop", .. }));
}

#[test]
fn what_is_not_there_is_named() {
    let kind = with_defect(&defect_text("\"turret\"", 1, CURE));
    assert!(matches!(kind, CatalogueError::NotThere { what: "kind", key, .. } if key == "turret"));
    let remedy = with_defect(&defect_text(
        "\"covering\"",
        1,
        &format!("{CURE}, {{ remedy = \"wishing\", effect = \"worsens\" }}"),
    ));
    assert!(
        matches!(remedy, CatalogueError::NotThere { what: "remedy", key, .. } if key == "wishing")
    );
    let stops = DataFile {
        name: "stops.toml",
        text: "stop = [{ key = \"eave\", quick = true }]",
    };
    let stop = Catalogue::read(&DataFiles {
        stops,
        ..DataFiles::STANDARD
    })
    .expect_err("stops are missing");
    assert!(matches!(
        stop,
        CatalogueError::NotThere { what: "stop", .. }
    ));
}

#[test]
fn a_defect_that_fits_nothing_is_refused() {
    assert!(matches!(
        with_defect(&defect_text("", 1, CURE)),
        CatalogueError::NoPart { .. }
    ));
    assert!(matches!(
        with_defect(&defect_text("\"covering\"", 6, CURE)),
        CatalogueError::Common { common: 6, .. }
    ));
    assert!(matches!(
        with_defect(&defect_text("\"covering\"", 0, CURE)),
        CatalogueError::Common { common: 0, .. }
    ));
    assert!(matches!(
        with_defect(&defect_text("\"covering\"", 1, "")),
        CatalogueError::NoCure { .. }
    ));
}

#[test]
fn a_cure_meant_for_another_part_is_no_cure() {
    let elsewhere = r#"{ remedy = "renail", on = ["deck"], effect = "cures" }"#;
    assert!(matches!(
        with_defect(&defect_text("\"covering\", \"deck\"", 1, elsewhere)),
        CatalogueError::NoCure { kind, .. } if kind == "covering"
    ));
    assert!(matches!(
        with_defect(&defect_text("\"covering\"", 1, &format!("{CURE}, {elsewhere}"))),
        CatalogueError::RemedyElsewhere { kind, .. } if kind == "deck"
    ));
}

#[test]
fn a_patch_must_say_how_long_it_holds_and_who_says_so() {
    for (months, source) in [
        ("[6, 3]", "common practice"),
        ("[0, 3]", "common practice"),
        ("[3, 6]", " "),
    ] {
        let patch = format!(
            "{CURE}, {{ remedy = \"sealant\", effect = \"buys-time\", months = {months}, source = \"{source}\" }}"
        );
        let error = with_defect(&defect_text("\"covering\"", 1, &patch));
        assert!(
            matches!(error, CatalogueError::HoldsUnclear { .. }),
            "{months} {source:?}: {error}"
        );
    }
}
