//! The first screen: cooks under way, past cooks, and the form that starts one.

use super::{
    CutChoice, Line, Link, PitChoice, Place, StartForm, StartScreen, Weight, glance::Glance,
    pitside::to_do,
};
use crate::{
    alarms::{self, Due},
    checks::{
        Cut, cut_facts,
        cuts::{CookTime, Minutes},
    },
    cook::{Cook, Known, Pit},
    moment::Moment,
    store::CookLine,
    words::{Arg, Viewer, WeightUnit, key},
};

/// What the first screen shows beside what is known: a page of past cooks.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct StartInput {
    /// Past cooks, latest first, one page.
    pub past: Vec<CookLine>,
    /// The cursor of the next page.
    pub past_next: Option<i64>,
}

/// The first screen.
pub fn start(
    known: &Known<'_>,
    viewer: &Viewer,
    input: &StartInput,
    moment: &Moment,
) -> StartScreen {
    let glance = Glance::of(known, viewer, moment);
    let dues = alarms::due(known, moment.utc_ms);
    StartScreen {
        title: glance.say.text("start-title"),
        lead: glance.say.text("start-lead"),
        open: glance.open_lines(&to_do(&dues, moment.utc_ms)),
        past: input
            .past
            .iter()
            .map(|line| glance.past_line(line))
            .collect(),
        past_next: input.past_next,
        learned: glance.learned(),
        cuts: Cut::ALL.iter().map(|cut| glance.cut_choice(*cut)).collect(),
        pits: known
            .crew
            .pits
            .values()
            .map(|p| glance.pit_choice(p))
            .collect(),
        notices: glance.crew_notices(),
        form: glance.start_form(),
        links: glance.ways_to_begin(input),
        until: glance.until(&dues),
    }
}

impl Glance<'_> {
    fn open_lines(&self, dues: &[Due]) -> Vec<Line> {
        let mut lines: Vec<_> = self
            .known
            .open_cooks()
            .map(|cook| {
                let due = dues.iter().find(|due| due.cook == cook.id);
                let at = due.map_or(i64::MAX, |due| due.at);
                ((at, cook.started_at, cook.id), self.open_line(cook, due))
            })
            .collect();
        lines.sort_by_key(|(order, _)| *order);
        lines.into_iter().map(|(_, line)| line).collect()
    }

    fn open_line(&self, cook: &Cook, due: Option<&Due>) -> Line {
        let state = due.map_or_else(
            || self.say.text("headline-nothing-due"),
            |due| {
                let (verb, when) = (self.verb(due.job), self.due(self.time_of(due)));
                self.line_due(&verb, &when)
            },
        );
        Line {
            name: self.cook_name(&cook.name.value, cook.demo),
            state,
            detail: self.serve(cook),
            weight: due.map_or(Weight::Calm, |due| self.weight(due)),
            link: Some(Place::Now { cook: cook.id }),
        }
    }

    fn past_line(&self, line: &CookLine) -> Line {
        let started = self.say.day(line.started, self.now);
        Line {
            name: self.cook_name(&line.name, line.demo),
            state: started,
            detail: String::new(),
            weight: Weight::Faint,
            link: Some(Place::Timeline { cook: line.cook }),
        }
    }

    /// Invented data says so.
    pub fn cook_name(&self, name: &str, demo: bool) -> String {
        match demo {
            true => self.say.with("screen-demo", &[("name", Arg::Text(name))]),
            false => name.to_owned(),
        }
    }

    pub(super) fn cut_choice(&self, cut: Cut) -> CutChoice {
        let facts = cut_facts(cut);
        let pit = self.say.temperature_span(facts.pit.low, facts.pit.high);
        let time = self.time_at(&facts);
        let args = [("pit", Arg::Text(&pit)), ("time", Arg::Text(&time))];
        let detail = self.say.with("cut-detail", &args);
        CutChoice {
            cut,
            name: self.say.text(cut.key()),
            detail: match self.skin(cut) {
                Some(skin) => format!("{detail} {skin}"),
                None => detail,
            },
        }
    }

    pub(super) fn cook_time(&self, time: CookTime) -> String {
        match time {
            CookTime::Whole { minutes } => self.minutes(minutes),
            CookTime::PerPound { minutes } => self.per_weight(minutes),
        }
    }

    /// Minutes a pound, or a kilogram (2.2 lb) to the nearest 5 minutes.
    fn per_weight(&self, per_pound: Minutes) -> String {
        let span = |minutes| self.minutes(minutes);
        let per_kilogram = |minutes: i64| (minutes * 2_205 / 1_000 + 2) / 5 * 5;
        match self.viewer.weight {
            WeightUnit::Pound => {
                let span = span(per_pound);
                self.say
                    .with("cut-per-pound", &[("span", Arg::Text(&span))])
            }
            WeightUnit::Kilogram => {
                let span = span(Minutes {
                    least: per_kilogram(per_pound.least),
                    most: per_kilogram(per_pound.most),
                });
                self.say
                    .with("cut-per-kilogram", &[("span", Arg::Text(&span))])
            }
        }
    }

    pub fn pit_choice(&self, pit: &Pit) -> PitChoice {
        PitChoice {
            pit: pit.id,
            name: pit.name.value.clone(),
            detail: self.pit_kind(pit.kind.value),
        }
    }

    /// As the last cook, from a card, and what is known of cuts.
    fn ways_to_begin(&self, input: &StartInput) -> Vec<Link> {
        let open = self.known.open_cooks().map(|cook| cook.id);
        let last = input.past.first().map(|line| line.cook).or(open.last());
        let last = last.map(|cook| (key("begin-last"), Place::Again { cook }));
        let others = [
            (key("begin-from-card"), Place::Cards),
            (key("cuts-title"), Place::Cuts),
        ];
        let all: Vec<_> = last.into_iter().chain(others).collect();
        self.links_to(&all)
    }

    pub(super) fn start_form(&self) -> StartForm {
        StartForm {
            heading: self.say.text("start-heading"),
            name: self.say.text("start-name"),
            serve: self.say.text("start-serve"),
            people: self.say.text("start-people"),
            meats: self.say.text("start-meats"),
            weight: match self.viewer.weight {
                WeightUnit::Pound => self.say.text("start-weight-pounds"),
                WeightUnit::Kilogram => self.say.text("start-weight-kilograms"),
            },
            pit: self.say.text("start-pit"),
            start: self.say.text("start-start"),
            demo: self.say.text("start-demo"),
            demo_lead: self.say.text("start-demo-lead"),
        }
    }
}
