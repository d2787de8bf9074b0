//! What hands do at a fire, and what is refused with what to do instead.

use super::super::testing::*;
use crate::{
    acts::Act,
    fire::{FireDid, FuelUnit, SmokeSeen, SmokeWood, Vent, WeatherTap, Wind},
    log::{
        Draft, FedUnits, FeedPlanned, FireTended, Payload, SmokeWatched, UnitWeighed, VentSet,
        WeatherSaid, WoodSaid, WoodTamed,
    },
    moment::{HOUR, MINUTE},
};

#[test]
fn one_tap_is_one_entry_and_says_what_was_done() {
    let (mut night, r) = Night::on_the_pits();
    let (cook, pit, now) = (r.cook, r.drum, night.moment.utc_ms);
    let said = WeatherTap::Blows(Wind::Breeze);
    let table: Vec<(Act, Payload, &str)> = vec![
        (
            Act::FeedUnits {
                cook,
                pit,
                unit: FuelUnit::Chimney,
                quarters: 2,
                at: None,
            },
            FedUnits {
                pit,
                unit: FuelUnit::Chimney,
                quarters: 2,
                what: String::new(),
            }
            .into(),
            "Drum: put on ½ chimney.",
        ),
        (
            Act::SetVent {
                cook,
                pit,
                vent: Vent::Lower,
                quarters: 1,
                at: None,
            },
            VentSet {
                pit,
                vent: Vent::Lower,
                quarters: 1,
                how: String::new(),
            }
            .into(),
            "Drum: Lower vent: ¼ open.",
        ),
        (
            Act::TendFire {
                cook,
                pit,
                did: FireDid::Ash,
                at: None,
            },
            FireTended {
                pit,
                did: FireDid::Ash,
            }
            .into(),
            "Drum: ash out.",
        ),
        (
            Act::SayWeather { cook, said },
            WeatherSaid { said }.into(),
            "Weather: breeze.",
        ),
        (
            Act::SayWood {
                cook,
                pit,
                wood: SmokeWood::Oak,
            },
            WoodSaid {
                pit,
                wood: SmokeWood::Oak,
            }
            .into(),
            "Drum smokes with oak.",
        ),
        (
            Act::TameWood {
                cook,
                pit,
                wood: SmokeWood::Mesquite,
            },
            WoodTamed {
                pit,
                wood: SmokeWood::Mesquite,
            }
            .into(),
            "Drum: mesquite, burnt to coals or mixed with a milder wood.",
        ),
        (
            Act::WatchSmoke {
                cook,
                pit,
                seen: SmokeSeen::ThinBlue,
                at: None,
            },
            SmokeWatched {
                pit,
                seen: SmokeSeen::ThinBlue,
            }
            .into(),
            "Drum, smoke: thin, bluish.",
        ),
    ];
    for (act, payload, said) in table {
        let decision = night.decide(&act).unwrap();
        let draft = Draft {
            cook: Some(cook),
            at: now,
            payload,
        };
        assert_eq!(
            (decision.drafts, decision.said.as_str()),
            (vec![draft], said)
        );
        assert!(decision.undoable);
    }
    let plan = Act::PlanFeed {
        cook,
        pit,
        due: now + 40 * MINUTE,
    };
    let decision = night.decide(&plan).unwrap();
    let fact = FeedPlanned {
        pit,
        due: now + 40 * MINUTE,
    };
    assert_eq!(decision.drafts[0].payload, fact.into());
    let weigh = Act::WeighUnit {
        pit,
        unit: FuelUnit::Basket,
        grams: 3_900,
    };
    let decision = night.decide(&weigh).unwrap();
    let fact = UnitWeighed {
        pit,
        unit: FuelUnit::Basket,
        grams: 3_900,
    };
    assert_eq!(
        decision.drafts,
        [Draft {
            cook: None,
            at: now,
            payload: fact.into()
        }]
    );
}

#[test]
fn what_cannot_be_is_refused_with_what_to_do() {
    let (mut night, r) = Night::on_the_pits();
    let (cook, pit, now) = (r.cook, r.drum, night.moment.utc_ms);
    let feed = |unit, quarters| Act::FeedUnits {
        cook,
        pit,
        unit,
        quarters,
        at: None,
    };
    for (act, says) in [
        (feed(FuelUnit::Chimney, 0), "Quarters"),
        (feed(FuelUnit::Chimney, 401), "Quarters"),
        (feed(FuelUnit::Hopper, 4), "does not go in Drum"),
        (feed(FuelUnit::Split, 4), "does not go in Drum"),
        (
            Act::SetVent {
                cook,
                pit,
                vent: Vent::Upper,
                quarters: 5,
                at: None,
            },
            "quarters",
        ),
        (
            Act::PlanFeed {
                cook,
                pit,
                due: now,
            },
            "between now and a day",
        ),
        (
            Act::PlanFeed {
                cook,
                pit,
                due: now + 25 * HOUR,
            },
            "between now and a day",
        ),
        (
            Act::WeighUnit {
                pit,
                unit: FuelUnit::Basket,
                grams: 0,
            },
            "Weigh one",
        ),
        (
            Act::WeighUnit {
                pit,
                unit: FuelUnit::Hopper,
                grams: 900,
            },
            "does not go in Drum",
        ),
    ] {
        let refused = night.decide(&act).unwrap_err().reason;
        assert!(refused.contains(says), "{act:?}: {refused}");
    }
}
