//! What the rhythm of one meat is counted from, read off the log's state. Start at [`rhythm_facts`].

use super::{Answer, Answered, Cook, Crew, Piece, ahead::counts};
use crate::{
    cadence::{
        Cadence,
        cluster::{Wetting, clusters},
        rhythm::{Facts, Later, RubAnswer, Span},
    },
    checks::cut_facts,
    ids::DeviceId,
    log::Job,
    moment::MINUTE,
};

/// How long before it comes off a meat is glazed, minutes: long enough to set, too short to burn. Common practice, no
/// source.
pub const GLAZE_BEFORE_OFF_MIN: i64 = 30;

/// The facts of `piece` as seen on `device` at `now`: wettings of several phones made one, what was skipped or put off,
/// and the sleep of whoever holds `device`. What is claimed from the future counts nowhere.
pub fn rhythm_facts(cook: &Cook, piece: &Piece, crew: &Crew, device: DeviceId, now: i64) -> Facts {
    let answers = || cook.answers.iter().filter(|a| counts(a.when.at, now));
    Facts {
        cadence: piece.cadence.value,
        on_pit_at: piece.on_pit_at(now),
        rub_answers: rub_answers(piece, answers(), now),
        wrapped_at: piece.wrapped(now).map(|(at, _)| at),
        off_at: piece.resting_since(now),
        glaze_from: glaze_from(cook, piece).filter(|_| {
            !answers().any(|a| a.job == Job::Glaze(piece.id) && a.how == Answered::Skipped)
        }),
        glazed_at: last(piece.glazed.iter().map(|when| when.at), now),
        wet_at: wet_at(piece, now),
        skipped_at: answers()
            .filter(|a| a.job == Job::Wet(piece.id) && !matches!(a.how, Answered::Later(_)))
            .map(|a| a.when.at)
            .collect(),
        later: answers().filter_map(|a| later(piece, a)).collect(),
        asleep: asleep(crew, device, now),
    }
}

fn last(instants: impl Iterator<Item = i64>, now: i64) -> Option<i64> {
    instants.filter(|at| counts(*at, now)).max()
}

/// A question that was skipped is one not answered yet: it is asked again.
fn rub_answers<'a>(
    piece: &Piece,
    answers: impl Iterator<Item = &'a Answer>,
    now: i64,
) -> Vec<RubAnswer> {
    let said = piece.rub.iter().filter(|(when, _)| counts(when.at, now));
    let skipped = answers
        .filter(|a| a.job == Job::RubSet(piece.id) && a.how == Answered::Skipped)
        .map(|a| a.when.at);
    said.map(|(when, set)| RubAnswer {
        at: when.at,
        set: *set,
    })
    .chain(skipped.map(|at| RubAnswer { at, set: false }))
    .collect()
}

fn wet_at(piece: &Piece, now: i64) -> Vec<i64> {
    let wettings: Vec<Wetting> = piece
        .wetted
        .iter()
        .enumerate()
        .filter(|(_, wetted)| counts(wetted.when.at, now))
        .map(|(i, wetted)| Wetting {
            at: wetted.when.at,
            device: wetted.device,
            entry: i as u64,
        })
        .collect();
    clusters(&wettings, piece.cadence.value)
        .into_iter()
        .map(|cluster| cluster.at)
        .collect()
}

fn later(piece: &Piece, answer: &Answer) -> Option<Later> {
    let ours = [
        Job::RubSet(piece.id),
        Job::Wet(piece.id),
        Job::Glaze(piece.id),
    ]
    .contains(&answer.job);
    match answer.how {
        Answered::Later(minutes) if ours => Some(Later {
            at: answer.when.at,
            minutes,
        }),
        _ => None,
    }
}

/// Ribs that are kept wet are glazed, so that the glaze has set when they come off in time to rest and be on the table.
/// Common practice, no source.
fn glaze_from(cook: &Cook, piece: &Piece) -> Option<i64> {
    let glazed = piece.cut.is_pork_ribs() && piece.cadence.value != Cadence::None;
    let serve = cook.serve.value.as_ref().filter(|_| glazed)?;
    let ahead = cut_facts(piece.cut).rest.most + GLAZE_BEFORE_OFF_MIN;
    Some(serve.at.saturating_sub(ahead * MINUTE))
}

fn asleep(crew: &Crew, device: DeviceId, now: i64) -> Vec<Span> {
    let person = crew.people.get(&device);
    person
        .into_iter()
        .flat_map(|person| person.sleeps())
        .filter(|(from, _)| counts(*from, now))
        .map(|(from, to)| Span { from, to })
        .collect()
}

#[cfg(test)]
mod tests;
