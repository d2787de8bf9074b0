//! The regatta lunch planned the evening before, and planned anew while it cooks.

use super::*;
use crate::{
    cadence::Cadence,
    checks::Cut,
    cook::story::{SIX, Story, cook, device, piece, pit},
    log::*,
    moment::HOUR,
    safety::Form,
    words::Viewer,
};

/// Eight in the evening before.
const EIGHT: i64 = SIX - 10 * HOUR;

fn begun(alone_minutes: Option<i64>) -> Story {
    let mut story = Story::default();
    let added = PitAdded {
        pit: pit(1),
        name: "Drum".into(),
        kind: PitKind::Drum,
        grate_cm2: Some(3_000),
        alone_minutes,
    };
    story.say(1, EIGHT, None, added);
    let started = CookStarted {
        id: cook(1),
        name: "Regatta lunch".into(),
        serve: Some(serve(8)),
        people: Some(14),
        demo: false,
    };
    story.say(1, EIGHT, Some(cook(1)), started);
    for (of, name, cut, grams) in [
        (1, "Slab", Cut::SpareRibs, 1_600),
        (2, "Butt", Cut::PorkButt, 3_000),
    ] {
        let added = PieceAdded {
            piece: piece(of),
            name: name.into(),
            cut,
            form: Form::Intact,
            weight_g: Some(grams),
            cadence: Cadence::None,
        };
        story.say(1, EIGHT, Some(cook(1)), added);
    }
    story
}

fn serve(hours: i64) -> Serve {
    Serve {
        at: SIX + hours * HOUR,
        zone: "America/Chicago".into(),
    }
}

fn ask(hours: i64, night: Option<(i64, i64)>) -> Ask {
    Ask {
        serve: serve(hours),
        courses: vec![],
        asked: PlanAsked {
            hands: 1,
            sleep_from_min: night.map(|(from, _)| from),
            sleep_to_min: night.map(|(_, to)| to),
            late_min: Some(60),
            cooler: true,
            ..PlanAsked::default()
        },
    }
}

fn proposed(story: &Story, ask: &Ask, now: i64) -> Result<Proposed, NoPlan> {
    let told = story.told();
    let known = told.known(1);
    let viewer = Viewer::default_for(device(1));
    propose(
        &known,
        &known.cooks[&cook(1)],
        &Words::of(&viewer),
        ask,
        now,
    )
}

fn find(plan: &AcceptedPlan, does: Does, of: u128) -> Option<&PlannedJob> {
    let on = Subject::Piece(piece(of));
    plan.jobs
        .iter()
        .find(|job| job.job == OnSheet { does, on, nth: 0 })
}

#[test]
fn a_lunch_is_planned_back_from_its_hour_with_every_job_once_and_in_order() {
    let all = proposed(&begun(Some(600)), &ask(8, None), EIGHT).expect("it can be planned");
    let plan = &all.proposals[0].plan;
    assert_eq!(plan.serve.at, serve(8).at);
    assert!(plan.jobs.is_sorted_by_key(|job| job.at));
    let names: std::collections::BTreeSet<OnSheet> = plan.jobs.iter().map(|job| job.job).collect();
    assert_eq!(names.len(), plan.jobs.len());
    for of in [1, 2] {
        let put_on = find(plan, Does::PutOn, of).expect("each meat goes on");
        let off = find(plan, Does::TakeOff, of).expect("each meat comes off");
        assert!(put_on.at < off.at && off.at < plan.serve.at);
        assert_eq!(put_on.pit, Some(pit(1)));
        assert!(put_on.why.is_some());
    }
    let last = plan.jobs.last().expect("there are jobs");
    assert!(last.at <= plan.serve.at + HOUR, "{last:?}");
    assert!(plan.jobs.iter().all(|job| job.at >= EIGHT));
}

#[test]
fn what_takes_hands_in_the_sleep_rings_whoever_sleeps() {
    let night = Some((23 * 60, 7 * 60));
    let all = proposed(&begun(Some(600)), &ask(8, night), EIGHT).expect("it can be planned");
    let (from, to) = (SIX - 7 * HOUR, SIX + HOUR);
    for job in &all.proposals[0].plan.jobs {
        let asleep = (from..to).contains(&job.at) && job.hands > 0;
        assert_eq!(job.wakes, asleep, "{job:?}");
    }
}

#[test]
fn guests_an_hour_late_move_what_is_left_and_nothing_that_is_done() {
    let mut story = begun(Some(600));
    let first = proposed(&story, &ask(8, None), EIGHT).expect("it can be planned");
    let first = first.proposals[0].plan.clone();
    story.say(
        1,
        EIGHT + 60_000,
        Some(cook(1)),
        PlanAccepted {
            plan: first.clone(),
        },
    );
    let put_on = find(&first, Does::PutOn, 2).expect("the butt goes on").at;
    for stage in [Stage::Rubbed, Stage::OnPit { pit: pit(1) }] {
        story.say(
            1,
            put_on,
            Some(cook(1)),
            StageSet {
                piece: piece(2),
                stage,
            },
        );
    }
    let now = put_on + HOUR;
    let again = proposed(&story, &ask(9, None), now).expect("it can be planned");
    let plan = &again.proposals[0].plan;
    assert_eq!(plan.serve.at, serve(9).at);
    assert_eq!(find(plan, Does::PutOn, 2).map(|job| job.at), Some(put_on));
    assert_eq!(find(plan, Does::Rub, 2), find(&first, Does::Rub, 2));
    let cut = |plan: &AcceptedPlan| find(plan, Does::Cut, 2).map(|job| job.at);
    assert!(cut(plan) > cut(&first));
}

#[test]
fn where_nothing_works_each_single_change_that_would_is_told() {
    let late = EIGHT + 15 * HOUR;
    let none = proposed(&begun(Some(600)), &ask(8, None), late).expect_err("a butt takes longer");
    assert!(!none.to_string().contains('⟨'), "{none}");
    assert!(!none.to_string().is_empty());
}

#[test]
fn the_same_cook_asked_twice_gives_the_same_plans() {
    let story = begun(Some(600));
    let all = || proposed(&story, &ask(8, Some((22 * 60, 6 * 60))), EIGHT);
    assert_eq!(all(), all());
}

mod courses;
mod strains;
mod wraps;
