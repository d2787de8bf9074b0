//! Checking thermometers: both baths step by step, what is made of what they show, and how each stands.

use super::{Line, Link, Place, Weight, glance::Glance, records::records};
use crate::{
    acts::decide::expected_in,
    checks::{
        Trust,
        standing::{CHECK_LASTS_MS, CORRECT_BEYOND_MK, TOO_FAR_BEYOND_MK},
    },
    cook::{Known, Thermometer, ThermometerCheck, verdict_input::standing},
    ids::ThermometerId,
    log::Bath,
    moment::{Moment, SECOND},
    safety::Source,
    units::Mk,
    words::{Arg, Measure, Viewer, WeightUnit, key},
};
use serde::{Deserialize, Serialize};

/// So many checks of a thermometer are shown, latest first.
const CHECKS_SHOWN: usize = 5;
/// How long ice and tip need, milliseconds. Common practice, no source.
const ICE_STANDS_MS: i64 = 180 * SECOND;

records! {
    /// Checking thermometers.
    ThermometersScreen {
        /** Heading. */ title: String,
        /** Why, in one line. */ lead: String,
        /** The baths, the easier first. */ baths: Vec<BathGuide>,
        /** How the thermometers stand, most recently checked first. */ thermometers: Vec<ThermometerLine>,
        /** What is shown where there is none. */ none: Option<String>,
        /** What is made of what a check shows, line by line. */ rules: Vec<String>,
        /** Who says so. */ source: String,
        /** The labels of the forms. */ labels: ThermometerLabels,
        /** Where else to go. */ links: Vec<Link>,
        /** Until when this is true. */ until: i64,
    }
    /// One bath, step by step.
    BathGuide {
        /** Which one; boiling at the crew's height above the sea. */ bath: Bath,
        /** What it is called. */ name: String,
        /** What a good thermometer reads in it. */ expected: String,
        /** The steps, in order. */ steps: Vec<String>,
        /** Where water boils at other heights: height and temperature. */ heights: Vec<Line>,
    }
    /// How one thermometer stands.
    ThermometerLine {
        /** Which one. */ thermometer: ThermometerId,
        /** What it is called. */ name: String,
        /** Its last check and how old it is. */ state: String,
        /** What is made of its readings. */ means: String,
        /** How much it asks for an eye. */ weight: Weight,
        /** Its checks, latest first. */ checks: Vec<String>,
    }
    /// The labels of the forms on the screen.
    ThermometerLabels {
        /** Heading of the form. */ heading: String,
        /** Heading of how they stand. */ standing: String,
        /** Heading of what is made of it. */ rules: String,
        /** Label of the thermometer. */ thermometer: String,
        /** Label of the bath. */ bath: String,
        /** Label of what it read, with the unit. */ read: String,
        /** Label of the height above the sea, with the unit. */ altitude: String,
        /** The height above the sea as it stands, to edit; empty where nobody said it. */ altitude_value: String,
        /** Heading of the heights. */ heights: String,
        /** The button that records the check. */ record: String,
        /** Label of a new one's name. */ name: String,
        /** The button that adds one. */ add: String,
    }
}

/// The screen on which thermometers are checked.
pub fn thermometers(known: &Known<'_>, viewer: &Viewer, moment: &Moment) -> ThermometersScreen {
    let glance = Glance::of(known, viewer, moment);
    let say = &glance.say;
    let all = glance.last_checked_first();
    ThermometersScreen {
        title: say.text("thermometers-title"),
        lead: say.text("thermometers-lead"),
        baths: vec![glance.ice(), glance.boiling()],
        none: all.is_empty().then(|| say.text("thermometers-none")),
        thermometers: all
            .into_iter()
            .map(|one| glance.thermometer_line(one))
            .collect(),
        rules: glance.thermometer_rules(),
        source: say.text(Source::CommonPractice.key()),
        labels: glance.thermometer_labels(),
        links: vec![Link {
            label: say.text("link-settings"),
            place: Place::Settings,
        }],
        until: glance.until(&[]),
    }
}

impl Glance<'_> {
    /// The way to this screen.
    pub fn thermometers_link(&self) -> Link {
        Link {
            label: self.say.text("link-thermometers"),
            place: Place::Thermometers,
        }
    }

    fn altitude_m(&self) -> Option<i64> {
        self.known.crew.altitude_m.as_ref().map(|reg| reg.value)
    }

    fn ice(&self) -> BathGuide {
        let (right, wait) = (
            self.say.temperature(expected_in(Bath::Ice)),
            self.say.duration(ICE_STANDS_MS),
        );
        let wait = [("wait", Arg::Text(&wait))];
        BathGuide {
            bath: Bath::Ice,
            name: self.say.text("bath-ice"),
            expected: self
                .say
                .with("thermometers-must-read", &[("right", Arg::Text(&right))]),
            steps: vec![
                self.say.with("thermometers-ice-fill", &wait),
                self.say.text("thermometers-ice-hold"),
                self.say
                    .with("thermometers-ice-read", &[("right", Arg::Text(&right))]),
            ],
            heights: vec![],
        }
    }

    /// At the crew's height above the sea; where nobody said it, the heights say what is right.
    fn boiling(&self) -> BathGuide {
        let bath = Bath::Boiling {
            altitude_m: self.altitude_m().unwrap_or(0),
        };
        let right = self.say.temperature(expected_in(bath));
        let expected = match self.altitude_m() {
            Some(meters) => {
                let height = self.height(meters);
                let args = [("right", Arg::Text(&right)), ("height", Arg::Text(&height))];
                self.say.with("thermometers-must-read-at", &args)
            }
            None => self.say.with(
                "thermometers-must-read-sea",
                &[("right", Arg::Text(&right))],
            ),
        };
        BathGuide {
            bath,
            name: self.say.text("bath-boiling"),
            expected,
            steps: vec![
                self.say.text("thermometers-boil-bring"),
                self.say.text("thermometers-boil-hold"),
                self.say.text("thermometers-boil-read"),
            ],
            heights: self.heights(),
        }
    }

    /// Each thousand feet or 500 m, to where people live.
    fn heights(&self) -> Vec<Line> {
        let meters = |n: i64| match self.viewer.weight {
            WeightUnit::Pound => n * 3_048 / 10,
            WeightUnit::Kilogram => n * 500,
        };
        let line = |meters: i64| Line {
            name: self.height(meters),
            state: self
                .say
                .temperature(expected_in(Bath::Boiling { altitude_m: meters })),
            detail: String::new(),
            weight: Weight::Calm,
            link: None,
        };
        (0..=8).map(|n| line(meters(n))).collect()
    }

    fn height(&self, meters: i64) -> String {
        let number = self.say.measure_field(Measure::Altitude, meters);
        format!("{number} {}", self.say.measure_unit(Measure::Altitude))
    }

    fn thermometer_line(&self, one: &Thermometer) -> ThermometerLine {
        let standing = standing(self.known.crew, Some(one.id), self.now);
        let (means, weight) = match standing.trust(Mk(0)) {
            _ if !standing.is_checked(self.now) => (key("thermometers-unproven"), Weight::Soon),
            Trust::Counts(_) => (key("thermometers-counts"), Weight::Calm),
            Trust::Corrected(_) => (key("thermometers-corrected"), Weight::Soon),
            Trust::TooFarOff => (key("thermometers-too-far"), Weight::Call),
        };
        let lapsed = !standing.is_checked(self.now) && standing.off_mk() != 0;
        let means = match standing.trust(Mk(0)) {
            Trust::TooFarOff if lapsed => key("thermometers-too-far"),
            Trust::Corrected(_) if lapsed => key("thermometers-corrected-lapsed"),
            _ => means,
        };
        ThermometerLine {
            thermometer: one.id,
            name: one.name.value.clone(),
            state: self.standing(one),
            means: self.say.text(means),
            weight,
            checks: self.past_checks(one),
        }
    }

    fn past_checks(&self, one: &Thermometer) -> Vec<String> {
        let mut checks: Vec<&ThermometerCheck> = one.checks.iter().collect();
        checks.sort_by_key(|check| std::cmp::Reverse((check.when.at, check.when.entry)));
        let shown = checks.into_iter().take(CHECKS_SHOWN);
        shown
            .map(|check| {
                let when = self.say.clock_day(check.when.at, self.now);
                let (read, right) = (
                    self.say.temperature_fine(check.read),
                    self.say.temperature_fine(check.expected),
                );
                let args = [
                    ("when", Arg::Text(&when)),
                    ("read", Arg::Text(&read)),
                    ("right", Arg::Text(&right)),
                ];
                self.say.with("thermometers-check", &args)
            })
            .collect()
    }

    fn thermometer_rules(&self) -> Vec<String> {
        let [little, much] = [CORRECT_BEYOND_MK, TOO_FAR_BEYOND_MK]
            .map(|mk| self.say.temperature_difference(Mk(mk)));
        let lasts = self.say.duration(CHECK_LASTS_MS);
        let (little, much) = (("little", Arg::Text(&little)), ("much", Arg::Text(&much)));
        vec![
            self.say.with("thermometers-rule-within", &[little]),
            self.say.with("thermometers-rule-corrected", &[little]),
            self.say.with("thermometers-rule-too-far", &[much]),
            self.say
                .with("thermometers-rule-lasts", &[("lasts", Arg::Text(&lasts))]),
            self.say.text("thermometers-rule-local"),
        ]
    }

    fn thermometer_labels(&self) -> ThermometerLabels {
        let unit = |label: &'static str, unit: &str| {
            let label = self.say.text(label);
            self.say.with(
                "label-unit",
                &[("label", Arg::Text(&label)), ("unit", Arg::Text(unit))],
            )
        };
        let altitude = self
            .altitude_m()
            .map(|meters| self.say.measure_field(Measure::Altitude, meters));
        ThermometerLabels {
            heading: self.say.text("settings-check"),
            standing: self.say.text("settings-thermometers"),
            rules: self.say.text("thermometers-rules"),
            thermometer: self.say.text("frame-thermometer"),
            bath: self.say.text("thermometers-bath"),
            read: unit("settings-read", self.degrees()),
            altitude: unit("field-altitude", self.say.measure_unit(Measure::Altitude)),
            altitude_value: altitude.unwrap_or_default(),
            heights: self.say.text("thermometers-heights"),
            record: self.say.text("button-record"),
            name: self.say.text("field-name"),
            add: self.say.text("settings-add-thermometer"),
        }
    }
}
