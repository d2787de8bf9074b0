//! Stories of what a cook stumbles over the first time: ending a cook, answering for several meats, times that agree.

use super::regatta::{ZONE, minute, moment, stage, told_until, viewer};
use crate::{
    acts::Act,
    cadence::Cadence,
    checks::{BarkSet, Cut, Spot, Temperature, TestResult, WrapCall},
    cook::story::{Story, cook, device, piece, pit},
    ids::ThermometerId,
    log::*,
    moment::{Moment, SECOND},
    safety::Form,
    screens::{self, Happened, PieceScreen, Pitside, Tone},
    units::Mk,
    words::{Locale, Viewer},
};

const BOTH: [Locale; 2] = [Locale::EnUs, Locale::EsUs];

fn now(story: &Story, locale: Locale, at: &Moment) -> Pitside {
    let told = story.told();
    screens::pitside(&told.known(1), &viewer(locale), cook(1), at).unwrap()
}

fn meat(story: &Story, locale: Locale, of: u128, at: &Moment) -> PieceScreen {
    let told = story.told();
    screens::piece(&told.known(1), &viewer(locale), piece(of), at).unwrap()
}

fn lines(story: &Story, locale: Locale, at: i64) -> Vec<Happened> {
    let told = story.told();
    let of_cook = |entry: &&Entry| match &entry.body {
        Body::Raw(raw) => Entry::head(raw).unwrap().cook.is_some(),
        Body::Erased => true,
    };
    let entries: Vec<Entry> = story.entries.iter().filter(of_cook).cloned().collect();
    let (known, viewer) = (told.known(1), viewer(locale));
    let page = screens::timeline(&known, &viewer, cook(1), &entries, None, 500, &moment(at));
    page.unwrap().lines
}

fn started(story: &mut Story, of: u128, at: i64) {
    let begun = CookStarted {
        id: cook(of),
        name: "Supper".into(),
        serve: None,
        people: None,
        demo: false,
    };
    story.say(1, minute(at), Some(cook(of)), begun);
}

fn heats(story: &mut Story, ms: i64, f: i64, instant_read: bool, spots: &[Spot]) {
    let heat = |spot: &Spot| {
        TestResult::Heat(Temperature {
            mk: Mk::from_f(f),
            spot: *spot,
            thermometer: None,
            instant_read,
        })
    };
    let results = spots.iter().map(heat).collect();
    let piece = piece(4);
    story.say(1, ms, Some(cook(1)), Checked { piece, results });
}

const THREE: [Spot; 3] = [Spot::UpperThick, Spot::LowerThick, Spot::InnerBreastbone];

#[test]
fn a_cook_is_ended_by_a_button_that_asks_first_and_so_is_an_empty_one() {
    let mut story = told_until(500);
    started(&mut story, 2, 500);
    for locale in BOTH {
        for of in [1, 2] {
            let told = story.told();
            let known = told.known(1);
            let screen = screens::pitside(&known, &viewer(locale), cook(of), &moment(501));
            let more = screen.unwrap().more;
            let act = Act::FinishCook { cook: cook(of) };
            let end = more.iter().find(|button| button.act == act).unwrap();
            assert_eq!(end.tone, Tone::Grave);
            assert!(end.confirm.as_ref().is_some_and(|asks| asks.contains('?')));
        }
    }
}

#[test]
fn once_all_is_served_or_away_the_end_is_the_one_next_thing() {
    let mut story = told_until(500);
    for of in [1, 2, 3, 4] {
        stage(&mut story, of, 501, Stage::Served);
        stage(&mut story, of, 640, Stage::PutAway);
    }
    for (locale, verb) in BOTH
        .into_iter()
        .zip(["Finish the cook?", "¿Terminar la cocción?"])
    {
        let screen = now(&story, locale, &moment(641));
        assert_eq!(screen.now.verb, verb);
        assert_eq!(screen.now.buttons[0].act, Act::FinishCook { cook: cook(1) });
    }
}

#[test]
fn every_meat_is_listed_somewhere_with_its_link() {
    let mut story = told_until(0);
    for of in 10..25 {
        let added = PieceAdded {
            piece: piece(of),
            name: format!("Slab {of}"),
            cut: Cut::SpareRibs,
            form: Form::Intact,
            weight_g: None,
            cadence: Cadence::None,
        };
        story.say(1, minute(0), Some(cook(1)), added);
    }
    let screen = now(&story, Locale::EnUs, &moment(1));
    assert_eq!((screen.meats.len(), screen.others.len()), (12, 7));
    assert_eq!(screen.rest.as_deref(), Some("and 7 more meats"));
    assert!(screen.others.iter().all(|line| line.link.is_some()));
}

#[test]
fn the_rubs_of_two_slabs_are_one_question_with_an_answer_each() {
    let story = told_until(165);
    for (locale, all) in BOTH
        .into_iter()
        .zip(["All have set", "Ya se fijó en todas"])
    {
        let told = story.told();
        let known = told.known(1);
        let viewer = viewer(locale);
        let dues: Vec<_> = crate::alarms::due_in(&known, cook(1), minute(166))
            .into_iter()
            .filter(|due| matches!(due.job, Job::RubSet(_)))
            .collect();
        let at = moment(166);
        let screen = screens::pitside::pitside_of(&known, &viewer, cook(1), &at, &dues).unwrap();
        assert!(screen.next.is_empty());
        let buttons = &screen.now.buttons;
        assert_eq!((buttons.len(), buttons[0].label.as_str()), (6, all));
        let act = Act::AnswerRubs {
            pieces: vec![piece(1), piece(2)],
            set: true,
            at: None,
        };
        assert_eq!(buttons[0].act, act);
        assert!(buttons[1].label.starts_with("Slab 1"));
    }
}

#[test]
fn what_is_due_of_a_meat_is_answered_on_its_own_screen() {
    let story = told_until(165);
    for (locale, asked) in BOTH.into_iter().zip(["Has it set?", "¿Ya se fijó?"]) {
        let buttons = meat(&story, locale, 2, &moment(166)).buttons;
        let answers: Vec<bool> = buttons
            .iter()
            .filter_map(|button| match &button.act {
                Act::AnswerRub { set, .. } if button.label.starts_with(asked) => Some(*set),
                _ => None,
            })
            .collect();
        assert_eq!(answers, [true, false]);
    }
    let mops = meat(&told_until(200), Locale::EnUs, 2, &moment(205)).buttons;
    let labels: Vec<&str> = mops.iter().map(|button| button.label.as_str()).collect();
    assert!(labels.contains(&"Mop: Did it"), "{labels:?}");
    assert!(labels.contains(&"Mop: Not this time"), "{labels:?}");
}

#[test]
fn the_last_reading_of_a_minute_stands_for_the_screen_as_for_the_alarm() {
    let mut story = told_until(400);
    let began = minute(410) + 5 * SECOND;
    heats(&mut story, began, 80, true, &THREE);
    heats(&mut story, began + 5 * SECOND, 174, true, &THREE);
    let then = Moment::at(began + 9 * SECOND, ZONE);
    for (locale, done) in BOTH.into_iter().zip(["Done", "Lista"]) {
        assert_eq!(meat(&story, locale, 4, &then).verdict.headline, done);
    }
    let told = story.told();
    let dues = crate::alarms::due_in(&told.known(1), cook(1), then.utc_ms);
    assert!(dues.iter().any(|due| due.job == Job::Pull(piece(4))));
}

#[test]
fn a_probe_at_the_pull_point_asks_to_check_and_never_says_take_off() {
    let mut story = told_until(400);
    let bound = ProbeBound {
        source: "box".into(),
        sensor: "3".into(),
        place: Where::Piece {
            piece: piece(4),
            spot: "upper_thick".into(),
        },
        thermometer: None,
    };
    story.say(1, minute(401), Some(cook(1)), bound);
    story.tails.take("box", "3", minute(405), Mk::from_f(174));
    let verbs = [
        "At the pull point: check it",
        "En su punto de sacar: revísala",
    ];
    for (locale, verb) in BOTH.into_iter().zip(verbs) {
        let screen = meat(&story, locale, 4, &moment(406));
        assert!(
            screen.next[0].name.starts_with(verb),
            "{}",
            screen.next[0].name
        );
        let off = screen.buttons.iter().find(|button| {
            matches!(
                button.act,
                Act::SetStage {
                    stage: Stage::Off,
                    ..
                }
            )
        });
        assert_eq!(off.unwrap().tone, Tone::Plain);
    }
}

#[test]
fn serving_is_never_late_before_its_time_nor_on_the_table_a_morning_ahead() {
    let story = told_until(455);
    let serve = |at: i64| {
        let told = story.told();
        let known = told.known(1);
        let (viewer, at) = (viewer(Locale::EnUs), moment(at));
        let dues: Vec<_> = crate::alarms::due_in(&known, cook(1), at.utc_ms)
            .into_iter()
            .filter(|due| matches!(due.job, Job::Serve(_)))
            .collect();
        screens::pitside::pitside_of(&known, &viewer, cook(1), &at, &dues).unwrap()
    };
    let near = serve(472).now;
    assert_eq!(
        (near.when.as_str(), near.due),
        ("in 8 min", Some(minute(480)))
    );
    assert_eq!(near.buttons.len(), 2);
    assert!(serve(359).now.buttons.is_empty());
    assert_eq!(serve(360).now.buttons.len(), 2);
}

#[test]
fn served_food_has_a_time_by_which_to_put_it_away_until_that_is_past() {
    let mut story = told_until(500);
    stage(&mut story, 4, 500, Stage::Served);
    let why = |locale, at| {
        let told = story.told();
        let known = told.known(1);
        let (viewer, at) = (viewer(locale), moment(at));
        let dues: Vec<_> = crate::alarms::due_in(&known, cook(1), at.utc_ms)
            .into_iter()
            .filter(|due| due.job == Job::PutAway(piece(4)))
            .collect();
        let screen = screens::pitside::pitside_of(&known, &viewer, cook(1), &at, &dues);
        screen.unwrap().now.why
    };
    assert!(why(Locale::EnUs, 619).starts_with("Put away by 4:20 PM"));
    assert!(why(Locale::EsUs, 619).starts_with("Guárdala antes de"));
    assert!(why(Locale::EnUs, 620).starts_with("It has stood out"));
    assert!(why(Locale::EsUs, 620).starts_with("Ya estuvo afuera"));
}

#[test]
fn the_next_check_is_that_of_its_job_and_none_before_the_fire() {
    for locale in BOTH {
        assert_eq!(
            meat(&told_until(0), locale, 4, &moment(1)).verdict.next,
            None
        );
    }
    let story = told_until(205);
    let slab = meat(&story, Locale::EnUs, 1, &moment(206));
    let check = slab.next.iter().find(|line| line.name.starts_with("Check"));
    let wait = check.unwrap().state.trim_start_matches("in ").to_owned();
    assert_eq!(slab.verdict.next, Some(format!("Check again in {wait}.")));
}

#[test]
fn the_start_of_a_cook_is_one_act_that_now_does_not_offer_back() {
    let mut story = told_until(-1_000);
    started(&mut story, 2, 0);
    let added = PieceAdded {
        piece: piece(9),
        name: "Slab".into(),
        cut: Cut::SpareRibs,
        form: Form::Intact,
        weight_g: None,
        cadence: Cadence::None,
    };
    story.say(1, minute(0), Some(cook(2)), added);
    let told = story.told();
    let known = told.known(1);
    let last = &known.cooks[&cook(2)].last_acts[&device(1)];
    assert_eq!(
        (last.kind.as_str(), last.entries.len()),
        ("cook_started", 2)
    );
    let screen = screens::pitside(&known, &viewer(Locale::EnUs), cook(2), &moment(0));
    assert_eq!(screen.unwrap().undo, None);
}

#[test]
fn a_meat_that_is_meant_for_a_pit_was_not_moved_there() {
    let mut story = told_until(0);
    let (piece, pit, spot) = (piece(1), pit(1), String::new());
    story.say(1, minute(1), Some(cook(1)), PieceMoved { piece, pit, spot });
    let meant = ["Meant for Drum: Slab 1", "Es para Drum: Slab 1"];
    for (locale, meant) in BOTH.into_iter().zip(meant) {
        assert_eq!(lines(&story, locale, 2)[0].what, meant);
    }
}

#[test]
fn a_taking_back_says_what_and_offers_to_restore_it() {
    let mut story = told_until(160);
    let opened = super::regatta::opened(&mut story, 1, 161, &[1]);
    let targets = vec![opened];
    let void = story.say(1, minute(162), Some(cook(1)), Voided { targets });
    for (locale, says) in BOTH
        .into_iter()
        .zip(["Took back: Opened", "Deshizo: Abrió"])
    {
        let last = &lines(&story, locale, 163)[0];
        assert!(
            last.what.starts_with(says) && last.what.contains("Slab 1"),
            "{}",
            last.what
        );
        let targets = vec![void];
        assert_eq!(last.undo.as_ref().unwrap().act, Act::Undo { targets });
    }
    let targets = vec![void];
    story.say(1, minute(163), Some(cook(1)), Voided { targets });
    let last = &lines(&story, Locale::EnUs, 164)[0];
    assert!(last.what.starts_with("Restored: Opened"), "{}", last.what);
}

#[test]
fn a_reading_of_the_probe_left_in_is_told_as_such_and_each_spot_apart() {
    let mut story = told_until(400);
    heats(&mut story, minute(401), 150, true, &THREE);
    heats(&mut story, minute(402), 155, false, &[Spot::UpperThick]);
    for (locale, by) in BOTH
        .into_iter()
        .zip(["by the probe left in", "por la sonda que se deja"])
    {
        let screen = meat(&story, locale, 4, &moment(403));
        assert!(screen.checks[0].state.contains(by));
        assert!(!screen.checks[1].state.contains(by));
        let spots = screen
            .facts
            .iter()
            .filter(|fact| fact.state.contains("°F,"));
        assert_eq!(spots.count(), 3);
        assert!(lines(&story, locale, 403)[0].what.contains(by));
    }
}

#[test]
fn a_device_without_a_name_is_not_called_this_device_of_itself() {
    let mut story = Story::default();
    started(&mut story, 1, 0);
    let note = String::new();
    story.say(1, minute(0), None, WatchTaken { note });
    let begins = ["This device has", "Este dispositivo tiene"];
    let unnamed = [
        "This device has no name yet.",
        "Este dispositivo todavía no tiene nombre.",
    ];
    for (i, locale) in BOTH.into_iter().enumerate() {
        let watch = now(&story, locale, &moment(1)).watch;
        assert!(watch[0].starts_with(begins[i]), "{}", watch[0]);
        let told = story.told();
        let settings = screens::settings(&told.known(1), &viewer(locale), &moment(1));
        assert_eq!(settings.about[1], unnamed[i]);
    }
}

#[test]
fn the_thermometer_checked_last_comes_first() {
    let mut story = told_until(0);
    let names = [(7, None), (8, Some(-5)), (9, Some(-90))];
    for (of, checked) in names {
        let thermometer = ThermometerId(uuid::Uuid::from_u128(of));
        let name = format!("Pen {of}");
        let added = ThermometerAdded { thermometer, name };
        story.say(1, minute(-300), None, added);
        if let Some(at) = checked {
            let ice = Mk::from_f(32);
            let checked = ThermometerChecked {
                thermometer,
                against: Bath::Ice,
                expected: ice,
                read: ice,
            };
            story.say(1, minute(at), None, checked);
        }
    }
    let told = story.told();
    let viewer: Viewer = viewer(Locale::EnUs);
    let screen = screens::check(&told.known(1), &viewer, piece(1), &moment(1)).unwrap();
    let names: Vec<&str> = screen
        .thermometers
        .iter()
        .map(|t| t.name.as_str())
        .collect();
    assert_eq!(names, ["Pen 8", "Pen 9", "Pen", "Pen 7"]);
}

#[test]
fn a_grate_and_a_height_are_in_the_viewers_units() {
    let story = told_until(0);
    let told = story.told();
    let seen = |viewer: &Viewer| {
        let settings = screens::settings(&told.known(1), viewer, &moment(0));
        let grate = settings.pits[0]
            .fields
            .iter()
            .find(|f| f.field == "grate_cm2");
        let grate = grate.unwrap().clone();
        let height = settings.habits[0].fields[2].unit.clone();
        (grate.value, grate.unit, height, settings.labels.grate)
    };
    let text = |all: [&str; 4]| {
        let [value, unit, height, label] = all.map(String::from);
        (value, unit, height, label)
    };
    let us = viewer(Locale::EnUs);
    assert_eq!(seen(&us), text(["341", "in²", "ft", "Grate (in²)"]));
    let metric = Viewer {
        weight: crate::words::WeightUnit::Kilogram,
        ..viewer(Locale::EsUs)
    };
    let shown = ["2200", "cm²", "m", "Parrilla (cm²)"];
    assert_eq!(seen(&metric), text(shown));
}

#[test]
fn what_came_off_unread_is_the_one_next_thing_and_holding_it_is_not_offered_first() {
    let mut story = told_until(60);
    stage(&mut story, 4, 50, Stage::OnPit { pit: pit(2) });
    stage(&mut story, 4, 60, Stage::Off);
    let back = Act::SetStage {
        piece: piece(4),
        stage: Stage::OnPit { pit: pit(2) },
        at: None,
    };
    for locale in BOTH {
        let next = now(&story, locale, &moment(61)).now;
        assert_eq!(next.what, meat(&story, locale, 4, &moment(61)).title);
        let asked = match locale {
            Locale::EnUs => "Read it by hand, or put it back",
            Locale::EsUs => "Mídela a mano o regrésala al fuego",
        };
        assert_eq!(next.verb, asked);
        assert_eq!(next.buttons[0].act, back);
        let never = |button: &screens::Button| !matches!(button.act, Act::Skip { .. });
        assert!(next.buttons.iter().all(never), "it cannot be left out");
        assert!(!next.cautions.is_empty());
        let link = next.link.unwrap().place;
        assert_eq!(link, screens::Place::Check { piece: piece(4) });
        let page = meat(&story, locale, 4, &moment(61));
        let main = page.buttons.iter().filter(|b| b.tone == Tone::Main);
        let stays = |button: &screens::Button| {
            matches!(
                button.act,
                Act::SetStage {
                    stage: Stage::OnPit { .. },
                    ..
                }
            )
        };
        assert!(
            main.clone().count() > 0 && main.clone().all(stays),
            "{:?}",
            page.buttons
        );
    }
    heats(&mut story, minute(62), 168, true, &THREE);
    let page = meat(&story, Locale::EnUs, 4, &moment(63));
    let held = Act::SetStage {
        piece: piece(4),
        stage: Stage::Held,
        at: None,
    };
    let hold = page.buttons.iter().find(|button| button.act == held);
    assert_eq!(hold.unwrap().tone, Tone::Main, "once it is shown");
}

#[test]
fn once_it_is_wrapped_nothing_is_said_of_its_bark_its_color_or_its_wetting() {
    let mut story = told_until(60);
    let found = vec![
        TestResult::Bark(BarkSet::Holds),
        TestResult::Color(WrapCall::ColorRight),
    ];
    let (ribs, results) = (piece(1), found);
    let passed = Checked {
        piece: ribs,
        results,
    };
    story.say(1, minute(60), Some(cook(1)), passed);
    stage(&mut story, 1, 60, Stage::OnPit { pit: pit(1) });
    let said = |story: &Story, at| {
        let page = meat(story, Locale::EnUs, 1, &moment(at));
        let facts = page.facts.into_iter().map(|fact| fact.state);
        facts
            .chain(page.verdict.reasons)
            .collect::<Vec<_>>()
            .join("\n")
    };
    let bare = said(&story, 61);
    let spent = ["Wrap now", "The rub has set", "Mop every"];
    assert!(spent.iter().all(|words| bare.contains(words)), "{bare}");
    let wrap = Wrap::Paper;
    for (at, to) in [(65, Stage::Wrapped { wrap }), (70, Stage::Off)] {
        stage(&mut story, 1, at, to);
        let now = said(&story, at + 1);
        assert!(!spent.iter().any(|words| now.contains(words)), "{now}");
    }
}

#[test]
fn a_lane_shows_the_coldest_place_and_not_the_one_that_was_read_last() {
    let mut story = told_until(60);
    stage(&mut story, 4, 10, Stage::OnPit { pit: pit(2) });
    heats(&mut story, minute(60), 160, true, &THREE[..1]);
    heats(&mut story, minute(62), 166, true, &THREE[1..]);
    let screen = now(&story, Locale::EnUs, &moment(63));
    let lane = screen
        .meats
        .iter()
        .find(|line| line.name == "Turkey breast");
    let lane = lane.unwrap();
    assert!(lane.detail.contains("160 °F, 3 min ago"), "{lane:?}");
    assert!(!lane.detail.contains("166"), "{lane:?}");
}

#[test]
fn before_a_cook_is_finished_it_says_what_is_still_open() {
    let mut story = told_until(60);
    stage(&mut story, 4, 10, Stage::OnPit { pit: pit(2) });
    for locale in BOTH {
        let name = meat(&story, locale, 4, &moment(61)).title;
        let question = |story: &Story, at| {
            let more = now(story, locale, &moment(at)).more;
            let act = Act::FinishCook { cook: cook(1) };
            let end = more.into_iter().find(|button| button.act == act);
            end.unwrap().confirm.unwrap()
        };
        let mut story = story.clone();
        let on = question(&story, 61);
        assert_eq!(
            on.matches(&name).count(),
            2,
            "on the pit, and unshown: {on}"
        );
        heats(&mut story, minute(62), 168, true, &THREE);
        stage(&mut story, 4, 63, Stage::Served);
        let served = question(&story, 64);
        assert_eq!(served.matches(&name).count(), 1, "not away: {served}");
        stage(&mut story, 4, 70, Stage::PutAway);
        assert!(!question(&story, 71).contains(&name));
    }
}

#[test]
fn a_reading_at_another_place_is_said_not_to_count_and_its_thermometer_is_named() {
    let mut story = told_until(60);
    stage(&mut story, 1, 10, Stage::OnPit { pit: pit(1) });
    let read = |spot: &str| Read {
        place: Where::Piece {
            piece: piece(1),
            spot: spot.into(),
        },
        thermometer: None,
        temp: Mk::from_f(150),
    };
    story.say(1, minute(60), Some(cook(1)), read("by the bone"));
    let page = meat(&story, Locale::EnUs, 1, &moment(61)).verdict;
    let said = page.reasons.join("\n");
    assert!(said.contains("150 °F was read at another place"), "{said}");
    assert!(!said.contains("Past the minimum"), "{said}");
    let doubts = page.doubts.join("\n");
    assert!(
        doubts.contains("a thermometer that was not named"),
        "{doubts}"
    );
    story.say(1, minute(62), Some(cook(1)), read("between_bones"));
    let shown = meat(&story, Locale::EnUs, 1, &moment(63)).verdict;
    assert!(!shown.reasons.join("\n").contains("another place"));
}

#[test]
fn a_temperature_by_hand_is_written_down_at_the_places_of_the_check() {
    let story = told_until(60);
    let told = story.told();
    let write = screens::write_down(&told.known(1), &viewer(Locale::EnUs), cook(1), &moment(61));
    let write = write.unwrap();
    let slip = write.slips.iter().find(|slip| slip.slip == "reading");
    let places = &slip.unwrap().fields[0];
    let ribs = format!("meat:{}:between_bones", piece(1));
    assert!(places.options.iter().any(|place| place.value == ribs));
}
