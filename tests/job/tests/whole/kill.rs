//! No tap that was acknowledged is lost, whenever the power goes. Common practice, no source: the process is ended from outside
//! (`SIGKILL`, which no program can catch) two hundred times.

use fixtures::dice::Dice;
use fixtures::pictures::jpegs;
use job::scene::{self, Scene, main_story_alone};
use std::io::{BufRead, BufReader, Read};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::Duration;
use trade::ids::PropertyId;
use trade::visit::Scope;

const BOOKS: u64 = 10;
const KILLS_EACH: u64 = 20;

#[test]
fn two_hundred_kills_lose_no_acknowledged_tap() {
    let mut acknowledged = 0;
    for book in 0..BOOKS {
        let scene = Scene::new();
        let (hand, property, _) = scene::first_visit(&scene, Scope::WholeRoof);
        drop(hand);
        scene
            .key
            .write_file(&key_file(&scene))
            .expect("the key is written");
        std::fs::write(picture_file(&scene), picture()).expect("the picture is written");
        for kill in 0..KILLS_EACH {
            acknowledged += killed_once(&scene, property, book * KILLS_EACH + kill);
        }
        let checked = scene.open().check().expect("the book reads");
        // A file that a kill left half written belongs to nothing and says nothing.
        let problems: Vec<_> = checked
            .problems
            .iter()
            .map(ToString::to_string)
            .filter(|problem| !problem.contains("belongs to nothing"))
            .collect();
        assert_eq!(problems, Vec::<String>::new());
    }
    // A slow computer acknowledges fewer; but where most kills came before any tap, nothing was tried.
    assert!(
        acknowledged > usize::try_from(BOOKS * KILLS_EACH).expect("it fits"),
        "only {acknowledged} taps were acknowledged before the kills"
    );
}

fn key_file(scene: &Scene) -> std::path::PathBuf {
    scene.folder.path().join("a.key")
}

fn picture_file(scene: &Scene) -> std::path::PathBuf {
    scene.folder.path().join("a.jpg")
}

fn picture() -> Vec<u8> {
    let demo = main_story_alone();
    let shot = scene::main_story(&demo)
        .shots()
        .next()
        .expect("there is a picture");
    jpegs(&[&shot.picture]).expect("it is drawn").remove(0)
}

/// Lets a hand tap for a moment, kills it, and compares the book with what was acknowledged. Answers how many taps those were.
fn killed_once(scene: &Scene, property: PropertyId, number: u64) -> usize {
    let mut child = tapper(scene, property, number);
    let mut out = BufReader::new(child.stdout.take().expect("it speaks"));
    let mut first = String::new();
    out.read_line(&mut first).expect("it speaks");
    assert_eq!(first, "ready\n");
    std::thread::sleep(Duration::from_micros(Dice::new(number + 77).below(120_000)));
    child.kill().expect("it can be ended");
    child.wait().expect("it ends");
    let mut said = String::new();
    out.read_to_string(&mut said)
        .expect("what it said can be read");
    // A line without its end was not said to the end.
    let whole = said.rfind('\n').map_or("", |end| &said[..=end]);
    if let Some(last) = whole.lines().last() {
        compare(&scene.book(), scene, property, last);
    }
    whole.lines().count()
}

fn tapper(scene: &Scene, property: PropertyId, number: u64) -> Child {
    Command::new(env!("CARGO_BIN_EXE_tapper"))
        .arg(scene.book())
        .arg(key_file(scene))
        .arg(picture_file(scene))
        .arg(property.to_string())
        .arg(number.to_string())
        .stdout(Stdio::piped())
        .spawn()
        .expect("the tapper starts")
}

fn compare(folder: &Path, scene: &Scene, property: PropertyId, last: &str) {
    let (lines, digest) = last.split_once(' ').expect("lines and digest are said");
    let lines: usize = lines.parse().expect("a count is said");
    let book = scene.open();
    let ink = scene::ink_of(&book, property);
    assert!(
        ink.len() >= lines,
        "{}: {} lines of {lines} are there",
        folder.display(),
        ink.len()
    );
    assert_eq!(
        scene::digest(&ink[..lines]).to_string(),
        digest,
        "what was acknowledged is not what is there"
    );
    let more = book.lines_of(Some(property)).expect("the ink reads");
    let mut acts: Vec<_> = more[lines..].iter().map(|line| line.act).collect();
    acts.dedup();
    assert!(
        acts.len() <= 1,
        "at most the tap that was going on is there beside what was acknowledged"
    );
    let history = scene::history(&book, property);
    for photo in &history.photos {
        book.photo_bytes(&photo.sha256)
            .expect("a picture that is recorded is there");
    }
}
