//! The home post.
fn main() {}
