//! Smoke in words, from what was tapped: which wood, how many chunks, what was seen.

use super::{FireGroup, taps::last_of};
use crate::{
    acts::Act,
    checks::{BarkSet, TestResult},
    cook::{Cook, Piece, Pit, ahead::counts},
    fire::{
        FuelUnit, SmokeAdvice, SmokeFrom, SmokeInput, SmokeSeen, SmokeState, SmokeStrength,
        SmokeWood, smoke,
    },
    log::{PitKind, Stage},
    moment::MINUTE,
    screens::{Button, Line, Tone, Weight, buttons::button, glance::Glance},
    words::{Arg, key},
};

/// What is said of the smoke.
pub(super) struct SmokeWords {
    pub lines: Vec<Line>,
    pub advice: Vec<String>,
}

impl Glance<'_> {
    pub(super) fn smoke_of(&self, cook: &Cook, pit: &Pit) -> SmokeWords {
        let wood = last_of(self.care_of(cook, pit), |care| &care.wood, self.now);
        let wood = wood.map(|(_, wood)| wood);
        let input = self.smoke_input(cook, pit, wood);
        let answer = smoke(&input).expect("what is counted here is within its range");
        let mut lines = vec![];
        let said = wood.map(|wood| self.wood_said(cook, pit, Some(wood)));
        lines.extend(said.map(|said| self.smoke_line("fire-smoke-wood", said)));
        let strength = self.say.text(strength(answer.strength));
        lines.extend(wood.map(|_| self.smoke_line("fire-smoke-strength", strength)));
        let how = answer.state.map(|state| {
            let line = self.smoke_line("fire-smoke-now", self.say.text(burns(state)));
            let weight = match state {
                SmokeState::Dirty => Weight::Call,
                _ => Weight::Calm,
            };
            Line { weight, ..line }
        });
        lines.extend(how);
        let unsaid =
            |advice: &&SmokeAdvice| wood.is_some() || **advice != SmokeAdvice::KnownWoodOnly;
        let advice = answer.advice.iter().filter(unsaid);
        let advice = advice.map(|advice| self.say.text(advised(*advice)));
        SmokeWords {
            lines,
            advice: advice.collect(),
        }
    }

    fn smoke_line(&self, name: &'static str, state: String) -> Line {
        Line {
            name: self.say.text(name),
            state,
            detail: String::new(),
            weight: Weight::Calm,
            link: None,
        }
    }

    /// Every number within what the sum takes.
    fn smoke_input(&self, cook: &Cook, pit: &Pit, wood: Option<SmokeWood>) -> SmokeInput {
        let meats: Vec<&Piece> = self
            .on_pit(pit.id)
            .into_iter()
            .map(|(_, piece)| piece)
            .collect();
        let began = meats
            .iter()
            .filter_map(|piece| self.on_since(piece, pit))
            .min();
        let minutes = |from: i64, to: i64| (to.saturating_sub(from) / MINUTE).clamp(0, 2_880);
        let care = self.care_of(cook, pit);
        let fuel = care.into_iter().flat_map(|care| &care.fuel);
        let chunks = fuel.filter(|(when, unit, _)| {
            let counted = counts(when.at, self.now) && began.is_none_or(|began| when.at >= began);
            *unit == FuelUnit::Chunk && counted
        });
        let quarters = chunks
            .map(|(_, _, quarters)| (*quarters).clamp(0, 400))
            .sum::<i64>();
        let fed = care.into_iter().flat_map(|care| &care.fed);
        let fed = fed
            .map(|when| when.at)
            .filter(|at| counts(*at, self.now))
            .max();
        let serve = cook.serve.value.as_ref().map(|serve| serve.at);
        let all =
            |is: &dyn Fn(&Piece) -> bool| !meats.is_empty() && meats.iter().all(|piece| is(piece));
        SmokeInput {
            from: match pit.kind.value {
                PitKind::StickBurner => SmokeFrom::Fire,
                PitKind::Pellet => SmokeFrom::Pellets,
                _ => SmokeFrom::Chunks,
            },
            wood: wood.unwrap_or(SmokeWood::Unknown),
            chunks: (quarters / 4).clamp(0, 200),
            minutes: began.map_or(0, |began| minutes(began, self.this_minute())),
            planned_min: began.zip(serve).map(|(from, to)| minutes(from, to).max(1)),
            fed_min_ago: fed.map(|at| minutes(at, self.this_minute())),
            bark_set: all(&|piece| has_bark(piece)),
            wrapped: all(&|piece| self.is_wrapped_now(piece)),
            mild_meat: meats.iter().any(|piece| piece.cut.is_poultry()),
            tamed: wood.is_some_and(|wood| self.is_tamed(cook, pit, wood)),
            seen: self.smoke_seen_now(cook, pit).map(|(_, seen)| seen),
        }
    }

    /// Said of that wood since it was last said which wood smokes.
    fn is_tamed(&self, cook: &Cook, pit: &Pit, wood: SmokeWood) -> bool {
        let care = self.care_of(cook, pit);
        let said = last_of(care, |care| &care.wood, self.now);
        let tamed = last_of(care, |care| &care.tamed, self.now);
        tamed
            .zip(said)
            .is_some_and(|((tamed, its), (said, _))| its == wood && tamed >= said)
    }

    fn on_since(&self, piece: &Piece, pit: &Pit) -> Option<i64> {
        let on = piece
            .stages
            .iter()
            .filter(|passed| passed.stage == Stage::OnPit { pit: pit.id });
        on.map(|passed| passed.when.at)
            .filter(|at| counts(*at, self.now))
            .min()
    }

    fn wood_said(&self, cook: &Cook, pit: &Pit, wood: Option<SmokeWood>) -> String {
        let Some(wood) = wood else {
            return self.say.text("fire-smoke-unseen");
        };
        let name = self.say.wood(wood);
        match self.is_tamed(cook, pit, wood) {
            true => self.say.with("wood-tamed", &[("wood", Arg::Text(&name))]),
            false => name,
        }
    }

    /// Only strong wood is asked about.
    fn tame_wood(&self, cook: &Cook, pit: &Pit, wood: SmokeWood) -> Option<Button> {
        let asks = wood == SmokeWood::Mesquite && !self.is_tamed(cook, pit, wood);
        let act = Act::TameWood {
            cook: cook.id,
            pit: pit.id,
            wood,
        };
        asks.then(|| button(self.say.text("fire-smoke-tamed"), act, Tone::Plain))
    }

    fn is_wrapped_now(&self, piece: &Piece) -> bool {
        let stage = piece.stage(self.now).map(|passed| passed.stage);
        matches!(stage, Some(Stage::Wrapped { .. }))
    }

    /// What is seen, and which wood: one tap each.
    pub(super) fn smoke_taps(&self, cook: &Cook, pit: &Pit) -> Vec<FireGroup> {
        let (its, at_pit) = (cook.id, pit.id);
        let seen = self.smoke_seen_now(cook, pit);
        let watch = |seen: SmokeSeen| {
            let act = Act::WatchSmoke {
                cook: its,
                pit: at_pit,
                seen,
                at: None,
            };
            button(self.say.smoke_seen(seen), act, Tone::Plain)
        };
        let wood = last_of(self.care_of(cook, pit), |care| &care.wood, self.now);
        let say_wood = |wood: SmokeWood| {
            let act = Act::SayWood {
                cook: its,
                pit: at_pit,
                wood,
            };
            button(self.say.wood(wood), act, Tone::Plain)
        };
        let woods = SmokeWood::ALL.iter().map(|wood| say_wood(*wood));
        let tame = wood.and_then(|(_, wood)| self.tame_wood(cook, pit, wood));
        let open = |buttons: Vec<Button>| if cook.is_open() { buttons } else { vec![] };
        let last =
            seen.map(|(at, seen)| format!("{} · {}", self.say.smoke_seen(seen), self.ago(at)));
        vec![
            FireGroup {
                heading: self.say.text("fire-smoke-look"),
                state: last.unwrap_or_else(|| self.say.text("fire-smoke-unseen")),
                buttons: open(SmokeSeen::ALL.iter().map(|seen| watch(*seen)).collect()),
            },
            FireGroup {
                heading: self.say.text("fire-smoke-which"),
                state: self.wood_said(cook, pit, wood.map(|(_, wood)| wood)),
                buttons: open(tame.into_iter().chain(woods).collect()),
            },
        ]
    }
}

fn has_bark(piece: &Piece) -> bool {
    let results = piece.checks.iter().flat_map(|pass| &pass.results);
    results
        .into_iter()
        .any(|result| *result == TestResult::Bark(BarkSet::Holds))
}

const fn strength(strength: SmokeStrength) -> &'static str {
    match strength {
        SmokeStrength::Light => key("fire-smoke-light"),
        SmokeStrength::Medium => key("fire-smoke-medium"),
        SmokeStrength::Strong => key("fire-smoke-strong"),
    }
}

const fn burns(state: SmokeState) -> &'static str {
    match state {
        SmokeState::Clean => key("fire-smoke-clean"),
        SmokeState::Catching => key("fire-smoke-catching"),
        SmokeState::Dirty => key("fire-smoke-dirty"),
        SmokeState::None => key("fire-smoke-none"),
    }
}

const fn advised(advice: SmokeAdvice) -> &'static str {
    match advice {
        SmokeAdvice::ClearIt => key("smoke-clear-it"),
        SmokeAdvice::LetItCatch => key("smoke-let-it-catch"),
        SmokeAdvice::MesquiteToCoals => key("smoke-mesquite"),
        SmokeAdvice::KnownWoodOnly => key("smoke-known-wood"),
        SmokeAdvice::SmallAndHot => key("smoke-small-hot"),
        SmokeAdvice::NoMoreChunks => key("smoke-no-more-chunks"),
        SmokeAdvice::OneMoreChunk => key("smoke-one-more-chunk"),
        SmokeAdvice::WrappedTakesNone => key("smoke-wrapped"),
        SmokeAdvice::Enough => key("smoke-enough"),
    }
}
