//! What meats ask for: the rub, wettings, the glaze, a check, to come off, to be put away.

use super::{Due, Urgency, unshown, zone};
use crate::{
    cadence::rhythm::Next,
    checks::{DoneState, Verdict, cut_facts, verdict},
    cook::{
        Answered, Cook, Known, Piece,
        ahead::{AHEAD_MAX_MS, counts},
        rhythm_facts::rhythm_facts,
        verdict_input::verdict_input,
    },
    log::{Job, Stage, Where},
    moment::{HOUR, MINUTE},
    safety::minimum,
    units::Mk,
};

/// How long before served food has stood too long it is called: a quarter of an hour. Common practice, no source; the limit
/// itself is in [`zone::put_away_limit`].
const PUT_AWAY_LEAD_MS: i64 = 15 * MINUTE;
/// How long before serving time it is called, and until how long after it. Common practice, no source.
const SERVE_CALL_MS: i64 = 30 * MINUTE;
const SERVE_LATE_MS: i64 = 2 * HOUR;
/// What a meat is taken to weigh where nobody weighed it: grams. Common practice, no source.
const USUAL_G: i64 = 2_000;
/// What a meat may weigh, grams: what another device claims beyond it counts as the nearer end.
const WEIGHS_G: (i64, i64) = (1, 50_000);

/// All that the meats of a cook ask for, and its serving time.
pub(super) fn due(known: &Known<'_>, cook: &Cook, now: i64) -> Vec<Due> {
    let mut all: Vec<Due> = cook
        .meats()
        .flat_map(|piece| of_piece(known, cook, piece, now))
        .collect();
    all.extend(serve(cook, now));
    all
}

fn of_piece(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Vec<Due> {
    let mut all = vec![];
    if piece.is_on_pit(now) {
        let pit = piece.pit(now).map(|(pit, _)| pit);
        all.extend(rhythm(known, cook, piece, now));
        all.extend(check_or_pull(known, cook, piece, now));
        all.iter_mut().for_each(|due| due.pit = pit);
    }
    all.extend(unshown::due(known, cook, piece, now));
    all.extend(zone::due(known, cook, piece, now));
    all.extend(put_away(known, cook, piece, now));
    all
}

fn rhythm(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Option<Due> {
    let call = |job, at| Due::new(cook, job, at, Urgency::Call);
    match rhythm_facts(cook, piece, known.crew, known.device, now).next(now) {
        Next::AskRub { due } => Some(call(Job::RubSet(piece.id), due)),
        Next::Glaze { due } => Some(call(Job::Glaze(piece.id), due)),
        Next::Wet {
            due,
            earliest,
            latest,
            missed,
        } => {
            let from = earliest.min(due);
            Some(Due {
                from,
                latest: Some(latest),
                missed,
                ..call(Job::Wet(piece.id), due)
            })
        }
        Next::Nothing { .. } => None,
    }
}

/// A meat that is ready, or whose probe reached its pull point, is to come off; another is to be tried.
fn check_or_pull(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Vec<Due> {
    let pulled = pull_at(known, cook, piece, now).map(|at| {
        let job = Job::Pull(piece.id);
        Due::new(cook, job, put_off(cook, job, at, at, now), Urgency::Wake)
    });
    let ready = ready_since(known, cook, piece, now);
    let check = ready
        .is_none()
        .then(|| check_at(known, cook, piece, now))
        .flatten();
    let check = check.map(|at| {
        let job = Job::Check(piece.id);
        let since = last_pass(piece, now).or(piece.on_pit_at(now)).unwrap_or(at);
        Due::new(cook, job, put_off(cook, job, at, since, now), Urgency::Call)
    });
    pulled.into_iter().chain(check).collect()
}

/// Since when it is to come off: the check that found it done, or the reading that reached the pull point.
fn pull_at(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Option<i64> {
    let seen = |at: &i64| !answered_since(cook, Job::Pull(piece.id), *at, now);
    let checked = ready_since(known, cook, piece, now);
    let probed = probe_reached(known, cook, piece, now);
    checked.into_iter().chain(probed).filter(seen).min()
}

fn ready_since(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Option<i64> {
    let last = last_pass(piece, now)?;
    let done = |at| judged(known, cook, piece, at).is_some_and(|verdict| verdict.state.says_done());
    (done(last) && done(now)).then_some(last)
}

fn last_pass(piece: &Piece, now: i64) -> Option<i64> {
    piece
        .checks
        .iter()
        .map(|pass| pass.when.at)
        .filter(|at| counts(*at, now))
        .max()
}

pub(super) fn judged(known: &Known<'_>, cook: &Cook, piece: &Piece, at: i64) -> Option<Verdict> {
    verdict(&verdict_input(known, cook, piece, at)).ok()
}

/// When a probe in the meat first showed its pull point, in the stretch that still shows it.
fn probe_reached(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Option<i64> {
    let pull = pull_point(piece);
    let probes = cook
        .probes
        .iter()
        .filter(|(_, probe)| sits_in(&probe.place, piece));
    let reached = probes.filter_map(|((source, sensor), probe)| {
        let tail = known
            .tails
            .of(source, sensor, now)
            .rev()
            .take_while(|(at, _)| *at >= probe.since.at);
        tail.take_while(|(_, temp)| *temp >= pull)
            .last()
            .map(|(at, _)| at)
    });
    reached.min()
}

/// The temperature inside at which a meat is to come off: as set for it, or its cut's own. Never below its published
/// minimum, which another phone may have raised meanwhile by saying what was done to the meat.
pub fn pull_point(piece: &Piece) -> Mk {
    piece
        .pull_at
        .value
        .unwrap_or(cut_facts(piece.cut).done_range.low)
        .max(minimum(piece.cut, piece.form.value).temp)
}

fn sits_in(place: &Where, piece: &Piece) -> bool {
    matches!(place, Where::Piece { piece: id, .. } if *id == piece.id)
}

/// When to try it next: the cut's first time after it went on, then as the last pass says.
fn check_at(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Option<i64> {
    let on = piece.on_pit_at(now)?;
    let facts = cut_facts(piece.cut);
    let skipped = last_answer(cook, Job::Check(piece.id), now, |how| {
        !matches!(how, Answered::Later(_))
    });
    let again = facts.check_again;
    let grams = piece.weight_g.value.unwrap_or(USUAL_G);
    let grams = grams.clamp(WEIGHS_G.0, WEIGHS_G.1);
    let first = on + facts.first_check_minutes(grams) * MINUTE;
    let base = match last_pass(piece, now) {
        Some(last) => match judged(known, cook, piece, last) {
            // A pass that tells nothing of the inside, such as of the bark alone, moves nothing forward.
            Some(verdict) if verdict.state == DoneState::CannotSay => {
                first.max(last + again.near_minutes * MINUTE)
            }
            verdict => {
                let next = verdict.and_then(|verdict| verdict.next_check_minutes);
                last + next.unwrap_or(again.far_minutes) * MINUTE
            }
        },
        None => first,
    };
    Some(skipped.map_or(base, |at| {
        base.max(at + facts.check_again.far_minutes * MINUTE)
    }))
}

/// Whether it was served, and nobody said that it is away or that none is left.
pub fn is_to_put_away(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> bool {
    put_away(known, cook, piece, now).is_some()
}

fn put_away(known: &Known<'_>, cook: &Cook, piece: &Piece, now: i64) -> Option<Due> {
    let served = piece
        .stage(now)
        .filter(|passed| passed.stage == Stage::Served)?
        .when
        .at;
    let job = Job::PutAway(piece.id);
    let open = !answered_since(cook, job, served, now);
    let limit = zone::put_away_limit(known, cook, piece, served, now);
    let at = served.saturating_add((limit - PUT_AWAY_LEAD_MS).max(0));
    open.then(|| {
        Due::new(
            cook,
            job,
            put_off(cook, job, at, served, now),
            Urgency::Wake,
        )
    })
}

fn serve(cook: &Cook, now: i64) -> Option<Due> {
    let serve = cook.serve.value.as_ref()?.at;
    let job = Job::Serve(cook.id);
    let at = serve.saturating_sub(SERVE_CALL_MS);
    // What was answered before this call's time was another serving time's call.
    let since = at.saturating_sub(AHEAD_MAX_MS);
    let open = now < serve.saturating_add(SERVE_LATE_MS) && !answered_since(cook, job, since, now);
    open.then(|| Due::new(cook, job, put_off(cook, job, at, since, now), Urgency::Call))
}

/// `at`, or later where the cook said so since `since`: what was said before the job was last done, or before what it
/// is about began anew, was said of another time.
pub(super) fn put_off(cook: &Cook, job: Job, at: i64, since: i64, now: i64) -> i64 {
    let later = cook
        .answers
        .iter()
        .filter(|a| a.job == job && a.when.at >= since && counts(a.when.at, now));
    later
        .filter_map(|a| match a.how {
            Answered::Later(minutes) => Some(a.when.at + minutes.clamp(0, 24 * 60) * MINUTE),
            _ => None,
        })
        .fold(at, i64::max)
}

/// Whether the job was seen or skipped since `since`.
pub(super) fn answered_since(cook: &Cook, job: Job, since: i64, now: i64) -> bool {
    last_answer(cook, job, now, |how| !matches!(how, Answered::Later(_)))
        .is_some_and(|at| at >= since)
}

/// When the job was last answered in such a way.
pub(super) fn last_answer(
    cook: &Cook,
    job: Job,
    now: i64,
    such: impl Fn(Answered) -> bool,
) -> Option<i64> {
    let answers = cook
        .answers
        .iter()
        .filter(|a| a.job == job && such(a.how) && counts(a.when.at, now));
    answers.map(|a| a.when.at).max()
}
