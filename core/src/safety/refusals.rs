//! What is not done with Slowbend, known by the name it is given. Start at [`not_here`].
//!
//! Cold smoking, jerky, curing, fish to keep and vacuum storage need controls that nobody has at a pit: salt and nitrite by
//! weight, water activity, a validated drying, a cold chain without air. Nothing here can tell whether they are right, so
//! they are refused with a sentence. Law: a name is refused only for whole words that say such a thing, in either language,
//! however it is written; a name that merely contains their letters is taken.

use super::keyed::keyed;
use crate::{catalogue::fold, units::Mk};

keyed! {
    /// What is refused.
    NotHere {
        /// Smoke without heat.
        ColdSmoking = "refused-cold-smoking",
        /// Meat dried to keep.
        Jerky = "refused-jerky",
        /// Meat cured with salt or nitrite.
        Curing = "refused-curing",
        /// Fish smoked or put up to keep.
        FishToKeep = "refused-fish-to-keep",
        /// Food kept without air.
        VacuumStorage = "refused-vacuum",
    }
}

/// A pit held no hotter than this never brings food out of the range where bacteria grow: food gets no hotter than the air
/// around it. 140 °F: USDA, as [`Source::UsdaTwoHours`](super::Source::UsdaTwoHours) says.
pub const COLD_SMOKE_UP_TO: Mk = Mk::from_f(140);

/// Words that follow one another, any of each place.
type Phrase = &'static [&'static [&'static str]];

const COLD: &[&str] = &["cold"];
const SMOKED: &[&str] = &[
    "smoke", "smoked", "smoking", "smoker", "ahumado", "ahumada", "ahumados", "ahumadas", "ahumar",
];
const IN_COLD: &[&str] = &["frio"];

const COLD_SMOKING: &[Phrase] = &[
    &[COLD, SMOKED],
    &[SMOKED, &["en"], IN_COLD],
    &[&["humo"], IN_COLD],
];
const JERKY: &[Phrase] = &[
    &[&["jerky", "biltong", "charqui", "tasajo", "cecina"]],
    &[&["carne"], &["seca"]],
];
const CURING: &[Phrase] = &[
    &[&[
        "cure",
        "cured",
        "curing",
        "prosciutto",
        "pancetta",
        "guanciale",
        "bresaola",
        "salami",
        "curar",
        "curado",
        "curada",
        "curados",
        "curadas",
    ]],
    &[&["jamon"], &["serrano", "crudo"]],
];
const VACUUM: &[Phrase] = &[
    &[&["vacuum", "vacuumed"]],
    &[&["vac"], &["pack", "packed", "sealed"]],
    &[&["al"], &["vacio"]],
];
const KEPT_FISH: &[Phrase] = &[&[&["lox", "gravlax", "kipper", "kippers"]]];
const FISH: &[&str] = &[
    "fish",
    "salmon",
    "trout",
    "mackerel",
    "herring",
    "eel",
    "tuna",
    "whitefish",
    "pescado",
    "trucha",
    "caballa",
    "arenque",
    "anguila",
    "atun",
];
const TO_KEEP: &[&str] = &[
    "keep",
    "keeping",
    "storage",
    "store",
    "stored",
    "jar",
    "jars",
    "jarred",
    "canned",
    "canning",
    "preserved",
    "guardar",
    "conserva",
    "conservas",
    "conservar",
    "frascos",
];

/// What a meat or dish of this name would be, if it is refused.
///
/// ```
/// use slowbend_core::safety::{NotHere, not_here};
/// assert_eq!(not_here("Cold-smoked salmon"), Some(NotHere::ColdSmoking));
/// assert_eq!(not_here("Carne SECA"), Some(NotHere::Jerky));
/// assert_eq!(not_here("Procured ham"), None);
/// ```
pub fn not_here(name: &str) -> Option<NotHere> {
    let words = fold(name);
    let says = |phrases: &[Phrase]| phrases.iter().any(|phrase| holds(&words, phrase));
    let has = |of: &[&str]| words.iter().any(|word| of.contains(&word.as_str()));
    if says(COLD_SMOKING) {
        Some(NotHere::ColdSmoking)
    } else if says(JERKY) {
        Some(NotHere::Jerky)
    } else if says(KEPT_FISH) || (has(FISH) && has(TO_KEEP)) {
        Some(NotHere::FishToKeep)
    } else if says(VACUUM) {
        Some(NotHere::VacuumStorage)
    } else if says(CURING) {
        Some(NotHere::Curing)
    } else {
        None
    }
}

fn holds(words: &[String], phrase: Phrase) -> bool {
    words.windows(phrase.len()).any(|run| {
        run.iter()
            .zip(phrase)
            .all(|(word, any)| any.contains(&word.as_str()))
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        checks::Cut,
        words::{Locale, Viewer, Words},
    };

    #[test]
    fn each_is_known_in_both_languages_however_it_is_written() {
        for (name, what) in [
            ("cold smoked cheese", NotHere::ColdSmoking),
            ("COLD-SMOKING", NotHere::ColdSmoking),
            ("Queso ahumado en frío", NotHere::ColdSmoking),
            ("humo frio", NotHere::ColdSmoking),
            ("Beef jerky", NotHere::Jerky),
            ("carne  seca", NotHere::Jerky),
            ("Cecina de Ana", NotHere::Jerky),
            ("Dry-cured belly", NotHere::Curing),
            ("lomo curado", NotHere::Curing),
            ("Jamo\u{301}n serrano", NotHere::Curing),
            ("Smoked trout to keep", NotHere::FishToKeep),
            ("Salmón en conserva", NotHere::FishToKeep),
            ("Lox", NotHere::FishToKeep),
            ("Ribs, vacuum-sealed", NotHere::VacuumStorage),
            ("Costillas al vacío", NotHere::VacuumStorage),
        ] {
            assert_eq!(not_here(name), Some(what), "{name}");
        }
    }

    #[test]
    fn what_is_cooked_today_is_taken() {
        for name in [
            "Slab 1",
            "Cold slaw",
            "Smoked salmon",
            "Salmón ahumado",
            "Secure ribs",
            "Corned beef",
            "Bacon-wrapped chicken",
            "Frijoles",
            "Carne asada",
            "Keeper's brisket",
            "The smoker is cold",
            "Vacation ribs",
            "Vacío a la parrilla",
            "Tuna",
            "",
        ] {
            assert_eq!(not_here(name), None, "{name}");
        }
    }

    #[test]
    fn no_cut_is_refused_by_its_own_name() {
        for locale in Locale::ALL {
            let viewer = Viewer {
                locale,
                ..Viewer::default_for(crate::cook::story::device(1))
            };
            for cut in Cut::ALL {
                let name = Words::of(&viewer).text(cut.key());
                assert_eq!(not_here(&name), None, "{name}");
            }
        }
    }
}
