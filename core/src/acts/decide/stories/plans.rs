//! Accepting a plan, the other one again, and going on without.

use super::super::testing::*;
use crate::{
    acts::Act,
    cook::story::planned_job,
    log::{
        AcceptedPlan, Does, Field, Job, OnSheet, Payload, PlanAsked, PlannedJob, Serve, Subject,
    },
    moment::{HOUR, MINUTE},
    units::Mk,
};

/// Two in the afternoon after the night.
const TWO: i64 = NIGHT + 16 * HOUR;

fn job(does: Does, on: Subject, at: i64) -> PlannedJob {
    planned_job(does, on, at, at + 10 * MINUTE)
}

fn plan(r: &Regatta, serve: i64) -> AcceptedPlan {
    AcceptedPlan {
        serve: Serve {
            at: serve,
            zone: "America/Chicago".into(),
        },
        jobs: vec![
            job(Does::PutOn, Subject::Piece(r.butt), serve - 14 * HOUR),
            job(Does::Light, Subject::Pit(r.drum), serve - 15 * HOUR),
        ],
        chance_permille: Some(930),
        asked: PlanAsked {
            hands: 1,
            ..PlanAsked::default()
        },
    }
}

fn accept(r: &Regatta, plan: AcceptedPlan) -> Act {
    Act::AcceptPlan { cook: r.cook, plan }
}

#[test]
fn an_accepted_plan_is_one_entry_with_its_jobs_by_time_and_moves_the_serving_with_it() {
    let (mut night, r) = Night::regatta();
    let done = night.does(accept(&r, plan(&r, TWO)));
    let [moved, accepted] = done.decision.drafts.as_slice() else {
        panic!("{:?}", done.decision.drafts);
    };
    let Payload::FieldSet(set) = &moved.payload else {
        panic!("{moved:?}")
    };
    assert!(matches!(&set.to, Field::Serve(Some(serve)) if serve.at == TWO));
    let Payload::PlanAccepted(fact) = &accepted.payload else {
        panic!("{accepted:?}")
    };
    let order: Vec<Does> = fact.plan.jobs.iter().map(|job| job.job.does).collect();
    assert_eq!(order, [Does::Light, Does::PutOn]);
    assert_eq!(done.decision.said, "Plan accepted: 2 jobs.");
    // The same hour again moves no serving.
    let again = night.does(accept(&r, plan(&r, TWO)));
    assert_eq!(again.decision.drafts.len(), 1);
}

#[test]
fn the_plan_before_is_one_act_away_and_only_while_it_is_at_hand() {
    let (mut night, r) = Night::regatta();
    let first = *night
        .does(accept(&r, plan(&r, TWO)))
        .keys
        .last()
        .expect("it was recorded");
    night.does(accept(&r, plan(&r, TWO + HOUR)));
    night.does(Act::AcceptAgain {
        cook: r.cook,
        entry: first,
    });
    let told = night.refuses(&Act::AcceptAgain {
        cook: r.cook,
        entry: first,
    });
    assert!(told.contains("no longer at hand"), "{told}");
    night.does(Act::DropPlan { cook: r.cook });
    let told = night.refuses(&Act::DropPlan { cook: r.cook });
    assert!(told.contains("no accepted plan"), "{told}");
}

#[test]
fn a_job_is_answered_put_off_or_left_out_while_it_is_on_the_sheet() {
    let (mut night, r) = Night::regatta();
    let (cook, light) = (
        r.cook,
        Job::Sheet(OnSheet {
            does: Does::Light,
            on: Subject::Pit(r.drum),
            nth: 0,
        }),
    );
    let told = night.refuses(&Act::Answer { cook, job: light });
    assert!(told.contains("no longer on the run sheet"), "{told}");
    night.does(accept(&r, plan(&r, TWO)));
    night.does(Act::Later {
        cook,
        jobs: vec![light],
        minutes: 15,
    });
    night.does(Act::Answer { cook, job: light });
    night.does(Act::Skip {
        cook,
        jobs: vec![light],
    });
}

#[test]
fn a_plan_that_cannot_be_kept_is_refused_whole() {
    let (mut night, r) = Night::regatta();
    let with = |change: &dyn Fn(&mut AcceptedPlan)| {
        let mut bad = plan(&r, TWO);
        change(&mut bad);
        accept(&r, bad)
    };
    let far = TWO + 60 * 24 * HOUR;
    let table: Vec<(Act, &str)> = vec![
        (with(&|plan| plan.jobs.clear()), "1 to 600 jobs"),
        (with(&|plan| plan.jobs.push(plan.jobs[0].clone())), "twice"),
        (with(&|plan| plan.jobs[0].at = far), "too far off"),
        (
            with(&|plan| plan.jobs[0].until = plan.jobs[0].at - 1),
            "ends before it begins",
        ),
        (with(&|plan| plan.jobs[0].hands = 4), "cannot be read"),
        (with(&|plan| plan.jobs[0].job.nth = -1), "cannot be read"),
        (
            with(&|plan| plan.jobs[0].temp = Some(Mk::from_f(2_000))),
            "°F",
        ),
        (
            with(&|plan| plan.jobs[0].job.on = Subject::Cook(crate::ids::CookId(nobody()))),
            "cook",
        ),
        (with(&|plan| plan.serve.at = far), "serving time"),
    ];
    for (act, part) in table {
        let told = night.refuses(&act);
        assert!(
            told.to_lowercase().contains(part) || told.contains(part),
            "{told} of {act:?}"
        );
    }
}
