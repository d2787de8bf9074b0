//! The run sheet as a calendar file.

use crate::{
    alarms::AlarmId,
    calendar::{self, Calendar, Event},
    cook::{Cook, RunSheet},
    log::{Does, Job, PlannedJob},
    screens::glance::Glance,
    words::Arg,
};
use chrono_tz::Tz;

impl Glance<'_> {
    /// All jobs with their times in the zone where the food is served; those that take hands ring. An event bears one name in
    /// all plans of a cook, so that a calendar moves it where a later plan does.
    pub fn sheet_calendar(&self, cook: &Cook, sheet: &RunSheet) -> String {
        let made = calendar::calendar(&Calendar {
            name: self.say.with(
                "sheet-calendar-title",
                &[("cook", Arg::Text(&cook.name.value))],
            ),
            zone: self.known_zone(&sheet.plan.serve.zone),
            made: sheet.when.at,
            sequence: cook.sheets.accepted,
            events: sheet
                .plan
                .jobs
                .iter()
                .map(|planned| self.event(cook, planned))
                .collect(),
        });
        made.map_or_else(|_| String::new(), |file| file.text)
    }

    /// The zone, if it is known here; else the viewer's, or UTC.
    fn known_zone(&self, zone: &str) -> String {
        let zones = [zone, self.viewer.zone.as_str(), "UTC"];
        let known = zones.into_iter().find(|zone| zone.parse::<Tz>().is_ok());
        known.unwrap_or_default().to_owned()
    }

    fn event(&self, cook: &Cook, planned: &PlannedJob) -> Event {
        Event {
            uid: format!(
                "{}@slowbend",
                AlarmId::of(cook.id, Job::Sheet(planned.job), 0, 0)
            ),
            at: planned.at,
            until: planned.until,
            summary: self.sheet_job(planned),
            description: self.sheet_why(planned.why.as_ref()),
            rings: planned.hands > 0 || planned.job.does == Does::Serve,
        }
    }
}
