//! The page's style and fonts, as text to stand in its head.

use super::blocks::base64;

const STYLE: &str = include_str!("style.css");

/// Atkinson Hyperlegible (SIL Open Font License), with the ranges that each file covers.
const FACES: [(&str, &str, &[u8]); 4] = [
    (
        "400",
        LATIN,
        include_bytes!("../../fonts/atkinson-latin-400.woff2"),
    ),
    (
        "700",
        LATIN,
        include_bytes!("../../fonts/atkinson-latin-700.woff2"),
    ),
    (
        "400",
        LATIN_EXT,
        include_bytes!("../../fonts/atkinson-latin-ext-400.woff2"),
    ),
    (
        "700",
        LATIN_EXT,
        include_bytes!("../../fonts/atkinson-latin-ext-700.woff2"),
    ),
];
const LATIN: &str = "U+0000-00FF,U+0131,U+0152-0153,U+02BB-02BC,U+02C6,U+02DA,U+02DC,U+0304,U+0308,U+0329,U+2000-206F,U+20AC,U+2122,U+2191,U+2193,U+2212,U+2215,U+FEFF,U+FFFD";
const LATIN_EXT: &str = "U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+0304,U+0308,U+0329,U+1D00-1DBF,U+1E00-1E9F,U+1EF2-1EFF,U+2020,U+20A0-20AB,U+20AD-20C0,U+2113,U+2C60-2C7F,U+A720-A7FF";

/// The whole style sheet.
pub fn sheet() -> String {
    let faces = FACES.map(|(weight, range, bytes)| {
        format!(
            "@font-face{{font-family:Atkinson Hyperlegible;font-weight:{weight};font-display:swap;unicode-range:{range};\
             src:url(data:font/woff2;base64,{}) format(\"woff2\")}}\n",
            base64(bytes)
        )
    });
    faces.concat() + STYLE
}
