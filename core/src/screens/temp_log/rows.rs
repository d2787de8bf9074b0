//! The rows of the log.

use super::{ProbeRead, TempLogRow};
use crate::{
    checks::{Standing, TestResult},
    cook::{Answered, Cook, Piece, Timed, ahead::counts, verdict_input::standing},
    ids::ThermometerId,
    log::{Job, Stage, Where},
    screens::{glance::Glance, zone::caveat_key},
    units::Mk,
    words::Arg,
};

/// Far enough off for a date to be written out.
const MONTH_MS: i64 = 30 * 24 * crate::moment::HOUR;

impl Glance<'_> {
    pub(super) fn log_rows(&self, cook: &Cook, probes: &[ProbeRead]) -> Vec<TempLogRow> {
        let mut all: Vec<TempLogRow> = probes.iter().map(|read| self.probe_row(read)).collect();
        for piece in cook.pieces.values() {
            all.extend(self.read_rows(piece));
            all.extend(self.action_rows(piece));
        }
        for (pit, care) in &cook.pits {
            let pit = self.pit(*pit);
            let rows = care
                .read
                .iter()
                .filter(|(when, ..)| counts(when.at, self.now));
            all.extend(rows.map(|(when, temp, by)| self.read_row(*when, pit.clone(), *temp, *by)));
        }
        all.extend(self.answer_rows(cook));
        all.sort_by(|a, b| (a.at, &a.item, &a.temperature).cmp(&(b.at, &b.item, &b.temperature)));
        all
    }

    fn read_rows(&self, piece: &Piece) -> Vec<TempLogRow> {
        let item = |spot: String| match spot.as_str() {
            "" => piece.name.value.clone(),
            spot => format!("{}, {spot}", piece.name.value),
        };
        let passes = piece.checks.iter().flat_map(|pass| {
            pass.results.iter().filter_map(|result| match result {
                TestResult::Heat(heat) => Some((pass.when, *heat)),
                _ => None,
            })
        });
        let passes = passes.filter(|(when, _)| counts(when.at, self.now));
        let mut all: Vec<TempLogRow> = passes
            .map(|(when, heat)| {
                let spot = self.say.text(heat.spot.key());
                self.read_row(when, item(spot), heat.mk, heat.thermometer)
            })
            .collect();
        let read = piece.read.iter();
        let read = read.filter(|reading| counts(reading.when.at, self.now));
        all.extend(read.map(|reading| {
            let known = crate::cook::verdict_input::spot_word(&reading.spot);
            let spot = known.map_or_else(|| reading.spot.clone(), |spot| self.say.text(spot.key()));
            self.read_row(reading.when, item(spot), reading.temp, reading.thermometer)
        }));
        all
    }

    fn read_row(
        &self,
        when: Timed,
        item: String,
        temp: Mk,
        by: Option<ThermometerId>,
    ) -> TempLogRow {
        TempLogRow {
            temperature: self.say.temperature(temp),
            thermometer: self.log_thermometer(by),
            ..self.bare_row(when, item)
        }
    }

    fn bare_row(&self, when: Timed, item: String) -> TempLogRow {
        TempLogRow {
            at: when.at,
            when: self.log_time(when.at),
            item,
            temperature: String::new(),
            thermometer: String::new(),
            who: self.device(when.entry.device),
            action: String::new(),
        }
    }

    /// With its date, whatever day it is read on.
    fn log_time(&self, at: i64) -> String {
        self.say.clock_day(at, at.saturating_add(MONTH_MS))
    }

    /// "Pen, checked", "Pen, not checked"; of none that is known, that it was not said.
    fn log_thermometer(&self, by: Option<ThermometerId>) -> String {
        let Some(thermometer) = by.and_then(|id| self.known.crew.thermometers.get(&id)) else {
            return self.say.text("log-no-thermometer");
        };
        let name = [("name", Arg::Text(&thermometer.name.value))];
        match standing(self.known.crew, by, self.now) {
            Standing::Checked { .. } => self.say.with("log-checked", &name),
            Standing::Unchecked => self.say.with("log-unchecked", &name),
        }
    }

    fn probe_row(&self, read: &ProbeRead) -> TempLogRow {
        let (source, sensor) = &read.series;
        let probe = format!("{source} {sensor}");
        TempLogRow {
            at: read.at,
            when: self.log_time(read.at),
            item: match &read.place {
                Where::Pit { pit } => self.pit(*pit),
                place => self.seat(place),
            },
            temperature: self.say.temperature(read.temp),
            thermometer: match read.thermometer {
                Some(_) => self.log_thermometer(read.thermometer),
                None => self.say.with("log-probe", &[("probe", Arg::Text(&probe))]),
            },
            who: self.say.text("log-by-itself"),
            action: String::new(),
        }
    }

    /// What was done with a meat that bears on its safety.
    fn action_rows(&self, piece: &Piece) -> Vec<TempLogRow> {
        let name = || piece.name.value.clone();
        let told = |stage: &Stage| {
            !matches!(
                stage,
                Stage::Trimmed | Stage::Brined | Stage::Rubbed | Stage::Resting
            )
        };
        let stages = piece
            .stages
            .iter()
            .filter(|passed| told(&passed.stage) && counts(passed.when.at, self.now));
        let mut all: Vec<TempLogRow> = stages
            .map(|passed| TempLogRow {
                action: self.stage(Some(passed.stage)),
                ..self.bare_row(passed.when, name())
            })
            .collect();
        let past = piece.went_past.iter();
        let past = past.filter(|(when, _)| counts(when.at, self.now));
        all.extend(past.map(|(when, caveat)| {
            let caveat = self.say.text(caveat_key(*caveat));
            TempLogRow {
                action: self
                    .say
                    .with("log-went-past", &[("caveat", Arg::Text(&caveat))]),
                ..self.bare_row(*when, name())
            }
        }));
        all
    }

    /// A ring that was answered without being done.
    fn answer_rows(&self, cook: &Cook) -> Vec<TempLogRow> {
        let asked = |job: Job| {
            matches!(
                job,
                Job::ComeUp(_)
                    | Job::KeepHot(_)
                    | Job::PutAway(_)
                    | Job::Outside(_)
                    | Job::Silent(_)
            )
        };
        let answers = cook.answers.iter();
        let answers =
            answers.filter(|answer| asked(answer.job) && counts(answer.when.at, self.now));
        answers
            .map(|answer| {
                let verb = self.verb(answer.job);
                let args = [("job", Arg::Text(&verb))];
                let action = match answer.how {
                    Answered::Later(_) => self.say.with("log-put-off", &args),
                    _ => self.say.with("log-seen", &args),
                };
                TempLogRow {
                    action,
                    ..self.bare_row(answer.when, self.object(answer.job))
                }
            })
            .collect()
    }
}
