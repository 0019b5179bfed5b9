//! What a shell may count on at the border, tried on the demo's book: ports that refuse, a core that breaks, long work, a killed process.

#![cfg(test)]

use ladderbook_core::ports::{
    Camera, Fix, KeyStore, Level, Locator, PortTrouble, Ports, ShareSheet,
};
use ladderbook_core::show::Screen;
use ladderbook_core::{Book, Button, Filled, Form, HowFar, Language, Moment, Trouble};
use std::path::Path;
use std::sync::{Arc, Mutex, OnceLock};
use std::time::Duration;

/// A phone whose ports answer what they were told to.
#[derive(Default)]
struct Phone {
    key: Mutex<Option<String>>,
    picture: Mutex<Option<String>>,
    shared: Mutex<Vec<(String, String)>>,
    refuses: Mutex<bool>,
}

impl Phone {
    fn allows(&self) -> Result<(), PortTrouble> {
        if *self.refuses.lock().unwrap() {
            return Err(PortTrouble::NotAllowed);
        }
        Ok(())
    }
}

impl KeyStore for Phone {
    fn key(&self) -> Result<Option<String>, PortTrouble> {
        Ok(self.key.lock().unwrap().clone())
    }

    fn keep(&self, key: String) -> Result<(), PortTrouble> {
        self.allows()?;
        *self.key.lock().unwrap() = Some(key);
        Ok(())
    }
}

impl Camera for Phone {
    fn picture(&self) -> Result<Option<String>, PortTrouble> {
        self.allows()?;
        Ok(self.picture.lock().unwrap().clone())
    }
}

impl Locator for Phone {
    fn fix(&self) -> Result<Option<Fix>, PortTrouble> {
        self.allows()?;
        Ok(Some(Fix {
            latitude: 41.241_234_6,
            longitude: -96.011_3,
        }))
    }
}

impl Level for Phone {
    fn degrees(&self) -> Result<Option<f64>, PortTrouble> {
        Ok(Some(26.565_051))
    }
}

impl ShareSheet for Phone {
    fn share(&self, file: String, media_type: String) -> Result<(), PortTrouble> {
        self.allows()?;
        self.shared.lock().unwrap().push((file, media_type));
        Ok(())
    }
}

struct Desk {
    _folder: tempfile::TempDir,
    at: String,
    cache: String,
    phone: Arc<Phone>,
}

impl Desk {
    /// A phone with nothing on it.
    fn new() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let text = |path: &Path| path.to_str().unwrap().to_owned();
        Self {
            at: text(&folder.path().join("book")),
            cache: text(&folder.path().join("cache")),
            phone: Arc::default(),
            _folder: folder,
        }
    }

    /// A phone that holds the demo's book, up to the call.
    fn at_call() -> Self {
        let desk = Self::new();
        let played = PLAYED.get_or_init(Played::new);
        *desk.phone.key.lock().unwrap() = Some(played.key.to_text().to_string());
        copy(&played.folder.path().join("book"), Path::new(&desk.at));
        desk
    }

    fn open(&self) -> Result<Arc<Book>, Trouble> {
        let phone = &self.phone;
        let ports = Ports {
            key_store: phone.clone(),
            camera: phone.clone(),
            locator: phone.clone(),
            level: phone.clone(),
            share_sheet: phone.clone(),
        };
        Book::open(
            self.at.clone(),
            self.cache.clone(),
            Language::Spanish,
            ports,
            now(),
        )
    }
}

/// The demo's book up to the call, played once and copied for each test.
struct Played {
    folder: tempfile::TempDir,
    key: acts::Key,
}

static PLAYED: OnceLock<Played> = OnceLock::new();

impl Played {
    fn new() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let key = acts::Key::generate().unwrap();
        let demo = fixtures::demo();
        let mut player = fixtures::play::Player::new(&demo);
        let mut book = player.new_book(&folder.path().join("book"), &key).unwrap();
        player.until_call(&mut book).unwrap();
        Self { folder, key }
    }
}

fn copy(from: &Path, to: &Path) {
    std::fs::create_dir_all(to).unwrap();
    for one in std::fs::read_dir(from).unwrap() {
        let one = one.unwrap();
        let to = to.join(one.file_name());
        if one.file_type().unwrap().is_dir() {
            copy(&one.path(), &to);
        } else {
            std::fs::copy(one.path(), to).unwrap();
        }
    }
}

/// Noon of the demo's day.
fn now() -> Moment {
    Moment {
        millis: 1_789_387_200_000,
        offset_seconds: -5 * 3600,
    }
}

fn find(book: &Book, typed: &str) -> String {
    let Screen::Arrive { state } = book.show(book.start().unwrap(), now()).unwrap() else {
        panic!("a day begins with an address");
    };
    let filled = vec![Filled {
        name: "find".to_owned(),
        value: typed.to_owned(),
    }];
    let found = book.submit(state.search.form, filled, now()).unwrap().place;
    let Screen::Arrive { state } = book.show(found, now()).unwrap() else {
        panic!("what was found is shown where it was asked");
    };
    let first = state.found[0].tap.clone().unwrap();
    book.act(first, now()).unwrap().place
}

fn opening(book: &Book, doorstep: &str) -> Form {
    match book.show(doorstep.to_owned(), now()).unwrap() {
        Screen::Doorstep { state } => state.open.expect("no visit is open"),
        other => panic!("a doorstep is shown: {other:?}"),
    }
}

/// The words of the request, as they stand in its form.
fn words_in(form: &Form) -> &str {
    &form
        .fields
        .iter()
        .find(|field| field.name == "words")
        .unwrap()
        .value
}

#[test]
fn a_new_phone_begins_a_book_in_its_own_language() {
    let desk = Desk::new();
    let book = desk.open().unwrap();
    assert_eq!(book.words().unwrap().tag, "es");
    assert!(desk.phone.key.lock().unwrap().is_some());
    drop(book);
    assert!(desk.open().is_ok(), "the key that was kept opens it again");
}

#[test]
fn no_book_is_begun_where_its_key_is_not_kept() {
    let desk = Desk::new();
    *desk.phone.refuses.lock().unwrap() = true;
    assert!(matches!(desk.open(), Err(Trouble::Refused { .. })));
    assert!(!Path::new(&desk.at).exists());
}

#[test]
fn a_phone_without_the_key_says_so() {
    let desk = Desk::at_call();
    let key = desk.phone.key.lock().unwrap().take();
    assert!(matches!(desk.open(), Err(Trouble::NoKey { .. })));
    *desk.phone.key.lock().unwrap() = Some("0".repeat(64));
    assert!(matches!(desk.open(), Err(Trouble::NoKey { .. })));
    *desk.phone.key.lock().unwrap() = key;
    assert!(desk.open().is_ok());
}

#[test]
fn an_address_that_leads_nowhere_is_refused() {
    let book = Desk::at_call();
    let book = book.open().unwrap();
    for address in ["/nowhere", "/doorstep/00000000-0000-7000-8000-000000000000"] {
        let shown = book.show(address.to_owned(), now());
        assert!(matches!(shown, Err(Trouble::Refused { .. })), "{address}");
    }
    assert!(book.thumbnail("../../book.db".to_owned()).is_err());
    assert!(book.paper("../../book.db".to_owned()).is_err());
}

#[test]
fn half_typed_words_are_there_after_the_process_was_killed() {
    let desk = Desk::at_call();
    let book = desk.open().unwrap();
    let doorstep = find(&book, "318 lamplighter");
    let form = opening(&book, &doorstep).form;
    book.draft(form, "words".to_owned(), "It drips on".to_owned(), now())
        .unwrap();
    drop(book);
    let book = desk.open().unwrap();
    assert_eq!(words_in(&opening(&book, &doorstep)), "It drips on");
}

/// Run with `--features break-on-purpose`, as `./dev test kotlin` does.
#[cfg(feature = "break-on-purpose")]
#[test]
fn a_core_that_breaks_is_told_and_the_next_tap_works() {
    let desk = Desk::at_call();
    let book = desk.open().unwrap();
    let doorstep = find(&book, "318 lamplighter");
    let type_in = |text: &str| {
        let form = opening(&book, &doorstep).form;
        book.draft(form, "words".to_owned(), text.to_owned(), now())
    };
    type_in("It drips").unwrap();
    assert!(matches!(
        type_in("break on purpose"),
        Err(Trouble::Broke { .. })
    ));
    assert_eq!(words_in(&opening(&book, &doorstep)), "It drips");
    type_in("It drips on").unwrap();
    assert_eq!(words_in(&opening(&book, &doorstep)), "It drips on");
}

#[test]
fn the_position_and_the_inclination_come_as_a_field_takes_them() {
    let desk = Desk::at_call();
    let book = desk.open().unwrap();
    assert_eq!(
        book.here().unwrap().as_deref(),
        Some("41.241235, -96.011300")
    );
    assert_eq!(book.lean(String::new()).unwrap().as_deref(), Some("26.6"));
    assert_eq!(
        book.lean("27.0".to_owned()).unwrap().as_deref(),
        Some("27.0, 26.6")
    );
    *desk.phone.refuses.lock().unwrap() = true;
    let Err(Trouble::Refused { says }) = book.here() else {
        panic!("the position was not allowed");
    };
    assert!(says.contains("the position"), "{says}");
}

/// A visit opened and a picture taken from its walk.
#[test]
fn a_picture_goes_in_by_its_path_and_comes_out_by_one() {
    let desk = Desk::at_call();
    let book = desk.open().unwrap();
    let walk = begin_walk(&book);
    let Screen::Walk { state } = book.show(walk, now()).unwrap() else {
        panic!("the walk is shown");
    };
    let onto = state.shutter.onto;
    assert!(
        book.shoot(onto.clone(), now()).unwrap().is_none(),
        "none was taken"
    );
    let file = Path::new(&desk.cache).join("taken.jpg");
    std::fs::write(&file, b"no picture").unwrap();
    *desk.phone.picture.lock().unwrap() = Some(file.to_str().unwrap().to_owned());
    assert!(book.shoot(onto.clone(), now()).is_err());
    assert!(file.exists(), "what was refused is left where it was");
    let picture = include_bytes!("../../docs/pictures/walk.png");
    std::fs::write(&file, picture).unwrap();
    let shot = book.shoot(onto, now()).unwrap().unwrap();
    assert!(!file.exists(), "the book has it");
    let whole = book.original(shot.photo.clone()).unwrap();
    assert_eq!(std::fs::read(whole).unwrap(), picture);
    let small = std::fs::read(book.thumbnail(shot.photo).unwrap()).unwrap();
    assert!(small.len() < picture.len());
}

#[test]
fn a_letter_is_written_in_steps_and_handed_on() {
    let desk = Desk::at_call();
    let book = desk.open().unwrap();
    let letter = letter_of_a_closed_visit(&book);
    let given_up = book
        .clone()
        .begin(write_button(&book, &letter).tap, now())
        .unwrap();
    given_up.give_up().unwrap();
    assert!(matches!(end_of(&given_up), HowFar::GivenUp));
    assert!(
        sent(&book, &letter).is_empty(),
        "what was given up is not kept"
    );

    let button = write_button(&book, &letter);
    assert!(button.long);
    let work = book.clone().begin(button.tap, now()).unwrap();
    let HowFar::Done { next } = end_of(&work) else {
        panic!("it was not given up");
    };
    assert_eq!(next.place, letter);
    let sent = sent(&book, &letter);
    book.share_paper(sent[0].clone()).unwrap();
    let shared = desk.phone.shared.lock().unwrap();
    let (file, media_type) = &shared[0];
    assert_eq!(media_type, "application/pdf");
    assert!(std::fs::read(file).unwrap().starts_with(b"%PDF-"));
}

fn begin_walk(book: &Book) -> String {
    let doorstep = find(book, "318 lamplighter");
    let form = opening(book, &doorstep);
    let filled = form
        .fields
        .iter()
        .map(|field| Filled {
            name: field.name.clone(),
            value: field.value.clone(),
        })
        .collect();
    let safety = book.submit(form.form, filled, now()).unwrap().place;
    let Screen::Safety { state } = book.show(safety, now()).unwrap() else {
        panic!("a visit begins with safety");
    };
    book.act(state.main.tap, now()).unwrap().place
}

fn letter_of_a_closed_visit(book: &Book) -> String {
    let walk = begin_walk(book);
    let Screen::Walk { state } = book.show(walk, now()).unwrap() else {
        panic!("the walk is shown");
    };
    let changed = book.act(state.close[0].tap.clone(), now()).unwrap().place;
    let Screen::ThenAndNow { state } = book.show(changed, now()).unwrap() else {
        panic!("a closed visit shows what changed");
    };
    let verdict = book.act(state.main.tap, now()).unwrap().place;
    let Screen::Verdict { state } = book.show(verdict, now()).unwrap() else {
        panic!("the verdict is shown");
    };
    book.act(state.main.tap, now()).unwrap().place
}

fn write_button(book: &Book, letter: &str) -> Button {
    match book.show(letter.to_owned(), now()).unwrap() {
        Screen::Letter { state } => state.acts[0].clone(),
        other => panic!("the letter is shown: {other:?}"),
    }
}

fn sent(book: &Book, letter: &str) -> Vec<String> {
    match book.show(letter.to_owned(), now()).unwrap() {
        Screen::Letter { state } => state.sent.into_iter().map(|sent| sent.letter).collect(),
        other => panic!("the letter is shown: {other:?}"),
    }
}

fn end_of(work: &ladderbook_core::LongWork) -> HowFar {
    loop {
        match work.how_far().unwrap() {
            HowFar::Going { .. } => std::thread::sleep(Duration::from_millis(20)),
            end => return end,
        }
    }
}
