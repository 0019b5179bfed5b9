//! The paper: all that the page layout may reach. No file system, no network, no clock.

use std::collections::BTreeMap;
use std::sync::LazyLock;
use trade::ids::PhotoId;
use typst::diag::{FileError, FileResult};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};

const TEMPLATE: &str = include_str!("../letter.typ");

/// Atkinson Hyperlegible; Noto Sans for letters it lacks (Vietnamese, Cyrillic, Greek). Both under the SIL Open Font License.
const FONT_FILES: [&[u8]; 4] = [
    include_bytes!("../../fonts/AtkinsonHyperlegible-Regular.ttf"),
    include_bytes!("../../fonts/AtkinsonHyperlegible-Bold.ttf"),
    include_bytes!("../../fonts/NotoSans-Regular.ttf"),
    include_bytes!("../../fonts/NotoSans-Bold.ttf"),
];

static FONTS: LazyLock<Vec<Font>> = LazyLock::new(|| {
    FONT_FILES
        .iter()
        .filter_map(|bytes| Font::new(Bytes::new(*bytes), 0))
        .collect()
});
static BOOK: LazyLock<LazyHash<FontBook>> =
    LazyLock::new(|| LazyHash::new(FontBook::from_fonts(FONTS.iter())));
static LIBRARY: LazyLock<LazyHash<Library>> = LazyLock::new(|| LazyHash::new(Library::default()));

/// The fonts a letter is set in.
pub fn fonts() -> &'static [Font] {
    &FONTS
}

/// Template, data, pictures and fonts of one letter.
pub struct Paper {
    template: Source,
    files: BTreeMap<String, Bytes>,
}

impl Paper {
    /// With the data as JSON text, and pictures as JPEG.
    pub fn new(data: &str, pictures: impl Iterator<Item = (PhotoId, Vec<u8>)>) -> Self {
        let mut files: BTreeMap<String, Bytes> = pictures
            .map(|(photo, jpeg)| (format!("/{photo}.jpg"), Bytes::new(jpeg)))
            .collect();
        files.insert("/data.json".to_owned(), Bytes::from_string(data.to_owned()));
        Self {
            template: Source::new(main_id(), TEMPLATE.to_owned()),
            files,
        }
    }
}

fn main_id() -> FileId {
    static ID: LazyLock<FileId> = LazyLock::new(|| {
        let path = VirtualPath::new("/letter.typ").unwrap_or_else(|_| unreachable!("a plain path"));
        RootedPath::new(VirtualRoot::Project, path).intern()
    });
    *ID
}

impl World for Paper {
    fn library(&self) -> &LazyHash<Library> {
        &LIBRARY
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &BOOK
    }

    fn main(&self) -> FileId {
        main_id()
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        if id == main_id() {
            Ok(self.template.clone())
        } else {
            Err(FileError::AccessDenied)
        }
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        let path = id.get().vpath().get_with_slash().to_string();
        self.files
            .get(&path)
            .cloned()
            .ok_or(FileError::AccessDenied)
    }

    fn font(&self, index: usize) -> Option<Font> {
        FONTS.get(index).cloned()
    }

    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}
