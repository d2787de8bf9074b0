//! Generates the foreign code.
fn main() {}
