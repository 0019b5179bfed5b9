//! Writes the made-up letter of 18 Teasel Row as `letter.pdf`, `letter.html` and `letter.txt` into the folder named, to look at.

#[path = "../tests/made_up/mod.rs"]
mod made_up;

use std::path::PathBuf;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let folder = PathBuf::from(
        std::env::args()
            .nth(1)
            .ok_or("name the folder to write into")?,
    );
    let made_up = made_up::teasel_row();
    let content = letter::compose(&made_up.material());
    let pictures = made_up::photo::Drawn::new(1600, 1200, 1);
    std::fs::write(folder.join("letter.pdf"), letter::pdf(&content, &pictures)?)?;
    std::fs::write(
        folder.join("letter.html"),
        letter::html(&content, &pictures),
    )?;
    std::fs::write(folder.join("letter.txt"), letter::text(&content))?;
    Ok(())
}
