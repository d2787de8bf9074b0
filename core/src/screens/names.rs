//! The words for stages, pits, cadences and jobs.

use super::glance::Glance;
use crate::{
    cadence::Cadence,
    checks::cuts::WrapKind,
    log::{Job, PitKind, Stage, Subject, Wrap},
    moment::MINUTE,
    words::{Arg, key},
};

impl Glance<'_> {
    pub fn wrap(&self, wrap: Wrap) -> String {
        let kind = match wrap {
            Wrap::Paper => WrapKind::Paper,
            Wrap::Foil => WrapKind::Foil,
            Wrap::Boat => WrapKind::Boat,
            Wrap::Pan => WrapKind::Pan,
        };
        self.say.text(kind.key())
    }

    pub fn pit_kind(&self, kind: PitKind) -> String {
        self.say.text(match kind {
            PitKind::StickBurner => key("pit-kind-stick-burner"),
            PitKind::Kettle => key("pit-kind-kettle"),
            PitKind::Drum => key("pit-kind-drum"),
            PitKind::Ceramic => key("pit-kind-ceramic"),
            PitKind::Cabinet => key("pit-kind-cabinet"),
            PitKind::Pellet => key("pit-kind-pellet"),
            PitKind::Electric => key("pit-kind-electric"),
        })
    }

    pub fn stage(&self, stage: Option<Stage>) -> String {
        let plain = match stage {
            Some(Stage::OnPit { pit }) => {
                let pit = self.pit(pit);
                return self.say.with("stage-on-pit", &[("pit", Arg::Text(&pit))]);
            }
            Some(Stage::Wrapped { wrap }) => {
                let wrap = self.wrap(wrap);
                return self
                    .say
                    .with("stage-wrapped", &[("wrap", Arg::Text(&wrap))]);
            }
            None => key("stage-none"),
            Some(Stage::Trimmed) => key("stage-trimmed"),
            Some(Stage::Brined) => key("stage-brined"),
            Some(Stage::Rubbed) => key("stage-rubbed"),
            Some(Stage::Resting) => key("stage-resting"),
            Some(Stage::Unwrapped) => key("stage-unwrapped"),
            Some(Stage::Off) => key("stage-off"),
            Some(Stage::Held) => key("stage-held"),
            Some(Stage::CutUp) => key("stage-cut-up"),
            Some(Stage::Served) => key("stage-served"),
            Some(Stage::PutAway) => key("stage-put-away"),
            Some(Stage::Reheated) => key("stage-reheated"),
            Some(Stage::ThrownAway) => key("stage-thrown-away"),
        };
        self.say.text(plain)
    }

    pub fn cadence(&self, cadence: Cadence) -> String {
        let every = |minutes: i64| self.say.duration(minutes.saturating_mul(MINUTE));
        match cadence {
            Cadence::None => self.say.text("cadence-none"),
            Cadence::Mop { every_min } => {
                let every = every(every_min);
                self.say
                    .with("cadence-mop", &[("every", Arg::Text(&every))])
            }
            Cadence::Spritz { every_min } => {
                let every = every(every_min);
                self.say
                    .with("cadence-spritz", &[("every", Arg::Text(&every))])
            }
        }
    }

    /// The verb of a job: one to four words.
    pub fn verb(&self, job: Job) -> String {
        self.say.text(match job {
            Job::RubSet(_) => key("job-rub-set"),
            Job::Wet(piece) => match self.known.piece(piece).map(|(_, p)| p.cadence.value) {
                Some(Cadence::Spritz { .. }) => key("job-spritz"),
                _ => key("job-mop"),
            },
            Job::Glaze(_) => key("job-glaze"),
            job if self.is_read_or_back(job) => key("job-read-or-back"),
            Job::Check(_) => key("job-check"),
            Job::Pull(piece) if self.is_done(piece) => key("job-pull"),
            Job::Pull(_) => key("job-pull-check"),
            Job::PutAway(_) => key("job-put-away"),
            Job::ComeUp(_) => key("job-come-up"),
            Job::KeepHot(_) => key("job-keep-hot"),
            Job::Serve(_) => key("job-serve"),
            Job::FireRound(_) => key("job-fire-round"),
            Job::Outside(_) => key("job-outside"),
            Job::Silent(_) => key("job-silent"),
            Job::WakeUp(_) => key("job-wake-up"),
            Job::Sheet(planned) => return self.sheet_verb(planned),
        })
    }

    /// What a job is done on.
    pub fn object(&self, job: Job) -> String {
        if let Job::Sheet(planned) = job {
            return self.sheet_object_of(planned);
        }
        match job.object() {
            Subject::Piece(piece) => self.piece_name(piece),
            Subject::Pit(pit) => self.pit(pit),
            Subject::Cook(cook) => {
                let cook = self.known.cooks.get(&cook);
                cook.map_or_else(String::new, |cook| cook.name.value.clone())
            }
            _ => String::new(),
        }
    }

    pub fn piece_name(&self, id: crate::ids::PieceId) -> String {
        match self.known.piece(id) {
            Some((_, piece)) => piece.name.value.clone(),
            None => self.say.text("screen-some-meat"),
        }
    }
}
