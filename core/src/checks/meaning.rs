//! What one result means for a cut, and when to look again. Start at [`meaning`]. The minutes are common practice, no
//! source; what a result means for safety is for [`verdict()`](super::verdict::verdict) alone to say.

use super::{
    BarkSet, BoneShowing, Cut, CutFacts, Joint, Level, Test, TestResult, WrapCall, cut_facts,
};
use crate::{
    safety::{Form, keyed::keyed, minimum},
    units::Mk,
};
use serde::{Deserialize, Serialize};

keyed! {
    /// What a result means.
    Meaning {
        /// The collagen has not melted: the meat is still tough.
        CollagenFirm = "meaning-collagen-firm",
        /// The collagen is melting: nearly there.
        CollagenMelting = "meaning-collagen-melting",
        /// Tender.
        Tender = "meaning-tender",
        /// So soft that it will not slice or hold together.
        PastTender = "meaning-past-tender",
        /// Too early: the meat has not drawn back.
        BoneEarly = "meaning-bone-early",
        /// The meat has begun to draw back: a hint, the bend decides.
        BoneDrawing = "meaning-bone-drawing",
        /// Drawn back as it does near the end: try the bend now.
        BoneTryBend = "meaning-bone-try-bend",
        /// The joint is stiff: the bird needs time.
        JointEarly = "meaning-joint-early",
        /// The joint gives: nearly time to read.
        JointNear = "meaning-joint-near",
        /// The joint is loose: read the places now.
        JointReadNow = "meaning-joint-read-now",
        /// The rub is wet: no mop and no wrap yet.
        BarkWet = "meaning-bark-wet",
        /// The rub has set: it may be mopped or wrapped.
        BarkSet = "meaning-bark-set",
        /// More smoke before any wrap.
        ColorNeedsTime = "meaning-color-needs-time",
        /// The color is right: wrap now if it is to be wrapped.
        ColorWrapNow = "meaning-color-wrap-now",
        /// Getting too dark: wrap it, or shield it.
        ColorShield = "meaning-color-shield",
        /// Colder than the published minimum.
        BelowMinimum = "meaning-below-minimum",
        /// Past the minimum, and tough still; here a big cut may stand at one temperature for hours.
        SafeButTough = "meaning-safe-but-tough",
        /// Nearly at the temperature where it is usually done.
        NearRange = "meaning-near-range",
        /// Where it is usually done.
        InRange = "meaning-in-range",
        /// Past where it is usually done.
        PastRange = "meaning-past-range",
        /// This test tells little about this cut.
        TellsLittle = "meaning-tells-little",
    }
}

/// What a result means, and when to look again.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Means {
    /// What it means.
    pub meaning: Meaning,
    /// Minutes from the test until the next is worth an opening; 0 = try the deciding test now; none = no need by this test.
    pub next_minutes: Option<i64>,
}

/// What `result` means for this cut. A temperature is taken as it stands: correct it first.
pub fn meaning(cut: Cut, form: Form, result: &TestResult) -> Means {
    let facts = cut_facts(cut);
    if !facts.tests.contains(&result.test()) {
        return Means {
            meaning: Meaning::TellsLittle,
            next_minutes: None,
        };
    }
    let near = Some(facts.check_again.near_minutes);
    let far = Some(facts.check_again.far_minutes);
    let (meaning, next_minutes) = match result {
        TestResult::Bark(BarkSet::WipesOff) => (Meaning::BarkWet, near),
        TestResult::Bark(BarkSet::Holds) => (Meaning::BarkSet, None),
        TestResult::Color(WrapCall::TooPale) => (Meaning::ColorNeedsTime, near),
        TestResult::Color(WrapCall::ColorRight) => (Meaning::ColorWrapNow, None),
        TestResult::Color(WrapCall::TooDark) => (Meaning::ColorShield, None),
        TestResult::Bone(BoneShowing::Hidden) => (Meaning::BoneEarly, far),
        TestResult::Bone(BoneShowing::QuarterInch) => (Meaning::BoneDrawing, near),
        TestResult::Bone(BoneShowing::HalfInch) => (Meaning::BoneTryBend, Some(0)),
        TestResult::Twisted(Joint::Stiff) => (Meaning::JointEarly, far),
        TestResult::Twisted(Joint::Gives) => (Meaning::JointNear, near),
        TestResult::Twisted(Joint::Loose) => (Meaning::JointReadNow, Some(0)),
        TestResult::Lifted(_) | TestResult::Probed(_) => felt(result.feel(), near, far),
        TestResult::Heat(heat) => return means_warmth(cut, form, heat.mk),
    };
    Means {
        meaning,
        next_minutes,
    }
}

fn felt(feel: Option<Level>, near: Option<i64>, far: Option<i64>) -> (Meaning, Option<i64>) {
    match feel {
        Some(Level::Over) => (Meaning::PastTender, None),
        Some(Level::Ready) => (Meaning::Tender, None),
        Some(Level::Close) => (Meaning::CollagenMelting, near),
        Some(Level::NotYet) | None => (Meaning::CollagenFirm, far),
    }
}

/// What a temperature, corrected, means for this cut.
pub(super) fn means_warmth(cut: Cut, form: Form, mk: Mk) -> Means {
    let facts = cut_facts(cut);
    let near = Some(facts.check_again.near_minutes);
    let far = Some(facts.check_again.far_minutes);
    let (meaning, next_minutes) = match by_warmth(&facts, mk) {
        Level::NotYet if mk < minimum(cut, form).temp => (Meaning::BelowMinimum, far),
        _ if mk < minimum(cut, form).temp => (Meaning::BelowMinimum, near),
        Level::NotYet => (Meaning::SafeButTough, far),
        Level::Close => (Meaning::NearRange, near),
        Level::Ready => (Meaning::InRange, None),
        Level::Over => (Meaning::PastRange, None),
    };
    Means {
        meaning,
        next_minutes,
    }
}

/// How far along the temperature alone finds the cut, whatever its minimum.
pub(super) fn by_warmth(facts: &CutFacts, mk: Mk) -> Level {
    match mk {
        hot if facts.over_above.is_some_and(|over| hot > over) => Level::Over,
        hot if hot >= facts.done_range.low => Level::Ready,
        warm if warm >= facts.close_from => Level::Close,
        _ => Level::NotYet,
    }
}

/// Whether a result of this test says something of how near this cut is to done.
pub(super) fn tells_progress(facts: &CutFacts, test: Test) -> bool {
    facts.feel_by.contains(&test)
        || matches!(test, Test::Temperature | Test::BoneShowing | Test::Joint)
}
