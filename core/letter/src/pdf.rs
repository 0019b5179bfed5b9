//! The letter on US letter paper: PDF/A-2a and PDF/UA-1, tagged, with its fonts inside.

mod printable;
mod world;

use crate::content::Content;
use crate::picture::{self, Shrunk};
use crate::{LetterError, Pictures};
use printable::Printable;
use serde::Serialize;
use std::collections::BTreeMap;
use trade::ids::PhotoId;
use trade::ladder::{self, Ladder, Stroke};
use typst::comemo;
use typst::diag::SourceDiagnostic;
use typst::ecow::EcoVec;
use typst::foundations::Smart;
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};
use world::Paper;

/// What the template is given, as JSON: text only ever as strings, so that none of it can be read as markup.
#[derive(Serialize)]
struct Handed<'a> {
    content: &'a Content,
    ladders: Ladders,
    /// Size in pixels of every picture that can be shown.
    pictures: BTreeMap<PhotoId, [u32; 2]>,
}

/// The strokes of every ladder, in hundredths of its height.
#[derive(Serialize)]
struct Ladders {
    width: f64,
    height: f64,
    weight: f64,
    strokes: Vec<(Ladder, Vec<Stroke>)>,
}

/// The letter as a PDF. The same content and pictures give the same bytes.
///
/// A picture that is missing or can't be read leaves a line that says so. At no time is more than one original held.
///
/// # Errors
/// Where the page layout or the file format's rules refuse the letter.
pub fn pdf(content: &Content, pictures: &dyn Pictures) -> Result<Vec<u8>, LetterError> {
    let shrunk = shrunk(content, pictures);
    let sizes = shrunk
        .iter()
        .map(|(&photo, picture)| (photo, [picture.width, picture.height]))
        .collect();
    let handed = Handed {
        content,
        ladders: ladders(),
        pictures: sizes,
    };
    let data = Printable::new()
        .apply(&handed)
        .map_err(|error| LetterError::Layout(error.to_string()))?;
    let paper = Paper::new(
        &data,
        shrunk
            .into_iter()
            .map(|(photo, picture)| (photo, picture.jpeg)),
    );
    let bytes = set(&paper, content);
    // The layout's cache holds every picture: nothing of a letter stays in memory once it is written.
    drop(paper);
    comemo::evict(0);
    bytes
}

fn shrunk(content: &Content, pictures: &dyn Pictures) -> BTreeMap<PhotoId, Shrunk> {
    let mut shrunk = BTreeMap::new();
    for picture in content.pictures() {
        if !shrunk.contains_key(&picture.photo)
            && let Some(small) = picture::shrunk(pictures, picture)
        {
            shrunk.insert(picture.photo, small);
        }
    }
    shrunk
}

fn ladders() -> Ladders {
    Ladders {
        width: ladder::WIDTH,
        height: ladder::HEIGHT,
        weight: ladder::WEIGHT,
        strokes: Ladder::ALL.map(|ladder| (ladder, ladder.strokes())).into(),
    }
}

fn set(paper: &Paper, content: &Content) -> Result<Vec<u8>, LetterError> {
    let document: PagedDocument = typst::compile(paper)
        .output
        .map_err(|errors| LetterError::Layout(first(&errors)))?;
    let standards = PdfStandards::new(&[PdfStandard::A_2a, PdfStandard::Ua_1])
        .map_err(|error| LetterError::Export(error.message().to_string()))?;
    let options = PdfOptions {
        ident: Smart::Custom(content.ident.clone()),
        creator: Smart::Custom(Some("Ladderbook".to_owned())),
        standards,
        ..PdfOptions::default()
    };
    typst_pdf::pdf(&document, &options).map_err(|errors| LetterError::Export(first(&errors)))
}

fn first(errors: &EcoVec<SourceDiagnostic>) -> String {
    errors
        .first()
        .map_or_else(String::new, |error| error.message.to_string())
}
