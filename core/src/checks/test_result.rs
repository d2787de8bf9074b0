//! The tests, and what each can come out as. Start at [`TestResult`].

use super::{cuts::Cut, level::Level};
use crate::{ids::ThermometerId, safety::keyed::keyed, units::Mk};
use serde::{Deserialize, Serialize};

keyed! {
    /// A test that can be tried on a meat.
    Test {
        /// Whether the rub wipes off under a fingertip.
        BarkSet = "test-bark-set",
        /// Whether the color says to wrap.
        WrapCall = "test-wrap-call",
        /// How much bone the meat has drawn back from.
        BoneShowing = "test-bone-showing",
        /// The slab lifted by one end.
        Bend = "test-bend",
        /// A skewer or thin probe pushed in.
        ProbeFeel = "test-probe-feel",
        /// The leg of a bird moved in its joint.
        Joint = "test-joint",
        /// The temperature inside, at a named place.
        Temperature = "test-temperature",
    }
}

impl Test {
    /// The Fluent message id of how to do it. That of [`Test::Temperature`] is followed by the places, [`Spot::key`].
    pub const fn how_key(self, cut: Cut) -> &'static str {
        match self {
            Self::BarkSet => "how-bark-set",
            Self::WrapCall => "how-wrap-call",
            Self::BoneShowing => "how-bone-showing",
            Self::Bend => "how-bend",
            Self::ProbeFeel => Self::feel_key(cut),
            Self::Joint => "how-joint",
            Self::Temperature => "how-temperature",
        }
    }

    /// Ribs are felt between their bones, a shoulder beside its blade bone.
    const fn feel_key(cut: Cut) -> &'static str {
        match cut {
            Cut::SpareRibs
            | Cut::SpareRibsTrimmed
            | Cut::BabyBackRibs
            | Cut::PlateRibs
            | Cut::BeefBackRibs => "how-probe-feel",
            Cut::PorkButt => "how-probe-feel-blade",
            _ => "how-probe-feel-no-ribs",
        }
    }
}

keyed! {
    /// What a slab does when it is lifted by one end with tongs, a third of the way in.
    Bend {
        /// Stays nearly straight.
        Stiff = "bend-stiff",
        /// Hangs in a bow, the surface whole.
        Bows = "bend-bows",
        /// Hangs, and the surface cracks.
        Cracks = "bend-cracks",
        /// Comes apart.
        ComesApart = "bend-comes-apart",
    }
}

keyed! {
    /// How a skewer goes into the thick of the meat.
    ProbeFeel {
        /// Has to be pushed.
        Tight = "probe-tight",
        /// Goes in, and drags in places.
        Grabs = "probe-grabs",
        /// Goes in and out as into soft butter.
        Slides = "probe-slides",
    }
}

keyed! {
    /// How far the meat has drawn back along most of the bones.
    BoneShowing {
        /// No bone to be seen.
        Hidden = "bone-hidden",
        /// About a quarter inch (6 mm).
        QuarterInch = "bone-quarter-inch",
        /// Half an inch (13 mm) or more.
        HalfInch = "bone-half-inch",
    }
}

keyed! {
    /// How the leg of a bird turns in its joint: a hint when to read it, never a word on whether it is done.
    Joint {
        /// Stiff: the whole bird moves with it.
        Stiff = "joint-stiff",
        /// Gives a little.
        Gives = "joint-gives",
        /// Turns loosely.
        Loose = "joint-loose",
    }
}

keyed! {
    /// What a fingertip drawn over the rub does.
    BarkSet {
        /// Comes away with rub on it.
        WipesOff = "bark-wipes-off",
        /// Comes away clean.
        Holds = "bark-holds",
    }
}

keyed! {
    /// What the color of the bark says about wrapping.
    WrapCall {
        /// Paler than the cook wants it.
        TooPale = "wrap-too-pale",
        /// As the cook wants it.
        ColorRight = "wrap-color-right",
        /// Darker than the cook wants it.
        TooDark = "wrap-too-dark",
    }
}

keyed! {
    /// Where the tip of a thermometer sits.
    Spot {
        /// Ribs: in the meat between two middle bones, touching neither.
        BetweenBones = "spot-between-bones",
        /// Butt: the middle of the thickest part.
        Center = "spot-center",
        /// Butt: a finger's width (2 cm) from the blade bone.
        NearBladeBone = "spot-near-blade-bone",
        /// Breast: the thickest part of the upper half, at the neck end.
        UpperThick = "spot-upper-thick",
        /// Breast: the thickest part of the lower half, beside the bone where there is one.
        LowerThick = "spot-lower-thick",
        /// Breast: deep on the inner side, along the breastbone or where it was.
        InnerBreastbone = "spot-inner-breastbone",
        /// Thick ribs: the meat over a middle bone, not touching it.
        OverBone = "spot-over-bone",
        /// Picnic: a finger's width (2 cm) from the bone.
        NearBone = "spot-near-bone",
        /// Brisket: the thickest part of the flat.
        FlatThick = "spot-flat-thick",
        /// Brisket: the middle of the point.
        PointThick = "spot-point-thick",
        /// Bird: the thickest part of the breast.
        BreastThick = "spot-breast-thick",
        /// Bird: the innermost part of the thigh, off the bone.
        ThighInner = "spot-thigh-inner",
        /// Bird: the innermost part of the wing.
        WingInner = "spot-wing-inner",
        /// Of several: the thickest one.
        ThickestOne = "spot-thickest-one",
        /// Of several: one from the coolest side of the pit.
        CoolSideOne = "spot-cool-side-one",
        /// Of several: one from between.
        MiddleOne = "spot-middle-one",
        /// Anything stuffed: the middle of the stuffing.
        StuffingCenter = "spot-stuffing-center",
        /// Any other place: it can show that a meat is cold, never that it is done.
        Elsewhere = "spot-elsewhere",
    }
}

/// One reading of the temperature inside a meat.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Temperature {
    /// What the thermometer showed, uncorrected, in millikelvin: 253,150 to 473,150 (−20 to 200 °C).
    pub mk: Mk,
    /// Where its tip sat.
    pub spot: Spot,
    /// Which thermometer, as a UUID, if it is one that the crew knows.
    #[serde(default)]
    #[cfg_attr(feature = "schema", schemars(with = "Option<String>"))]
    pub thermometer: Option<ThermometerId>,
    /// Read by hand on the spot (true), or by a probe that is left in (false).
    pub instant_read: bool,
}

/// What came of one test.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum TestResult {
    /// Of the bark.
    #[serde(rename = "bark_set")]
    Bark(BarkSet),
    /// Of the color.
    #[serde(rename = "wrap_call")]
    Color(WrapCall),
    /// Of the bones.
    #[serde(rename = "bone_showing")]
    Bone(BoneShowing),
    /// Of lifting the slab.
    #[serde(rename = "bend")]
    Lifted(Bend),
    /// Of the skewer.
    #[serde(rename = "probe_feel")]
    Probed(ProbeFeel),
    /// Of the joint.
    #[serde(rename = "joint")]
    Twisted(Joint),
    /// Of the thermometer.
    #[serde(rename = "temperature")]
    Heat(Temperature),
}

impl TestResult {
    /// Which test this is the result of.
    pub const fn test(&self) -> Test {
        match self {
            Self::Bark(_) => Test::BarkSet,
            Self::Color(_) => Test::WrapCall,
            Self::Bone(_) => Test::BoneShowing,
            Self::Lifted(_) => Test::Bend,
            Self::Probed(_) => Test::ProbeFeel,
            Self::Twisted(_) => Test::Joint,
            Self::Heat(_) => Test::Temperature,
        }
    }

    /// How far along the feel finds the meat; none for what is not felt. A hint ([`BoneShowing`], [`Joint`]) never says ready.
    pub const fn feel(&self) -> Option<Level> {
        match self {
            Self::Lifted(Bend::Stiff) | Self::Probed(ProbeFeel::Tight) => Some(Level::NotYet),
            Self::Lifted(Bend::Bows) | Self::Probed(ProbeFeel::Grabs) => Some(Level::Close),
            Self::Lifted(Bend::Cracks) | Self::Probed(ProbeFeel::Slides) => Some(Level::Ready),
            Self::Lifted(Bend::ComesApart) => Some(Level::Over),
            Self::Bone(BoneShowing::Hidden) | Self::Twisted(Joint::Stiff) => Some(Level::NotYet),
            Self::Bone(_) | Self::Twisted(_) => Some(Level::Close),
            Self::Bark(_) | Self::Color(_) | Self::Heat(_) => None,
        }
    }

    /// The Fluent message id of the result; of a temperature, that of its test, for the reading is a number.
    pub const fn key(&self) -> &'static str {
        match self {
            Self::Bark(bark) => bark.key(),
            Self::Color(call) => call.key(),
            Self::Bone(bone) => bone.key(),
            Self::Lifted(bend) => bend.key(),
            Self::Probed(feel) => feel.key(),
            Self::Twisted(joint) => joint.key(),
            Self::Heat(_) => Test::Temperature.key(),
        }
    }
}
