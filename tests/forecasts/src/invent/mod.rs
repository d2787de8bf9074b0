//! Invented cooks. Start at [`cook::invent`]: the number of a cook and a family give everything that happened in it and when
//! it was done, which no forecast is told.

pub mod cook;
pub mod family;
pub mod meat;
pub mod pit;
pub mod probe;
pub mod shape;
