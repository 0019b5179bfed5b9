//! A letter that cannot be drawn says so in both languages.

use letter::LetterError;
use trade::words::{Language, Words};

#[test]
fn a_letter_that_cannot_be_drawn_says_so_in_both_languages() {
    for error in [
        LetterError::Layout("unknown font".to_owned()),
        LetterError::Export("no title".to_owned()),
    ] {
        let [english, spanish] =
            Language::ALL.map(|language| Words::of(language).say(&error.says()));
        assert_ne!(english, spanish);
        assert_eq!(error.to_string(), english);
        for sentence in [english, spanish] {
            assert!(
                sentence.ends_with('.') && sentence.contains('“'),
                "{sentence}"
            );
            assert!(!sentence.contains("{$"), "{sentence}");
        }
    }
}
