//! Each job of a plan. Start at [`all`].

use super::{lanes, why};
use crate::plan::{
    answer::{Job, MeatPlan, Of, PitPlan, Said, What},
    choice::REHEAT_HANDS,
    household::{GRID_MIN, Household, PrepKind},
    model::Model,
    search::Found,
};

/// What jobs are made of.
pub(super) struct Told<'a> {
    pub household: &'a Household,
    pub model: &'a Model,
    pub found: &'a Found,
    pub meats: &'a [MeatPlan],
    pub pits: &'a [PitPlan],
    pub servings: &'a [i64],
}

/// Hands on to put on, take off or change a pit, minutes.
const LIFT_MIN: i64 = 5;
/// What is held longer than this gets a probe, minutes: the two hours of USDA's rule, after which nobody knows without one.
const PROBE_PAST_MIN: i64 = 120;

/// All jobs, in order of time.
pub(super) fn all(told: &Told<'_>) -> Vec<Job> {
    let mut jobs = vec![];
    for nr in 0..told.household.meats.len() {
        meat(told, nr, &mut jobs);
    }
    for nr in 0..told.household.dishes.len() {
        dish(told, nr, &mut jobs);
    }
    for nr in 0..told.household.pits.len() {
        pit(told, nr, &mut jobs);
    }
    for (nr, serving) in told.household.servings.iter().enumerate() {
        let at = told.servings[nr];
        let half = serving.turn_in_min.unwrap_or(0);
        let why = why::serve(told, nr);
        jobs.push(job(
            What::Serve,
            Of::Serving(nr),
            &serving.name,
            (at - half, at + half),
            0,
            why,
        ));
    }
    lanes::lay(&mut jobs, told.household.hands as usize);
    sleep(told, &mut jobs);
    jobs.sort_by(|a, b| (a.start_min, a.what, &a.id).cmp(&(b.start_min, b.what, &b.id)));
    jobs
}

fn job(what: What, of: Of, called: &str, span: (i64, i64), hands_min: i64, why: Said) -> Job {
    Job {
        id: format!("{}/{called}", word(what)),
        what,
        of,
        start_min: span.0,
        end_min: span.1,
        hands_min,
        pit: None,
        place: None,
        temp: None,
        why,
        done: false,
    }
}

fn meat(told: &Told<'_>, nr: usize, jobs: &mut Vec<Job>) {
    let (meat, plan) = (&told.household.meats[nr], &told.meats[nr]);
    let of = |what, span, hands, why| job(what, Of::Meat(nr), &meat.name, span, hands, why);
    prep(told, nr, jobs);
    let on_pit = plan.pit.map(|pit| (pit, told.temp_at(pit, plan.on_min)));
    if let Some((pit, temp)) = on_pit {
        let end = if meat.on.is_some() {
            plan.on_min
        } else {
            plan.on_min + LIFT_MIN
        };
        jobs.push(Job {
            pit: Some(pit),
            temp: Some(temp),
            done: meat.on.is_some(),
            ..of(
                What::PutOn,
                (plan.on_min, end),
                LIFT_MIN,
                why::put_on(told, nr),
            )
        });
        let check = (plan.off_early_min, plan.off_min.max(plan.off_early_min));
        jobs.push(Job {
            pit: Some(pit),
            ..of(What::CheckFrom, check, 0, why::check_from(told, nr))
        });
    }
    let off = meat.off_at_min.is_some();
    let end = if off {
        plan.off_min
    } else {
        plan.off_late_min.max(plan.off_min + LIFT_MIN)
    };
    jobs.push(Job {
        pit: plan.pit,
        done: off,
        ..of(
            What::TakeOff,
            (plan.off_min, end),
            LIFT_MIN,
            why::take_off(told, nr),
        )
    });
    held(told, nr, jobs);
    if meat.cut_min > 0 {
        let span = (plan.cut_min, plan.cut_min + meat.cut_min);
        jobs.push(of(What::Cut, span, meat.cut_min, why::cut(told, nr)));
    }
}

fn prep(told: &Told<'_>, nr: usize, jobs: &mut Vec<Job>) {
    let meat = &told.household.meats[nr];
    for (step, at) in meat.prep.iter().zip(&told.found.preps[nr]) {
        let what = match step.what {
            PrepKind::Thaw => What::Thaw,
            PrepKind::Brine => What::Brine,
            PrepKind::Trim => What::Trim,
            PrepKind::Rub => What::Rub,
        };
        let span = (at * GRID_MIN, at * GRID_MIN + step.hands_min);
        let why = why::prep(told, nr, step);
        jobs.push(job(
            what,
            Of::Meat(nr),
            &meat.name,
            span,
            step.hands_min,
            why,
        ));
    }
}

fn held(told: &Told<'_>, nr: usize, jobs: &mut Vec<Job>) {
    let (meat, plan) = (&told.household.meats[nr], &told.meats[nr]);
    let of = |what, span, why| job(what, Of::Meat(nr), &meat.name, span, 0, why);
    let from = plan.off_min + meat.vent_min.min(plan.cut_min - plan.off_min);
    if from > plan.off_min {
        jobs.push(of(What::Vent, (plan.off_min, from), why::vent(told, nr)));
    }
    let Some(place) = plan.place else {
        if plan.cut_min > from {
            jobs.push(of(What::Rest, (from, plan.cut_min), why::rest(told, nr)));
        }
        return;
    };
    let hold = of(What::Hold, (from, plan.cut_min), why::hold(told, nr, place));
    jobs.push(Job {
        place: Some(place),
        ..hold
    });
    if plan.cut_min - from.min(plan.off_early_min) > PROBE_PAST_MIN {
        let probe = of(What::ProbeHold, (from, plan.cut_min), why::probe(told, nr));
        jobs.push(Job {
            place: Some(place),
            ..probe
        });
    }
}

fn dish(told: &Told<'_>, nr: usize, jobs: &mut Vec<Job>) {
    let dish = &told.household.dishes[nr];
    let choice = &told.found.choices[told.household.meats.len() + nr];
    let at = |slot: i16| i64::from(slot) * GRID_MIN;
    let minutes = dish.cook_min.max(dish.hands_min);
    let span = (at(choice.on), at(choice.on) + minutes);
    let mut made = job(
        What::Make,
        Of::Dish(nr),
        &dish.name,
        span,
        dish.hands_min,
        why::make(told, nr),
    );
    made.pit = (choice.pit != crate::plan::choice::NONE).then_some(choice.pit as usize);
    jobs.push(made);
    if dish.reheat_min > 0 {
        let span = (at(choice.cut), at(choice.cut) + dish.reheat_min);
        let hands = i64::from(REHEAT_HANDS);
        jobs.push(job(
            What::Reheat,
            Of::Dish(nr),
            &dish.name,
            span,
            hands,
            why::reheat(told, nr),
        ));
    }
}

fn pit(told: &Told<'_>, nr: usize, jobs: &mut Vec<Job>) {
    let (pit, plan) = (&told.household.pits[nr], &told.pits[nr]);
    if !plan.used {
        return;
    }
    let of = |what, span, hands, temp, why| Job {
        pit: Some(nr),
        temp,
        ..job(what, Of::Pit(nr), &pit.name, span, hands, why)
    };
    if !pit.hot {
        let span = (plan.light_min, plan.light_min + pit.preheat_min);
        jobs.push(of(
            What::Light,
            span,
            pit.light_min,
            Some(plan.temp),
            why::light(told, nr),
        ));
    }
    if let Some(step) = plan.step {
        let span = (step.at_min, step.at_min + LIFT_MIN);
        jobs.push(of(
            What::Step,
            span,
            LIFT_MIN,
            Some(step.temp),
            why::step(told, nr, &step),
        ));
    }
    for (count, at) in feeds(told, nr).into_iter().enumerate() {
        let mut feed = of(
            What::Feed,
            (at, at + LIFT_MIN),
            0,
            None,
            why::feed(told, nr),
        );
        feed.id = format!("{}/{}", feed.id, count + 1);
        jobs.push(feed);
    }
    jobs.push(of(
        What::LetOut,
        (plan.out_min, plan.out_min),
        0,
        None,
        why::let_out(told, nr),
    ));
}

/// The minutes at which somebody gets up to see to a pit.
fn feeds(told: &Told<'_>, nr: usize) -> Vec<i64> {
    let (model, plan) = (told.model, &told.pits[nr]);
    let slots = plan.light_min / GRID_MIN..plan.out_min / GRID_MIN;
    let marks = model.pits[nr].feeds;
    slots
        .filter(|slot| marks & model.night.mark(*slot) != 0)
        .map(|slot| slot * GRID_MIN)
        .collect()
}

/// Sleep between what breaks it.
fn sleep(told: &Told<'_>, jobs: &mut Vec<Job>) {
    let night = &told.model.night;
    let up: Vec<i64> = jobs
        .iter()
        .filter(|job| !job.done && (job.hands_min > 0 || job.what == What::Feed))
        .flat_map(|job| {
            let from = job.start_min.div_euclid(GRID_MIN);
            let until = (job.start_min + job.hands_min.max(1) - 1).div_euclid(GRID_MIN);
            from..=until
        })
        .collect();
    let mut nr = 0;
    for (from, until) in &night.asleep {
        let mut begins = None;
        for slot in *from..=*until {
            let asleep = slot < *until && !up.contains(&slot);
            match (asleep, begins) {
                (true, None) => begins = Some(slot),
                (false, Some(first)) => {
                    nr += 1;
                    let span = (first * GRID_MIN, slot * GRID_MIN);
                    jobs.push(job(
                        What::Sleep,
                        Of::Cook,
                        &nr.to_string(),
                        span,
                        0,
                        why::sleep(told),
                    ));
                    begins = None;
                }
                _ => {}
            }
        }
    }
}

impl Told<'_> {
    /// The temperature of a pit at a minute.
    pub fn temp_at(&self, pit: usize, minute: i64) -> crate::units::Mk {
        let plan = &self.pits[pit];
        match plan.step {
            Some(step) if step.at_min <= minute => step.temp,
            _ => plan.temp,
        }
    }
}

/// What a job is called in its id, which stays the same when a plan is made anew.
const fn word(what: What) -> &'static str {
    match what {
        What::Thaw => "thaw",
        What::Brine => "brine",
        What::Trim => "trim",
        What::Rub => "rub",
        What::Light => "light",
        What::Feed => "feed",
        What::Step => "step",
        What::PutOn => "put_on",
        What::CheckFrom => "check_from",
        What::TakeOff => "take_off",
        What::Vent => "vent",
        What::Rest => "rest",
        What::Hold => "hold",
        What::ProbeHold => "probe_hold",
        What::Cut => "cut",
        What::Make => "make",
        What::Reheat => "reheat",
        What::LetOut => "let_out",
        What::Serve => "serve",
        What::Sleep => "sleep",
    }
}
