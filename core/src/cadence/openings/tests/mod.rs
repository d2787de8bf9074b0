mod brute;
mod input;
mod laws;

use super::*;

/// A meat with the same slack to both sides.
fn need(name: &str, last_min: i64, every_min: i64, slack_min: i64) -> Need {
    Need {
        name: name.into(),
        last_min,
        every_min,
        early_min: slack_min,
        late_min: slack_min,
        until_min: None,
    }
}

fn pit(horizon_min: i64, needs: Vec<Need>) -> LidOpenings {
    LidOpenings {
        from_min: 0,
        horizon_min,
        needs,
        fixed_min: vec![],
    }
}

fn plan(pit: &LidOpenings) -> Openings {
    lid_openings(pit).expect("the input is good")
}

fn minutes(plan: &Openings) -> Vec<i64> {
    plan.openings.iter().map(|opening| opening.at_min).collect()
}

fn opening(at_min: i64, names: &[&str], fixed: bool) -> Opening {
    Opening {
        at_min,
        names: names.iter().map(|name| name.to_string()).collect(),
        fixed,
    }
}

#[test]
fn one_opening_serves_two_meats_whose_windows_meet() {
    let plan = plan(&pit(
        40,
        vec![need("ribs", -10, 30, 6), need("shoulder", -35, 60, 6)],
    ));
    let expected = Openings {
        openings: vec![opening(20, &["ribs", "shoulder"], false)],
        count: 1,
        deviation_min: 5,
        overdue: vec![],
        exact: true,
        at_least: 1,
    };
    assert_eq!(plan, expected);
}

#[test]
fn windows_that_do_not_meet_take_an_opening_each() {
    let plan = plan(&pit(
        44,
        vec![need("ribs", -20, 30, 4), need("shoulder", -30, 60, 4)],
    ));
    assert_eq!(
        plan.openings,
        [
            opening(10, &["ribs"], false),
            opening(30, &["shoulder"], false)
        ]
    );
}

#[test]
fn what_is_opened_anyway_is_used_and_costs_nothing() {
    let mut ribs = pit(60, vec![need("ribs", 0, 30, 5)]);
    ribs.fixed_min = vec![27, 50, 27, -4, 60];
    let plan = plan(&ribs);
    assert_eq!(
        plan.openings,
        [opening(27, &["ribs"], true), opening(50, &[], true)]
    );
    assert_eq!((plan.count, plan.deviation_min), (0, 3));
}

#[test]
fn a_window_that_has_passed_is_due_now_and_said() {
    let plan = plan(&pit(
        30,
        vec![need("turkey", -60, 30, 5), need("ribs", -45, 40, 5)],
    ));
    assert_eq!(plan.openings, [opening(0, &["ribs", "turkey"], false)]);
    assert_eq!(
        plan.overdue,
        ["turkey"],
        "the window of the ribs closes this very minute"
    );
    assert_eq!(plan.deviation_min, 5);
}

#[test]
fn each_window_counts_from_the_minute_the_meat_was_wetted() {
    let stretched = plan(&pit(102, vec![need("ribs", 0, 30, 5)]));
    assert_eq!(
        minutes(&stretched),
        [32, 67],
        "35 and 70 would do too, and stray 10 minutes"
    );
    assert_eq!((stretched.count, stretched.deviation_min), (2, 7));
}

#[test]
fn nothing_is_owed_past_the_end() {
    let wrapped = Need {
        until_min: Some(34),
        ..need("ribs", 0, 30, 5)
    };
    assert_eq!(plan(&pit(300, vec![wrapped])).count, 0);
    assert_eq!(plan(&pit(35, vec![need("ribs", 0, 30, 5)])).count, 0);
    assert_eq!(plan(&pit(36, vec![need("ribs", 0, 30, 5)])).count, 1);
    let gone = Need {
        until_min: Some(-20),
        ..need("ribs", -90, 30, 5)
    };
    assert_eq!(plan(&pit(300, vec![gone])).overdue, [""; 0]);
    assert_eq!(plan(&pit(60, vec![])).openings, []);
}

#[test]
fn meats_with_one_rhythm_go_together() {
    let slabs = ["paper", "bare", "spare"].map(|name| need(name, 0, 30, 0));
    let plan = plan(&pit(61, slabs.to_vec()));
    assert_eq!(
        plan.openings[0],
        opening(30, &["bare", "paper", "spare"], false)
    );
    assert_eq!((plan.count, plan.deviation_min), (2, 0));
}

#[test]
fn past_the_budget_every_window_is_kept_and_the_doubt_is_said() {
    let cadences = [20, 30, 45, 60];
    let needs = (0i64..)
        .zip(cadences)
        .map(|(i, every)| need(&format!("meat {i}"), -7 * i, every, every / 6));
    let input = pit(360, needs.collect());
    let pit = meat::Pit::of(&input);
    let answer_at = |budget| answer::answer(&input, &pit, &search::best_plan(&pit, budget));
    let (hasty, patient) = (answer_at(1), answer_at(100_000_000));
    laws::keeps_every_window(&input, &hasty);
    assert!(
        !hasty.exact && hasty.at_least <= patient.count && patient.count <= hasty.count,
        "{hasty:?}"
    );
    assert!(
        patient.exact && patient.at_least == patient.count,
        "{patient:?}"
    );
}
