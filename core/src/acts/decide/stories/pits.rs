//! What is done for a pit, and temperatures.

use super::super::testing::*;
use crate::{
    acts::Act,
    log::{Draft, Fed, FireSeen, Payload, ProbeBound, Read, VentChanged, Where},
    moment::MINUTE,
    units::Mk,
};

#[test]
fn a_pit_is_fed_vented_seen_to_and_read() {
    let (mut night, r) = Night::on_the_pits();
    let (cook, pit) = (r.cook, r.drum);
    let at = night.moment.utc_ms - 10 * MINUTE;
    let place = || Where::Pit { pit };
    let temp = Mk::from_f(240);
    let table: Vec<(Act, Payload, &str)> = vec![
        (
            Act::Feed {
                cook,
                pit,
                what: "2 splits of  oak".into(),
                at: Some(at),
            },
            Fed {
                pit,
                what: "2 splits of oak".into(),
            }
            .into(),
            "Fed Drum.",
        ),
        (
            Act::ChangeVent {
                cook,
                pit,
                how: "a third open".into(),
                at: Some(at),
            },
            VentChanged {
                pit,
                how: "a third open".into(),
            }
            .into(),
            "Changed a vent of Drum.",
        ),
        (
            Act::SeeFire {
                cook,
                pit,
                at: Some(at),
            },
            FireSeen { pit }.into(),
            "Saw to the fire in Drum.",
        ),
        (
            Act::Read {
                cook,
                place: place(),
                thermometer: None,
                temp,
                at: Some(at),
            },
            Read {
                place: place(),
                thermometer: None,
                temp,
            }
            .into(),
            "Drum: 240 °F.",
        ),
    ];
    for (act, payload, said) in table {
        let decision = night.does(act).decision;
        let draft = Draft {
            cook: Some(cook),
            at,
            payload,
        };
        assert_eq!(
            (decision.drafts, decision.said.as_str()),
            (vec![draft], said)
        );
    }
    let care = &night.cook(cook).pits[&pit];
    assert_eq!(
        (
            care.fed.len(),
            care.vents.len(),
            care.seen.len(),
            care.read.len()
        ),
        (1, 1, 2, 1)
    );
}

#[test]
fn a_probe_sits_in_a_meat_and_is_named_to_the_letter() {
    let (mut night, r) = Night::on_the_pits();
    let place = |spot: &str| Where::Piece {
        piece: r.butt,
        spot: spot.into(),
    };
    let done = night.does(Act::BindProbe {
        cook: r.cook,
        source: "four-channel box".into(),
        sensor: "P 1".into(),
        place: place(" thick  end "),
        thermometer: None,
    });
    let fact = ProbeBound {
        source: "four-channel box".into(),
        sensor: "P 1".into(),
        place: place("thick end"),
        thermometer: None,
    };
    assert_eq!(done.decision.drafts[0].payload, Payload::from(fact));
    assert_eq!(done.decision.said, "Probe P 1 is in Butt.");
}
