//! Writes the made-up letter of 18 Teasel Row as `letter.pdf`, `letter.html` and `letter.txt` into the folder named, to look at.
//! `measured` after the folder adds its measured roof and its offer, `anew` those of a house to be covered anew; `es` writes it in Spanish.

#[path = "../tests/made_up/mod.rs"]
mod made_up;

use letter::Material;
use std::path::PathBuf;
use trade::words::Language;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut words = std::env::args().skip(1);
    let folder = PathBuf::from(words.next().ok_or("name the folder to write into")?);
    let rest: Vec<String> = words.collect();
    let asked = |word: &str| rest.iter().any(|said| said == word);
    let language = if asked("es") {
        Language::Spanish
    } else {
        Language::English
    };
    let made_up = if asked("anew") {
        made_up::roof::to_be_covered_anew()
    } else {
        made_up::teasel_row()
    };
    let roof = made_up::roof::in_language(&made_up, language);
    let roofs = [roof.roofed()];
    let content = letter::compose(&Material {
        language,
        ..made_up.with_roofs(if asked("measured") || asked("anew") {
            &roofs
        } else {
            &[]
        })
    });
    let pictures = made_up::photo::Drawn::new(1600, 1200, 1);
    std::fs::write(folder.join("letter.pdf"), letter::pdf(&content, &pictures)?)?;
    std::fs::write(
        folder.join("letter.html"),
        letter::html(&content, &pictures),
    )?;
    std::fs::write(folder.join("letter.txt"), letter::text(&content))?;
    Ok(())
}
