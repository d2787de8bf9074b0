//! The fire went out: what to do with each meat over it. Start at [`fire_out_screen`].
//!
//! The sum is [`safety::fire_out`](crate::safety::fire_out); here it is asked for every meat of a pit, from the last sign that
//! the fire burned. Laws: what was not read since is never called well; the rule, its source and what nobody knows stand with
//! each answer; warming again sets no clock back, and the screen says so.

mod facts;
mod fire;
mod records;

pub use records::*;

use super::{Button, Place, Slip, Weight, glance::Glance, probes::spots_of, slip::option};
use crate::{
    alarms,
    cook::{Cook, Known, Piece, ahead::counts},
    ids::{CookId, PitId},
    log::{Caveat, Where},
    moment::{MINUTE, Moment},
    safety::{
        Doing,
        fire_out::FireOutAdvice,
        food_log::{GAP_MS, TempAt},
    },
    words::{Arg, Viewer, key},
};
use facts::{Found, found};
use fire::{Fire, fire};

/// How long ago a fire can be said to have burned for certain, minutes.
const BURNED_MIN: [i64; 12] = [15, 30, 60, 90, 120, 180, 240, 300, 360, 480, 600, 720];

/// What to do with the food of a pit whose fire went out; none where the cook or the pit is not known here.
pub fn fire_out_screen(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    pit: PitId,
    moment: &Moment,
) -> Option<FireOutScreen> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    known.crew.pits.get(&pit)?;
    let dues = alarms::due_in(known, cook.id, moment.utc_ms);
    let name = glance.pit(pit);
    let fire = fire(known, cook, pit, glance.now);
    let meats = glance.over_it(cook, pit, &fire);
    let on = glance.on_it(cook, pit);
    let on = on.filter_map(|piece| piece.on_pit_at(glance.now)).min();
    let on = on.unwrap_or(i64::MAX);
    Some(FireOutScreen {
        cook: cook.id,
        pit,
        title: glance
            .say
            .with("fire-out-title", &[("pit", Arg::Text(&name))]),
        state: glance.pit_line_of(pit),
        lead: glance.fire_out_lead(&fire, on),
        none: match meats.is_empty() {
            true => glance.say.text("fire-out-none"),
            false => String::new(),
        },
        slips: glance.fire_out_slips(cook, pit, fire.sign),
        rule: [
            "fire-out-rule-worst",
            "fire-out-rule-hot",
            "fire-out-rule-reheat",
        ]
        .map(|rule| glance.say.text(rule))
        .into(),
        cautions: glance.cautions(Doing::FireWentOut),
        links: glance.links_to(&[
            (key("link-trouble"), Place::Trouble { cook: cook.id, pit }),
            (key("link-now"), Place::Now { cook: cook.id }),
        ]),
        until: glance.until(&dues),
        meats,
    })
}

impl Glance<'_> {
    fn on_it<'c>(&self, cook: &'c Cook, pit: PitId) -> impl Iterator<Item = &'c Piece> {
        cook.meats().filter(move |piece| {
            piece.is_on_pit(self.now) && piece.pit(self.now).is_some_and(|(at, _)| at == pit)
        })
    }

    fn over_it(&self, cook: &Cook, pit: PitId, fire: &Fire) -> Vec<FireOutMeat> {
        let meats = self.on_it(cook, pit);
        let mut all: Vec<FireOutMeat> = meats
            .filter_map(|piece| {
                let found = found(&self.known, cook, piece, fire, self.minute_end())?;
                Some(self.fire_out_meat(piece, &found))
            })
            .collect();
        all.sort_by(|a, b| (a.weight, &a.name).cmp(&(b.weight, &b.name)));
        all
    }

    /// `on`: since when the first meat is on it.
    fn fire_out_lead(&self, fire: &Fire, on: i64) -> Vec<String> {
        let clock = |at: i64| self.say.clock_day(at, self.now);
        let since = match fire.sign {
            Some(at) => {
                let time = clock(at);
                let said = match self.is_fresh(at) {
                    true => key("fire-out-burns"),
                    false => key("fire-out-since"),
                };
                self.say.with(said, &[("time", Arg::Text(&time))])
            }
            None => self.say.text("fire-out-since-on"),
        };
        let was = fire.outages.last().filter(|out| out.back > on).map(|out| {
            let (from, back) = (clock(out.from), clock(out.back));
            let args = [("from", Arg::Text(&from)), ("back", Arg::Text(&back))];
            self.say.with("fire-out-was", &args)
        });
        let read = self.say.text("fire-out-lead");
        [since].into_iter().chain(was).chain([read]).collect()
    }

    /// Whether a fire that showed itself then may be said to burn.
    fn is_fresh(&self, sign: i64) -> bool {
        self.now.saturating_sub(sign) <= GAP_MS
    }

    fn fire_out_meat(&self, piece: &Piece, found: &Found) -> FireOutMeat {
        let then = self.say.temperature(found.answer.then_to);
        let clock = &found.answer.clock;
        let weight = match found.answer.advice {
            // Nothing but the last minutes is unknown: it is read in passing, not in haste.
            FireOutAdvice::ReadNow { .. } if clock.unknown_ms <= GAP_MS && !clock.is_over => {
                Weight::Soon
            }
            FireOutAdvice::Discard | FireOutAdvice::ReadNow { .. } => Weight::Wake,
            FireOutAdvice::HeatBy { .. } => Weight::Call,
            FireOutAdvice::CarryOn => Weight::Calm,
        };
        FireOutMeat {
            piece: piece.id,
            name: piece.name.value.clone(),
            answer: self.fire_out_answer(found.answer.advice),
            then: match found.answer.advice {
                FireOutAdvice::Discard => String::new(),
                _ => self
                    .say
                    .with("fire-out-then", &[("temp", Arg::Text(&then))]),
            },
            read: self.fire_out_read(piece, found),
            why: self.fire_out_why(found),
            weight,
            buttons: self.fire_out_buttons(piece, found.answer.advice),
        }
    }

    fn fire_out_answer(&self, advice: FireOutAdvice) -> String {
        let by = |at: i64| self.say.clock_day(at, self.now);
        match advice {
            FireOutAdvice::ReadNow { by: at } => {
                let time = by(at);
                self.say
                    .with("fire-out-read-now", &[("time", Arg::Text(&time))])
            }
            FireOutAdvice::HeatBy { above, by: at } => {
                let (temp, time) = (self.say.temperature(above), by(at));
                let args = [("temp", Arg::Text(&temp)), ("time", Arg::Text(&time))];
                self.say.with("fire-out-heat-by", &args)
            }
            FireOutAdvice::CarryOn => self.say.text("fire-out-carry-on"),
            FireOutAdvice::Discard => self.say.text("fire-out-discard"),
        }
    }

    /// Whether somebody goes on past its clock, since the last sign of fire or before.
    fn is_kept(&self, piece: &Piece) -> bool {
        let mut past = piece.went_past.iter();
        past.any(|(when, caveat)| *caveat == Caveat::PastClock && counts(when.at, self.now))
    }

    fn fire_out_read(&self, piece: &Piece, found: &Found) -> Vec<String> {
        let one = |reading: &TempAt, said: &'static str| {
            let (temp, time) = (
                self.say.temperature(reading.temp),
                self.say.clock_day(reading.at, self.now),
            );
            let args = [("temp", Arg::Text(&temp)), ("time", Arg::Text(&time))];
            self.say.with(said, &args)
        };
        let mut all = vec![
            match &found.before {
                Some(before) => one(before, key("fire-out-read-before")),
                None => self.say.text("fire-out-never-read"),
            },
            match &found.since {
                Some(since) => one(since, key("fire-out-read-since")),
                None => self.say.text("fire-out-not-read-since"),
            },
        ];
        all.extend(
            self.is_kept(piece)
                .then(|| self.say.text("caveat-past-clock")),
        );
        all
    }

    fn fire_out_why(&self, found: &Found) -> String {
        let clock = &found.answer.clock;
        let [unknown, spent, limit] =
            [clock.unknown_ms, clock.spent_ms, clock.limit_ms].map(|ms| self.say.duration(ms));
        let source = self.say.text(clock.source.key());
        let args = [
            ("unknown", Arg::Text(&unknown)),
            ("spent", Arg::Text(&spent)),
            ("limit", Arg::Text(&limit)),
            ("source", Arg::Text(&source)),
        ];
        self.say.with("fire-out-why", &args)
    }

    fn fire_out_buttons(&self, piece: &Piece, advice: FireOutAdvice) -> Vec<Button> {
        let mut all = vec![self.throw_away(piece.id)];
        if advice == FireOutAdvice::Discard && !self.is_kept(piece) {
            all.push(self.past_clock(piece.id));
        }
        all
    }

    /// A slip for what is read in each meat now, and one for a fire that was out; that first where the fire burns. None where
    /// nothing is on the pit.
    fn fire_out_slips(&self, cook: &Cook, pit: PitId, sign: Option<i64>) -> Vec<Slip> {
        let places: Vec<_> = self
            .on_it(cook, pit)
            .flat_map(|piece| {
                let spots = spots_of(piece).into_iter().map(super::check::recorded);
                spots.map(move |spot| (piece.id, spot))
            })
            .map(|(piece, spot)| {
                let value = format!("meat:{piece}:{spot}");
                option(value, self.seat(&Where::Piece { piece, spot }))
            })
            .collect();
        if places.is_empty() || !cook.is_open() {
            return vec![];
        }
        let fields = vec![
            self.one_of("place", self.say.text("slip-place"), places),
            self.number_field("temp", self.degrees_label("slip-temp")),
            self.thermometer_field(),
        ];
        let read = self.slip("reading", "fire-out-slip", fields);
        let out = self.found_out_slip(pit);
        match sign.is_some_and(|at| self.is_fresh(at)) {
            true => vec![out, read],
            false => vec![read, out],
        }
    }

    /// How long ago it burned for certain.
    fn found_out_slip(&self, pit: PitId) -> Slip {
        let options = BURNED_MIN.map(|minutes| {
            let ago = self.say.ago(minutes * MINUTE);
            option(format!("{pit} {minutes}"), ago)
        });
        let fields = vec![self.one_of("until", self.say.text("fire-out-until"), options.into())];
        Slip {
            how: self.say.text("fire-out-found-how"),
            ..self.slip("found-out", key("fire-out-found"), fields)
        }
    }
}
