//! What an accepted run sheet rings for. The plan of the regatta lunch: the turkey goes on a kettle that is lit for it.

use super::*;
use crate::{
    cook::story::planned_job,
    ids::PieceId,
    log::{AcceptedPlan, Does, PlanAsked, PlannedJob},
};

fn job(does: Does, on: Subject, at: i64, minutes: i64, hands: i64) -> PlannedJob {
    PlannedJob {
        hands,
        ..planned_job(does, on, minute(at), minute(at + minutes))
    }
}

fn plan(jobs: Vec<PlannedJob>) -> PlanAccepted {
    PlanAccepted {
        plan: AcceptedPlan {
            serve: Serve {
                at: minute(480),
                zone: "America/Chicago".into(),
            },
            jobs,
            chance_permille: Some(930),
            asked: PlanAsked::default(),
        },
    }
}

fn turkey() -> PieceId {
    piece(4)
}

fn light(at: i64) -> PlannedJob {
    job(Does::Light, Subject::Pit(pit(2)), at, 30, 1)
}

fn put_on(at: i64) -> PlannedJob {
    job(Does::PutOn, Subject::Piece(turkey()), at, 10, 1)
}

fn planned(jobs: Vec<PlannedJob>) -> Night {
    let mut night = Night::begun();
    night.set_rubs(1);
    let added = PitAdded {
        pit: pit(2),
        name: "Kettle".into(),
        kind: PitKind::Kettle,
        grate_cm2: None,
        alone_minutes: None,
    };
    night.crew(1, added);
    let meat = PieceAdded {
        piece: turkey(),
        name: "Turkey".into(),
        cut: Cut::TurkeyBreast,
        form: Form::Intact,
        weight_g: Some(2_000),
        cadence: Cadence::None,
    };
    night.say(1, meat);
    night.say(2, plan(jobs));
    night
}

fn on_sheet(planned: &PlannedJob) -> Job {
    Job::Sheet(planned.job)
}

#[test]
fn each_job_is_due_at_its_time_until_it_is_done() {
    let (lit, on) = (light(120), put_on(150));
    let mut night = planned(vec![lit.clone(), on.clone()]);
    assert_eq!(
        night.job(60, on_sheet(&lit)).map(|due| due.at),
        Some(minute(120))
    );
    night.say(
        118,
        Fed {
            pit: pit(2),
            what: "a chimney".into(),
        },
    );
    assert_eq!(night.job(119, on_sheet(&lit)), None);
    assert_eq!(
        night.job(119, on_sheet(&on)).map(|due| due.at),
        Some(minute(150))
    );
    let stage = Stage::OnPit { pit: pit(2) };
    let done = night.say(
        152,
        StageSet {
            piece: turkey(),
            stage,
        },
    );
    assert_eq!(night.job(153, on_sheet(&on)), None);
    // Taken back, it is called for again, under a name that did not ring yet.
    night.say(
        154,
        Voided {
            targets: vec![done],
        },
    );
    let again = night.job(155, on_sheet(&on)).expect("it is not done");
    assert_eq!((again.at, again.ordinal), (minute(150), 1));
}

#[test]
fn what_was_done_under_one_plan_is_done_under_the_next() {
    let rub = job(Does::Rub, Subject::Piece(turkey()), 30, 15, 1);
    let mut night = planned(vec![rub.clone(), put_on(150)]);
    night.say(
        33,
        StageSet {
            piece: turkey(),
            stage: Stage::Rubbed,
        },
    );
    let later = job(Does::Rub, Subject::Piece(turkey()), 90, 15, 1);
    night.say(60, plan(vec![later.clone(), put_on(210)]));
    assert_eq!(night.job(61, on_sheet(&later)), None);
    assert_eq!(
        night.job(61, on_sheet(&put_on(0))).map(|due| due.at),
        Some(minute(210))
    );
}

#[test]
fn the_later_plan_counts_whole_and_the_one_before_is_kept() {
    let mut night = planned(vec![light(120)]);
    night.say(60, plan(vec![put_on(150)]));
    let told = night.story.told();
    let sheets = &told.known(1).cooks[&cook(1)].sheets;
    let jobs =
        |sheet: &Option<crate::cook::RunSheet>| sheet.as_ref().map(|sheet| sheet.plan.jobs.clone());
    assert_eq!(jobs(&sheets.now), Some(vec![put_on(150)]));
    assert_eq!(jobs(&sheets.before), Some(vec![light(120)]));
    night.say(61, PlanDropped {});
    let told = night.story.told();
    let sheets = &told.known(1).cooks[&cook(1)].sheets;
    assert_eq!(
        (jobs(&sheets.now), jobs(&sheets.before)),
        (None, Some(vec![put_on(150)]))
    );
    assert_eq!(night.job(62, on_sheet(&put_on(0))), None);
}

#[test]
fn a_job_in_the_night_waits_for_the_end_of_a_sleep_unless_the_plan_put_it_there() {
    let wakes = PlannedJob {
        wakes: true,
        ..light(60)
    };
    for (job, rings_at) in [(light(60), 180), (wakes, 60)] {
        let name = on_sheet(&job);
        let mut night = planned(vec![job]);
        night.crew(3, Slept { until: minute(180) });
        let rings = night.rings_on(1, 10, 60).rings;
        let ring = rings
            .iter()
            .find(|ring| ring.jobs.iter().any(|due| due.job == name));
        assert_eq!(ring.map(|ring| ring.at), Some(minute(rings_at)));
    }
}

#[test]
fn what_takes_no_hands_and_what_rings_by_its_own_rule_is_never_heard() {
    let rest = job(Does::Rest, Subject::Piece(turkey()), 300, 60, 0);
    let serve = job(Does::Serve, Subject::Cook(cook(1)), 480, 0, 1);
    let check = job(Does::Check, Subject::Piece(turkey()), 280, 15, 1);
    let night = planned(vec![rest.clone(), serve.clone(), check.clone()]);
    for silent in [rest, serve, check] {
        assert_eq!(night.job(10, on_sheet(&silent)), None);
    }
}

#[test]
fn what_was_over_before_the_plan_was_accepted_asks_for_nothing() {
    let early = job(Does::Trim, Subject::Piece(turkey()), -60, 15, 1);
    let night = planned(vec![early.clone(), light(120)]);
    assert_eq!(night.job(10, on_sheet(&early)), None);
}

#[test]
fn a_plan_that_another_device_wrote_out_of_order_is_brought_into_order() {
    let backwards = PlannedJob {
        until: i64::MIN,
        at: i64::MAX,
        ..light(0)
    };
    let night = planned(vec![put_on(150), light(120), light(130), backwards]);
    let told = night.story.told();
    let sheet = told.known(1).cooks[&cook(1)]
        .sheets
        .now
        .clone()
        .expect("it was accepted");
    assert_eq!(sheet.plan.jobs, vec![light(120), put_on(150)]);
    assert!(night.due(10).is_sorted_by_key(|due| due.at));
}
