//! The list of rings in words, for a screen, a notification and a speaker.

use super::{AlarmId, Answer, Due, Ring, Rings, Urgency, band_of, is_read_or_back, planned_feed};
use crate::{
    cadence::Cadence,
    cook::Known,
    ids::{CookId, PieceId, PitId},
    log::{Job, Subject, Where},
    moment::{MINUTE, Moment},
    screens::{Place, ring_answers, zone_why},
    units::Mk,
    words::{Arg, Viewer, Words},
};
use serde::{Deserialize, Serialize};

/// One alarm as a shell lays it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct Alarm {
    /// Its name, whatever its time.
    pub id: AlarmId,
    /// The name of the first ring for the same thing: one for all that ring again.
    pub thing: AlarmId,
    /// Of which cook; none for "open Slowbend".
    pub cook: Option<CookId>,
    /// When, milliseconds since 1970; what is late has its time in the past or now.
    pub at: i64,
    /// How loudly.
    pub urgency: Urgency,
    /// What is to be done.
    pub title: String,
    /// More on it, a line each; may be empty.
    pub body: String,
    /// What to say aloud.
    pub speech: String,
    /// The names to report back when it rang, its own among them.
    pub covers: Vec<AlarmId>,
    /// Whether its time has passed.
    pub late: bool,
    /// Shown without a sound.
    pub silent: bool,
    /// How often it rang before for the same thing.
    pub nag: i64,
    /// Where more is done about it: what to try at a pit, the opening of one, else the screen of the cook.
    #[serde(default)]
    pub place: Option<Place>,
    /// How it can be answered where it rings: one that is meant, or two; later last.
    pub answers: Vec<Answer>,
}

/// The list that a shell makes the platform's list equal to.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct AlarmList {
    /// Soonest first.
    pub alarms: Vec<Alarm>,
    /// The list lacks nothing before this; none = it lacks nothing.
    pub complete_until: Option<i64>,
}

/// Puts the list into words.
pub fn said(known: &Known<'_>, viewer: &Viewer, rings: &Rings, moment: &Moment) -> AlarmList {
    let saying = Saying {
        known,
        viewer,
        say: Words::of(viewer),
        moment,
        now: moment.utc_ms,
    };
    let alarms = rings.rings.iter().map(|ring| saying.alarm(ring)).collect();
    AlarmList {
        alarms,
        complete_until: rings.complete_until,
    }
}

/// Where more is done about what is due.
fn place(due: &Due) -> Place {
    let cook = due.cook;
    match (due.job, due.pit) {
        (Job::Outside(pit) | Job::Silent(pit), _) => Place::Trouble { cook, pit },
        (Job::FireRound(pit), _) => Place::Fire { cook, pit },
        (Job::Wet(_) | Job::Glaze(_) | Job::RubSet(_) | Job::Check(_), Some(pit)) => {
            Place::Opening { cook, pit }
        }
        // Off the pit: it is read by hand.
        (Job::Check(piece), None) => Place::Check { piece },
        (Job::ComeUp(piece) | Job::KeepHot(piece), _) => Place::Check { piece },
        _ => Place::Now { cook },
    }
}

struct Saying<'a> {
    known: &'a Known<'a>,
    viewer: &'a Viewer,
    say: Words<'a>,
    moment: &'a Moment,
    now: i64,
}

impl Saying<'_> {
    fn alarm(&self, ring: &Ring) -> Alarm {
        let lines = self.titles(&ring.jobs);
        let title = if lines.is_empty() {
            self.say.text("ring-open-slowbend")
        } else {
            lines.join(" · ")
        };
        let ahead = |due: &Due| self.time_of(due) > self.now - MINUTE;
        let late = ring.at <= self.now - MINUTE && !ring.jobs.first().is_some_and(ahead);
        let body = self.body(ring, late);
        let speech = [title.as_str(), body.as_str()]
            .join(". ")
            .trim_end_matches([' ', '.'])
            .to_owned()
            + ".";
        Alarm {
            id: ring.id,
            thing: ring.jobs.first().map_or(ring.id, Due::name),
            answers: ring_answers(self.known, self.viewer, &ring.jobs, self.moment),
            cook: ring.cook,
            place: ring.jobs.first().map(place),
            at: ring.at,
            urgency: ring.urgency,
            title,
            body,
            speech,
            covers: ring.covers.clone(),
            late,
            silent: ring.silent,
            nag: ring.nag as i64,
        }
    }

    /// One line for each kind of job, its meats listed.
    fn titles(&self, jobs: &[Due]) -> Vec<String> {
        let mut kinds: Vec<(&'static str, Vec<&Due>)> = vec![];
        for due in jobs {
            let kind = self.kind(due.job);
            match kinds.iter_mut().find(|(known, _)| *known == kind) {
                Some((_, dues)) => dues.push(due),
                None => kinds.push((kind, vec![due])),
            }
        }
        kinds
            .iter()
            .map(|(kind, dues)| self.title(kind, dues))
            .collect()
    }

    fn kind(&self, job: Job) -> &'static str {
        use crate::words::key;
        match job {
            Job::RubSet(_) => key("ring-rub-set"),
            Job::Wet(piece) if self.is_spritzed(piece) => key("ring-spritz"),
            Job::Wet(_) => key("ring-wet"),
            Job::Glaze(_) => key("ring-glaze"),
            job if self.is_read_or_back(job) => key("ring-read-or-back"),
            Job::Check(_) => key("ring-check"),
            Job::Pull(_) => key("ring-pull"),
            Job::PutAway(_) => key("ring-put-away"),
            Job::ComeUp(_) => key("ring-come-up"),
            Job::KeepHot(_) => key("ring-keep-hot"),
            Job::Serve(_) => key("ring-serve"),
            Job::FireRound(_) => key("ring-fire-round"),
            Job::Outside(_) => key("ring-outside"),
            Job::Silent(_) => key("ring-silent"),
            Job::WakeUp(_) => key("ring-wake-up"),
        }
    }

    fn is_read_or_back(&self, job: Job) -> bool {
        is_read_or_back(self.known, job, self.now)
    }

    fn is_spritzed(&self, piece: PieceId) -> bool {
        self.known
            .piece(piece)
            .is_some_and(|(_, piece)| matches!(piece.cadence.value, Cadence::Spritz { .. }))
    }

    fn title(&self, kind: &str, dues: &[&Due]) -> String {
        let names: Vec<String> = dues.iter().map(|due| self.name(due)).collect();
        let names: Vec<&str> = names.iter().map(String::as_str).collect();
        let what = self.say.list(&names);
        let serve = dues
            .first()
            .and_then(|due| self.known.cooks.get(&due.cook)?.serve.value.as_ref());
        let time = serve
            .map(|serve| self.say.the_clock(serve.at))
            .unwrap_or_default();
        let temp = dues
            .first()
            .and_then(|due| self.pit_temp(due))
            .map(|temp| self.say.temperature(temp));
        let args = [
            ("what", Arg::Text(&what)),
            ("time", Arg::Text(&time)),
            ("temp", Arg::Text(temp.as_deref().unwrap_or("—"))),
        ];
        self.say.with(kind, &args)
    }

    /// When a job is for: a serving is called ahead of its time.
    fn time_of(&self, due: &Due) -> i64 {
        let cook = self.known.cooks.get(&due.cook);
        match (due.job, cook.and_then(|cook| cook.serve.value.as_ref())) {
            (Job::Serve(_), Some(serve)) => serve.at,
            _ => due.at,
        }
    }

    fn name(&self, due: &Due) -> String {
        let piece = |id: PieceId| {
            self.known
                .piece(id)
                .map(|(_, piece)| piece.name.value.clone())
        };
        let pit = |id: PitId| {
            self.known
                .crew
                .pits
                .get(&id)
                .map(|pit| pit.name.value.clone())
        };
        let cook = |id: CookId| {
            self.known
                .cooks
                .get(&id)
                .map(|cook| cook.name.value.clone())
        };
        let name = match due.job.object() {
            Subject::Piece(id) => piece(id),
            Subject::Pit(id) => pit(id),
            Subject::Cook(id) => cook(id),
            _ => None,
        };
        name.unwrap_or_default()
    }

    fn pit_temp(&self, due: &Due) -> Option<Mk> {
        self.pit_tail(due).map(|(_, temp)| temp)
    }

    fn pit_tail(&self, due: &Due) -> Option<(i64, Mk)> {
        let cook = self.known.cooks.get(&due.cook)?;
        let pit = due.pit?;
        let probes = cook
            .probes
            .iter()
            .filter(|(_, probe)| probe.place == Where::Pit { pit });
        probes
            .filter_map(|((source, sensor), _)| self.known.tails.last(source, sensor, self.now))
            .max_by_key(|(at, _)| *at)
    }

    fn body(&self, ring: &Ring, late: bool) -> String {
        let mut lines: Vec<String> = ring
            .jobs
            .iter()
            .filter_map(|due| self.detail(due))
            .collect();
        lines.dedup();
        let missed: i64 = ring.jobs.iter().map(|due| due.missed).sum();
        if missed > 0 {
            lines.push(
                self.say
                    .with("ring-missed", &[("missed", Arg::Number(missed))]),
            );
        }
        if ring.jobs.is_empty() {
            lines.push(self.say.text("ring-open-slowbend-detail"));
        }
        if let (true, Some(due)) = (late, ring.jobs.first()) {
            let at = self.time_of(due);
            let late = (at < self.now).then(|| self.say.the_clock(at));
            lines
                .extend(late.map(|time| self.say.with("ring-late", &[("time", Arg::Text(&time))])));
        }
        lines.join("\n")
    }

    fn detail(&self, due: &Due) -> Option<String> {
        Some(match due.job {
            job if self.is_read_or_back(job) => self.say.text("ring-read-or-back-detail"),
            Job::Pull(_) => self.say.text("ring-pull-detail"),
            Job::PutAway(_) => self.say.text("ring-put-away-detail"),
            Job::ComeUp(_) | Job::KeepHot(_) => zone_why(self.known, &self.say, due, self.now)?,
            Job::FireRound(pit) if self.is_planned(due, pit) => {
                self.say.text("ring-feed-planned-detail")
            }
            Job::FireRound(_) => self.say.text("ring-fire-round-detail"),
            Job::Silent(_) => match self.pit_tail(due) {
                Some((at, _)) => self.say.with(
                    "ring-silent-detail",
                    &[("since", Arg::Text(&self.say.the_clock(at)))],
                ),
                None => self.say.text("ring-silent-never"),
            },
            Job::Outside(pit) => self.outside(due, pit)?,
            _ => return None,
        })
    }

    fn is_planned(&self, due: &Due, pit: PitId) -> bool {
        let cook = self.known.cooks.get(&due.cook);
        let plan = cook.and_then(|cook| planned_feed(self.known, cook, pit, self.now));
        plan.is_some_and(|plan| plan.due <= due.at)
    }

    fn outside(&self, due: &Due, pit: PitId) -> Option<String> {
        let cook = self.known.cooks.get(&due.cook)?;
        let band = band_of(self.known, cook, pit, self.now)?;
        let (low, high) = (
            self.say.temperature(band.low),
            self.say.temperature(band.high),
        );
        let since = self.say.the_clock(due.at - band.minutes * MINUTE);
        let args = [
            ("low", Arg::Text(&low)),
            ("high", Arg::Text(&high)),
            ("since", Arg::Text(&since)),
        ];
        Some(self.say.with("ring-outside-detail", &args))
    }
}
