//! An open book.

use crate::block::{Filled, FormOf, Next, Onto, Shot, Tap};
use crate::cross::Cross;
use crate::files::Files;
use crate::long_work::LongWork;
use crate::phone::words;
use crate::ports::Ports;
use crate::show::Screen;
use crate::show::roof::PlanFile;
use crate::{Language, Moment, PhoneWords, Trouble};
use acts::{ActError, BookError, Key};
use screens::{Action, Place, Screens};
use std::io;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use trade::ids::{LetterId, PhotoId};
use trade::property::Position;
use trade::words::{Said, Words};

/// An open book behind its screens. A phone keeps one, for as long as it runs.
#[derive(uniffi::Object)]
pub struct Book {
    screens: Mutex<Screens>,
    files: Files,
    ports: Ports,
}

#[uniffi::export]
impl Book {
    /// Opens the book in a folder, or begins one on a phone that has none. `cache` is a folder for files to show, `language` that of the phone.
    ///
    /// # Errors
    /// Where the key is missing or wrong, or the disk says no; nothing is changed then.
    #[uniffi::constructor]
    pub fn open(
        folder: String,
        cache: String,
        language: Language,
        ports: Ports,
        now: Moment,
    ) -> Result<Arc<Self>, Trouble> {
        let words = words(language);
        let open = || {
            let book = open_or_begin(Path::new(&folder), language, &ports, words, now)?;
            let files = Files::new(Path::new(&cache)).map_err(|error| unwritten(words, &error))?;
            Ok(Arc::new(Self {
                screens: Mutex::new(Screens::of(book)),
                files,
                ports: ports.clone(),
            }))
        };
        catch_unwind(AssertUnwindSafe(open)).unwrap_or_else(|_| Err(Trouble::broke(words)))
    }

    /// The address of the place where a day begins.
    ///
    /// # Errors
    /// Never: every call answers with a result.
    pub fn start(&self) -> Result<String, Trouble> {
        Ok(Place::start().cross())
    }

    /// The words around the screens, in the firm's language.
    ///
    /// # Errors
    /// Where the book cannot be read.
    pub fn words(&self) -> Result<PhoneWords, Trouble> {
        self.with(|screens| {
            let tag = screens.book().firm().map(|firm| firm.language.tag());
            let words = screens.words()?;
            let tag = tag.map_err(|error| Trouble::of_book(words, &error))?;
            Ok(PhoneWords::of(words, tag))
        })
    }

    /// The state of a place, ready to draw.
    ///
    /// # Errors
    /// Where the address leads nowhere, something it names is not in the book, or the book cannot be read.
    pub fn show(&self, place: String, now: Moment) -> Result<Screen, Trouble> {
        let now = now.read()?;
        self.with(|screens| Ok(screens.show(&place_at(screens, &place)?, now)?.cross()))
    }

    /// Carries out a tap. What it records is durable when this answers.
    ///
    /// # Errors
    /// Where it was refused; nothing is half done.
    pub fn act(&self, tap: Arc<Tap>, now: Moment) -> Result<Next, Trouble> {
        self.carry_out(&tap.0, now)
    }

    /// Begins a tap that takes a while.
    ///
    /// # Errors
    /// Where the moment is none.
    pub fn begin(self: Arc<Self>, tap: Arc<Tap>, now: Moment) -> Result<Arc<LongWork>, Trouble> {
        Ok(LongWork::begin(self, tap, now.read()?))
    }

    /// Sends a form.
    ///
    /// # Errors
    /// Where it was refused; what was typed stays in the drafts.
    pub fn submit(
        &self,
        form: Arc<FormOf>,
        filled: Vec<Filled>,
        now: Moment,
    ) -> Result<Next, Trouble> {
        let values = filled
            .into_iter()
            .map(|field| (field.name, field.value))
            .collect();
        let form = form.0.clone();
        self.carry_out(&Action::Submit { form, values }, now)
    }

    /// Keeps half-typed words.
    ///
    /// # Errors
    /// Where the book cannot be written.
    pub fn draft(
        &self,
        form: Arc<FormOf>,
        field: String,
        text: String,
        now: Moment,
    ) -> Result<(), Trouble> {
        let form = form.0.clone();
        self.carry_out(&Action::Draft { form, field, text }, now)?;
        Ok(())
    }

    /// Takes in the picture that the camera took; `None` where it took none. The camera's file is removed once the picture is kept.
    ///
    /// # Errors
    /// Where the camera may not be used, the file is no picture, or the visit is closed; the camera's file stays then.
    pub fn shoot(&self, onto: Arc<Onto>, now: Moment) -> Result<Option<Shot>, Trouble> {
        let now = now.read()?;
        let taken = self.ports.camera.picture();
        let Some(file) = taken.map_err(|error| self.port(&error, "phone-port-camera"))? else {
            return Ok(None);
        };
        let shot = self.with(|screens| {
            let words = screens.words()?;
            let bytes = std::fs::read(&file).map_err(|error| unread(words, &error))?;
            let photo = screens.shoot_onto(&onto.0, &bytes, now)?.cross();
            let notice = words.text("saved-picture");
            Ok(Shot { photo, notice })
        })?;
        // The picture is in the book; a file that stays behind lies in the phone's own cache and goes with it.
        let _ = std::fs::remove_file(&file);
        Ok(Some(shot))
    }

    /// Where the phone stands, as a field takes it; `None` where it does not know.
    ///
    /// # Errors
    /// Where it may not be asked.
    pub fn here(&self) -> Result<Option<String>, Trouble> {
        let fix = self.ports.locator.fix();
        let fix = fix.map_err(|error| self.port(&error, "phone-port-position"))?;
        Ok(fix.map(|fix| {
            let position = Position {
                latitude: fix.latitude,
                longitude: fix.longitude,
            };
            position.to_string()
        }))
    }

    /// What stands in a field of inclinations, and how steep the phone lies now beside it; `None` where it does not know.
    ///
    /// # Errors
    /// Where the sensor broke.
    pub fn lean(&self, typed: String) -> Result<Option<String>, Trouble> {
        let degrees = self.ports.level.degrees();
        let degrees = degrees.map_err(|error| self.port(&error, "phone-port-level"))?;
        let before = Some(typed).filter(|typed| !typed.trim().is_empty());
        Ok(degrees.map(|degrees| {
            let readings = before.into_iter().chain([format!("{degrees:.1}")]);
            readings.collect::<Vec<_>>().join(", ")
        }))
    }

    /// The file of a small upright picture.
    ///
    /// # Errors
    /// Where it is not in the book or damaged.
    pub fn thumbnail(&self, photo: String) -> Result<String, Trouble> {
        self.picture(&photo, "small", Screens::thumbnail)
    }

    /// The file of a picture as it was taken.
    ///
    /// # Errors
    /// Where it is not in the book or damaged.
    pub fn original(&self, photo: String) -> Result<String, Trouble> {
        self.picture(&photo, "whole", Screens::original)
    }

    /// The file of a letter's PDF.
    ///
    /// # Errors
    /// Where it is not in the book or damaged.
    pub fn paper(&self, letter: String) -> Result<String, Trouble> {
        self.with(|screens| {
            let words = screens.words()?;
            let name = format!("{}-{letter}.pdf", words.text("phone-letter-file"));
            if let Some(file) = self.files.there(&name) {
                return Ok(file);
            }
            let letter: LetterId = letter.parse().map_err(|_| gone(words, "there-letter"))?;
            let bytes = screens.paper(letter)?;
            self.files
                .write(&name, &bytes)
                .map_err(|error| unwritten(words, &error))
        })
    }

    /// The file of the open reminders, for a calendar.
    ///
    /// # Errors
    /// Where the book cannot be read.
    pub fn calendar(&self, now: Moment) -> Result<String, Trouble> {
        let now = now.read()?;
        self.with(|screens| {
            let words = screens.words()?;
            let name = format!("{}.ics", words.text("phone-calendar-file"));
            let text = screens.calendar(now)?;
            self.files
                .write(&name, text.as_bytes())
                .map_err(|error| unwritten(words, &error))
        })
    }

    /// Hands a file of a structure's plan on.
    ///
    /// # Errors
    /// Where the structure is not in the book or was not measured; and where no program takes it.
    pub fn share_plan(&self, structure: String, file: PlanFile) -> Result<(), Trouble> {
        let file: screens::PlanFile = file.cross();
        let written = self.with(|screens| {
            let words = screens.words()?;
            let structure = structure
                .parse()
                .map_err(|_| gone(words, "there-structure"))?;
            let text = screens.plan_file(structure, file)?;
            self.files
                .write(file.name(), text.as_bytes())
                .map_err(|error| unwritten(words, &error))
        })?;
        self.share(written, file.media())
    }

    /// Hands a letter on.
    ///
    /// # Errors
    /// As [`Book::paper`]; and where no program takes it.
    pub fn share_paper(&self, letter: String) -> Result<(), Trouble> {
        self.share(self.paper(letter)?, "application/pdf")
    }

    /// Hands the open reminders on.
    ///
    /// # Errors
    /// As [`Book::calendar`]; and where no program takes them.
    pub fn share_calendar(&self, now: Moment) -> Result<(), Trouble> {
        self.share(self.calendar(now)?, "text/calendar")
    }
}

impl Book {
    /// The one door to the book: a panic behind it is told as a trouble, and the next call finds the book as it was.
    pub(crate) fn with<T>(
        &self,
        work: impl FnOnce(&mut Screens) -> Result<T, Trouble>,
    ) -> Result<T, Trouble> {
        let mut screens = self.screens();
        match catch_unwind(AssertUnwindSafe(|| work(&mut screens))) {
            Ok(done) => done,
            Err(_) => Err(Trouble::broke(screens.words()?)),
        }
    }

    /// A call that broke elsewhere leaves nothing half done, so its lock may be taken again.
    fn screens(&self) -> MutexGuard<'_, Screens> {
        self.screens.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn carry_out(&self, action: &Action, now: Moment) -> Result<Next, Trouble> {
        let now = now.read()?;
        self.with(|screens| {
            break_on_purpose(action);
            Ok(screens.act(action, now)?.cross())
        })
    }

    fn picture(
        &self,
        photo: &str,
        how: &str,
        read: fn(&Screens, PhotoId) -> Result<Vec<u8>, screens::Trouble>,
    ) -> Result<String, Trouble> {
        let name = format!("{photo}-{how}");
        if let Some(file) = self.files.there(&name) {
            return Ok(file);
        }
        self.with(|screens| {
            let words = screens.words()?;
            let photo: PhotoId = photo.parse().map_err(|_| gone(words, "there-photo"))?;
            let bytes = read(screens, photo)?;
            self.files
                .write(&name, &bytes)
                .map_err(|error| unwritten(words, &error))
        })
    }

    fn share(&self, file: String, media_type: &str) -> Result<(), Trouble> {
        self.ports
            .share_sheet
            .share(file, media_type.to_owned())
            .map_err(|error| self.port(&error, "phone-port-share"))
    }

    fn port(&self, error: &crate::ports::PortTrouble, port: &str) -> Trouble {
        match self.screens().words() {
            Ok(words) => error.says(words, port),
            Err(trouble) => trouble.into(),
        }
    }
}

/// The book of this phone; begun, where it has none, under a key that the store keeps first.
fn open_or_begin(
    folder: &Path,
    language: Language,
    ports: &Ports,
    words: &Words,
    now: Moment,
) -> Result<acts::Book, Trouble> {
    let of_book = |error: BookError| Trouble::of_book(words, &error);
    let kept = ports.key_store.key();
    let kept = kept.map_err(|error| error.says(words, "phone-port-key"))?;
    let there = folder.join("book.db").exists();
    let key = match kept {
        Some(text) => Key::from_text(&text).map_err(of_book)?,
        None if there => {
            return Err(Trouble::NoKey {
                says: words.text("phone-no-key"),
            });
        }
        None => new_key(ports, words)?,
    };
    if there {
        return acts::Book::open(folder, &key).map_err(of_book);
    }
    let now = now.read()?;
    let mut book = acts::Book::create(folder, &key, now.device(), now.at).map_err(of_book)?;
    acts::settings::speak(&mut book, language.cross(), now)
        .map_err(|error| Trouble::of_act(words, &error))?;
    Ok(book)
}

fn new_key(ports: &Ports, words: &Words) -> Result<Key, Trouble> {
    let key = Key::generate().map_err(|error| Trouble::of_book(words, &error))?;
    ports
        .key_store
        .keep(key.to_text().to_string())
        .map_err(|error| error.says(words, "phone-port-key"))?;
    Ok(key)
}

fn place_at(screens: &Screens, address: &str) -> Result<Place, Trouble> {
    let words = screens.words()?;
    address
        .parse()
        .map_err(|_| Trouble::refused(words, &Said::new("phone-nowhere")))
}

fn gone(words: &Words, what: &'static str) -> Trouble {
    Trouble::of_act(words, &ActError::not_there(what))
}

fn unread(words: &Words, error: &io::Error) -> Trouble {
    let said = Said::new("phone-unread").with("why", acts::system(error));
    Trouble::refused(words, &said)
}

fn unwritten(words: &Words, error: &io::Error) -> Trouble {
    let said = Said::new("phone-unwritten").with("why", acts::system(error));
    Trouble::refused(words, &said)
}

#[cfg(feature = "break-on-purpose")]
fn break_on_purpose(action: &Action) {
    if let Action::Draft { text, .. } = action {
        assert!(text != "break on purpose", "broken on purpose");
    }
}

#[cfg(not(feature = "break-on-purpose"))]
fn break_on_purpose(_: &Action) {}
