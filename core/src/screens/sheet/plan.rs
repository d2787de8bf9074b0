//! Planning a cook: what is said for the plan, and what comes of it. Start at [`plan`].
//!
//! Nothing is recorded here: each proposal has a button that accepts it whole, and leaving the page refuses it. The search
//! runs in the call, bounded by nodes and not by time, and only where a plan is asked for, or where the accepted sheet no
//! longer fits.

use super::{PlanLabels, PlanProposal, PlanScreen, PlanTyped, SheetLine};
use crate::{
    acts::Act,
    cook::{Cook, Known},
    error::Refused,
    ids::CookId,
    log::{AcceptedPlan, PlanAsked, PlannedJob, Serve},
    moment::{MINUTE, Moment},
    plan::NoPlan,
    planning::{self, Ask, Proposed},
    safety::Doing,
    screens::{Place, Tone, Weight, buttons::button, glance::Glance},
    words::{Arg, Viewer, key},
};

/// What is said where nothing was yet: one pair of hands, a night from ten to six, a cooler, half an hour late at most.
/// Common practice, no source.
const USUAL: PlanAsked = PlanAsked {
    hands: 1,
    sleep_from_min: Some(22 * 60),
    sleep_to_min: Some(6 * 60),
    watched: false,
    not_before: None,
    late_min: Some(30),
    cooler: true,
    oven: false,
};
/// How much later the guests may be said to come, minutes: up to a day.
const LATER_MAX: i64 = 24 * 60;

/// The page of the plan of a cook; none where the cook is not known here.
pub fn plan(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    typed: &PlanTyped,
    moment: &Moment,
) -> Option<PlanScreen> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    let usual = glance.usual(cook);
    let read = match typed.go {
        true => glance.read(typed),
        false => Ok(usual.clone()),
    };
    let shown = match typed.go {
        true => typed.clone(),
        false => as_typed(&usual, typed.later_min),
    };
    let fits = glance.fits(cook);
    let wanted = typed.go || typed.later_min > 0 || fits.is_some();
    let found = read.and_then(|asked| match wanted {
        true => glance.proposed(cook, asked, typed.later_min).map(Some),
        false => Ok(None),
    });
    let (proposals, refused) = match found {
        Ok(Some(Ok(proposed))) => (glance.proposals(cook, &proposed), vec![]),
        Ok(Some(Err(none))) => (vec![], glance.stands_against(&none)),
        Ok(None) => (vec![], vec![]),
        Err(refused) => (vec![], vec![refused.reason]),
    };
    Some(PlanScreen {
        cook: cook.id,
        title: glance.say.text("plan-title"),
        lead: glance.say.text("plan-lead"),
        about: [cook.name.value.clone(), glance.serve(cook)]
            .into_iter()
            .chain(glance.course_lines(cook))
            .collect(),
        fits,
        refused,
        proposals,
        typed: shown,
        courses: glance.courses_slip(cook),
        labels: glance.plan_labels(),
        links: glance.links_to(&[
            (key("link-sheet"), Place::RunSheet { cook: cook.id }),
            (key("link-now"), Place::Now { cook: cook.id }),
        ]),
        cautions: glance.cautions(Doing::Preparing),
        until: i64::MAX,
    })
}

type Found = Result<Proposed, NoPlan>;

impl Glance<'_> {
    /// What was said for the last plan, or what is usual.
    fn usual(&self, cook: &Cook) -> PlanAsked {
        let sheets = &cook.sheets;
        let last = sheets.now.as_ref().or(sheets.before.as_ref());
        let last = last.map(|sheet| sheet.plan.asked.clone());
        last.filter(|asked| asked.hands > 0).unwrap_or(USUAL)
    }

    fn proposed(&self, cook: &Cook, asked: PlanAsked, later: i64) -> Result<Found, Refused> {
        let Some(serve) = &cook.serve.value else {
            return Err(self.say.refuse("plan-no-hour", &[]).into());
        };
        if !cook.is_open() {
            return Err(self.say.refuse("plan-over", &[]).into());
        }
        let later = later.clamp(0, LATER_MAX);
        let serve = Serve {
            at: serve.at.saturating_add(later * MINUTE),
            zone: serve.zone.clone(),
        };
        let mut courses = cook.courses.all.clone();
        let by = later * MINUTE;
        for course in &mut courses {
            course.serve.at = course.serve.at.saturating_add(by);
            course.latest = course.latest.map(|latest| latest.saturating_add(by));
        }
        let ask = Ask {
            serve,
            courses,
            asked,
        };
        Ok(planning::propose(
            &self.known,
            cook,
            &self.say,
            &ask,
            self.now,
        ))
    }

    fn read(&self, typed: &PlanTyped) -> Result<PlanAsked, Refused> {
        let number = |text: &str, most: i64| -> Result<Option<i64>, Refused> {
            let text = text.trim();
            let unread = || {
                Refused::from(
                    self.say
                        .refuse("plan-number-unread", &[("typed", Arg::Text(text))]),
                )
            };
            match text {
                "" => Ok(None),
                text => match text.parse() {
                    Ok(number) if (0..=most).contains(&number) => Ok(Some(number)),
                    _ => Err(unread()),
                },
            }
        };
        let (from, to) = (
            self.of_day(&typed.sleep_from)?,
            self.of_day(&typed.sleep_to)?,
        );
        let night = from.zip(to).filter(|(from, to)| from != to);
        Ok(PlanAsked {
            hands: number(&typed.hands, 3)?.unwrap_or(1),
            sleep_from_min: night.map(|(from, _)| from),
            sleep_to_min: night.map(|(_, to)| to),
            watched: typed.watched,
            not_before: None,
            late_min: number(&typed.late, 24 * 60)?,
            cooler: typed.cooler,
            oven: typed.oven,
        })
    }

    /// The value of a form's time field, "22:00", as minutes after midnight; none where nothing was typed.
    fn of_day(&self, text: &str) -> Result<Option<i64>, Refused> {
        let text = text.trim();
        if text.is_empty() {
            return Ok(None);
        }
        let parts = text.split_once(':');
        let read = parts.and_then(|(hour, minute)| {
            Some((hour.parse::<i64>().ok()?, minute.parse::<i64>().ok()?))
        });
        match read {
            Some((hour @ 0..=23, minute @ 0..=59)) => Ok(Some(hour * 60 + minute)),
            _ => Err(self
                .say
                .refuse("plan-time-unread", &[("typed", Arg::Text(text))])
                .into()),
        }
    }

    /// What stands against every plan, and each single change that would make one.
    fn stands_against(&self, none: &NoPlan) -> Vec<String> {
        let all = std::iter::once(&none.conflict).chain(&none.ways);
        all.map(|said| said.say(&self.say)).collect()
    }

    fn proposals(&self, cook: &Cook, proposed: &Proposed) -> Vec<PlanProposal> {
        let all = proposed.proposals.iter().enumerate();
        let made = all.map(|(nr, proposal)| {
            let plan = &proposal.plan;
            let time = self.say.clock_day(plan.serve.at, self.now);
            let heading = match nr {
                0 => self.say.text("plan-first"),
                nr => self
                    .say
                    .with("plan-other", &[("nr", Arg::Number(nr as i64))]),
            };
            let mut says: Vec<String> = proposal
                .says
                .iter()
                .map(|said| said.say(&self.say))
                .collect();
            says.extend((nr == 0 && !proposed.proven).then(|| self.say.text("plan-not-proven")));
            let accept = Act::AcceptPlan {
                cook: cook.id,
                plan: plan.clone(),
            };
            let before = cook.sheets.now.as_ref();
            PlanProposal {
                heading,
                serve: self
                    .say
                    .with("hand-out-serve", &[("time", Arg::Text(&time))]),
                chance: plan
                    .chance_permille
                    .map_or_else(String::new, |chance| self.chance(chance)),
                says,
                changes: before
                    .map_or_else(Vec::new, |sheet| self.changes(cook, &sheet.plan, plan)),
                days: self.by_day(self.bare_lines(plan)),
                accept: button(
                    self.say.text("plan-accept"),
                    accept,
                    if nr == 0 { Tone::Main } else { Tone::Plain },
                ),
            }
        });
        made.collect()
    }

    /// The lines of a plan that nobody accepted yet.
    fn bare_lines(&self, plan: &AcceptedPlan) -> Vec<SheetLine> {
        let line = |planned: &PlannedJob| SheetLine {
            at: planned.at,
            time: self.say.clock(planned.at),
            job: self.sheet_job(planned),
            why: self.sheet_why(planned.why.as_ref()),
            state: String::new(),
            ticked: false,
            weight: Weight::Calm,
            buttons: vec![],
            link: None,
        };
        plan.jobs.iter().map(line).collect()
    }

    fn plan_labels(&self) -> PlanLabels {
        PlanLabels {
            hands: self.say.text("plan-hands"),
            sleep_from: self.say.text("plan-sleep-from"),
            sleep_to: self.say.text("plan-sleep-to"),
            watched: self.say.text("plan-watched"),
            cooler: self.say.text("plan-cooler"),
            oven: self.say.text("plan-oven"),
            late: self.say.text("plan-late"),
            go: self.say.text("plan-go"),
            hour_later: self.say.text("plan-hour-later"),
            jobs: self.say.text("plan-jobs"),
            changes: self.say.text("plan-changes"),
            refuse: self.say.text("plan-refuse"),
        }
    }
}

/// What was asked, as a form shows it.
fn as_typed(asked: &PlanAsked, later_min: i64) -> PlanTyped {
    let time = |minutes: Option<i64>| {
        minutes.map_or_else(String::new, |at| format!("{:02}:{:02}", at / 60, at % 60))
    };
    PlanTyped {
        go: false,
        later_min,
        hands: asked.hands.to_string(),
        sleep_from: time(asked.sleep_from_min),
        sleep_to: time(asked.sleep_to_min),
        watched: asked.watched,
        cooler: asked.cooler,
        oven: asked.oven,
        late: asked
            .late_min
            .map_or_else(String::new, |late| late.to_string()),
    }
}
