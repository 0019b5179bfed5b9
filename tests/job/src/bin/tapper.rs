//! Taps by chance, until somebody ends it.

fn main() {}
