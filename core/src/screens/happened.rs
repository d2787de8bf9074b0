//! What an entry says, in one sentence.

use super::{glance::Glance, kinds::kind_name, zone::caveat_key};
use crate::{
    ids::PieceId,
    log::{Bath, Opened, Payload, Where},
    moment::MINUTE,
    words::{Arg, Words},
};
use std::collections::BTreeMap;

/// What things of a cook are or were called, taken-back ones among them.
pub(super) type Names = BTreeMap<PieceId, String>;

impl Glance<'_> {
    /// One sentence for a kind that this version knows.
    pub fn sentence(&self, names: &Names, payload: &Payload) -> String {
        let name = |id: &PieceId| {
            names
                .get(id)
                .cloned()
                .unwrap_or_else(|| self.piece_name(*id))
        };
        let about = |what: &str| self.about_what(payload, what);
        match payload {
            Payload::DeviceNamed(fact) => about(&fact.name),
            Payload::PitAdded(fact) => about(&fact.name),
            Payload::ThermometerAdded(fact) => about(&fact.name),
            Payload::ThermometerChecked(fact) => {
                let bath = match fact.against {
                    Bath::Ice => self.say.text("bath-ice"),
                    Bath::Boiling { .. } => self.say.text("bath-boiling"),
                };
                let read = self.say.temperature_fine(fact.read);
                about(&format!("{bath} {read}"))
            }
            Payload::FieldSet(fact) => {
                let field = serde_json::to_value(&fact.to).unwrap_or_default();
                let field = self.field(field["field"].as_str().unwrap_or_default());
                let of = match fact.of {
                    crate::log::Subject::Piece(piece) => name(&piece),
                    of => self.subject(of),
                };
                about(&format!("{of} · {field}"))
            }
            Payload::Slept(fact) => about(&self.say.clock_day(fact.until, self.now)),
            Payload::WatchTaken(fact) => about(&fact.note),
            Payload::CookStarted(fact) => about(&fact.name),
            Payload::PieceAdded(fact) => about(&fact.name),
            Payload::PieceMeant(fact) => {
                let meant = self.meant(&fact.meant).into_iter();
                let meant: Vec<String> = meant.map(|line| line.state).collect();
                about(&format!("{} · {}", name(&fact.piece), meant.join(" · ")))
            }
            Payload::PieceSplit(fact) => {
                let parts: Vec<&str> = fact.into.iter().map(|part| part.name.as_str()).collect();
                about(&format!(
                    "{} → {}",
                    name(&fact.piece),
                    self.say.list(&parts)
                ))
            }
            Payload::PiecesJoined(fact) => {
                let parts: Vec<String> = fact.pieces.iter().map(name).collect();
                about(&format!("{} → {}", self.say.list(&parts), fact.into.name))
            }
            Payload::StageSet(fact) => {
                let stage = self.stage(Some(fact.stage));
                about(&format!("{} · {stage}", name(&fact.piece)))
            }
            Payload::PieceMoved(fact) => {
                let to = [self.pit(fact.pit), fact.spot.clone()];
                about(&format!("{} · {}", name(&fact.piece), to.join(" ").trim()))
            }
            Payload::RubAnswered(fact) => {
                let answer = match fact.set {
                    true => self.say.text("rub-has-set"),
                    false => self.say.text("rub-not-yet"),
                };
                about(&format!("{} · {answer}", name(&fact.piece)))
            }
            Payload::Opened(fact) => about(&self.opened(fact, &name)),
            Payload::Checked(fact) => {
                let found: Vec<String> = fact.results.iter().map(|r| self.result(r)).collect();
                about(&format!("{} · {}", name(&fact.piece), found.join(" · ")))
            }
            Payload::Read(fact) => {
                let place = self.place(&fact.place, &name);
                about(&format!("{place} · {}", self.say.temperature(fact.temp)))
            }
            Payload::ProbeBound(fact) => {
                let place = self.place(&fact.place, &name);
                about(&format!("{} {} · {place}", fact.source, fact.sensor))
            }
            Payload::SeriesSaved(fact) => about(&format!("{} {}", fact.source, fact.sensor)),
            Payload::Fed(fact) => about(&self.at_pit_what(fact.pit, &fact.what)),
            Payload::VentChanged(fact) => about(&self.at_pit_what(fact.pit, &fact.how)),
            Payload::FireSeen(fact) => about(&self.pit(fact.pit)),
            Payload::FedUnits(_)
            | Payload::VentSet(_)
            | Payload::FireTended(_)
            | Payload::WeatherSaid(_)
            | Payload::WoodSaid(_)
            | Payload::WoodTamed(_)
            | Payload::FireFoundOut(_)
            | Payload::SmokeWatched(_)
            | Payload::FeedPlanned(_)
            | Payload::UnitWeighed(_) => about(&self.at_fire(payload)),
            Payload::Skipped(fact) => about(&self.job(fact.job)),
            Payload::PutOff(fact) => {
                let minutes = self.say.duration(fact.minutes.saturating_mul(MINUTE));
                about(&format!("{} · {minutes}", self.job(fact.job)))
            }
            Payload::Answered(fact) => about(&self.job(fact.job)),
            Payload::WentPast(fact) => {
                let caveat = self.say.text(caveat_key(fact.caveat));
                about(&format!("{} · {caveat}", name(&fact.piece)))
            }
            Payload::Noted(fact) => about(&format!("“{}”", fact.text)),
            Payload::PlanAccepted(fact) => about(&self.say.clock_day(fact.plan.serve.at, self.now)),
            Payload::CoursesPlanned(fact) => {
                let told = fact.courses.iter().map(|course| {
                    format!(
                        "{} {}",
                        course.name,
                        self.say.clock_day(course.serve.at, self.now)
                    )
                });
                about(&told.collect::<Vec<_>>().join(" · "))
            }
            Payload::DishAdded(fact) => about(&fact.name),
            Payload::BatchPlanned(fact) => about(&self.batch_name(fact.batch.kind())),
            Payload::TrimmingsKept(fact) => {
                let of = fact.piece.as_ref().map(&name);
                let weight = self.say.weight(fact.g);
                let all = [of.unwrap_or_default(), weight, fact.what.clone()];
                let all: Vec<String> = all.into_iter().filter(|one| !one.is_empty()).collect();
                about(&all.join(" · "))
            }
            Payload::SaltWeighed(fact) => {
                let grams = fact.cup_g.map(|g| self.say.grams(g * 1000));
                about(&grams.unwrap_or_default())
            }
            Payload::DishReady(fact) => {
                let dish = self.subject(crate::log::Subject::Dish(fact.dish));
                let ready = match fact.ready {
                    true => self.say.text("dish-is-ready"),
                    false => self.say.text("dish-not-ready"),
                };
                about(&format!("{dish} · {ready}"))
            }
            _ => about(""),
        }
    }

    /// "Mopped: Slab 1"; without a what, the kind alone.
    fn about_what(&self, payload: &Payload, what: &str) -> String {
        kind_and(&self.say, payload.kind(), what)
    }

    fn opened(&self, opened: &Opened, name: &impl Fn(&PieceId) -> String) -> String {
        let mut parts: Vec<String> = opened.pit.map(|pit| self.pit(pit)).into_iter().collect();
        for (done, key) in [
            (&opened.wetted, "opened-wetted"),
            (&opened.turned, "opened-turned"),
            (&opened.glazed, "opened-glazed"),
        ] {
            let names: Vec<String> = done.iter().map(name).collect();
            if !names.is_empty() {
                let names = self.say.list(&names);
                parts.push(self.say.with(key, &[("names", Arg::Text(&names))]));
            }
        }
        parts.join(" · ")
    }

    fn place(&self, place: &Where, name: &impl Fn(&PieceId) -> String) -> String {
        match place {
            Where::Pit { pit } => self.pit(*pit),
            Where::Piece { piece, spot } => {
                let spot = crate::cook::verdict_input::spot_word(spot)
                    .map_or_else(|| spot.clone(), |known| self.say.text(known.key()));
                match spot.as_str() {
                    "" => name(piece),
                    spot => format!("{}, {spot}", name(piece)),
                }
            }
        }
    }

    pub(super) fn at_pit_what(&self, pit: crate::ids::PitId, what: &str) -> String {
        match what {
            "" => self.pit(pit),
            what => format!("{} · {what}", self.pit(pit)),
        }
    }

    fn job(&self, job: crate::log::Job) -> String {
        let (verb, what) = (self.verb(job), self.object(job));
        self.line_job(&verb, &what)
    }
}

/// The kind of an entry with what it is about.
pub(super) fn kind_and(say: &Words<'_>, kind: &str, what: &str) -> String {
    let kind = say.text(kind_name(kind));
    match what {
        "" => kind,
        what => {
            let args = [("kind", Arg::Text(&kind)), ("what", Arg::Text(what))];
            say.with("line-happened", &args)
        }
    }
}
