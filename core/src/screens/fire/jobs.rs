//! The jobs from lighting to shutdown, with what is next, each with its cautions.

use super::{FireStep, taps::last_of};
use crate::{
    acts::Act,
    cook::{Cook, Pit, ahead::counts},
    fire::{FireDid, FireJob, FireJobState, FireStands, fire_jobs},
    log::{PitKind, Stage},
    moment::MINUTE,
    safety::Doing,
    screens::{Button, Caution, Tone, buttons::button, glance::Glance},
    words::{Arg, key},
};

impl Glance<'_> {
    pub(super) fn fire_steps(&self, cook: &Cook, pit: &Pit) -> Vec<FireStep> {
        let stands = self.fire_stands(cook, pit);
        let jobs = fire_jobs(pit.kind.value, &stands).into_iter();
        jobs.map(|(job, state)| FireStep {
            name: self.fire_job(job, pit.kind.value),
            state: self.fire_job_state(job, state, &stands),
            is_next: state == FireJobState::Next,
            how: self.fire_job_how(job, pit.kind.value),
            buttons: self.fire_job_buttons(cook, pit, job, state),
            cautions: self.fire_job_cautions(job, pit),
        })
        .collect()
    }

    /// How the fire stands since it was last shut down.
    fn fire_stands(&self, cook: &Cook, pit: &Pit) -> FireStands {
        let care = self.care_of(cook, pit);
        let did = |did: FireDid| {
            let all = care.into_iter().flat_map(|care| &care.did);
            let all = all.filter(move |(when, its)| *its == did && counts(when.at, self.now));
            all.map(|(when, _)| when.at).max()
        };
        let shut = did(FireDid::ShutDown);
        let since = |at: Option<i64>| at.filter(|at| shut.is_none_or(|shut| *at > shut));
        let minutes = |at: Option<i64>| since(at).map(|at| self.ahead(at).min(0).abs() / MINUTE);
        let signs = self.signs_of_fire(cook, pit);
        let burns = signs
            .into_iter()
            .filter(|at| since(Some(*at)).is_some())
            .min();
        let has_meat = !self.on_pit(pit.id).is_empty();
        let was_on = cook.pieces.values().flat_map(|piece| &piece.stages);
        let was_on = was_on
            .into_iter()
            .any(|passed| passed.stage == Stage::OnPit { pit: pit.id });
        FireStands {
            lit: minutes(did(FireDid::Lit)),
            ready: minutes(did(FireDid::CoalsReady)),
            fed: minutes(self.last_feed(cook, pit).map(|(at, _)| at)),
            water: minutes(did(FireDid::Water)),
            ash: minutes(did(FireDid::Ash)),
            grease: minutes(did(FireDid::Grease)),
            burns: minutes(burns),
            has_meat,
            had_meat: was_on && !has_meat,
            is_shut: shut.is_some() && burns.is_none(),
        }
    }

    /// When something was done that shows a fire.
    fn signs_of_fire(&self, cook: &Cook, pit: &Pit) -> Vec<i64> {
        let on = cook.pieces.values().flat_map(|piece| &piece.stages);
        let on = on.filter(|passed| passed.stage == Stage::OnPit { pit: pit.id });
        let on = on.map(|passed| passed.when.at);
        let care = self.care_of(cook, pit);
        let done = care.into_iter().flat_map(|care| {
            let times = [&care.fed, &care.opened].into_iter().flatten();
            let read = care.read.iter().map(|(when, ..)| when.at);
            let did = care.did.iter().filter(|(_, did)| *did != FireDid::ShutDown);
            let did = did.map(|(when, _)| when.at);
            times.map(|when| when.at).chain(read).chain(did)
        });
        on.chain(done).filter(|at| counts(*at, self.now)).collect()
    }

    fn fire_job(&self, job: FireJob, kind: PitKind) -> String {
        self.say.text(match job {
            FireJob::Light if is_plugged(kind) => key("fire-job-switch-on"),
            FireJob::Light => key("fire-job-light"),
            FireJob::CoalsReady => key("fire-job-coals-ready"),
            FireJob::Feed => key("fire-job-feed"),
            FireJob::Water => key("fire-job-water"),
            FireJob::Ash => key("fire-job-ash"),
            FireJob::Grease => key("fire-job-grease"),
            FireJob::ShutDown => key("fire-job-shut-down"),
        })
    }

    fn fire_job_state(&self, job: FireJob, state: FireJobState, stands: &FireStands) -> String {
        let minutes = match job {
            FireJob::Light => stands.lit,
            FireJob::CoalsReady => stands.ready,
            FireJob::Feed => stands.fed,
            FireJob::Water => stands.water,
            FireJob::Ash => stands.ash,
            FireJob::Grease => stands.grease,
            FireJob::ShutDown => None,
        };
        let done = match minutes {
            Some(minutes) => {
                let ago = self.say.ago(minutes.saturating_mul(MINUTE));
                self.say.with("fire-job-done", &[("ago", Arg::Text(&ago))])
            }
            None => self.say.text("fire-job-is-done"),
        };
        match state {
            FireJobState::Next if minutes.is_some() => {
                [self.say.text("fire-job-next"), done].join(" · ")
            }
            FireJobState::Next => self.say.text("fire-job-next"),
            FireJobState::Done => done,
            FireJobState::Later => self.say.text("fire-job-later"),
        }
    }

    fn fire_job_how(&self, job: FireJob, kind: PitKind) -> String {
        self.say.text(match job {
            FireJob::Light if is_plugged(kind) => key("fire-how-switch-on"),
            FireJob::Light => key("fire-how-light"),
            FireJob::CoalsReady => key("fire-how-coals-ready"),
            FireJob::Feed => key("fire-feed-above"),
            FireJob::Water => key("fire-how-water"),
            FireJob::Ash => key("fire-how-ash"),
            FireJob::Grease => key("fire-how-grease"),
            FireJob::ShutDown if is_plugged(kind) => key("fire-how-shut-down-plug"),
            FireJob::ShutDown => key("fire-how-shut-down"),
        })
    }

    fn fire_job_buttons(
        &self,
        cook: &Cook,
        pit: &Pit,
        job: FireJob,
        state: FireJobState,
    ) -> Vec<Button> {
        let did = job.did().filter(|_| cook.is_open());
        let tone = match state {
            FireJobState::Next => Tone::Main,
            _ => Tone::Plain,
        };
        let tap = |did| {
            let (cook, pit, at) = (cook.id, pit.id, None);
            let act = Act::TendFire { cook, pit, did, at };
            button(self.say.text("fire-did-it"), act, tone)
        };
        did.map(tap).into_iter().collect()
    }

    fn fire_job_cautions(&self, job: FireJob, pit: &Pit) -> Vec<Caution> {
        let burns = self.burns_charcoal(pit.id);
        match job {
            FireJob::Light | FireJob::Feed if burns => self.cautions(Doing::LightingCharcoal),
            FireJob::Ash | FireJob::ShutDown if burns => self.cautions(Doing::PuttingPitAway),
            FireJob::Grease => self.cautions(Doing::FlareUp),
            _ => vec![],
        }
    }

    /// What was last seen of the smoke, if within half an hour. Common practice, no source.
    pub(super) fn smoke_seen_now(
        &self,
        cook: &Cook,
        pit: &Pit,
    ) -> Option<(i64, crate::fire::SmokeSeen)> {
        let seen = last_of(self.care_of(cook, pit), |care| &care.smoke, self.now);
        seen.filter(|(at, _)| self.ahead(*at) > -30 * MINUTE)
    }
}

const fn is_plugged(kind: PitKind) -> bool {
    matches!(kind, PitKind::Pellet | PitKind::Electric)
}
