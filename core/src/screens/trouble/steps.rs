//! What to try, in order, by trouble and by what burns. Common practice, no source.

use super::TroubleKind;
use crate::{
    alarms::ROUND_MIN,
    ids::PitId,
    log::PitKind,
    moment::MINUTE,
    screens::glance::Glance,
    words::{Arg, key},
};

/// All troubles, the most dangerous first.
pub(super) const ALL: [TroubleKind; 7] = [
    TroubleKind::FlareUp,
    TroubleKind::Cold,
    TroubleKind::Hot,
    TroubleKind::Falling,
    TroubleKind::Silent,
    TroubleKind::Smoke,
    TroubleKind::Rain,
];

/// What burns or glows in a pit.
#[derive(Clone, Copy)]
enum Fire {
    Wood,
    Coal,
    Ceramic,
    Pellets,
    Electric,
}

const fn fire_of(kind: PitKind) -> Fire {
    match kind {
        PitKind::StickBurner => Fire::Wood,
        PitKind::Kettle | PitKind::Drum | PitKind::Cabinet => Fire::Coal,
        PitKind::Ceramic => Fire::Ceramic,
        PitKind::Pellet => Fire::Pellets,
        PitKind::Electric => Fire::Electric,
    }
}

impl Glance<'_> {
    /// The steps for that pit.
    pub(super) fn trouble_steps(&self, pit: PitId, trouble: TroubleKind) -> Vec<String> {
        let kind = self.known.crew.pits.get(&pit).map(|pit| pit.kind.value);
        let fire = kind.map_or(Fire::Coal, fire_of);
        let keys = match trouble {
            TroubleKind::Cold => with(&[key("step-read-second")], warmer(fire), &[]),
            TroubleKind::Falling => with(&[key("step-lid-sits")], warmer(fire), &[]),
            TroubleKind::Hot => with(&[key("step-read-second")], cooler(fire), &[]),
            TroubleKind::Smoke => with(
                &[key("step-smoke-see")],
                cleaner(fire),
                &[key("step-no-meat-yet")],
            ),
            TroubleKind::FlareUp => with(&[key("step-flare-lid")], starved(fire), &FLARE_THEN),
            TroubleKind::Rain => with(&[key("step-rain-stay")], sheltered(fire), &[]),
            TroubleKind::Silent => return self.silent_steps(),
        };
        keys.into_iter().map(|step| self.say.text(step)).collect()
    }

    fn silent_steps(&self) -> Vec<String> {
        let round = self.say.duration(ROUND_MIN * MINUTE);
        vec![
            self.say.text("step-read-by-hand"),
            self.say.text("step-probe-plug"),
            self.say.text("step-phone-near"),
            self.say
                .with("step-see-fire", &[("round", Arg::Text(&round))]),
            self.say.text("step-probe-ice"),
        ]
    }
}

fn with(
    first: &[&'static str],
    then: Vec<&'static str>,
    last: &[&'static str],
) -> Vec<&'static str> {
    [first, &then, last].concat()
}

fn warmer(fire: Fire) -> Vec<&'static str> {
    match fire {
        Fire::Wood => vec![
            key("step-rake"),
            key("step-dry-split"),
            key("step-open-inlet"),
            key("step-wait-ten"),
        ],
        Fire::Coal => vec![
            key("step-ash"),
            key("step-open-lower"),
            key("step-add-lit"),
            key("step-wait-ten"),
        ],
        Fire::Ceramic => vec![
            key("step-ash"),
            key("step-open-lower"),
            key("step-walls-slow"),
            key("step-add-lit"),
        ],
        Fire::Pellets => vec![
            key("step-hopper"),
            key("step-lid-shut"),
            key("step-burn-pot"),
            key("step-wait-ten"),
        ],
        Fire::Electric => vec![key("step-plug"), key("step-lid-shut"), key("step-wait-ten")],
    }
}

fn cooler(fire: Fire) -> Vec<&'static str> {
    match fire {
        Fire::Wood => vec![
            key("step-no-more-wood"),
            key("step-inlet-half"),
            key("step-wait-ten"),
        ],
        Fire::Coal => vec![
            key("step-lid-shut"),
            key("step-close-lower"),
            key("step-upper-crack"),
            key("step-still-climbing"),
        ],
        Fire::Ceramic => vec![
            key("step-lid-shut"),
            key("step-close-lower"),
            key("step-walls-slow"),
            key("step-open-slowly"),
        ],
        Fire::Pellets | Fire::Electric => vec![
            key("step-set-lower"),
            key("step-lid-shut"),
            key("step-off-at-plug"),
        ],
    }
}

fn cleaner(fire: Fire) -> Vec<&'static str> {
    match fire {
        Fire::Wood => vec![
            key("step-open-inlet"),
            key("step-dry-split"),
            key("step-smolder-out"),
        ],
        Fire::Coal | Fire::Ceramic => vec![
            key("step-upper-open"),
            key("step-open-lower"),
            key("step-smolder-out"),
            key("step-burn-clear"),
        ],
        Fire::Pellets => vec![key("step-damp-pellets"), key("step-burn-pot")],
        Fire::Electric => vec![key("step-fewer-chips"), key("step-upper-open")],
    }
}

fn starved(fire: Fire) -> Vec<&'static str> {
    match fire {
        Fire::Wood | Fire::Coal | Fire::Ceramic => vec![key("step-flare-vents")],
        Fire::Pellets | Fire::Electric => vec![key("step-flare-plug")],
    }
}

const FLARE_THEN: [&str; 4] = [
    key("step-flare-no-water"),
    key("step-flare-spreads"),
    key("step-flare-wait"),
    key("step-open-slowly"),
];

fn sheltered(fire: Fire) -> Vec<&'static str> {
    match fire {
        Fire::Wood | Fire::Coal | Fire::Ceramic => vec![
            key("step-rain-windbreak"),
            key("step-rain-vents"),
            key("step-rain-fuel"),
        ],
        Fire::Pellets | Fire::Electric => vec![key("step-rain-plug"), key("step-rain-fuel")],
    }
}
