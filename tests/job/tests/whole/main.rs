//! The whole job, as a person does it. One program, so that Typst and SQLCipher are linked once.

mod main_story;
