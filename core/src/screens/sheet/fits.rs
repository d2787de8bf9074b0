//! That the accepted sheet no longer fits, why, and the way to a new one. Start at [`Glance::fits`].

use super::SheetFits;
use crate::{
    acts::Act,
    cook::Cook,
    log::{Does, Subject},
    moment::MINUTE,
    planning::{self, Strained, Why},
    screens::{Link, Notice, Place, Tone, buttons::button, glance::Glance},
    words::{Arg, key},
};

/// So many reasons are told; the others are on the new sheet.
const TOLD: usize = 4;
/// How far off a forecast is, is told in steps of so much.
const ABOUT_MIN: i64 = 15;

impl Glance<'_> {
    /// Why the sheet no longer fits, and what to do; none where it does, or where it was kept against all of it.
    pub fn fits(&self, cook: &Cook) -> Option<SheetFits> {
        let sheet = cook.sheets.now.as_ref()?.when.entry;
        let all = planning::strains(&self.known, cook, self.now);
        let unsaid = planning::unsaid(cook, &all);
        let mut says: Vec<String> = vec![];
        for strained in &unsaid {
            let said = self.strain(cook, strained);
            if !says.contains(&said) {
                says.push(said);
            }
        }
        says.truncate(TOLD);
        let against = all.iter().map(|strained| strained.strain).collect();
        let keep = Act::KeepSheet {
            cook: cook.id,
            sheet,
            against,
        };
        (!says.is_empty()).then(|| SheetFits {
            heading: self.say.text("fits-no-longer"),
            says,
            see: self.fits_link(cook),
            keep: button(self.say.text("fits-keep"), keep, Tone::Plain),
        })
    }

    /// Where a new sheet is proposed.
    pub fn fits_link(&self, cook: &Cook) -> Link {
        Link {
            label: self.say.text("fits-see"),
            place: Place::Plan { cook: cook.id },
        }
    }

    /// The same as one notice, with the button that keeps the sheet.
    pub fn fits_notice(&self, cook: &Cook) -> Option<Notice> {
        let fits = self.fits(cook)?;
        let said = fits.says.join(" ");
        let args = [
            ("heading", Arg::Text(&fits.heading)),
            ("why", Arg::Text(&said)),
        ];
        Some(Notice {
            text: self.say.with("fits-notice", &args),
            dismiss: Some(fits.keep),
        })
    }

    fn strain(&self, cook: &Cook, strained: &Strained) -> String {
        let name = strained.strain.job;
        let job = cook.planned(name);
        let job = job.map_or_else(String::new, |job| self.sheet_job(job));
        let what = match (name.does, name.on) {
            (Does::Serve, Subject::Cook(_)) => cook.name.value.clone(),
            (_, on) => self.subject(on),
        };
        let minutes = strained.strain.by_min;
        let about = (minutes.abs() + ABOUT_MIN / 2) / ABOUT_MIN * ABOUT_MIN;
        let is_late = minutes > 0;
        let (message, by, time) = match strained.why {
            Why::Late { at } => (key("fits-late"), minutes, self.say.clock_day(at, self.now)),
            Why::Forecast if is_late => (key("fits-forecast-later"), about, String::new()),
            Why::Forecast => (key("fits-forecast-sooner"), about, String::new()),
            Why::Moved if is_late => (key("fits-moved-later"), minutes, String::new()),
            Why::Moved => (key("fits-moved-sooner"), -minutes, String::new()),
            Why::Missing => (key("fits-missing"), 0, String::new()),
            Why::Courses => (key("fits-courses"), 0, String::new()),
            Why::Cold { pit, reads, meant } => return self.cold(pit, reads, meant),
        };
        let by = self.say.duration(by * MINUTE);
        let args = [
            ("job", Arg::Text(&job)),
            ("what", Arg::Text(&what)),
            ("by", Arg::Text(&by)),
            ("time", Arg::Text(&time)),
        ];
        self.say.with(message, &args)
    }

    fn cold(
        &self,
        pit: crate::ids::PitId,
        reads: crate::units::Mk,
        meant: crate::units::Mk,
    ) -> String {
        let (pit, reads, meant) = (
            self.pit(pit),
            self.say.temperature(reads),
            self.say.temperature(meant),
        );
        let args = [
            ("pit", Arg::Text(&pit)),
            ("reads", Arg::Text(&reads)),
            ("meant", Arg::Text(&meant)),
        ];
        self.say.with("fits-cold", &args)
    }
}
