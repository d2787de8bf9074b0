//! Opening with names that are the same each time.

use crate::Slowbend;
use slowbend_core::{
    door::{OpenArgs, Slowbend as Door},
    error::Trouble,
    moment::Moment,
};
use std::sync::Arc;

/// Opens the database in `place` with 32 bytes of `seed` for entropy, so that a test can name what it makes.
#[uniffi::export]
pub fn open_seeded(
    place: String,
    install_id: String,
    seed: u8,
    moment: &Moment,
) -> Result<Arc<Slowbend>, Trouble> {
    let args = OpenArgs {
        place: place.into(),
        install_id,
        entropy: [seed; 32],
    };
    Ok(Slowbend::over(Door::open(args, moment)?))
}
