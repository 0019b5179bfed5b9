//! Taps by chance on the screens of a book, and says of each tap that was acknowledged what the ink was then, until somebody ends it.
//!
//! `tapper FOLDER KEY-FILE PICTURE PROPERTY NUMBER`

use acts::{Book, Key};
use job::chance;
use job::hand::Hand;
use job::scene;
use screens::{Action, Place, Screens};
use std::io::Write;
use std::path::Path;
use trade::ids::{PropertyId, VisitId};

fn main() {
    let given: Vec<String> = std::env::args().collect();
    let [_, folder, key, picture, property, number] = given.as_slice() else {
        panic!("tapper FOLDER KEY-FILE PICTURE PROPERTY NUMBER");
    };
    let key = Key::from_file(Path::new(key)).expect("the key is there");
    let book = Book::open(Path::new(folder), &key).expect("the book opens");
    let picture = std::fs::read(picture).expect("the picture is there");
    let property: PropertyId = property.parse().expect("a property is named");
    let mut dice = fixtures::dice::Dice::new(number.parse().expect("a number is given"));
    let mut hand = Hand::new(Screens::of(book), fixtures::TODAY);
    let visit = scene::open_visit(hand.screens.book(), property);
    hand.at = Place::Safety { visit };
    say("ready");
    for tap in 0.. {
        let word = format!("{number}-{tap}");
        if dice.happens(0.1) {
            shoot(&mut hand, visit, &picture);
        } else if dice.happens(0.2) {
            write_word(&mut hand, visit, &word);
        } else {
            tap_somewhere(&mut hand, &mut dice);
        }
        let ink = scene::ink_of(hand.screens.book(), property);
        say(&format!("{} {}", ink.len(), scene::digest(&ink)));
    }
}

fn tap_somewhere(hand: &mut Hand, dice: &mut fixtures::dice::Dice) {
    let offered: Vec<Action> = chance::offered(&hand.look())
        .into_iter()
        .filter(chance::stays_on_visit)
        .collect();
    let action = dice.pick(&offered).clone();
    hand.act(&action);
}

fn write_word(hand: &mut Hand, visit: VisitId, word: &str) {
    hand.at = scene::walk(hand.screens.book(), visit);
    let form = hand.walk().say;
    hand.send(&form, &[("words", word)]);
}

fn shoot(hand: &mut Hand, visit: VisitId, picture: &[u8]) {
    hand.at = scene::walk(hand.screens.book(), visit);
    let shutter = hand.walk().shutter;
    hand.shoot(&shutter, picture);
}

fn say(line: &str) {
    let mut out = std::io::stdout().lock();
    writeln!(out, "{line}")
        .and_then(|()| out.flush())
        .expect("somebody listens");
}
