//! What can be done about the one next thing: buttons, where more is done, and the cautions of it.

use super::{
    Button, Caution, Link, Place, Tone,
    buttons::{Opening, button},
    glance::Glance,
    headline::opened_for,
};
use crate::{
    acts::Act,
    alarms::Due,
    ids::PieceId,
    log::{Job, Stage},
    moment::{HOUR, MINUTE},
    safety::Doing,
    words::{Arg, key},
};

/// What is due within so long at a pit is done in one opening with what is due now, in milliseconds: 15 min. Common
/// practice, no source.
const SOON_MS: i64 = 15 * MINUTE;
/// So long before its serving time a cook can be said to be on the table, in milliseconds: 2 h. Common practice, no
/// source.
const ON_TABLE_MS: i64 = 2 * HOUR;

impl Glance<'_> {
    /// Whether it has set: of one meat, or of each of several and of all of them.
    fn rub_buttons(&self, first: PieceId, together: &[&Due]) -> Vec<Button> {
        let pieces: Vec<PieceId> = together.iter().filter_map(|due| due.job.piece()).collect();
        let answer = |piece, set| Act::AnswerRub {
            piece,
            set,
            at: None,
        };
        let mut all = match pieces.len() {
            0 | 1 => vec![
                self.main("button-rub-yes", answer(first, true)),
                self.main("button-rub-not-yet", answer(first, false)),
            ],
            _ => {
                let act = Act::AnswerRubs {
                    pieces: pieces.clone(),
                    set: true,
                    at: None,
                };
                let mut all = vec![self.main("button-rub-all", act)];
                for piece in pieces {
                    all.push(self.of_one(piece, "button-rub-yes", answer(piece, true)));
                    all.push(self.of_one(piece, "button-rub-not-yet", answer(piece, false)));
                }
                all
            }
        };
        all.push(self.later(together));
        all
    }

    fn of_one(&self, piece: PieceId, does: &'static str, act: Act) -> Button {
        let (name, does) = (self.piece_name(piece), self.say.text(does));
        let args = [("name", Arg::Text(&name)), ("does", Arg::Text(&does))];
        button(self.say.with("button-named", &args), act, Tone::Plain)
    }

    pub fn buttons_of(&self, due: &Due, together: &[&Due]) -> Vec<Button> {
        let cook = due.cook;
        match due.job {
            Job::RubSet(piece) => self.rub_buttons(piece, together),
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
            Job::Check(piece) if self.is_read_or_back(due.job) => self
                .back_on(piece)
                .into_iter()
                .chain([self.later(&[due])])
                .collect(),
            Job::Check(_) => vec![self.later(&[due]), self.skip(&[due])],
            Job::Pull(piece) => vec![
                self.stage_button(
                    piece,
                    Stage::Off,
                    match self.is_done(piece) {
                        true => Tone::Main,
                        false => Tone::Plain,
                    },
                ),
                self.later(&[due]),
                self.answer_for_good("button-leave-on", key("confirm-leave-on"), due),
            ],
            Job::PutAway(piece) => vec![
                self.stage_button(piece, Stage::PutAway, Tone::Main),
                self.answer_for_good("button-none-left", key("confirm-none-left"), due),
                self.later(&[due]),
            ],
            Job::ComeUp(piece) | Job::KeepHot(piece) => {
                vec![
                    self.later(&[due]),
                    self.past_clock(piece),
                    self.throw_away(piece),
                ]
            }
            Job::Serve(_) if self.ahead(self.time_of(due)) > ON_TABLE_MS => vec![],
            Job::Serve(_) => vec![
                self.answer("button-on-table", due, Tone::Main),
                self.later(&[due]),
            ],
            Job::FireRound(pit) if self.is_feed(due, pit) => {
                let mut all = self.feed_taps(cook, pit);
                all.push(self.later(&[due]));
                all
            }
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

    /// Back on the pit it came from.
    fn back_on(&self, piece: PieceId) -> Option<Button> {
        let (_, its) = self.known.piece(piece)?;
        let (pit, _) = its.pit(self.now)?;
        let (stage, tone) = (Stage::OnPit { pit }, Tone::Main);
        let cool = self.on_too_cool(its, stage, tone);
        Some(cool.unwrap_or_else(|| self.stage_button(piece, stage, tone)))
    }

    /// Where more is done about the first of what is due: its whole opening, where more is done at that pit than its
    /// buttons say.
    pub fn link(&self, first: &Due, together: &[&Due], dues: &[Due]) -> Option<Link> {
        let Due { cook, job, pit, .. } = *first;
        let more = |due: &&Due| {
            let soon = self.ahead(due.at) <= SOON_MS && due.job.piece().is_some();
            soon && due.pit.is_some() && due.pit == pit && !together.contains(due)
        };
        if let (Some(pit), Some(_), Some(_)) = (pit, job.piece(), dues.iter().find(more)) {
            return Some(self.opening_link(cook, pit));
        }
        let (label, place) = match job {
            Job::Outside(pit) | Job::Silent(pit) => ("link-trouble", Place::Trouble { cook, pit }),
            Job::FireRound(pit) => ("link-fire", Place::Fire { cook, pit }),
            Job::Check(piece) | Job::Pull(piece) | Job::ComeUp(piece) | Job::KeepHot(piece) => {
                ("link-check", Place::Check { piece })
            }
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
            Job::Pull(_) | Job::PutAway(_) | Job::Serve(_) | Job::KeepHot(_) => Doing::Serving,
            Job::ComeUp(_) => Doing::PitRunsCold,
            Job::FireRound(pit) | Job::Outside(pit) if self.burns_charcoal(pit) => {
                Doing::LightingCharcoal
            }
            _ => return vec![],
        };
        self.cautions(doing)
    }
}
