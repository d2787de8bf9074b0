//! What can be done about the one next thing: buttons, where more is done, and the cautions of it.

use super::{
    Button, Caution, Link, Place, Tone, buttons::Opening, glance::Glance, headline::opened_for,
};
use crate::{
    acts::Act,
    alarms::Due,
    log::{Job, Stage},
    safety::Doing,
};

impl Glance<'_> {
    pub fn buttons_of(&self, due: &Due, together: &[&Due]) -> Vec<Button> {
        let cook = due.cook;
        match due.job {
            Job::RubSet(piece) => {
                let answer = |set| Act::AnswerRub {
                    piece,
                    set,
                    at: None,
                };
                vec![
                    self.main("button-rub-yes", answer(true)),
                    self.main("button-rub-not-yet", answer(false)),
                    self.later(&[due]),
                ]
            }
            Job::Wet(_) | Job::Glaze(_) => {
                let of = |wet: bool| {
                    let jobs = together.iter().map(|due| due.job);
                    jobs.filter(move |job| matches!(job, Job::Wet(_)) == wet)
                        .filter_map(opened_for)
                        .collect()
                };
                let opening = Opening {
                    pit: due.pit,
                    wetted: of(true),
                    glazed: of(false),
                };
                self.opening_buttons(&opening, together)
            }
            Job::Check(_) => vec![self.later(&[due]), self.skip(&[due])],
            Job::Pull(piece) => vec![
                self.stage_button(piece, Stage::Off, Tone::Main),
                self.later(&[due]),
                self.answer("button-leave-on", due, Tone::Plain),
            ],
            Job::PutAway(piece) => vec![
                self.stage_button(piece, Stage::PutAway, Tone::Main),
                self.answer("button-none-left", due, Tone::Plain),
                self.later(&[due]),
            ],
            Job::Serve(_) => vec![
                self.answer("button-on-table", due, Tone::Main),
                self.later(&[due]),
            ],
            Job::FireRound(pit) => vec![
                self.main(
                    "button-fire-seen",
                    Act::SeeFire {
                        cook,
                        pit,
                        at: None,
                    },
                ),
                self.plain("button-fed", self.feed(cook, pit)),
                self.plain("button-vent", self.vent(cook, pit)),
                self.later(&[due]),
            ],
            Job::Outside(pit) => vec![
                self.main("button-fed", self.feed(cook, pit)),
                self.main("button-vent", self.vent(cook, pit)),
                self.answer("button-seen", due, Tone::Plain),
            ],
            Job::Silent(_) => vec![self.answer("button-seen", due, Tone::Main)],
            Job::WakeUp(_) => vec![self.main("button-up", Act::WakeUp)],
        }
    }

    pub fn link(&self, job: Job) -> Option<Link> {
        let (label, place) = match job {
            Job::Check(piece) | Job::Pull(piece) => ("link-check", Place::Check { piece }),
            Job::RubSet(piece) | Job::Wet(piece) | Job::Glaze(piece) | Job::PutAway(piece) => {
                ("link-meat", Place::Piece { piece })
            }
            _ => return None,
        };
        Some(Link {
            label: self.say.text(label),
            place,
        })
    }

    pub fn cautions_of(&self, job: Job) -> Vec<Caution> {
        let poultry = |piece| {
            self.known
                .piece(piece)
                .is_some_and(|(_, piece)| piece.cut.is_poultry())
        };
        let doing = match job {
            Job::Wet(piece) | Job::Glaze(piece) if poultry(piece) => Doing::MoppingPoultry,
            Job::Wet(_) | Job::Glaze(_) => Doing::MoppingMeat,
            Job::Check(piece) | Job::Pull(piece) if poultry(piece) => Doing::CheckingPoultry,
            Job::Check(_) => Doing::CheckingMeat,
            Job::Pull(_) | Job::PutAway(_) | Job::Serve(_) => Doing::Serving,
            Job::FireRound(pit) | Job::Outside(pit) if self.burns_charcoal(pit) => {
                Doing::LightingCharcoal
            }
            _ => return vec![],
        };
        self.cautions(doing)
    }
}
