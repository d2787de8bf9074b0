//! What is shown of the hours ahead, told by hand-made forecasts.

use crate::{
    acts::Act,
    ahead::{Ahead, Effect, FanPoint, Forecast, Lesson, Spread, Stall, WhatIf, settle},
    checks::Cut,
    cook::story::{Told, cook, piece, pit},
    ids::PieceId,
    log::{Job, Stage, StageSet},
    moment::MINUTE,
    readings::Reading,
    screens::{
        AheadCard, AreaKind, Chart, Heard, ReadingsOf, StartInput, Stroke, piece as screen_of,
        pits, pitside, readings, start,
        tests::regatta::{minute, moment, told_until, viewer},
        wanted,
    },
    units::Mk,
    words::Locale::{EnUs, EsUs},
};

/// Slab 1 of the regatta lunch.
fn slab() -> PieceId {
    piece(1)
}

/// Likely ready so many minutes after six, made at `at`.
fn forecast(at: i64, from: i64, to: i64) -> Forecast {
    let around = |p10: i64, p90: i64| Spread {
        p10,
        p25: p10,
        p50: p10.midpoint(p90),
        p75: p90,
        p90,
    };
    let (p10, p90) = (minute(from), minute(to));
    let fan = (0..3).map(|n| FanPoint {
        at: minute(at + 5 * n),
        low: Mk::from_f(150 + n),
        mid: Mk::from_f(155 + n),
        high: Mk::from_f(160 + n),
    });
    Forecast {
        made_for: minute(at),
        done: Some(around(p10, p90)),
        fan: fan.collect(),
        stall: Some(Stall {
            from: minute(at + 30),
            until: minute(at + 148),
            at: Mk::from_f(165),
        }),
        effects: vec![
            Effect {
                change: WhatIf::HotterPit,
                done: around(p10 - 28 * MINUTE, p90 - 28 * MINUTE),
            },
            Effect {
                change: WhatIf::NoMop,
                done: around(p10 - MINUTE, p90 - MINUTE),
            },
        ],
        next_check: Some(p10),
        rough: true,
        doubted: vec![0],
    }
}

/// The regatta lunch until `at`, with that forecast of slab 1.
fn told(at: i64, forecast: Forecast) -> Told {
    let mut told = told_until(at).told();
    let shown = settle(None, &forecast);
    let ahead = Ahead {
        told: shown,
        forecast,
    };
    told.ahead.insert(slab(), ahead);
    told
}

fn detail(told: &Told, locale: crate::words::Locale, at: i64) -> String {
    let viewer = viewer(locale);
    let screen = pitside(&told.known(1), &viewer, cook(1), &moment(at)).unwrap();
    let lines = screen.meats.iter().chain(&screen.others);
    let line = lines
        .into_iter()
        .find(|line| line.name == "Slab 1")
        .unwrap();
    line.detail.clone()
}

fn card(told: &Told, at: i64) -> Option<AheadCard> {
    let viewer = viewer(EnUs);
    screen_of(&told.known(1), &viewer, slab(), &moment(at))
        .unwrap()
        .ahead
}

#[test]
fn the_nearer_the_finer_in_both_languages() {
    let far = told(165, forecast(165, 400, 530));
    let en = detail(&far, EnUs, 166);
    assert!(
        en.contains("· likely ready early afternoon (4 in 5, rough)"),
        "{en}"
    );
    let es = detail(&far, EsUs, 166);
    let part = "lista, lo más probable: primeras horas de la tarde (4 de 5, aproximado)";
    assert!(es.contains(part), "{es}");
    let near = detail(&told(205, forecast(205, 290, 350)), EnUs, 206);
    let range = "check from 11:00 AM; likely ready 11:00 AM–12:00 PM (4 in 5, rough)";
    assert!(near.contains(range), "{near}");
    let soon = Forecast {
        rough: false,
        ..forecast(205, 232, 276)
    };
    let soon = detail(&told(205, soon), EnUs, 206);
    assert!(
        soon.contains("likely ready 9:50 AM–10:40 AM (4 in 5)"),
        "{soon}"
    );
    let now = detail(&told(205, forecast(205, 206, 236)), EnUs, 211);
    let by = "worth a check now; likely ready by 10:00 AM (9 in 10, rough)";
    assert!(now.contains(by), "{now}");
}

#[test]
fn a_check_that_pays_when_the_pit_is_opened_anyway_waits_for_that() {
    let told = told(172, forecast(172, 205, 250));
    let dues = crate::alarms::due_in(&told.known(1), cook(1), minute(173));
    let mop = dues.iter().find(|due| due.job == Job::Wet(slab())).unwrap();
    assert_eq!(mop.at, minute(198));
    let line = detail(&told, EnUs, 173);
    assert!(
        line.contains("check at the opening due at 9:18 AM; likely"),
        "{line}"
    );
    let es = detail(&told, EsUs, 173);
    assert!(
        es.contains("revisar en la apertura de las 9:18 a. m.; lista"),
        "{es}"
    );
}

#[test]
fn an_old_forecast_says_its_age_and_one_that_ran_out_is_gone() {
    let told = told(205, forecast(205, 232, 276));
    assert!(!detail(&told, EnUs, 214).contains("as of"));
    assert!(
        detail(&told, EnUs, 215).contains("(4 in 5, rough), as of 9:25 AM"),
        "{}",
        detail(&told, EnUs, 215)
    );
    assert!(!detail(&told, EnUs, 281).contains("likely"));
}

#[test]
fn a_meat_that_is_off_shows_none() {
    let mut story = told_until(205);
    story.say(
        1,
        minute(206),
        Some(cook(1)),
        StageSet {
            piece: slab(),
            stage: Stage::Off,
        },
    );
    let mut off = story.told();
    let it = forecast(205, 285, 350);
    off.ahead.insert(
        slab(),
        Ahead {
            told: settle(None, &it),
            forecast: it,
        },
    );
    assert!(!detail(&off, EnUs, 207).contains("likely"));
    assert_eq!(card(&off, 207), None);
}

#[test]
fn the_section_tells_stall_choices_and_what_it_is_not() {
    let told = told(165, forecast(165, 400, 520));
    let card = card(&told, 166).unwrap();
    assert_eq!(
        card.stall.as_deref(),
        Some("Stall: likely from 165 °F, about 2 h, until about 11:00 AM")
    );
    let labels: Vec<&str> = card
        .choices
        .iter()
        .map(|choice| choice.label.as_str())
        .collect();
    assert_eq!(labels, ["Pit 25 °F hotter", "Stop mopping"]);
    let shifts: Vec<&str> = card
        .choices
        .iter()
        .map(|choice| choice.shift.as_str())
        .collect();
    assert_eq!(
        shifts,
        ["About 30 min sooner.", "That changes next to nothing."]
    );
    assert_eq!(card.notes.len(), 3, "{:?}", card.notes);
    let none = Forecast {
        done: None,
        ..forecast(165, 400, 520)
    };
    let none = self::card(&self::told(165, none), 166).unwrap();
    assert_eq!(
        none.ready,
        "No finish in sight within a day as it goes now."
    );
}

#[test]
fn accepting_the_check_puts_the_ring_off_and_nothing_else() {
    let later = told(205, forecast(205, 345, 415));
    let dues = crate::alarms::due_in(&later.known(1), cook(1), minute(206));
    let check = dues.iter().find(|due| due.job == Job::Check(slab()));
    assert_eq!(check.unwrap().at, minute(336));
    let accept = card(&later, 206).unwrap().accept.unwrap();
    assert_eq!(accept.label, "Next check at 12:00 PM");
    let off = Act::Later {
        cook: cook(1),
        jobs: vec![Job::Check(slab())],
        minutes: 154,
    };
    assert_eq!(accept.act, off);
    let sooner = told(205, forecast(205, 290, 350));
    assert_eq!(card(&sooner, 206).unwrap().accept, None);
}

/// The chart of what a probe read of slab 1 and of the butt.
fn chart(told: &Told, of: ReadingsOf) -> Chart {
    let known = told.known(1);
    let wanted = wanted(&known, of, None, minute(206)).unwrap();
    let read = [Reading {
        at: minute(200),
        temp: Mk::from_f(150),
    }];
    let heard: Vec<Heard> = wanted
        .strands
        .iter()
        .map(|_| Heard::of(&wanted, &read, 0))
        .collect();
    let screen = readings(&known, &viewer(EnUs), &wanted, &heard, None, &moment(206));
    screen.unwrap().chart.unwrap()
}

#[test]
fn the_fan_goes_on_the_chart_of_its_meat_and_on_no_other() {
    let mut told = told(205, forecast(205, 232, 276));
    let butt = ReadingsOf::Piece { piece: piece(3) };
    let bare = chart(&told, butt);
    assert!(bare.areas.iter().all(|area| area.kind == AreaKind::Band));
    let it = told.ahead.remove(&slab()).unwrap();
    told.ahead.insert(piece(3), it);
    let drawn = chart(&told, butt);
    let fan = drawn.areas.iter().find(|area| area.kind == AreaKind::Ahead);
    let fan = fan.unwrap();
    assert_eq!(fan.text, "Where its inside will likely be (4 in 5): Butt");
    assert_eq!((fan.upper.len(), fan.lower.len()), (6, 6));
    let higher = fan.upper.iter().zip(&fan.lower).skip(1).step_by(2);
    assert!(higher.clone().all(|(high, low)| high > low));
    let middle = drawn.curves.iter().find(|c| c.stroke == Stroke::Ahead);
    assert_eq!(middle.unwrap().runs, [3]);
    assert!(drawn.width > bare.width, "it reaches beyond now");
    let of_pit = ReadingsOf::Pit {
        cook: cook(1),
        pit: pit(1),
    };
    let pit = chart(&told, of_pit);
    assert!(pit.areas.iter().all(|area| area.kind == AreaKind::Band));
}

#[test]
fn what_was_learned_is_said_in_plain_words_on_the_pit_and_in_the_pit_book() {
    let mut told = told_until(205).told();
    let lesson = |value, meats| Lesson {
        value,
        spread: 1,
        meats,
    };
    told.lessons.pits.insert(pit(1), lesson(6_700, 3));
    told.lessons.pits.insert(pit(2), lesson(-300, 1));
    told.lessons
        .cuts
        .insert(Cut::SpareRibs, lesson(-105_000, 3));
    let lines = |locale| {
        let viewer = viewer(locale);
        let input = StartInput::default();
        let screen = start(&told.known(1), &viewer, &input, &moment(206));
        let said = screen.learned.iter();
        said.map(|line| format!("{} · {} · {}", line.name, line.state, line.detail))
            .collect::<Vec<_>>()
    };
    assert_eq!(
        lines(EnUs),
        [
            "Drum · about 12 °F hotter at the meat than it reads · from 3 meats",
            "Kettle · as hot at the meat as it reads · from one meat",
            "Spare ribs · takes about 10 % less time here than usual · from 3 meats",
        ]
    );
    assert!(lines(EsUs)[0].contains("unos 12 °F más caliente de lo que marca · de 3 carnes"));
    let of_pit = pits(&told.known(1), &viewer(EnUs), cook(1), &moment(206)).unwrap();
    let drum = of_pit.pits.iter().find(|card| card.pit == pit(1)).unwrap();
    assert!(drum.facts.iter().any(|line| line.name == "Learned"));
}

#[test]
fn a_meat_without_a_probe_has_a_chart_of_what_is_forecast() {
    let told = told(205, forecast(205, 232, 276));
    let drawn = chart(&told, ReadingsOf::Piece { piece: slab() });
    assert!(drawn.says.contains("Slab 1"), "{}", drawn.says);
    assert_eq!(drawn.areas.len(), 1);
    let lanes: Vec<&str> = drawn.lanes.iter().map(|lane| lane.name.as_str()).collect();
    assert!(
        lanes.iter().any(|name| name.starts_with("Opened")),
        "{lanes:?}"
    );
}
