//! The jobs of a run sheet in words.

use crate::{
    log::{Does, OnSheet, PlannedJob, PlannedWhy, Subject, WhyArg, WhyValue},
    screens::glance::Glance,
    words::{Arg, key},
};

impl Glance<'_> {
    /// The verb of a job: one to four words. That a meat comes off by the plan is a question until it is shown to be done.
    pub fn sheet_verb(&self, job: OnSheet) -> String {
        let done = matches!(job.on, Subject::Piece(piece) if self.is_done(piece));
        self.say.text(match job.does {
            Does::Thaw => key("sheet-does-thaw"),
            Does::Trim => key("sheet-does-trim"),
            Does::Brine => key("sheet-does-brine"),
            Does::Rub => key("sheet-does-rub"),
            Does::RestCold => key("sheet-does-rest-cold"),
            Does::Sleep => key("sheet-does-sleep"),
            Does::Light => key("sheet-does-light"),
            Does::Preheat => key("sheet-does-preheat"),
            Does::Step => key("sheet-does-step"),
            Does::Feed => key("sheet-does-feed"),
            Does::PutOn => key("sheet-does-put-on"),
            Does::Wrap => key("sheet-does-wrap"),
            Does::Check => key("sheet-does-check"),
            Does::TakeOff if done => key("sheet-does-take-off"),
            Does::TakeOff => key("sheet-does-take-off-asked"),
            Does::Vent => key("sheet-does-vent"),
            Does::Rest => key("sheet-does-rest"),
            Does::Hold => key("sheet-does-hold"),
            Does::ProbeHold => key("sheet-does-probe-hold"),
            Does::Dish => key("sheet-does-dish"),
            Does::Reheat => key("sheet-does-reheat"),
            Does::Cut => key("sheet-does-cut"),
            Does::Serve => key("sheet-does-serve"),
            Does::LetOut => key("sheet-does-let-out"),
        })
    }

    /// What a job is done on: its name, with the pit, the wrap or the temperature that go with it.
    pub fn sheet_object(&self, planned: &PlannedJob) -> String {
        if let Some(course) = self.course_object(planned) {
            return course;
        }
        let name = self.subject_of(planned.job.on);
        let said = match (planned.job.does, planned.pit, planned.temp, planned.wrap) {
            (Does::PutOn, Some(pit), ..) => {
                let pit = self.pit(pit);
                let args = [("what", Arg::Text(&name)), ("pit", Arg::Text(&pit))];
                self.say.with("sheet-on-pit", &args)
            }
            (Does::Light | Does::Preheat | Does::Step, _, Some(temp), _) => {
                let temp = self.say.temperature(temp);
                let args = [("what", Arg::Text(&name)), ("temp", Arg::Text(&temp))];
                self.say.with("sheet-to-temp", &args)
            }
            (Does::Wrap, _, _, Some(wrap)) => {
                let wrap = self.wrap(wrap);
                let args = [("what", Arg::Text(&name)), ("wrap", Arg::Text(&wrap))];
                self.say.with("sheet-in-wrap", &args)
            }
            _ => name,
        };
        let more = match self.is_reason(&planned.what) {
            true => self.say.text(&planned.what),
            false => planned.what.clone(),
        };
        let parts = [said, more];
        let parts: Vec<&str> = parts
            .iter()
            .map(String::as_str)
            .filter(|part| !part.is_empty())
            .collect();
        parts.join(" · ")
    }

    fn subject_of(&self, on: Subject) -> String {
        match on {
            Subject::Piece(piece) => self.piece_name(piece),
            Subject::Pit(pit) => self.pit(pit),
            Subject::Crew => String::new(),
            on => self.subject(on),
        }
    }

    /// "Put on: Butt on Drum".
    pub fn sheet_job(&self, planned: &PlannedJob) -> String {
        let (verb, what) = (self.sheet_verb(planned.job), self.sheet_object(planned));
        match what.is_empty() {
            true => verb,
            false => self.line_job(&verb, &what),
        }
    }

    /// The same of a job that may have left its sheet.
    pub fn sheet_object_of(&self, job: OnSheet) -> String {
        match self.on_sheet(job) {
            Some(planned) => self.sheet_object(planned),
            None => self.subject_of(job.on),
        }
    }

    /// The job of that name on the sheet of a cook that is known here.
    pub fn on_sheet(&self, job: OnSheet) -> Option<&PlannedJob> {
        let mut cooks = self.known.cooks.values();
        cooks.find_map(|cook| cook.planned(job))
    }

    /// Why a job is when it is; nothing where this version does not know the sentence.
    pub fn sheet_why(&self, why: Option<&PlannedWhy>) -> String {
        let Some(why) = why else {
            return String::new();
        };
        if !self.is_reason(&why.key) {
            return String::new();
        }
        let values: Vec<(&str, String, Option<i64>)> =
            why.args.iter().map(|arg| self.value(arg)).collect();
        let args: Vec<(&str, Arg<'_>)> = values
            .iter()
            .map(|(name, text, number)| match number {
                Some(number) => (*name, Arg::Number(*number)),
                None => (*name, Arg::Text(text)),
            })
            .collect();
        self.say.with(&why.key, &args)
    }

    /// Whether an entry may have this message said: one that is made for plans and that this version has.
    fn is_reason(&self, key: &str) -> bool {
        key.starts_with("plan-") && self.say.has(key)
    }

    fn value<'w>(&self, arg: &'w WhyArg) -> (&'w str, String, Option<i64>) {
        let text = match &arg.value {
            WhyValue::Time(at) => self.say.clock(*at),
            WhyValue::Minutes(minutes) => self
                .say
                .duration(minutes.saturating_mul(crate::moment::MINUTE)),
            WhyValue::Grams(grams) => self.say.weight(*grams),
            WhyValue::Temp(temp) => self.say.temperature(*temp),
            WhyValue::Count(count) => return (&arg.name, String::new(), Some(*count)),
            WhyValue::Piece(piece) => self.piece_name(*piece),
            WhyValue::Pit(pit) => self.pit(*pit),
            WhyValue::Text(text) => text.clone(),
            WhyValue::Message(key) if self.is_reason(key) => self.say.text(key),
            WhyValue::Message(_) => String::new(),
        };
        (&arg.name, text, None)
    }
}
