//! A meat along the grid.

use super::{
    asks::{begun, facts, minute},
    tiny::TINY,
};
use crate::{
    ahead::{Ahead, Facts, Run, until},
    checks::Cut,
    readings::Reading,
    units::Mk,
};

/// Three hours of a butt whose probe rises by a tenth of a kelvin a minute.
pub(super) fn three_hours() -> Facts {
    let rising = (0..180).map(|at| Reading {
        at: minute(at),
        temp: Mk(280_000 + at * 100),
    });
    Facts {
        inside: vec![rising.collect()],
        ..facts(&begun(Cut::PorkButt), 180)
    }
}

/// Follows to the end of `facts`, doing `then` after each step.
pub(super) fn follow(
    mut run: Run,
    facts: &Facts,
    mut then: impl FnMut(Run) -> Run,
) -> (Run, Ahead) {
    loop {
        let came = run.step(facts);
        run = then(run);
        if let Some(ahead) = came
            && run.at() == facts.now
        {
            return (run, ahead);
        }
    }
}

#[test]
fn a_run_that_was_killed_at_any_instant_goes_on_to_the_same_bytes() {
    let facts = three_hours();
    let whole = follow(Run::begin(TINY, &facts).unwrap(), &facts, |run| run);
    let mut steps = 0;
    let killed = follow(Run::begin(TINY, &facts).unwrap(), &facts, |run| {
        steps += 1;
        // What is half taken in is not kept: the process that comes after begins that instant anew.
        let instant = steps % 4 == 0;
        match instant {
            true => Run::read(TINY, &run.kept(), &facts).unwrap(),
            false => run,
        }
    });
    assert_eq!(steps, 36 * 4, "two steps to take in, two to forecast");
    assert_eq!(killed.1, whole.1);
    assert_eq!(killed.0.kept(), whole.0.kept());
}

#[test]
fn followed_instant_by_instant_as_they_come_it_is_the_same_as_all_at_once() {
    let facts = three_hours();
    let whole = follow(Run::begin(TINY, &facts).unwrap(), &facts, |run| run);
    let mut run = Run::begin(TINY, &facts).unwrap();
    for at in (15..=180).step_by(15) {
        let known = until(&facts, minute(at));
        assert!(run.leads_to(&known));
        (run, _) = follow(run, &known, |run| run);
    }
    assert_eq!(run.kept(), whole.0.kept());
}

#[test]
fn what_comes_late_is_noticed_and_what_is_new_is_not() {
    let facts = three_hours();
    let (run, _) = follow(
        Run::begin(TINY, &facts).unwrap(),
        &until(&facts, minute(120)),
        |run| run,
    );
    assert!(run.leads_to(&facts));
    let mut late = facts.clone();
    late.opened.push(minute(90));
    assert!(!run.leads_to(&late));
    let mut new = facts.clone();
    new.opened.push(minute(130));
    assert!(run.leads_to(&new));
    assert!(
        !run.leads_to(&until(&facts, minute(115))),
        "the clock was put back"
    );
}
