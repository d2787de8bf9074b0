//! Why something is no fire that can be reckoned with, and what to give instead.

use crate::units::Mk;

/// What is wrong with the input.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum NotAFire {
    /// A number outside its range.
    #[error("{what} is {value}: it has to be {low} to {high}.")]
    Outside {
        /// Which number, with its unit.
        what: &'static str,
        /// What was given.
        value: i64,
        /// The least.
        low: i64,
        /// The most.
        high: i64,
    },
    /// A temperature that looks like degrees.
    #[error(
        "{what} is {value} millikelvin, which is colder than any fire: it looks like degrees. {value} °F are {from_f} \
         millikelvin, {value} °C are {from_c}."
    )]
    Degrees {
        /// Which temperature.
        what: &'static str,
        /// What was given.
        value: i64,
        /// The same number of degrees Fahrenheit.
        from_f: i64,
        /// The same number of degrees Celsius.
        from_c: i64,
    },
    /// The pit is not hotter than the air around it.
    #[error(
        "The pit is not hotter than the air around it: it needs no fuel. Give the temperature it is held at."
    )]
    NoFire,
    /// A fuel that this pit does not burn, or a unit that does not hold it.
    #[error("{what} does not go with this pit: {instead}.")]
    DoesNotGo {
        /// What was given.
        what: &'static str,
        /// What does.
        instead: &'static str,
    },
    /// Moisture of the wood given in two ways.
    #[error(
        "The moisture of the wood is given twice: give moisture_permille, or the air that the wood lay in, not both."
    )]
    MoistureTwice,
    /// All the heat of the fuel leaves with its smoke and its steam.
    #[error(
        "Wood as wet as {permille} ‰ cannot hold that heat: all of it leaves with the steam and the smoke. Burn dry wood."
    )]
    TooWet {
        /// The moisture, thousandths of the wet mass.
        permille: i64,
    },
}

/// `value`, if it lies between `low` and `high`.
pub(super) fn within(what: &'static str, value: i64, low: i64, high: i64) -> Result<i64, NotAFire> {
    match (low..=high).contains(&value) {
        true => Ok(value),
        false => Err(NotAFire::Outside {
            what,
            value,
            low,
            high,
        }),
    }
}

/// The temperature `mk`, °C, if it lies between `low` and `high`, thousandths of °C; what looks like degrees is told.
pub(super) fn celsius(what: &'static str, mk: Mk, low: i64, high: i64) -> Result<f64, NotAFire> {
    let Mk(value) = mk;
    if (-60..=1_000).contains(&value) {
        let (from_f, from_c) = (Mk::from_f(value).0, Mk::from_c_milli(value * 1_000).0);
        return Err(NotAFire::Degrees {
            what,
            value,
            from_f,
            from_c,
        });
    }
    let (low, high) = (Mk::from_c_milli(low).0, Mk::from_c_milli(high).0);
    within(what, value, low, high)?;
    Ok(mk.c_milli() as f64 / 1_000.0)
}
