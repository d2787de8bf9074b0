//! Planning a cook: absolute times with the proof, and the time OR-Tools CP-SAT takes to the same proof of the same model.
//!
//! Households are those of the laws (`core/tests/plan/invent.rs`), each out of a number: meats, pits, hands and nights as they come,
//! also ones that are short of grate. Those for which there is no plan are left out. CP-SAT is asked through Python, where
//! `PYTHON` (python3 where nothing is said) has ortools: the model is that of `tests/oracles/test_plan.py`, on its households, and
//! only the solver's own time counts, not the building of its model. It has two workers, ours one. Where it proves nothing within
//! its limit, the limit counts as its time: it is at least that.

#[path = "../../../core/tests/plan/invent.rs"]
mod invent;

use crate::{
    harness::{Reach, Result, Row, time},
    place,
};
use slowbend_core::plan::{Answer, Household, OnPit, Plan, Proof, When, plan, replan};
use std::{
    fs,
    hint::black_box,
    path::Path,
    process::Command,
    time::{Duration, Instant},
};

/// How many households of six meats are planned.
const HOUSEHOLDS: u64 = 40;

/// The rows of the table.
pub fn rows() -> Result<Vec<Row>> {
    let mut rows = six()?;
    rows.extend([large("plan, 12 meats, 3 pits", 12, 3, None)?]);
    rows.push(large(
        "plan, 60 meats, 6 pits",
        60,
        6,
        Some(Duration::from_secs(1)),
    )?);
    rows.push(again()?);
    rows.extend(peer()?);
    Ok(rows)
}

fn timed(household: &Household) -> (Option<Answer>, Duration) {
    let start = Instant::now();
    let answer = plan(black_box(household)).ok();
    (answer, start.elapsed())
}

/// The time within which 95 of 100 are planned, and how many are proven.
fn six() -> Result<Vec<Row>> {
    let mut times = vec![];
    let mut proven = 0;
    for seed in 0..HOUSEHOLDS {
        let household = Household {
            budget_nodes: 400_000,
            ..invent::household(seed, 6, 2)
        };
        if let (Some(answer), took) = timed(&household) {
            times.push(took);
            proven += usize::from(answer.proof == Proof::Optimal);
        }
    }
    times.sort_unstable();
    let (count, half) = (times.len(), times[times.len() / 2]);
    let most = times[(count * 95).div_ceil(100) - 1];
    Ok(vec![
        Row::within(
            "plan, 6 meats, 2 pits, 95th percentile",
            most,
            Duration::from_millis(100),
        ),
        Row::told(
            "plan, 6 meats, 2 pits, median",
            time(half),
            format!("{proven} of {count} proven"),
        ),
    ])
}

/// One large household, with its gap.
fn large(name: &str, meats: usize, pits: usize, limit: Option<Duration>) -> Result<Row> {
    let mut household = class(meats, pits);
    household.budget_nodes = if limit.is_some() { 60_000 } else { 400_000 };
    let (answer, took) = timed(&household);
    let answer = answer.ok_or("the large household has no plan")?;
    let gap = match answer.proof {
        Proof::Optimal => "optimal".to_owned(),
        Proof::Gap { at_least } => {
            let cost = answer.plan.cost;
            format!(
                "gap: {} K, {} min of hold; at least {} K, {} min",
                cost.temperature_k, cost.hold_min, at_least.temperature_k, at_least.hold_min
            )
        }
    };
    Ok(match limit {
        Some(limit) => {
            let row = Row::within(name, took, limit);
            Row {
                peer: format!("{}; {gap}", row.peer),
                ..row
            }
        }
        None => Row::told(name, time(took), gap),
    })
}

/// Many meats that are eaten half an hour apart, five at a time, as in a class.
fn class(meats: usize, pits: usize) -> Household {
    let mut household = invent::household(7, meats, pits);
    let servings = meats.div_ceil(5);
    let first = household.servings[0].clone();
    household.servings = (0..servings)
        .map(|number| {
            let mut serving = first.clone();
            serving.name = format!("table {number}");
            serving.preferred = When::Min(30 * 60 + 30 * number as i64);
            serving.latest = None;
            serving
        })
        .collect();
    for (number, meat) in household.meats.iter_mut().enumerate() {
        meat.serving = number % servings;
    }
    household.hands = 3;
    household.dishes.clear();
    household.places[0].room_g = 200_000;
    household
        .pits
        .iter_mut()
        .for_each(|pit| pit.area_cm2 = 12_000);
    household
}

/// The median of plans made anew after the first meat went on and the guests said that they come an hour later.
fn again() -> Result<Row> {
    let mut times = vec![];
    for seed in 0..HOUSEHOLDS {
        let household = invent::household(seed, 6, 2);
        let (Some(answer), _) = timed(&Household {
            budget_nodes: 400_000,
            ..household.clone()
        }) else {
            continue;
        };
        let later = an_hour_later(household, &answer.plan);
        let start = Instant::now();
        if black_box(replan(&answer.plan, &later)).is_ok() {
            times.push(start.elapsed());
        }
    }
    times.sort_unstable();
    let half = times
        .get(times.len() / 2)
        .ok_or("nothing was planned anew")?;
    Ok(Row::within(
        "replan after one change, median",
        *half,
        Duration::from_millis(50),
    ))
}

fn an_hour_later(mut household: Household, before: &Plan) -> Household {
    let first = (0..before.meats.len())
        .min_by_key(|nr| before.meats[*nr].on_min)
        .unwrap_or(0);
    let its = &before.meats[first];
    let now = its.on_min.div_euclid(15) * 15 + 15;
    household.from_ms += now * 60_000;
    let later = |when: &When| match when {
        When::Min(minute) => When::Min(minute + 60 - now),
        wall => wall.clone(),
    };
    for serving in &mut household.servings {
        serving.preferred = later(&serving.preferred);
        serving.latest = serving.latest.as_ref().map(later);
    }
    for sleep in &mut household.sleep {
        sleep.from_min -= now;
        sleep.until_min -= now;
    }
    let pit = its.pit.unwrap_or(0);
    household.pits[pit].hot = true;
    household.meats[first].prep.clear();
    household.meats[first].on = Some(OnPit {
        pit,
        since_min: -15,
        over_permille: 10,
    });
    household.budget_nodes = 20_000;
    household
}

/// Ours and CP-SAT on the same households to the same proof; no row where Python has no ortools.
fn peer() -> Result<Vec<Row>> {
    let python = std::env::var("PYTHON").unwrap_or_else(|_| "python3".into());
    let folder = place::folder()?;
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("plan_peer.py");
    let status = Command::new(&python)
        .arg(script)
        .arg(folder.path())
        .status();
    if !status.is_ok_and(|status| status.success()) {
        eprintln!(
            "plan's peer was skipped: {python} has no ortools (pip install ortools), or set PYTHON"
        );
        return Ok(vec![]);
    }
    let times = fs::read_to_string(folder.path().join("times.txt"))?;
    let sets = [("few", "2 to 4 meats"), ("six", "6 meats, 2 pits")];
    let row = |(set, said): (&str, &str)| beside(&times, set, said, folder.path());
    sets.into_iter().map(row).collect()
}

/// The median of one set. A household that CP-SAT does not prove counts with the time that it had; one that ours does not prove
/// counts as out of reach.
fn beside(times: &str, set: &str, said: &str, folder: &Path) -> Result<Row> {
    let (mut ratios, mut ours, mut theirs) = (vec![], vec![], vec![]);
    let (mut limits, mut open) = (0, 0);
    for line in times.lines() {
        let [of, file, took, came] = line.split(' ').collect::<Vec<_>>()[..] else {
            return Err("a line that is not a set, a file, a time and how it came".into());
        };
        if of != set {
            continue;
        }
        let household: Household = serde_json::from_str(&fs::read_to_string(folder.join(file))?)?;
        let (answer, mine) = timed(&household);
        if answer.is_none() && came == "proof" {
            return Err("CP-SAT has a plan and ours none".into());
        }
        let proven = answer.is_none_or(|answer| answer.proof == Proof::Optimal);
        let took = Duration::from_secs_f64(took.parse()?);
        limits += usize::from(came == "limit");
        open += usize::from(!proven);
        ratios.push(match proven {
            true => mine.as_secs_f64() / took.as_secs_f64(),
            false => f64::INFINITY,
        });
        ours.push(mine);
        theirs.push(took);
    }
    ratios.sort_unstable_by(f64::total_cmp);
    ours.sort_unstable();
    theirs.sort_unstable();
    let (half, count) = (ratios.len() / 2, ratios.len());
    let ratio = *ratios.get(half).ok_or("CP-SAT was given nothing")?;
    Ok(Row {
        ratio: Some(ratio),
        reach: Reach::AtMost(0.1),
        ..Row::told(
            &format!("plan to CP-SAT's proof, {said}, median"),
            format!("{}; {open} of {count} not proven", time(ours[half])),
            format!("{}; {limits} of {count} at their limit", time(theirs[half])),
        )
    })
}
