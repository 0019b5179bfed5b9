//! Pictures: taken in as they are, kept once, read for what they say, shown small.
#![allow(clippy::unwrap_used, reason = "a test fails where it must")]

mod common;

use book::{BookError, Taken};
use common::*;
use image::GenericImageView;
use jiff::civil::date;
use jiff::tz::Offset;

/// A JPEG with an EXIF block (Exif 2.32) put together here byte by byte, so that reading is not checked against its own writer.
fn with_exif(picture: &[u8], fields: &[Field], gps: &[Field]) -> Vec<u8> {
    let (main, photo): (Vec<Field>, Vec<Field>) =
        fields.iter().cloned().partition(|field| field.tag < 0x8000);
    let mut main = main;
    // Where the directories of the photograph and of its position lie; filled in below.
    main.push(Field::long(0x8769, 0));
    main.push(Field::long(0x8825, 0));
    let photo_at = 8 + directory_size(&main);
    let gps_at = photo_at + directory_size(&photo);
    let [.., to_photo, to_gps] = &mut main[..] else {
        unreachable!("two were pushed above");
    };
    to_photo.value = u32::try_from(photo_at).unwrap().to_be_bytes().to_vec();
    to_gps.value = u32::try_from(gps_at).unwrap().to_be_bytes().to_vec();
    let mut tiff = b"MM\0\x2a\0\0\0\x08".to_vec();
    for directory in [&main[..], &photo, gps] {
        write_directory(&mut tiff, directory);
    }
    let mut out = picture[..2].to_vec();
    out.extend([0xff, 0xe1]);
    out.extend(u16::try_from(tiff.len() + 8).unwrap().to_be_bytes());
    out.extend(b"Exif\0\0");
    out.extend(tiff);
    out.extend(&picture[2..]);
    out
}

#[derive(Clone)]
struct Field {
    tag: u16,
    kind: u16,
    count: u32,
    value: Vec<u8>,
}

impl Field {
    fn text(tag: u16, text: &str) -> Self {
        let value: Vec<u8> = text.bytes().chain([0]).collect();
        Self {
            tag,
            kind: 2,
            count: u32::try_from(value.len()).unwrap(),
            value,
        }
    }

    fn short(tag: u16, number: u16) -> Self {
        Self {
            tag,
            kind: 3,
            count: 1,
            value: number.to_be_bytes().to_vec(),
        }
    }

    fn long(tag: u16, number: u32) -> Self {
        Self {
            tag,
            kind: 4,
            count: 1,
            value: number.to_be_bytes().to_vec(),
        }
    }

    fn rationals(tag: u16, numbers: &[(u32, u32)]) -> Self {
        Self {
            tag,
            kind: 5,
            count: u32::try_from(numbers.len()).unwrap(),
            value: numbers
                .iter()
                .flat_map(|(over, under)| [over.to_be_bytes(), under.to_be_bytes()].concat())
                .collect(),
        }
    }
}

fn directory_size(fields: &[Field]) -> usize {
    let beside: usize = fields
        .iter()
        .map(|field| field.value.len())
        .filter(|length| *length > 4)
        .map(|length| length.next_multiple_of(2))
        .sum();
    2 + 12 * fields.len() + 4 + beside
}

fn write_directory(tiff: &mut Vec<u8>, fields: &[Field]) {
    let mut beside_at = tiff.len() + 2 + 12 * fields.len() + 4;
    let mut beside = Vec::new();
    tiff.extend(u16::try_from(fields.len()).unwrap().to_be_bytes());
    for field in fields {
        tiff.extend(field.tag.to_be_bytes());
        tiff.extend(field.kind.to_be_bytes());
        tiff.extend(field.count.to_be_bytes());
        let mut value = field.value.clone();
        if value.len() <= 4 {
            value.resize(4, 0);
            tiff.extend(value);
        } else {
            value.resize(value.len().next_multiple_of(2), 0);
            tiff.extend(u32::try_from(beside_at).unwrap().to_be_bytes());
            beside_at += value.len();
            beside.extend(value);
        }
    }
    tiff.extend([0; 4]);
    tiff.extend(beside);
}

fn north_west() -> Vec<Field> {
    vec![
        Field::text(1, "N"),
        Field::rationals(2, &[(45, 1), (30, 1), (3600, 100)]),
        Field::text(3, "W"),
        Field::rationals(4, &[(93, 1), (15, 1), (0, 1)]),
        Field::text(0x10, "T"),
        Field::rationals(0x11, &[(2475, 10)]),
    ]
}

#[test]
fn a_picture_says_when_where_which_way_and_which_way_up() {
    let (_folder, mut book, _) = shelf();
    let fields = [
        Field::short(0x0112, 6),
        Field::text(0x9003, "2024:05:17 09:30:00"),
        Field::text(0x9011, "-05:00"),
    ];
    let kept = book
        .put_photo(&with_exif(&jpeg(1), &fields, &north_west()))
        .unwrap();
    let moment = "2024-05-17T14:30:00Z".parse().unwrap();
    assert_eq!(kept.facts.taken, Some(Taken::Exact(moment)));
    let position = kept.facts.position.unwrap();
    assert!((position.latitude - 45.51).abs() < 1e-9);
    assert!((position.longitude + 93.25).abs() < 1e-9);
    assert_eq!(kept.facts.direction, Some(247.5));
    assert_eq!(kept.facts.orientation, 6);
}

#[test]
fn a_wall_clock_without_a_zone_is_not_taken_for_utc() {
    let (_folder, mut book, _) = shelf();
    let fields = [Field::text(0x9003, "2024:05:17 09:30:00")];
    let kept = book.put_photo(&with_exif(&jpeg(1), &fields, &[])).unwrap();
    let local = date(2024, 5, 17).at(9, 30, 0, 0);
    let taken = kept.facts.taken.unwrap();
    assert_eq!(taken, Taken::Local(local));
    assert_eq!(
        taken.at(Offset::constant(-5)),
        Some("2024-05-17T14:30:00Z".parse().unwrap())
    );
    let satellites = [
        Field::rationals(7, &[(14, 1), (29, 1), (58, 1)]),
        Field::text(0x1d, "2024:05:17"),
    ];
    let kept = book
        .put_photo(&with_exif(&jpeg(1), &fields, &satellites))
        .unwrap();
    let moment = "2024-05-17T14:29:58Z".parse().unwrap();
    assert_eq!(kept.facts.taken, Some(Taken::Exact(moment)));
}

#[test]
fn what_a_picture_does_not_say_or_says_wrong_stays_unknown() {
    let (_folder, mut book, _) = shelf();
    let zeros = [
        Field::text(1, "N"),
        Field::rationals(2, &[(0, 1), (0, 1), (0, 1)]),
        Field::text(3, "W"),
        Field::rationals(4, &[(0, 1), (0, 1), (0, 1)]),
        Field::rationals(0x11, &[(1, 0)]),
    ];
    let beyond = [
        Field::text(1, "N"),
        Field::rationals(2, &[(95, 1), (0, 1), (0, 1)]),
        Field::text(3, "W"),
        Field::rationals(4, &[(93, 1), (0, 1), (0, 1)]),
    ];
    let odd = [
        Field::short(0x0112, 11),
        Field::text(0x9003, "0000:00:00 00:00:00"),
    ];
    for picture in [
        jpeg(1),
        with_exif(&jpeg(1), &odd, &zeros),
        with_exif(&jpeg(1), &odd, &beyond),
        png(),
    ] {
        let facts = book.put_photo(&picture).unwrap().facts;
        assert_eq!(facts.taken, None);
        assert_eq!(facts.position, None);
        assert_eq!(facts.direction, None);
        assert_eq!(facts.orientation, 1);
    }
}

#[test]
fn a_damaged_exif_block_does_not_cost_the_picture() {
    let (_folder, mut book, _) = shelf();
    let fields = [Field::text(0x9003, "2024:05:17 09:30:00")];
    let whole = with_exif(&jpeg(1), &fields, &north_west());
    for at in 20..160 {
        let mut broken = whole.clone();
        broken[at] ^= 0xff;
        book.put_photo(&broken).unwrap();
    }
}

#[test]
fn what_is_no_picture_is_refused_whatever_it_is_called() {
    let (folder, mut book, _) = shelf();
    for bytes in [
        &b""[..],
        b"%PDF-1.7",
        b"GIF89a",
        b"\xff\xd8",
        b"<svg/>",
        b"\0\0\0\x18ftypisom",
    ] {
        assert!(matches!(book.put_photo(bytes), Err(BookError::NotAPicture)));
        assert!(!book::is_picture(bytes));
    }
    assert!(files(&folder.path().join("book/photos")).is_empty());
    assert!(book::is_picture(b"\0\0\0\x18ftypheic"));
}

#[test]
fn a_picture_too_large_is_refused() {
    let (_folder, mut book, _) = shelf();
    let mut huge = jpeg(1);
    huge.resize(usize::try_from(book::MOST_BYTES).unwrap() + 1, 0);
    assert!(matches!(
        book.put_photo(&huge),
        Err(BookError::TooLarge {
            megabytes: 65,
            most: 64
        })
    ));
}

#[test]
fn the_same_picture_lies_there_once_and_comes_back_byte_for_byte() {
    let (folder, mut book, _) = shelf();
    let first = book.put_photo(&jpeg(9)).unwrap();
    let again = book.put_photo(&jpeg(9)).unwrap();
    assert_eq!(first, again);
    book.put_photo(&jpeg(10)).unwrap();
    assert_eq!(files(&folder.path().join("book/photos")).len(), 2);
    assert_eq!(book.photo_bytes(&first.sha256).unwrap(), jpeg(9));
}

#[test]
fn a_changed_file_is_never_shown() {
    let (folder, mut book, _) = shelf();
    let kept = book.put_photo(&jpeg(9)).unwrap();
    let other = book.put_photo(&jpeg(10)).unwrap();
    let all = files(&folder.path().join("book/photos"));
    let swapped = std::fs::read(&all[1]).unwrap();
    std::fs::write(&all[0], swapped).unwrap();
    let results = [kept, other].map(|kept| book.photo_bytes(&kept.sha256));
    assert_eq!(results.iter().filter(|result| result.is_ok()).count(), 1);
    assert!(
        results
            .iter()
            .any(|result| matches!(result, Err(BookError::FileDamaged { .. })))
    );
    for no_name in ["", "zz", &"0".repeat(64)] {
        assert!(book.photo_bytes(no_name).is_err());
    }
}

#[test]
fn a_thumbnail_is_small_upright_and_without_exif() {
    let (folder, mut book, _) = shelf();
    let fields = [Field::short(0x0112, 6)];
    let picture = with_exif(&jpeg(1), &fields, &north_west());
    let kept = book.put_photo(&picture).unwrap();
    let small = book.thumbnail(&kept.sha256).unwrap().unwrap();
    let decoded = image::load_from_memory(&small).unwrap();
    assert_eq!(
        decoded.dimensions(),
        (240, 320),
        "400 × 300, turned a quarter"
    );
    assert!(!small.windows(4).any(|window| window == b"Exif"));
    // Green grows from left to right; turned a quarter clockwise it grows from top to bottom.
    assert!(decoded.get_pixel(120, 20)[1] < decoded.get_pixel(120, 180)[1]);
    assert_eq!(files(&folder.path().join("book/thumbnails")).len(), 1);
    assert_eq!(book.thumbnail(&kept.sha256).unwrap().unwrap(), small);
    std::fs::remove_dir_all(folder.path().join("book/thumbnails")).unwrap();
    assert_eq!(book.thumbnail(&kept.sha256).unwrap().unwrap(), small);
}

#[test]
fn a_picture_nobody_can_decode_has_no_thumbnail_and_is_kept_all_the_same() {
    let (_folder, mut book, _) = shelf();
    let heic = b"\0\0\0\x18ftypheic\0\0\0\0mif1heic";
    let kept = book.put_photo(heic).unwrap();
    assert_eq!(book.thumbnail(&kept.sha256).unwrap(), None);
    assert_eq!(book.photo_bytes(&kept.sha256).unwrap(), heic);
}

#[test]
fn a_letters_pdf_is_kept_like_a_picture() {
    let (folder, mut book, _) = shelf();
    let sha256 = book.put_letter(b"%PDF-1.7 Dear Mrs Quillfeather").unwrap();
    assert_eq!(
        book.letter_pdf(&sha256).unwrap(),
        b"%PDF-1.7 Dear Mrs Quillfeather"
    );
    let file = std::fs::read(&files(&folder.path().join("book/photos"))[0]).unwrap();
    assert!(!file.windows(8).any(|window| window == b"Dear Mrs"));
}

fn png() -> Vec<u8> {
    let mut out = std::io::Cursor::new(Vec::new());
    image::RgbImage::new(8, 8)
        .write_to(&mut out, image::ImageFormat::Png)
        .unwrap();
    out.into_inner()
}
