//! The cuts as they are found and shown. Start at [`find`], which turns what a person typed into cuts; what is known of a
//! cut is in [`checks`](crate::checks), and the pages are in [`screens`](crate::screens).

mod find;
mod fold;
mod named;

pub use find::find;
pub(crate) use fold::fold;
pub use named::{CutWords, cut_words};
