//! Why nothing can be reckoned, and what to give instead: kinds here, sentences in `words/*/batch.ftl`.

use crate::words::{Arg, Locale, Viewer, Words, key};
use std::{collections::BTreeSet, fmt, ops::RangeInclusive};

/// The most lines of one list: meats, parts, prices.
pub(crate) const LINES_MAX: i64 = 200;
/// What one meat, or one batch of meat for a rub or a brine, may weigh, grams.
pub(crate) const MEAT_G: RangeInclusive<i64> = 20..=500_000;

/// What is wrong with the input.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotABatch {
    /// A number outside its range.
    Outside {
        /// Which number.
        what: What,
        /// Of which thing; empty where there is only one.
        name: String,
        /// What was given.
        value: i64,
        /// The least.
        low: i64,
        /// The most.
        high: i64,
    },
    /// Too few or too many on a list.
    Count {
        /// Which list.
        list: List,
        /// How many there are.
        count: i64,
        /// The fewest.
        low: i64,
        /// The most.
        high: i64,
    },
    /// Nobody eats.
    Nobody,
    /// Something without a name.
    NoName {
        /// On which list.
        list: List,
    },
    /// Two of one name.
    Twice {
        /// On which list.
        list: List,
        /// The name.
        name: String,
    },
    /// A rub by volume with something whose cup nobody weighed.
    CupNotWeighed {
        /// What it is.
        name: String,
    },
    /// More salt than dissolves.
    Saturated,
    /// One thing in two units.
    MixedUnits {
        /// What it is.
        name: String,
    },
    /// A list for nothing.
    Nothing,
}

macro_rules! named_by_key {
    ($($(#[$doc:meta])* $name:ident { $($(#[$variant_doc:meta])* $variant:ident = $key:literal,)+ })+) => { $(
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub enum $name { $($(#[$variant_doc])* $variant),+ }

        impl $name {
            /// The key of what it is called.
            pub const fn key(self) -> &'static str {
                match self { $(Self::$variant => key($key)),+ }
            }
        }
    )+ };
}

named_by_key! {
    /// A number of the input, with its unit.
    What {
        /// Grams of meat.
        Meat = "batch-what-meat",
        /// How many portions.
        Portions = "batch-what-portions",
        /// Grams of rub a kilogram.
        RubPerKg = "batch-what-rub-per-kg",
        /// Parts of something.
        Parts = "batch-what-parts",
        /// Grams a cup.
        Cup = "batch-what-cup",
        /// Thousandths of salt in something dry.
        SaltOfPart = "batch-what-salt-of-part",
        /// Thousandths of salt in a liquid.
        SaltOfLiquid = "batch-what-salt-of-liquid",
        /// Percent of a label's solution.
        LabelSolution = "batch-what-label-solution",
        /// Milligrams of a label's sodium in 100 g.
        LabelSodium = "batch-what-label-sodium",
        /// Grams of what was taken up.
        TakenUp = "batch-what-taken-up",
        /// Grams of water.
        Water = "batch-what-water",
        /// Thousandths of salt in the meat.
        InTheMeat = "batch-what-in-the-meat",
        /// Thousandths of salt of the water.
        OfTheWater = "batch-what-of-the-water",
        /// Thousandths of salt of the brine.
        OfTheBrine = "batch-what-of-the-brine",
        /// Minutes ahead.
        Ahead = "batch-what-ahead",
        /// Percent to spare.
        Spare = "batch-what-spare",
        /// Minutes between two wettings.
        Every = "batch-what-every",
        /// Minutes until the first wetting.
        First = "batch-what-first",
        /// Milliliters a wetting.
        EachMl = "batch-what-each-ml",
        /// How many adults.
        Adults = "batch-what-adults",
        /// How many children.
        Children = "batch-what-children",
        /// A share of what is eaten.
        Share = "batch-what-share",
        /// Percent trimmed off.
        Trim = "batch-what-trim",
        /// How much is needed.
        Amount = "batch-what-amount",
        /// How much is at home.
        AtHome = "batch-what-at-home",
        /// A price in cents.
        Cents = "batch-what-cents",
        /// What a price is for.
        Per = "batch-what-per",
    }
    /// A list of the input.
    List {
        /// The meats.
        Meats = "batch-list-meats",
        /// The parts of the rub.
        RubParts = "batch-list-rub-parts",
        /// Salts beside the rub's own.
        Salts = "batch-list-salts",
        /// The parts of the mop.
        MopParts = "batch-list-mop-parts",
        /// What else is needed.
        Extras = "batch-list-extras",
        /// What is at home.
        AtHome = "batch-list-at-home",
        /// The prices.
        Prices = "batch-list-prices",
    }
}

impl NotABatch {
    /// The sentence, for whoever reads `say`.
    pub fn said(&self, say: &Words<'_>) -> String {
        match self {
            Self::Outside {
                what,
                name,
                value,
                low,
                high,
            } => {
                let what = say.text(what.key());
                let (value, low, high) = (value.to_string(), low.to_string(), high.to_string());
                let what = match name.as_str() {
                    "" => what,
                    name => say.with(
                        "batch-what-of",
                        &[("what", Arg::Text(&what)), ("name", Arg::Text(name))],
                    ),
                };
                let args = [
                    ("what", Arg::Text(&what)),
                    ("value", Arg::Text(&value)),
                    ("low", Arg::Text(&low)),
                    ("high", Arg::Text(&high)),
                ];
                say.with("batch-outside", &args)
            }
            Self::Count {
                list,
                count,
                low,
                high,
            } => {
                let list = say.text(list.key());
                let args = [
                    ("list", Arg::Text(&list)),
                    ("count", Arg::Number(*count)),
                    ("low", Arg::Number(*low)),
                    ("high", Arg::Number(*high)),
                ];
                say.with("batch-count", &args)
            }
            Self::Nobody => say.text("batch-nobody"),
            Self::NoName { list } => {
                let list = say.text(list.key());
                say.with("batch-no-name", &[("list", Arg::Text(&list))])
            }
            Self::Twice { list, name } => {
                let list = say.text(list.key());
                say.with(
                    "batch-twice",
                    &[("list", Arg::Text(&list)), ("name", Arg::Text(name))],
                )
            }
            Self::CupNotWeighed { name } => say.with("batch-cup", &[("name", Arg::Text(name))]),
            Self::Saturated => say.text("batch-saturated"),
            Self::MixedUnits { name } => {
                say.with("batch-mixed-units", &[("name", Arg::Text(name))])
            }
            Self::Nothing => say.text("batch-nothing"),
        }
    }

    /// The sentence in a language, for a terminal.
    pub fn in_language(&self, locale: Locale) -> String {
        let nobody = crate::ids::DeviceId(uuid::Uuid::nil());
        let viewer = Viewer {
            locale,
            ..Viewer::default_for(nobody)
        };
        self.said(&Words::of(&viewer))
    }
}

/// In English.
impl fmt::Display for NotABatch {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.in_language(Locale::EnUs))
    }
}

impl std::error::Error for NotABatch {}

pub(super) fn within(what: What, value: i64, range: RangeInclusive<i64>) -> Result<(), NotABatch> {
    within_of(what, "", value, range)
}

/// The same of one thing among several.
pub(super) fn within_of(
    what: What,
    name: &str,
    value: i64,
    range: RangeInclusive<i64>,
) -> Result<(), NotABatch> {
    match range.contains(&value) {
        true => Ok(()),
        false => Err(NotABatch::Outside {
            what,
            name: name.to_owned(),
            value,
            low: *range.start(),
            high: *range.end(),
        }),
    }
}

/// So many are on a list.
pub(super) fn counted(
    list: List,
    count: usize,
    range: RangeInclusive<i64>,
) -> Result<(), NotABatch> {
    let count = count as i64;
    match range.contains(&count) {
        true => Ok(()),
        false => Err(NotABatch::Count {
            list,
            count,
            low: *range.start(),
            high: *range.end(),
        }),
    }
}

/// Each name is there, and there once; there are `least` of them or more.
pub(super) fn named<'a>(
    list: List,
    least: i64,
    names: impl Iterator<Item = &'a str>,
) -> Result<(), NotABatch> {
    let mut seen = BTreeSet::new();
    for name in names {
        if name.trim().is_empty() {
            return Err(NotABatch::NoName { list });
        }
        if !seen.insert(name) {
            let name = name.to_owned();
            return Err(NotABatch::Twice { list, name });
        }
    }
    counted(list, seen.len(), least..=LINES_MAX)
}
