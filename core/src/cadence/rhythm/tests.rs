use super::*;
use proptest::prelude::*;

const ON: i64 = 1_795_000_000_000;

fn minute(minutes: i64) -> i64 {
    ON + minutes * MINUTE
}

/// Ribs with a half-hour mop, on the pit, the rub set after 65 minutes.
fn ribs() -> Facts {
    let not_yet = RubAnswer {
        at: minute(45),
        set: false,
    };
    let clean = RubAnswer {
        at: minute(65),
        set: true,
    };
    Facts {
        cadence: Cadence::mop(),
        on_pit_at: Some(ON),
        rub_answers: vec![not_yet, clean],
        ..Facts::default()
    }
}

fn wet(due: i64, missed: i64) -> Next {
    Next::Wet {
        due: minute(due),
        earliest: minute(due - 7),
        latest: minute(due + 7),
        missed,
    }
}

#[test]
fn the_rub_is_asked_about_until_it_has_set_and_never_again() {
    let mut ribs = Facts {
        rub_answers: vec![],
        ..ribs()
    };
    assert_eq!(ribs.next(minute(1)), Next::AskRub { due: minute(45) });
    ribs.rub_answers.push(RubAnswer {
        at: minute(47),
        set: false,
    });
    assert_eq!(ribs.next(minute(50)), Next::AskRub { due: minute(67) });
    ribs.rub_answers.push(RubAnswer {
        at: minute(70),
        set: true,
    });
    assert_eq!(
        ribs.next(minute(70)),
        wet(70, 0),
        "the first mop is due when the rub has set"
    );
    ribs.rub_answers.push(RubAnswer {
        at: minute(75),
        set: false,
    });
    assert_eq!(ribs.next(minute(75)), wet(70, 0));
}

#[test]
fn whoever_mops_unasked_has_found_the_rub_set() {
    let ribs = Facts {
        rub_answers: vec![],
        wet_at: vec![minute(40)],
        ..ribs()
    };
    assert_eq!(ribs.next(minute(41)), wet(70, 0));
}

#[test]
fn each_mop_is_due_one_cadence_after_the_last_and_five_minutes_ago_is_five_minutes_ago() {
    let mut ribs = Facts {
        wet_at: vec![minute(95), minute(66)],
        ..ribs()
    };
    assert_eq!(ribs.next(minute(100)), wet(125, 0));
    let now = 130;
    ribs.wet_at.push(minute(now - 5));
    assert_eq!(ribs.next(minute(now)), wet(155, 0));
}

#[test]
fn missed_mops_are_one_line() {
    let ribs = Facts {
        wet_at: vec![minute(70)],
        ..ribs()
    };
    assert_eq!(ribs.next(minute(129)), wet(100, 0));
    assert_eq!(ribs.next(minute(130)), wet(100, 1));
    assert_eq!(ribs.next(minute(195)), wet(100, 3));
}

#[test]
fn skip_waits_one_cadence_and_later_waits_as_long_as_was_said() {
    let mut ribs = Facts {
        wet_at: vec![minute(70)],
        skipped_at: vec![minute(98)],
        ..ribs()
    };
    assert_eq!(ribs.next(minute(99)), wet(128, 0));
    ribs.later.push(Later {
        at: minute(127),
        minutes: 10,
    });
    assert_eq!(ribs.next(minute(127)), wet(137, 0));
    ribs.later.push(Later {
        at: minute(110),
        minutes: 5,
    });
    assert_eq!(
        ribs.next(minute(127)),
        wet(137, 0),
        "later never brings a mop forward"
    );
    ribs.wet_at.push(minute(140));
    assert_eq!(
        ribs.next(minute(141)),
        wet(170, 0),
        "what was put off before the last mop is spent"
    );
}

#[test]
fn a_sleeper_is_not_woken_for_a_mop() {
    let night = |from, to| Span {
        from: minute(from),
        to: minute(to),
    };
    let mut ribs = Facts {
        wet_at: vec![minute(70)],
        asleep: vec![night(150, 240), night(90, 150)],
        ..ribs()
    };
    let after = Next::Wet {
        due: minute(240),
        earliest: minute(93),
        latest: minute(247),
        missed: 0,
    };
    assert_eq!(ribs.next(minute(80)), after);
    assert_eq!(ribs.next(minute(200)), after);
    ribs.asleep = vec![night(110, 240)];
    assert_eq!(ribs.next(minute(105)), wet(100, 0), "due while awake");
    assert_eq!(ribs.next(minute(200)), after, "late when sleep began");
}

#[test]
fn the_last_stretch_is_for_the_glaze() {
    let mut ribs = Facts {
        wet_at: vec![minute(70)],
        glaze_from: Some(minute(120)),
        ..ribs()
    };
    assert_eq!(ribs.next(minute(80)), wet(100, 0));
    assert_eq!(
        ribs.next(minute(120)),
        Next::Glaze { due: minute(120) },
        "a late mop gives way to the glaze"
    );
    ribs.wet_at.push(minute(100));
    assert_eq!(
        ribs.next(minute(101)),
        Next::Glaze { due: minute(120) },
        "the next mop would fall into it"
    );
    ribs.glazed_at = Some(minute(121));
    assert_eq!(ribs.next(minute(122)), Next::Nothing { why: Why::Glazed });
    let plain = Facts {
        cadence: Cadence::None,
        glazed_at: None,
        ..ribs
    };
    assert_eq!(
        plain.next(minute(80)),
        Next::Glaze { due: minute(120) },
        "no mop, and glazed all the same"
    );
}

#[test]
fn nothing_is_said_with_its_reason() {
    let nothing = |facts: Facts| match facts.next(minute(100)) {
        Next::Nothing { why } => why,
        next => panic!("{next:?}"),
    };
    assert_eq!(
        nothing(Facts {
            on_pit_at: None,
            ..ribs()
        }),
        Why::NotOnPit
    );
    assert_eq!(
        nothing(Facts {
            wrapped_at: Some(minute(90)),
            ..ribs()
        }),
        Why::Wrapped
    );
    assert_eq!(
        nothing(Facts {
            off_at: Some(minute(90)),
            wrapped_at: Some(minute(80)),
            ..ribs()
        }),
        Why::OffPit
    );
    assert_eq!(
        nothing(Facts {
            cadence: Cadence::None,
            ..ribs()
        }),
        Why::NoCadence
    );
}

#[test]
fn one_phone_set_to_2099_does_not_silence_a_mop() {
    let far = 4_070_908_800_000;
    let honest = Facts {
        wet_at: vec![minute(70)],
        ..ribs()
    };
    let mut claimed = honest.clone();
    claimed.wet_at.push(far);
    claimed.skipped_at.push(far);
    claimed.later.push(Later {
        at: far,
        minutes: 30,
    });
    assert_eq!(claimed.next(minute(80)), honest.next(minute(80)));
}

prop_compose! {
    fn instants()(minutes in prop::collection::vec(-30i64..600, 0..6)) -> Vec<i64> {
        minutes.into_iter().map(minute).collect()
    }
}

prop_compose! {
    fn any_facts()(
        every_min in 10i64..=240,
        on in prop::option::weighted(0.9, -30i64..60),
        set in prop::collection::vec((0i64..200, any::<bool>()), 0..4),
        [wrapped, off, glaze, glazed] in prop::array::uniform4(prop::option::weighted(0.2, 0i64..600)),
        [wet_at, skipped_at, put_off] in prop::array::uniform3(instants()),
        asleep in prop::collection::vec((0i64..600, 0i64..300), 0..4),
    ) -> Facts {
        Facts {
            cadence: Cadence::Mop { every_min },
            on_pit_at: on.map(minute),
            rub_answers: set.into_iter().map(|(at, set)| RubAnswer { at: minute(at), set }).collect(),
            wrapped_at: wrapped.map(minute),
            off_at: off.map(minute),
            glaze_from: glaze.map(minute),
            glazed_at: glazed.map(minute),
            wet_at,
            skipped_at,
            later: put_off.into_iter().map(|at| Later { at, minutes: 15 }).collect(),
            asleep: asleep.into_iter().map(|(from, long)| Span { from: minute(from), to: minute(from + long) }).collect(),
        }
    }
}

fn due(next: &Next) -> Option<i64> {
    match next {
        Next::AskRub { due } | Next::Wet { due, .. } | Next::Glaze { due } => Some(*due),
        Next::Nothing { .. } => None,
    }
}

proptest! {
    #[test]
    fn a_wrapped_meat_is_never_to_be_wetted(facts in any_facts(), wrapped in -30i64..900, now in 0i64..900) {
        let wrapped = Facts { wrapped_at: Some(minute(wrapped)), ..facts };
        let nothing = matches!(wrapped.next(minute(now)), Next::Nothing { .. });
        prop_assert!(nothing);
    }

    #[test]
    fn nothing_is_due_in_a_sleep(facts in any_facts(), now in 0i64..900) {
        let now = minute(now);
        if let Some(due) = due(&facts.next(now)) {
            prop_assert!(facts.asleep.iter().all(|sleep| due < sleep.from || due >= sleep.to));
            let sleeps = facts.asleep.iter().any(|sleep| sleep.from <= now && now < sleep.to);
            prop_assert!(!sleeps || due > now);
        }
    }

    #[test]
    fn a_wetting_is_inside_its_own_window_and_before_the_last_stretch(facts in any_facts(), now in 0i64..900) {
        if let Next::Wet { due, earliest, latest, missed } = facts.next(minute(now)) {
            prop_assert!(earliest <= due && due <= latest && missed >= 0);
            prop_assert!(facts.glaze_from.is_none_or(|from| due < from && minute(now) < from));
        }
    }

    #[test]
    fn the_order_of_the_facts_changes_nothing(facts in any_facts(), now in 0i64..900) {
        let mut turned = facts.clone();
        turned.rub_answers.reverse();
        turned.wet_at.reverse();
        turned.skipped_at.reverse();
        turned.later.reverse();
        turned.asleep.reverse();
        prop_assert_eq!(facts.next(minute(now)), turned.next(minute(now)));
    }
}
