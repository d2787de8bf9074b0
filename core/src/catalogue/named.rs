//! The names of a cut and what is said of it, as message ids. Start at [`cut_words`].

use crate::{
    checks::Cut,
    ids::DeviceId,
    words::{Locale, Viewer, Words},
};
use uuid::Uuid;

/// The message ids of what is said of one cut, from common practice, no source.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CutWords {
    /// Its other names, with commas between.
    pub also: &'static str,
    /// What it is.
    pub about: &'static str,
    /// How it is wrapped; none where it is not.
    pub wrap: Option<&'static str>,
    /// How it rests and is held.
    pub rest: &'static str,
    /// What goes wrong.
    pub wrong: &'static str,
}

/// The ids of one cut, from the end of its own id; those of a cut that is wrapped with `wrapped`.
macro_rules! words {
    ($name:literal wrapped) => {
        CutWords {
            wrap: Some(concat!("cut-wrap-", $name)),
            ..words!($name)
        }
    };
    ($name:literal) => {
        CutWords {
            also: concat!("cut-also-", $name),
            about: concat!("cut-about-", $name),
            wrap: None,
            rest: concat!("cut-rest-", $name),
            wrong: concat!("cut-wrong-", $name),
        }
    };
}

/// The ids of what is said of `cut`.
pub const fn cut_words(cut: Cut) -> CutWords {
    match cut {
        Cut::SpareRibs => words!("spare-ribs" wrapped),
        Cut::SpareRibsTrimmed => words!("spare-ribs-trimmed" wrapped),
        Cut::BabyBackRibs => words!("baby-back-ribs" wrapped),
        Cut::PorkButt => words!("pork-butt" wrapped),
        Cut::PorkPicnic => words!("pork-picnic" wrapped),
        Cut::PorkBelly => words!("pork-belly" wrapped),
        Cut::PorkLoin => words!("pork-loin"),
        Cut::Brisket => words!("brisket" wrapped),
        Cut::BrisketFlat => words!("brisket-flat" wrapped),
        Cut::BrisketPoint => words!("brisket-point" wrapped),
        Cut::PlateRibs => words!("plate-ribs" wrapped),
        Cut::BeefBackRibs => words!("beef-back-ribs" wrapped),
        Cut::TriTip => words!("tri-tip"),
        Cut::ChickenWhole => words!("chicken-whole"),
        Cut::ChickenHalf => words!("chicken-half"),
        Cut::ChickenThighs => words!("chicken-thighs"),
        Cut::TurkeyBreast => words!("turkey-breast"),
        Cut::LambShoulder => words!("lamb-shoulder" wrapped),
        Cut::Sausages => words!("sausages"),
        Cut::PoultrySausages => words!("poultry-sausages"),
    }
}

/// The name of `cut` in each language, then its other names.
pub(super) fn all_names(cut: Cut) -> Vec<String> {
    let say = |locale, key| {
        let viewer = Viewer {
            locale,
            ..Viewer::default_for(DeviceId(Uuid::nil()))
        };
        Words::of(&viewer).text(key)
    };
    let keys = [cut.key(), cut_words(cut).also];
    keys.iter()
        .flat_map(|key| Locale::ALL.map(|locale| say(locale, key)))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::checks::cut_facts;

    #[test]
    fn all_that_is_said_of_a_cut_has_words_in_each_language() {
        for locale in Locale::ALL {
            let viewer = Viewer {
                locale,
                ..Viewer::default_for(DeviceId(Uuid::nil()))
            };
            let say = Words::of(&viewer);
            for cut in Cut::ALL {
                let CutWords {
                    also,
                    about,
                    wrap,
                    rest,
                    wrong,
                } = cut_words(*cut);
                assert_eq!(wrap.is_none(), cut_facts(*cut).wraps.is_empty(), "{cut:?}");
                for key in [also, about, rest, wrong].into_iter().chain(wrap) {
                    assert!(!say.text(key).starts_with('⟨'), "{key} in {}", locale.tag());
                }
            }
        }
    }
}
