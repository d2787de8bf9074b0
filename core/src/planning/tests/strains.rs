//! A night in which the accepted sheet stops fitting: late lighting, a cold pit, a forecast, guests who come late.

use super::*;
use crate::{
    ahead::{Ahead, Forecast, Spread},
    cook::story::Told,
    units::Mk,
};

/// The regatta lunch with its first plan accepted.
fn accepted() -> (Story, AcceptedPlan) {
    let mut story = begun(Some(600));
    let all = proposed(&story, &ask(8, None), EIGHT).expect("it can be planned");
    let plan = all.proposals[0].plan.clone();
    story.say(1, EIGHT, Some(cook(1)), PlanAccepted { plan: plan.clone() });
    (story, plan)
}

fn told_of(told: &Told, now: i64) -> Vec<(Does, i64)> {
    let known = told.known(1);
    let lunch = &known.cooks[&cook(1)];
    let all = strains(&known, lunch, now);
    let unsaid = unsaid(lunch, &all);
    unsaid
        .iter()
        .map(|one| (one.strain.job.does, one.strain.by_min))
        .collect()
}

fn at(plan: &AcceptedPlan, does: Does, on: Subject) -> PlannedJob {
    let found = plan
        .jobs
        .iter()
        .find(|job| job.job.does == does && job.job.on == on);
    found.expect("it is on the sheet").clone()
}

fn drum() -> Subject {
    Subject::Pit(pit(1))
}

/// All is done in time up to the butt on its pit; the butt's own time.
fn on_the_pit(story: &mut Story, plan: &AcceptedPlan) -> i64 {
    let light = at(plan, Does::Light, drum());
    let put_on = find(plan, Does::PutOn, 2).expect("it goes on").at;
    let seen = FireSeen { pit: pit(1) };
    story.say(1, light.at, Some(cook(1)), seen);
    for stage in [Stage::Rubbed, Stage::OnPit { pit: pit(1) }] {
        let piece = piece(2);
        story.say(1, put_on, Some(cook(1)), StageSet { piece, stage });
    }
    put_on
}

#[test]
fn as_long_as_all_is_done_in_time_nothing_is_told() {
    let (mut story, plan) = accepted();
    let put_on = on_the_pit(&mut story, &plan);
    for minutes in [-200, -60, 0, 10, 14] {
        let now = (put_on + minutes * MINUTE).max(EIGHT);
        assert_eq!(told_of(&story.told(), now), [], "{minutes}");
    }
}

#[test]
fn late_lighting_is_told_after_a_quarter_and_the_new_sheet_begins_now() {
    let (story, plan) = accepted();
    let light = at(&plan, Does::Light, drum());
    let quarter = light.at + 15 * MINUTE;
    let is_told = |now| {
        let told = told_of(&story.told(), now);
        told.iter().any(|(does, _)| *does == Does::Light)
    };
    assert!(!is_told(quarter) && is_told(quarter + MINUTE));
    let now = light.at + 40 * MINUTE;
    let again = proposed(&story, &ask(8, None), now).expect("it can be planned");
    let again = at(&again.proposals[0].plan, Does::Light, drum());
    assert!(again.at >= now, "{again:?}");
}

#[test]
fn a_pit_that_stays_cold_is_told_and_is_not_lit_twice_by_the_new_sheet() {
    let (mut story, plan) = accepted();
    let light = at(&plan, Does::Light, drum());
    let seen = FireSeen { pit: pit(1) };
    story.say(1, light.at, Some(cook(1)), seen);
    let now = light.until + 5 * MINUTE;
    let read = Read {
        place: Where::Pit { pit: pit(1) },
        thermometer: None,
        temp: Mk::from_f(140),
    };
    story.say(1, now - MINUTE, Some(cook(1)), read);
    let told = told_of(&story.told(), now);
    assert!(told.contains(&(Does::Light, 0)), "{told:?}");
    let again = proposed(&story, &ask(9, None), now).expect("it can be planned");
    let plan = &again.proposals[0].plan;
    let lights: Vec<&PlannedJob> = plan
        .jobs
        .iter()
        .filter(|job| job.job.does == Does::Light)
        .collect();
    assert_eq!(
        lights.iter().map(|job| job.at).collect::<Vec<_>>(),
        [light.at]
    );
    assert!(find(plan, Does::PutOn, 2).expect("it goes on").at >= now + 10 * MINUTE);
}

/// A forecast that has the butt done in the middle so many minutes after `now`.
fn forecast(now: i64, minutes: i64) -> Ahead {
    let done = now + minutes * MINUTE;
    let forecast = Forecast {
        made_for: now,
        done: Some(Spread {
            p10: done - HOUR,
            p25: done - HOUR / 2,
            p50: done,
            p75: done + HOUR / 2,
            p90: done + HOUR,
        }),
        fan: vec![],
        stall: None,
        effects: vec![],
        next_check: None,
        rough: true,
        doubted: vec![],
    };
    Ahead {
        told: crate::ahead::settle(None, &forecast),
        forecast,
    }
}

#[test]
fn a_forecast_that_is_off_the_sheet_is_told_and_the_new_sheet_takes_it() {
    let (mut story, plan) = accepted();
    let put_on = on_the_pit(&mut story, &plan);
    let now = put_on + 2 * HOUR;
    let off = find(&plan, Does::TakeOff, 2).expect("it comes off").at;
    let (near, far) = ((off - now) / MINUTE + 20, (off - now) / MINUTE + 90);
    let mut told = story.told();
    told.ahead.insert(piece(2), forecast(now, near));
    assert_eq!(told_of(&told, now), []);
    told.ahead.insert(piece(2), forecast(now, far));
    assert_eq!(told_of(&told, now), [(Does::TakeOff, 90)]);
    let held = remaining::held(&told.known(1), &told.known(1).cooks[&cook(1)], pit(1), now);
    let (butt, from) = planned_butt(&told, now);
    let at_it = butt.times.iter().find(|times| Some(times.pit) == held);
    let left = at_it.expect("it has a time at what is held").minutes.p50;
    assert_eq!(from + left * MINUTE, now + far * MINUTE);
    assert_eq!(butt.on.map(|on| on.over_permille), Some(0));
    let known = told.known(1);
    let (viewer, lunch) = (Viewer::default_for(device(1)), &known.cooks[&cook(1)]);
    let again = propose(&known, lunch, &Words::of(&viewer), &ask(9, None), now);
    let plan = &again.expect("it can be planned").proposals[0].plan;
    assert_eq!(find(plan, Does::PutOn, 2).map(|job| job.at), Some(put_on));
}

/// The butt as a plan made at `now` sees it, and when that begins.
fn planned_butt(told: &Told, now: i64) -> (crate::plan::Meat, i64) {
    let known = told.known(1);
    let (viewer, lunch) = (Viewer::default_for(device(1)), &known.cooks[&cook(1)]);
    let made = household::of(&known, lunch, &Words::of(&viewer), &ask(9, None), now);
    let nr = made.pieces.iter().position(|id| *id == piece(2));
    let butt = made.household.meats[nr.expect("it is planned")].clone();
    (butt, made.household.from_ms)
}

#[test]
fn a_cold_pit_takes_longer_where_nothing_forecasts() {
    let (mut story, plan) = accepted();
    let put_on = on_the_pit(&mut story, &plan);
    let now = put_on + 4 * HOUR;
    let over = |story: &Story| {
        let butt = planned_butt(&story.told(), now).0;
        butt.on.expect("it is on").over_permille
    };
    let usual = over(&story);
    for minutes in [0, 90, 150, 239] {
        let read = Read {
            place: Where::Pit { pit: pit(1) },
            thermometer: None,
            temp: Mk::from_f(195),
        };
        story.say(1, put_on + minutes * MINUTE, Some(cook(1)), read);
    }
    let cold = over(&story);
    assert!(cold > 0 && cold * 10 < usual * 8, "{cold} of {usual}");
}

#[test]
fn guests_who_come_later_are_told_until_a_new_sheet_is_accepted() {
    let (mut story, plan) = accepted();
    let put_on = on_the_pit(&mut story, &plan);
    let now = put_on + HOUR;
    let later = FieldSet {
        of: Subject::Cook(cook(1)),
        to: Field::Serve(Some(serve(9))),
        saw: None,
    };
    story.say(1, now, Some(cook(1)), later);
    assert_eq!(told_of(&story.told(), now), [(Does::Serve, 60)]);
    let all = proposed(&story, &ask(9, None), now).expect("it can be planned");
    let plan = all.proposals[0].plan.clone();
    story.say(1, now + MINUTE, Some(cook(1)), PlanAccepted { plan });
    assert_eq!(told_of(&story.told(), now + 2 * MINUTE), []);
}

#[test]
fn a_sheet_that_was_kept_is_not_told_again_until_something_further_does_not_fit() {
    let (mut story, plan) = accepted();
    let put_on = on_the_pit(&mut story, &plan);
    let now = put_on + HOUR;
    let later = |hours| FieldSet {
        of: Subject::Cook(cook(1)),
        to: Field::Serve(Some(serve(hours))),
        saw: None,
    };
    story.say(1, now, Some(cook(1)), later(9));
    let told = story.told();
    let known = told.known(1);
    let lunch = &known.cooks[&cook(1)];
    let against = strains(&known, lunch, now)
        .iter()
        .map(|one| one.strain)
        .collect();
    let sheet = lunch
        .sheets
        .now
        .as_ref()
        .expect("it was accepted")
        .when
        .entry;
    story.say(2, now, Some(cook(1)), SheetKept { sheet, against });
    assert_eq!(told_of(&story.told(), now + MINUTE), []);
    story.say(1, now + MINUTE, Some(cook(1)), later(10));
    assert_eq!(
        told_of(&story.told(), now + 2 * MINUTE),
        [(Does::Serve, 120)]
    );
}

#[test]
fn a_meat_that_came_after_the_sheet_is_told() {
    let (mut story, _) = accepted();
    let added = PieceAdded {
        piece: piece(3),
        name: "Turkey".into(),
        cut: Cut::TurkeyBreast,
        form: Form::Intact,
        weight_g: None,
        cadence: Cadence::None,
    };
    story.say(1, EIGHT + MINUTE, Some(cook(1)), added);
    assert_eq!(
        told_of(&story.told(), EIGHT + 2 * MINUTE),
        [(Does::PutOn, 0)]
    );
}
