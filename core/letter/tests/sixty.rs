//! A letter of sixty pictures of twelve megapixels each stays under 200 MB, PDF and web page both: it is made on a phone.

#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod made_up;

use letter::{Pictures, compose};
use made_up::photo::Drawn;
use std::path::{Path, PathBuf};
use std::process::Command;
use trade::ids::PhotoId;

const PICTURES: u128 = 60;
const MOST_KILOBYTES: u64 = 200_000;
const FILE: &str = "LETTER_TEST_PICTURE";

/// Reads the file anew for every picture, as a book would, and makes each another picture.
struct OnDisk(PathBuf);

impl Pictures for OnDisk {
    fn original(&self, photo: PhotoId) -> Option<Vec<u8>> {
        let mut jpeg = std::fs::read(&self.0).ok()?;
        // The first quantiser sets the contrast of the whole picture (ITU-T T.81, B.2.4.1): no two pictures are alike.
        let tables = jpeg.windows(2).position(|marker| marker == [0xFF, 0xDB])?;
        jpeg[tables + 5] = 2 + (photo.0.as_u128() & 0x3F) as u8;
        Some(jpeg)
    }
}

#[test]
fn sixty_pictures_stay_under_200_megabytes() {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("original.jpg");
    std::fs::write(&file, Drawn::new(4032, 3024, 6).jpeg).unwrap();
    for child in ["child_draws_the_pdf", "child_draws_the_page"] {
        let peak = peak_of(child, &file);
        println!("{child}: {peak} kB at its peak");
        assert!(peak < MOST_KILOBYTES, "{child} took {peak} kB");
    }
}

/// Runs one of the tests below in a process of its own and returns the most memory it ever held, in kilobytes (Linux, `VmHWM`).
fn peak_of(child: &str, file: &Path) -> u64 {
    let output = Command::new(std::env::current_exe().unwrap())
        .args([child, "--exact", "--ignored", "--nocapture"])
        .env(FILE, file)
        .output()
        .unwrap();
    let said = String::from_utf8_lossy(&output.stdout);
    assert!(
        output.status.success(),
        "{said}{}",
        String::from_utf8_lossy(&output.stderr)
    );
    let peak = said
        .lines()
        .find_map(|line| line.split_once("VmHWM:")?.1.trim().strip_suffix(" kB"));
    peak.unwrap_or_else(|| panic!("no peak in: {said}"))
        .parse()
        .unwrap()
}

#[test]
#[ignore = "run in a process of its own by the test above"]
fn child_draws_the_pdf() {
    let pdf = letter::pdf(&compose(&with_sixty().material()), &on_disk()).unwrap();
    assert!(
        pdf.len() > 1_000_000,
        "{} bytes hold no sixty pictures",
        pdf.len()
    );
    tell_peak();
}

#[test]
#[ignore = "run in a process of its own by the test above"]
fn child_draws_the_page() {
    let page = letter::html(&compose(&with_sixty().material()), &on_disk());
    assert!(page.matches("data:image/jpeg").count() >= 60);
    tell_peak();
}

fn on_disk() -> OnDisk {
    OnDisk(std::env::var_os(FILE).unwrap().into())
}

fn tell_peak() {
    let status = std::fs::read_to_string("/proc/self/status").unwrap();
    let peak = status
        .lines()
        .find(|line| line.starts_with("VmHWM:"))
        .unwrap();
    println!("{peak}");
}

/// The made-up letter with sixty pictures on one of its findings.
fn with_sixty() -> made_up::MadeUp {
    let mut made_up = made_up::teasel_row();
    let pattern = made_up.history.photos[2].clone();
    let ids = || (0..PICTURES).map(|number| made_up::photo_id(0x1000 + number));
    made_up.history.photos.extend(ids().map(|id| {
        let mut photo = pattern.clone();
        photo.id = id;
        photo
    }));
    let wall = made_up
        .history
        .marks
        .iter_mut()
        .find(|mark| mark.visit == made_up::NOW && mark.part == made_up::part_id(3))
        .unwrap();
    wall.photos = ids().collect();
    made_up
}
