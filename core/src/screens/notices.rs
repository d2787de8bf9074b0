//! What a person is to be told: fields that were overruled, wrong clocks, an update that is needed, an unknown zone.

use super::{Notice, Tone, buttons::button, glance::Glance};
use crate::{
    acts::Act,
    cook::{Cook, Overruling, Timed, ahead::counts, overruling},
    log::Subject,
    words::{Arg, key},
};

impl Glance<'_> {
    /// What concerns everybody: the crew's things, this device, the viewer's zone.
    pub fn crew_notices(&self) -> Vec<Notice> {
        let crew = self.known.crew;
        let must_update = crew.must_update || self.known.cooks.values().any(|c| c.must_update);
        let mut all = vec![];
        all.extend(must_update.then(|| self.told("notice-update")));
        all.extend(self.say.zone_note().map(|text| Notice {
            text,
            dismiss: None,
        }));
        let warnings = self.known.warnings.iter();
        all.extend(warnings.filter_map(|warning| self.warning(warning)));
        let pits = crew.pits.values().flat_map(|pit| pit.overrulings());
        let thermometers = crew.thermometers.values().filter_map(|thermometer| {
            overruling(
                Subject::Thermometer(thermometer.id),
                "name",
                &thermometer.name,
            )
        });
        let habits = [
            ("mop_minutes", &crew.mop_minutes),
            ("spritz_minutes", &crew.spritz_minutes),
            ("altitude_m", &crew.altitude_m),
        ]
        .into_iter()
        .filter_map(|(field, reg)| overruling(Subject::Crew, field, reg.as_ref()?));
        let public = crew.for_public.as_ref();
        let public = public.and_then(|reg| overruling(Subject::Crew, "for_public", reg));
        let all_of_crew = pits.chain(thermometers).chain(habits).chain(public);
        all.extend(self.overruled(all_of_crew));
        all
    }

    /// The same with what concerns one cook.
    pub fn cook_notices(&self, cook: &Cook) -> Vec<Notice> {
        let mut all: Vec<Notice> = self.fits_notice(cook).into_iter().collect();
        all.extend(self.crew_notices());
        all.extend(self.wrong_clock(cook));
        all.extend(self.people_notice(cook));
        let of = Subject::Cook(cook.id);
        let own = [
            overruling(of, "name", &cook.name),
            overruling(of, "serve", &cook.serve),
            overruling(of, "people", &cook.people),
            overruling(of, "hot_air", &cook.hot_air),
        ];
        let pieces = cook.pieces.values().flat_map(|piece| {
            let of = Subject::Piece(piece.id);
            [
                overruling(of, "name", &piece.name),
                overruling(of, "form", &piece.form),
                overruling(of, "weight_g", &piece.weight_g),
                overruling(of, "cadence", &piece.cadence),
                overruling(of, "pull_at", &piece.pull_at),
            ]
        });
        all.extend(self.overruled(own.into_iter().chain(pieces).flatten()));
        all
    }

    fn told(&self, key: &'static str) -> Notice {
        Notice {
            text: self.say.text(key),
            dismiss: None,
        }
    }

    pub fn dismissible(&self, notice: String, text: String) -> Option<Notice> {
        let dismiss = self.say.text("button-dismiss");
        (!self.known.crew.dismissed.contains(&notice)).then(|| Notice {
            text,
            dismiss: Some(button(dismiss, Act::Dismiss { notice }, Tone::Plain)),
        })
    }

    fn overruled(&self, all: impl Iterator<Item = Overruling>) -> Vec<Notice> {
        all.filter_map(|overruling| {
            let (winner, loser, field, of) = (
                self.device(overruling.winner),
                self.device(overruling.loser),
                self.field(&overruling.field),
                self.subject(overruling.of),
            );
            let args = [
                ("winner", Arg::Text(&winner)),
                ("loser", Arg::Text(&loser)),
                ("field", Arg::Text(&field)),
                ("of", Arg::Text(&of)),
            ];
            let text = Self::begins(&self.say.with("notice-overruled", &args));
            self.dismissible(overruling.notice, text)
        })
        .collect()
    }

    /// The name of a field as its kind is named in the log.
    pub fn field(&self, field: &str) -> String {
        self.say.text(match field {
            "name" => key("field-name"),
            "pit_kind" => key("field-pit-kind"),
            "grate_cm2" => key("field-grate"),
            "alone_minutes" => key("field-alone"),
            "band" => key("field-band"),
            "serve" => key("field-serve"),
            "people" => key("field-people"),
            "weight_g" => key("field-weight"),
            "cadence" => key("field-cadence"),
            "form" => key("field-form"),
            "pull_at" => key("field-pull-at"),
            "mop_minutes" => key("field-mop-minutes"),
            "spritz_minutes" => key("field-spritz-minutes"),
            "altitude_m" => key("field-altitude"),
            "for_public" => key("field-for-public"),
            "hot_air" => key("field-hot-air"),
            _ => key("field-other"),
        })
    }

    /// What something is called.
    pub fn subject(&self, of: Subject) -> String {
        match of {
            Subject::Crew => self.say.text("screen-the-crew"),
            Subject::Cook(id) => match self.known.cooks.get(&id) {
                Some(cook) => cook.name.value.clone(),
                None => self.say.text("screen-some-cook"),
            },
            Subject::Pit(id) => self.pit(id),
            Subject::Piece(id) => self.piece_name(id),
            Subject::Dish(id) => {
                let dish = self.known.cooks.values().find_map(|c| c.dishes.get(&id));
                dish.map_or_else(
                    || self.say.text("screen-some-dish"),
                    |dish| dish.name.value.clone(),
                )
            }
            Subject::Thermometer(id) => match self.known.crew.thermometers.get(&id) {
                Some(thermometer) => thermometer.name.value.clone(),
                None => self.say.text("screen-some-thermometer"),
            },
        }
    }

    /// Something is claimed for further ahead than clocks of a crew differ.
    fn wrong_clock(&self, cook: &Cook) -> Option<Notice> {
        let ahead = claims(cook).filter(|when| !counts(when.at, self.now));
        let first = ahead.min_by_key(|when| (when.at, when.entry))?;
        let (name, time) = (
            self.device(first.entry.device),
            self.say.clock_day(first.at, self.now),
        );
        let args = [("name", Arg::Text(&name)), ("time", Arg::Text(&time))];
        Some(Notice {
            text: self.say.with("notice-wrong-clock", &args),
            dismiss: None,
        })
    }
}

/// All that has a claimed time in a cook.
fn claims(cook: &Cook) -> impl Iterator<Item = Timed> + '_ {
    let pieces = cook.pieces.values().flat_map(|piece| {
        let stages = piece.stages.iter().map(|passed| passed.when);
        let moves = piece.moves.iter().map(|(when, ..)| *when);
        let rub = piece.rub.iter().map(|(when, _)| *when);
        let wetted = piece.wetted.iter().map(|wetted| wetted.when);
        let tended = piece.turned.iter().chain(&piece.glazed).copied();
        let checks = piece.checks.iter().map(|pass| pass.when);
        let read = piece.read.iter().map(|reading| reading.when);
        stages
            .chain(moves)
            .chain(rub)
            .chain(wetted)
            .chain(tended)
            .chain(checks)
            .chain(read)
    });
    let pits = cook.pits.values().flat_map(|care| {
        let tended = [&care.opened, &care.fed, &care.vents, &care.seen];
        let tended = tended.into_iter().flatten().copied();
        tended.chain(care.read.iter().map(|(when, ..)| *when))
    });
    let answers = cook.answers.iter().map(|answer| answer.when);
    let notes = cook.notes.iter().map(|note| note.when);
    pieces.chain(pits).chain(answers).chain(notes)
}
