//! Pits, thermometers, habits, and how this viewer reads.

use super::{
    Editable, FieldLine, KindChoice, Settings, SettingsLabels, check::recorded, glance::Glance,
};
use crate::{
    cadence::{MOP_EVERY_MIN, SPRITZ_EVERY_MIN},
    cook::{Known, Pit, Reg, Thermometer},
    log::{PitKind, Stamp, Subject},
    moment::Moment,
    words::{Arg, Measure, Viewer, key},
};

/// All kinds of pits, in the order to choose from.
const KINDS: [PitKind; 7] = [
    PitKind::StickBurner,
    PitKind::Kettle,
    PitKind::Drum,
    PitKind::Ceramic,
    PitKind::Cabinet,
    PitKind::Pellet,
    PitKind::Electric,
];

/// Pits, thermometers, habits, and how this viewer reads.
pub fn settings(known: &Known<'_>, viewer: &Viewer, moment: &Moment) -> Settings {
    let glance = Glance::of(known, viewer, moment);
    let crew = known.crew;
    Settings {
        title: glance.say.text("settings-title"),
        pits: crew.pits.values().map(|pit| glance.edit_pit(pit)).collect(),
        thermometers: crew
            .thermometers
            .values()
            .map(|t| glance.edit_thermometer(t))
            .collect(),
        habits: vec![glance.edit_habits()],
        viewer: glance.viewer_choices(),
        labels: glance.settings_labels(),
        links: vec![glance.thermometers_link()],
        notices: glance.crew_notices(),
        device_name: glance.device_name().unwrap_or_default(),
        about: glance.about_this(),
        until: glance.until(&[]),
    }
}

fn number(value: Option<i64>) -> String {
    value.map_or_else(String::new, |number| number.to_string())
}

impl Glance<'_> {
    fn line(&self, field: &str, value: String, unit: &str, saw: Option<Stamp>) -> FieldLine {
        FieldLine {
            field: field.into(),
            label: self.field(field),
            value,
            unit: unit.into(),
            hint: self.hint(field),
            saw,
        }
    }

    /// What a field does, where its name does not say.
    fn hint(&self, field: &str) -> String {
        let hint = match field {
            "pit_kind" => key("hint-pit-kind"),
            "grate_cm2" => key("hint-grate"),
            "alone_minutes" => key("hint-alone"),
            "band_low" => key("hint-band"),
            "mop_minutes" | "spritz_minutes" => key("hint-wetting"),
            "altitude_m" => key("hint-altitude"),
            "for_public" => key("hint-for-public"),
            _ => return String::new(),
        };
        self.say.text(hint)
    }

    pub fn yes_no(&self, yes: bool) -> String {
        self.say.text(match yes {
            true => key("answer-yes"),
            false => key("answer-no"),
        })
    }

    fn edit_pit(&self, pit: &Pit) -> Editable {
        let minutes = self.say.text("unit-minutes");
        let mut fields = vec![
            self.line("name", pit.name.value.clone(), "", Some(pit.name.stamp)),
            self.line(
                "pit_kind",
                recorded(pit.kind.value),
                "",
                Some(pit.kind.stamp),
            ),
            self.line(
                "grate_cm2",
                pit.grate_cm2.value.map_or_else(String::new, |cm2| {
                    self.say.measure_field(Measure::Grate, cm2)
                }),
                self.say.measure_unit(Measure::Grate),
                Some(pit.grate_cm2.stamp),
            ),
            self.line(
                "alone_minutes",
                number(pit.alone_minutes.value),
                &minutes,
                Some(pit.alone_minutes.stamp),
            ),
        ];
        fields.extend(self.band_fields(pit, &minutes));
        Editable {
            of: Subject::Pit(pit.id),
            name: pit.name.value.clone(),
            detail: self.pit_kind(pit.kind.value),
            fields,
        }
    }

    /// A band is one field of three numbers: it is set whole.
    fn band_fields(&self, pit: &Pit, minutes: &str) -> [FieldLine; 3] {
        let band = pit.band.value;
        let degrees = |mk: Option<crate::units::Mk>| {
            mk.map_or_else(String::new, |mk| self.say.temperature_field(mk))
        };
        let line = |field: &str, label: &'static str, value, unit: &str| FieldLine {
            field: field.into(),
            label: self.say.text(label),
            value,
            unit: unit.into(),
            hint: self.hint(field),
            saw: Some(pit.band.stamp),
        };
        let unit = self.degrees();
        [
            line(
                "band_low",
                "field-band-low",
                degrees(band.map(|band| band.low)),
                unit,
            ),
            line(
                "band_high",
                "field-band-high",
                degrees(band.map(|band| band.high)),
                unit,
            ),
            line(
                "band_minutes",
                "field-band-minutes",
                number(band.map(|band| band.minutes)),
                minutes,
            ),
        ]
    }

    fn edit_thermometer(&self, thermometer: &Thermometer) -> Editable {
        let name = &thermometer.name;
        Editable {
            of: Subject::Thermometer(thermometer.id),
            name: name.value.clone(),
            detail: self.standing(thermometer),
            fields: vec![self.line("name", name.value.clone(), "", Some(name.stamp))],
        }
    }

    fn edit_habits(&self) -> Editable {
        let crew = self.known.crew;
        let minutes = self.say.text("unit-minutes");
        let habit = |field: &str, reg: &Option<Reg<i64>>, usual: i64, unit: &str| {
            let value = reg.as_ref().map_or(usual, |reg| reg.value);
            let saw = reg.as_ref().map(|reg| reg.stamp);
            self.line(field, value.to_string(), unit, saw)
        };
        Editable {
            of: Subject::Crew,
            name: self.say.text("settings-habits"),
            detail: self.say.text("settings-habits-detail"),
            fields: vec![
                habit("mop_minutes", &crew.mop_minutes, MOP_EVERY_MIN, &minutes),
                habit(
                    "spritz_minutes",
                    &crew.spritz_minutes,
                    SPRITZ_EVERY_MIN,
                    &minutes,
                ),
                self.line(
                    "altitude_m",
                    self.say.measure_field(
                        Measure::Altitude,
                        crew.altitude_m.as_ref().map_or(0, |reg| reg.value),
                    ),
                    self.say.measure_unit(Measure::Altitude),
                    crew.altitude_m.as_ref().map(|reg| reg.stamp),
                ),
                self.line(
                    "for_public",
                    self.yes_no(crew.for_public.as_ref().is_some_and(|reg| reg.value)),
                    "",
                    crew.for_public.as_ref().map(|reg| reg.stamp),
                ),
            ],
        }
    }

    /// A label with the viewer's unit: "Grate (in²)".
    fn with_unit(&self, label: &'static str, of: Measure) -> String {
        let label = self.say.text(label);
        let unit = self.say.measure_unit(of);
        let args = [("label", Arg::Text(&label)), ("unit", Arg::Text(unit))];
        self.say.with("label-unit", &args)
    }

    fn settings_labels(&self) -> SettingsLabels {
        SettingsLabels {
            pits: self.say.text("settings-pits"),
            thermometers: self.say.text("settings-thermometers"),
            habits: self.say.text("settings-habits"),
            viewer: self.say.text("settings-viewer"),
            name: self.say.text("field-name"),
            kind: self.say.text("field-pit-kind"),
            grate: self.with_unit("field-grate", Measure::Grate),
            alone: self.say.text("field-alone"),
            add_pit: self.say.text("settings-add-pit"),
            add_thermometer: self.say.text("settings-add-thermometer"),
            save: self.say.text("settings-save"),
            check: self.say.text("settings-check"),
            read: self.say.text("settings-read"),
            ice: self.say.text("bath-ice"),
            boiling: self.say.text("bath-boiling"),
            altitude: self.with_unit("field-altitude", Measure::Altitude),
            kinds: KINDS
                .map(|kind| KindChoice {
                    kind,
                    name: self.pit_kind(kind),
                })
                .into(),
        }
    }

    fn device_name(&self) -> Option<String> {
        let person = self.known.crew.people.get(&self.known.device)?;
        Some(person.name.as_ref()?.value.clone())
    }

    fn about_this(&self) -> Vec<String> {
        let version = [("version", Arg::Text(env!("CARGO_PKG_VERSION")))];
        let device = match self.device_name() {
            Some(name) => self.say.with("about-device", &[("name", Arg::Text(&name))]),
            None => self.say.text("about-device-unnamed"),
        };
        vec![self.say.with("about-version", &version), device]
    }
}
