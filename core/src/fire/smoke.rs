//! Smoke in words: how strong, whether it burns clean, and what to do. All of it is common practice, no source.

use super::{NotAFire, choices::choices, refused::within};
use serde::{Deserialize, Serialize};

choices! {
    /// What the smoke comes from.
    SmokeFrom {
        /// The wood fire itself.
        Fire,
        /// Chunks on charcoal, or in a tray.
        Chunks,
        /// Pellets.
        Pellets,
    }
    /// Which wood.
    SmokeWood {
        /// Apple, cherry, peach.
        Fruit,
        /// Alder or maple.
        Mild,
        /// Oak.
        Oak,
        /// Pecan.
        Pecan,
        /// Hickory.
        Hickory,
        /// Mesquite.
        Mesquite,
        /// Nobody knows.
        Unknown,
    }
    /// How strong it tastes.
    SmokeStrength {
        /// Hardly more than the fire.
        Light,
        /// As most like it.
        Medium,
        /// It covers the meat: not for poultry or pork loin.
        Strong,
    }
    /// What a person sees above the chimney, or smells.
    SmokeSeen {
        /// Nothing.
        Nothing,
        /// Thin, bluish.
        ThinBlue,
        /// Thick and white.
        White,
        /// Gray or yellow.
        GrayOrYellow,
        /// Black.
        Black,
        /// It stings in eyes and nose, whatever is seen.
        Stings,
    }
    /// How it burns.
    SmokeState {
        /// Clean.
        Clean,
        /// What was put on just now still catches.
        Catching,
        /// Dirty: it turns meat bitter.
        Dirty,
        /// There is none.
        None,
    }
    /// What to do.
    SmokeAdvice {
        /// It stings or the smoke is thick: give air, take out what smolders, no meat on until it runs thin.
        ClearIt,
        /// Wait until what was put on burns clear.
        LetItCatch,
        /// Raw mesquite is strong: not for a long cook. Burn it to coals first, or mix one in three with oak.
        MesquiteToCoals,
        /// No wood that nobody knows: none that was painted or treated, no softwood.
        KnownWoodOnly,
        /// Small, dry, warmed splits, and flames: never smoldering logs.
        SmallAndHot,
        /// No more chunks: the bark is set, or it has had its hours.
        NoMoreChunks,
        /// One more chunk, beside the coals that glow.
        OneMoreChunk,
        /// Wrapped meat takes no smoke: feed for heat alone.
        WrappedTakesNone,
        /// It has enough: no more chunks for a while.
        Enough,
    }
}

/// Chunks are stopped after so many minutes in the smoke. Common practice, no source.
const CHUNKS_UNTIL_MIN: i64 = 180;
/// One chunk lasts about so many minutes. Common practice, no source.
const CHUNK_MIN: i64 = 45;
/// What was put on catches within so many minutes. Common practice, no source.
const CATCHES_MIN: i64 = 15;
/// From so many minutes on a cook is a long one. Common practice, no source.
const LONG_MIN: i64 = 120;

/// A fire and its wood.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SmokeInput {
    /// What the smoke comes from.
    pub from: SmokeFrom,
    /// Which wood.
    pub wood: SmokeWood,
    /// Chunks put on since the meat went on, 0 to 200.
    #[serde(default)]
    pub chunks: i64,
    /// How long the meat has been in the smoke, minutes, 0 to 2,880.
    #[serde(default)]
    pub minutes: i64,
    /// How long the whole cook is to take, minutes, 1 to 2,880, where it is known.
    #[serde(default)]
    pub planned_min: Option<i64>,
    /// How long ago something was put on, minutes, 0 to 2,880, where it is known.
    #[serde(default)]
    pub fed_min_ago: Option<i64>,
    /// Whether the bark of all that cooks is set.
    #[serde(default)]
    pub bark_set: bool,
    /// Whether all that cooks is wrapped.
    #[serde(default)]
    pub wrapped: bool,
    /// Whether poultry or lean pork is among it, which taste of less smoke already.
    #[serde(default)]
    pub mild_meat: bool,
    /// Whether the wood is burnt to coals before it goes on, or mixed with a milder one.
    #[serde(default)]
    pub tamed: bool,
    /// What is seen or smelled.
    #[serde(default)]
    pub seen: Option<SmokeSeen>,
}

/// Smoke in words.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct SmokeAnswer {
    /// How strong it gets as it goes.
    pub strength: SmokeStrength,
    /// How it burns, where somebody looked or smelled.
    pub state: Option<SmokeState>,
    /// What to do, the most pressing first.
    pub advice: Vec<SmokeAdvice>,
    /// How far to trust it.
    pub basis: String,
}

/// How strong the smoke is, whether it burns clean, and what to do.
///
/// ```
/// use slowbend_core::fire::{SmokeAdvice, SmokeInput, smoke};
/// let input: SmokeInput = serde_json::from_value(serde_json::json!({
///     "from": "fire", "wood": "mesquite", "planned_min": 600,
/// })).unwrap();
/// assert_eq!(smoke(&input).unwrap().advice[0], SmokeAdvice::MesquiteToCoals);
/// ```
///
/// # Errors
/// Numbers out of range.
pub fn smoke(input: &SmokeInput) -> Result<SmokeAnswer, NotAFire> {
    within("chunks", input.chunks, 0, 200)?;
    within("minutes", input.minutes, 0, 2_880)?;
    input
        .planned_min
        .map_or(Ok(0), |min| within("planned_min", min, 1, 2_880))?;
    input
        .fed_min_ago
        .map_or(Ok(0), |min| within("fed_min_ago", min, 0, 2_880))?;
    let state = state(input);
    let strength = strength(input, state);
    Ok(SmokeAnswer {
        strength,
        state,
        advice: advice(input, state, strength),
        basis: "Common practice, no source.".into(),
    })
}

/// A sting is dirty whatever is seen; what was just put on may be white for a while.
fn state(input: &SmokeInput) -> Option<SmokeState> {
    let fresh = input.fed_min_ago.is_some_and(|ago| ago < CATCHES_MIN);
    Some(match input.seen? {
        SmokeSeen::Nothing => SmokeState::None,
        SmokeSeen::ThinBlue => SmokeState::Clean,
        SmokeSeen::White if fresh => SmokeState::Catching,
        SmokeSeen::White | SmokeSeen::GrayOrYellow | SmokeSeen::Black | SmokeSeen::Stings => {
            SmokeState::Dirty
        }
    })
}

fn strength(input: &SmokeInput, state: Option<SmokeState>) -> SmokeStrength {
    let wood = match input.wood {
        SmokeWood::Fruit | SmokeWood::Mild => 0,
        SmokeWood::Oak | SmokeWood::Pecan | SmokeWood::Unknown => 1,
        SmokeWood::Hickory => 2,
        SmokeWood::Mesquite => 3,
    };
    let from = match input.from {
        SmokeFrom::Fire => 0,
        SmokeFrom::Pellets => -1,
        // As many as burn one after another are the wood's own strength.
        SmokeFrom::Chunks => match input.chunks * CHUNK_MIN - input.minutes {
            more if more > CHUNK_MIN => 1,
            more if more < -2 * CHUNK_MIN => -1,
            _ => 0,
        },
    };
    let mut points = wood + from + i32::from(input.mild_meat) - i32::from(input.tamed);
    points += i32::from(state == Some(SmokeState::Dirty));
    match points {
        ..=0 => SmokeStrength::Light,
        1 => SmokeStrength::Medium,
        _ => SmokeStrength::Strong,
    }
}

fn advice(
    input: &SmokeInput,
    state: Option<SmokeState>,
    strength: SmokeStrength,
) -> Vec<SmokeAdvice> {
    use SmokeAdvice::*;
    let mut all = vec![];
    all.extend((state == Some(SmokeState::Dirty)).then_some(ClearIt));
    all.extend((state == Some(SmokeState::Catching)).then_some(LetItCatch));
    let long = input.planned_min.unwrap_or(LONG_MIN).max(input.minutes) >= LONG_MIN;
    let raw_mesquite = input.wood == SmokeWood::Mesquite && !input.tamed;
    all.extend((raw_mesquite && long).then_some(MesquiteToCoals));
    all.extend((input.wood == SmokeWood::Unknown).then_some(KnownWoodOnly));
    match input.from {
        SmokeFrom::Fire => all.push(SmallAndHot),
        SmokeFrom::Chunks => all.extend(chunks(input, state, strength)),
        SmokeFrom::Pellets => {}
    }
    all.extend(input.wrapped.then_some(WrappedTakesNone));
    all
}

/// When to stop: once it is set or wrapped, after its hours, or where it is strong already.
fn chunks(
    input: &SmokeInput,
    state: Option<SmokeState>,
    strength: SmokeStrength,
) -> Option<SmokeAdvice> {
    let had_its_hours = input.minutes >= CHUNKS_UNTIL_MIN;
    if input.bark_set || input.wrapped || had_its_hours {
        return Some(SmokeAdvice::NoMoreChunks);
    }
    let burnt_down = input.chunks * CHUNK_MIN <= input.minutes;
    match strength {
        SmokeStrength::Strong => Some(SmokeAdvice::Enough),
        _ if matches!(state, Some(SmokeState::Dirty | SmokeState::Catching)) => None,
        _ => burnt_down.then_some(SmokeAdvice::OneMoreChunk),
    }
}
