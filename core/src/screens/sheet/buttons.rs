//! What can be done about a job of the sheet, and what to heed in it.

use crate::{
    acts::Act,
    alarms::Due,
    ids::{CookId, PieceId, PitId},
    log::{Does, OnSheet, Stage, Subject, Wrap},
    safety::Doing,
    screens::{Button, Tone, buttons::button, glance::Glance},
    words::key,
};

impl Glance<'_> {
    /// The act that does it, where one does; else that it is done. Then later, and not this time.
    pub fn sheet_buttons(&self, due: &Due, job: OnSheet) -> Vec<Button> {
        let mut all = match job.on {
            Subject::Piece(piece) => self.stage_for(job, piece),
            Subject::Pit(pit) => self.fire_for(due.cook, job, pit),
            Subject::Dish(dish) if job.does == Does::Serve => {
                let act = Act::ReadyDish {
                    cook: due.cook,
                    dish,
                    ready: true,
                };
                vec![self.main("button-dish-ready", act)]
            }
            _ => vec![],
        };
        // A meat that comes off was tried: that is said on its own page.
        if job.does != Does::TakeOff {
            let tone = if all.is_empty() {
                Tone::Main
            } else {
                Tone::Plain
            };
            all.push(self.answer("button-sheet-done", due, tone));
        }
        all.push(self.later(&[due]));
        all.push(self.skip(&[due]));
        all
    }

    fn stage_for(&self, job: OnSheet, piece: PieceId) -> Vec<Button> {
        let planned = self.on_sheet(job);
        let stage = match job.does {
            Does::Trim => Stage::Trimmed,
            Does::Brine => Stage::Brined,
            Does::Rub => Stage::Rubbed,
            Does::RestCold => Stage::Resting,
            Does::PutOn => match planned.and_then(|planned| planned.pit) {
                Some(pit) => Stage::OnPit { pit },
                None => return vec![],
            },
            Does::Wrap => Stage::Wrapped {
                wrap: planned
                    .and_then(|planned| planned.wrap)
                    .unwrap_or(Wrap::Paper),
            },
            Does::TakeOff => Stage::Off,
            Does::Hold => Stage::Held,
            Does::Reheat => Stage::Reheated,
            Does::Cut => Stage::CutUp,
            Does::Serve => Stage::Served,
            _ => return vec![],
        };
        let tone = match job.does == Does::TakeOff && !self.is_done(piece) {
            true => Tone::Plain,
            false => Tone::Main,
        };
        vec![self.stage_button(piece, stage, tone)]
    }

    fn fire_for(&self, cook: CookId, job: OnSheet, pit: PitId) -> Vec<Button> {
        let seen = Act::SeeFire {
            cook,
            pit,
            at: None,
        };
        match job.does {
            Does::Light | Does::Feed => vec![self.main("button-fed", self.feed(cook, pit))],
            Does::LetOut => vec![],
            Does::Step => vec![button(
                self.say.text(key("button-vent")),
                self.vent(cook, pit),
                Tone::Main,
            )],
            _ => vec![self.main("button-fire-seen", seen)],
        }
    }

    /// What the cautions of a job are about.
    pub fn sheet_doing(&self, job: OnSheet) -> Option<Doing> {
        match (job.does, job.on) {
            (Does::Thaw | Does::Trim | Does::Brine | Does::Rub | Does::RestCold, _) => {
                Some(Doing::Preparing)
            }
            (Does::Light | Does::Preheat | Does::Feed, Subject::Pit(pit))
                if self.burns_charcoal(pit) =>
            {
                Some(Doing::LightingCharcoal)
            }
            (Does::LetOut, Subject::Pit(pit)) if self.burns_charcoal(pit) => {
                Some(Doing::PuttingPitAway)
            }
            (Does::TakeOff, Subject::Piece(piece)) if self.is_poultry(piece) => {
                Some(Doing::CheckingPoultry)
            }
            (
                Does::TakeOff
                | Does::Vent
                | Does::Rest
                | Does::Hold
                | Does::ProbeHold
                | Does::Cut
                | Does::Serve,
                _,
            ) => Some(Doing::Serving),
            (Does::Dish | Does::Reheat, _) => Some(Doing::HoldingDishes),
            _ => None,
        }
    }
}
