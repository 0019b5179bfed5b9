//! Addresses by table and by law. Forms: USPS Publication 28, its section beside each table; spellings from memory where none is named.

use super::*;
use proptest::prelude::*;

/// Asserts that every line of a group comes to one key, and that no two groups share one.
fn assert_groups(groups: &[&[&str]]) {
    let mut seen: Vec<(String, &str)> = Vec::new();
    for group in groups {
        let key = normalise_text(group[0]).key();
        for text in *group {
            assert_eq!(normalise_text(text).key(), key, "{text} and {}", group[0]);
        }
        if let Some((_, other)) = seen.iter().find(|(known, _)| *known == key) {
            panic!(
                "{} and {other} are two addresses but share the key {key}",
                group[0]
            );
        }
        seen.push((key, group[0]));
    }
}

/// Asserts the kept line and place of each text.
fn assert_forms(cases: &[(&str, &str)]) {
    for (text, form) in cases {
        assert_eq!(normalise_text(text).to_string(), *form, "{text}");
    }
}

#[test]
fn case_points_spaces_accents_and_apostrophes_tell_nothing_apart() {
    assert_groups(&[
        &[
            "12 Main St",
            "12 main st.",
            "12  MAIN   STREET",
            " 12 Main\tStr ",
        ],
        &["12 Peña Ct", "12 PENA CT", "12 pen\u{303}a court"],
        &["5 O'Neill Way", "5 ONeill Way", "5 O’Neill Way"],
        &["5 Smith-Jones Rd", "5 Smith Jones Rd"],
    ]);
}

#[test]
fn suffixes_of_publication_28_section_234() {
    assert_groups(&[
        &["12 Elm St", "12 Elm Street", "12 Elm Strt"],
        &["12 Elm Ave", "12 Elm Av", "12 Elm Avenue"],
        &["12 Park Ave Rd", "12 Park Avenue Road"],
        &["12 Elm Street Ext", "12 Elm St Extension"],
        &["12 Elm Ext"],
        &["7 The Lane", "7 The Ln"],
        &["7 Lane"],
        &["12 Avenue Rd"],
        &["12 Forest Hill", "12 Forest Hl"],
        &["12 Forest Hills", "12 Forest Hls"],
    ]);
    assert_forms(&[
        ("12 Park Avenue Road", "12 PARK AVENUE RD"),
        ("7 The Ln", "7 THE LANE"),
        ("7 the crescent", "7 THE CRESCENT"),
        ("12 Street Rd", "12 STREET RD"),
        ("12 Pikes Peak Ave", "12 PIKES PEAK AVE"),
        ("12 Parks Rd", "12 PARKS RD"),
    ]);
}

#[test]
fn directions_of_publication_28_section_233() {
    assert_groups(&[
        &["12 N Main St", "12 North Main St", "12 N. Main St"],
        &["12 Main St N", "12 Main Street North"],
        &["12 Main St"],
        &[
            "12 NW Main St",
            "12 Northwest Main St",
            "12 North-West Main St",
            "12 N.W. Main St",
            "12 North West Main St",
        ],
        &[
            "12 Main St SW",
            "12 Main St Southwest",
            "12 Main St South West",
            "12 Main St S W",
        ],
        &["12 North St"],
        &["12 N St"],
        &["12 N North St"],
        &["12 S West St", "12 South West St"],
        &["12 Bay West Dr", "12 Bay W Dr"],
        &["842 E 1700 S", "842 East 1700 South"],
    ]);
    assert_forms(&[
        ("12 North", "12 NORTH"),
        ("12 North Ave", "12 NORTH AVE"),
        ("12 N Street NW", "12 N ST NW"),
        ("12 E East Ave E", "12 E EAST AVE E"),
        ("12 Bay W Dr", "12 BAY WEST DR"),
    ]);
}

#[test]
fn numbered_streets_of_publication_28_section_235() {
    assert_groups(&[
        &["12 Third St", "12 3rd St", "12 3RD Street", "12 3 St"],
        &["12 Thirty-Third St", "12 33rd St", "12 Thirty Third St"],
        &["12 E One Hundred Tenth St", "12 E 110th St"],
        &["12 3rd Ave"],
        &["12 2nd St"],
        &["12 9 Hwy"],
    ]);
}

#[test]
fn highways_of_publication_28_section_237_and_appendix_f() {
    assert_forms(&[
        ("1 COUNTY HIGHWAY 140", "1 COUNTY HIGHWAY 140"),
        ("1 COUNTY HWY 60E", "1 COUNTY HIGHWAY 60E"),
        ("1 CNTY HWY 20", "1 COUNTY HIGHWAY 20"),
        ("1 COUNTY RD 441", "1 COUNTY ROAD 441"),
        ("1 CR 1185", "1 COUNTY ROAD 1185"),
        ("1 CNTY RD 33", "1 COUNTY ROAD 33"),
        ("1 EXPRESSWAY 55", "1 EXPRESSWAY 55"),
        ("1 FARM to MARKET 1200", "1 FM 1200"),
        ("1 FM 187", "1 FM 187"),
        ("1 HWY FM 1320", "1 FM 1320"),
        ("1 HWY 101", "1 HIGHWAY 101"),
        ("1 HIWAY 1080A", "1 HIGHWAY 1080A"),
        ("1 I10", "1 INTERSTATE 10"),
        ("1 IH280", "1 INTERSTATE 280"),
        ("1 INTERSTATE HWY 680", "1 INTERSTATE 680"),
        ("1 I 55 BYPASS", "1 INTERSTATE 55 BYP"),
        ("1 I 26 BYP ROAD", "1 INTERSTATE 26 BYPASS RD"),
        ("1 I 44 FRONTAGE ROAD", "1 INTERSTATE 44 FRONTAGE RD"),
        ("1 LOOP 410", "1 LOOP 410"),
        ("1 RD 5A", "1 ROAD 5A"),
        ("1 RT 88", "1 ROUTE 88"),
        ("1 ROUTE 1150EE", "1 ROUTE 1150EE"),
        ("1 RANCH RD 620", "1 RANCH ROAD 620"),
        ("1 ST HIGHWAY 303", "1 STATE HIGHWAY 303"),
        ("1 SR 220", "1 STATE ROAD 220"),
        ("1 ST RD 86", "1 STATE ROAD 86"),
        ("1 STATE RTE 39", "1 STATE ROUTE 39"),
        ("1 TOWNSHIP RD 20", "1 TOWNSHIP ROAD 20"),
        ("1 TSR 45", "1 TOWNSHIP ROAD 45"),
        ("1 US HWY 70", "1 US HIGHWAY 70"),
        ("1 U.S. 70 W", "1 US HIGHWAY 70 W"),
        ("1 Old Hwy 9", "1 OLD HIGHWAY 9"),
        ("1 County Road M", "1 COUNTY ROAD M"),
        ("1 Highway AA", "1 HIGHWAY AA"),
        ("1 Avenue A", "1 AVENUE A"),
        ("1 Ave A", "1 AVENUE A"),
        ("1 N State Hwy 9", "1 N STATE HIGHWAY 9"),
    ]);
    assert_groups(&[
        &["1 A Ave"],
        &["1 Avenue A", "1 Ave A"],
        &["1 County Rd"],
        &["1 County Rd 9", "1 CR 9", "1 CR9"],
        &["1 State Rd 9"],
        &["1 Hwy 9", "1 Highway 9"],
        &["1 Hwy 9 W"],
    ]);
}

#[test]
fn saints_and_streets() {
    assert_groups(&[
        &["4 St James St", "4 Saint James Street", "4 St. James St."],
        &["4 St James Ct", "4 Saint James Court"],
        &["4 James St"],
        &["4 St James"],
        &["4 E St"],
        &["4 Old St Augustine Rd", "4 Old Saint Augustine Road"],
        &[
            "4 St Charles Ave, St Louis MO",
            "4 Saint Charles Ave, Saint Louis, Missouri",
        ],
    ]);
}

#[test]
fn spanish_road_words_are_names() {
    assert_forms(&[
        ("12 Calle Vista", "12 CALLE VISTA"),
        ("12 Avenida de la Playa", "12 AVENIDA DE LA PLAYA"),
        ("12 Camino Real", "12 CAMINO REAL"),
        ("12 Camino Real Dr", "12 CAMINO REAL DR"),
        ("12 Calle Niño", "12 CALLE NINO"),
    ]);
}

#[test]
fn house_numbers_of_publication_28_appendix_d() {
    assert_groups(&[
        &["12 Elm St", "012 Elm St", "#12 Elm St"],
        &["12A Elm St", "12-A Elm St", "12 A Elm St", "12a elm st"],
        &[
            "12 1/2 Elm St",
            "12½ Elm St",
            "12-1/2 Elm St",
            "12 ½ Elm St",
        ],
        &["121/2 Elm St"],
        &[
            "12-14 Elm St",
            "12 - 14 Elm St",
            "12–14 Elm St",
            "12/14 Elm St",
            "12 & 14 Elm St",
        ],
        &["1214 Elm St"],
        &["112-10 Elm St"],
        &["112-01 Elm St"],
        &["N6W23001 Elm St", "N6 W23001 Elm St", "n6w23001 Elm St"],
        &["1N234 Elm St"],
        &["Elm St"],
    ]);
    assert_forms(&[
        ("112-10 Bronx Rd", "112-10 BRONX RD"),
        ("101 39.2 Rd", "101 39.2 RD"),
        ("12 A St", "12 A ST"),
        ("12 D Angelo Way", "12 D ANGELO WAY"),
    ]);
}

#[test]
fn units_of_publication_28_appendix_c2() {
    assert_groups(&[
        &[
            "4 Main St Apt 4",
            "4 Main St, Apartment 4",
            "4 Main St apt. #4",
            "Apt 4, 4 Main St",
            "4 Main St APT4",
        ],
        &["4 Main St Apt 4B", "4 Main St Apt 4-B", "4 Main St Apt 4 b"],
        &["4 Main St # 4", "4 Main St #4", "4 Main St No. 4"],
        &["4 Main St"],
        &["4 Main St Upper", "4 Main St, Uppr"],
        &[
            "4 Main St 2nd Floor",
            "4 Main St Fl 2",
            "4 Main St, second floor",
        ],
        &[
            "4 Main St Bldg 2 Apt 4",
            "4 Main St, Building 2, Apartment 4",
        ],
        &["4 Upper Main St"],
        &["4 Front St"],
        &["4 Front St Front", "4 Front St Frnt"],
        &["4 Key West Dr"],
        &["4 Lake Front Dr"],
    ]);
}

#[test]
fn boxes_and_rural_routes_of_publication_28_sections_24_to_28() {
    assert_groups(&[
        &[
            "PO Box 12",
            "P.O. Box 12",
            "P O Box 0012",
            "Post Office Box 12",
            "Box 12",
        ],
        &[
            "RR 2 Box 18",
            "Rural Route 2 Box 18",
            "RFD 2 Box #18",
            "R.R. 2 Box 18",
        ],
        &[
            "HC 72 Box 34",
            "Highway Contract Route 72 Box 34",
            "Star Route 72 Box 34",
        ],
        &["PO Box 12, Alma"],
    ]);
}

#[test]
fn places_with_commas_and_without() {
    assert_forms(&[
        (
            "123 Main St, Springfield, IL 62704-1234",
            "123 MAIN ST, SPRINGFIELD, IL, 62704",
        ),
        (
            "123 Main St Springfield IL 62704",
            "123 MAIN ST, SPRINGFIELD, IL, 62704",
        ),
        (
            "123 Main St, Springfield Illinois",
            "123 MAIN ST, SPRINGFIELD, IL",
        ),
        (
            "123 Main St\nSpringfield, IL",
            "123 MAIN ST, SPRINGFIELD, IL",
        ),
        ("123 Main St Springfield, USA", "123 MAIN ST, SPRINGFIELD"),
        ("123 Main St St Paul MN", "123 MAIN ST, SAINT PAUL, MN"),
        ("123 Elm Ct St Paul", "123 ELM CT, SAINT PAUL"),
        (
            "123 Broadway Springfield IL",
            "123 BROADWAY, SPRINGFIELD, IL",
        ),
        (
            "123 Broadway New York NY 10001",
            "123 BROADWAY, NEW YORK, NY, 10001",
        ),
        (
            "123 Main St, New York, New York",
            "123 MAIN ST, NEW YORK, NY",
        ),
        ("123 Main St, New York", "123 MAIN ST, NEW YORK"),
        (
            "123 Main St, Port Washington",
            "123 MAIN ST, PORT WASHINGTON",
        ),
        ("123 Main St N Miami", "123 MAIN ST N, MIAMI"),
        ("123 Main St North Miami", "123 MAIN ST, NORTH MIAMI"),
        ("123 Main St, N Miami", "123 MAIN ST, NORTH MIAMI"),
        ("123 Elm Ct, Hartford CT", "123 ELM CT, HARTFORD, CT"),
        ("123 Elm St NE, Omaha NE", "123 ELM ST NE, OMAHA, NE"),
        (
            "123 Old Court House Rd Alma",
            "123 OLD COURT HOUSE RD, ALMA",
        ),
        ("123 Main St Federal Way", "123 MAIN ST, FEDERAL WAY"),
        (
            "123 Main St, Tampa, FL 33601",
            "123 MAIN ST, TAMPA, FL, 33601",
        ),
        ("123 Hwy 9, FL 33601", "123 HIGHWAY 9, FL, 33601"),
        ("123 Broadway Tampa, FL", "123 BROADWAY, TAMPA, FL"),
        ("123 Main St, FL 33601", "123 MAIN ST, FL, 33601"),
        (
            "123 Main St FL 3 Tampa FL 33601",
            "123 MAIN ST, FL 3, TAMPA, FL, 33601",
        ),
        ("123 Park Ave Ct", "123 PARK AVENUE CT"),
        ("Miller residence, 12 Oak St, Alma", "12 OAK ST, ALMA"),
        ("123, Main St, Alma", "123 MAIN ST, ALMA"),
        ("12 Highway 54321", "12 HIGHWAY 54321"),
        ("12 Main Ottawa K1A 0B1", "12 MAIN OTTAWA K1A 0B1"),
    ]);
}

#[test]
fn an_address_in_fields_and_in_one_line_are_one() {
    let fields = |line: &str, town: &str, region: &str, postcode: &str| {
        normalise(&Address {
            line: line.to_owned(),
            town: town.to_owned(),
            region: region.to_owned(),
            postcode: postcode.to_owned(),
        })
    };
    let text = normalise_text("12 N Oak St Apt 3, Saint Paul, MN 55101");
    for same in [
        fields(
            "12 North Oak Street #3".replace('#', "Apt ").as_str(),
            "St. Paul",
            "Minnesota",
            "55101-2222",
        ),
        fields("12 N Oak St, Apt 3", "St Paul", "mn", "55101"),
        fields("12 N Oak St Apt 3, St Paul", "St Paul", "MN", "551012222"),
        fields(
            "Apt 3, 12 N Oak St, Saint Paul MN 55101",
            "St Paul",
            "MN",
            "55101",
        ),
        fields("12 N Oak St Apt 3, Saint Paul, MN 55101", "", "", ""),
    ] {
        assert_eq!(same, text);
    }
    let back = fields("12 Oak St, back house", "Alma", "", "");
    assert_eq!(back.unit, "BACK HOUSE");
    assert_ne!(back.key(), fields("12 Oak St", "Alma", "", "").key());
    assert_eq!(
        fields("12 Oak", "Ottawa", "Ontario", "k1a 0b1").postcode,
        "K1A0B1"
    );
}

#[test]
fn the_range_of_a_half_typed_address_holds_the_whole_one() {
    let whole = normalise_text("123 N Main St Apt 2, Alma, MI 48801").key();
    for typed in ["123", "123 ma", "123 main", "123 n main"] {
        let (from, until) = normalise_text(typed).range();
        assert!(from <= whole && whole < until, "{typed}");
    }
    let (from, until) = normalise_text("12").range();
    assert!(!(from <= whole && whole < until));
}

#[test]
fn ranges_cover_their_own_side_of_the_street() {
    let house = |text: &str| normalise_text(&format!("{text} Oak St")).house.unwrap();
    assert!(house("12-16").covers(&house("14")));
    assert!(!house("12-16").covers(&house("13")));
    assert!(!house("12-16").covers(&house("18")));
    assert!(!house("112-10").covers(&house("112")));
    assert!(!house("12").covers(&house("12")));
}

/// A house number as somebody writes it.
fn any_house() -> impl Strategy<Value = String> {
    prop_oneof![
        "[1-9][0-9]{0,4}",
        "[1-9][0-9]{0,3}[A-H]",
        "[1-9][0-9]{0,3} 1/2",
        "[1-9][0-9]{1,2}-[1-9][0-9]{1,2}",
        "[NS][1-9][0-9]{1,2}[EW][1-9][0-9]{2,4}",
    ]
}

/// What somebody writes after a house number, made of words that mean something in an address, whichever it is, and of some that don't.
fn any_street() -> impl Strategy<Value = String> {
    let plain = vec![
        "Main",
        "Oak",
        "James",
        "Springfield",
        "Alma",
        "The",
        "Old",
        "A",
        "B",
        "and",
        "&",
        ",",
        "O'Neill",
        "de",
        "la",
    ];
    let numbers = vec![
        "3rd", "Third", "7", "12-14", "1/2", "62704", "Twenty", "First", "12A", "4-B", "I-95",
        "N6W230",
    ];
    let places = vec![
        "N",
        "S",
        "North",
        "West",
        "SW",
        "South-East",
        "E",
        "IL",
        "LA",
        "FL",
        "Ohio",
        "New",
        "York",
        "USA",
    ];
    let roads = vec![
        "County", "State", "Hwy", "US", "CR", "Route", "PO", "Box", "RR", "Calle", "MLK", "Dr",
        "Jr", "Saint", "St.",
    ];
    let word = prop_oneof![
        prop::sample::select(plain),
        prop::sample::select(numbers),
        prop::sample::select(places),
        prop::sample::select(roads),
        prop::sample::select(vec![
            "St", "Ave", "Rd", "Ct", "Park", "Lake", "Way", "Mt", "Vista"
        ]),
        prop::sample::select(suffixes()).prop_map(|(word, _)| word),
        prop::sample::select(designators()).prop_map(|(word, _)| word),
    ];
    prop::collection::vec(word, 1..7).prop_map(|words| words.join(" "))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn two_house_numbers_never_share_a_key(a in any_house(), b in any_house(), street in "(Main|Oak Hill|St James) (St|Rd|Ave)") {
        let a = normalise_text(&format!("{a} {street}"));
        let b = normalise_text(&format!("{b} {street}"));
        prop_assert_eq!(a.house == b.house, a.key() == b.key());
        prop_assert_eq!(&a.street, &b.street);
    }

    #[test]
    fn the_house_number_is_kept(house in any_house(), street in any_street()) {
        let kept = normalise_text(&format!("{house} Elm {street}")).house.map(|kept| kept.to_string());
        prop_assert_eq!(kept, Some(house));
    }

    #[test]
    fn a_kept_form_is_its_own_form(text in prop_oneof![any_street(), (any_house(), any_street()).prop_map(|(h, s)| format!("{h} {s}"))]) {
        let once = normalise_text(&text);
        prop_assert_eq!(normalise(&once.address()), once);
    }

    #[test]
    fn a_kept_form_in_fields_is_its_own_form(line in any_street(), house in any_house(), town in "(|Alma|St Paul|N Miami|Federal Way|IL)", region in "(|MI|Ohio|Ontario)") {
        let address = Address { line: format!("{house} {line}"), town, region, postcode: String::new() };
        let once = normalise(&address);
        prop_assert_eq!(normalise(&once.address()), once);
    }

    #[test]
    fn any_text_has_a_form_that_is_its_own_form(text in any::<String>()) {
        let once = normalise_text(&text);
        prop_assert_eq!(normalise(&once.address()), once);
    }

    #[test]
    fn any_writing_has_a_form_that_is_its_own_form(text in "[ -~\n½’éN0-9,]{0,40}") {
        let once = normalise_text(&text);
        prop_assert_eq!(normalise(&once.address()), once);
    }

    #[test]
    fn no_part_of_a_form_breaks_the_key(text in any::<String>()) {
        let key = normalise_text(&text).key();
        prop_assert_eq!(key.matches('|').count(), 8, "{}", key);
    }
}
