//! Checks and verdicts: published values, stories, laws over every combination, and tables that a person can read.
//!
//! The tables beside this file, in `tests/published/verdicts-*.txt`, are written anew by
//! `cargo test -p slowbend-core --test checks -- --ignored write_tables`.

mod any_input;
mod birds;
mod cases;
mod figures;
mod input;
mod laws;
mod lean;
mod minimums;
mod stories;
mod table;
mod tables;
mod tables_by_facts;
mod turkey;
