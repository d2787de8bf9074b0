//! All kinds of entries in one enum: the name of each kind, its version, and whether it must be understood.

use super::{Head, Job, fact::*};
use crate::checks::TestResult;
use serde::Serialize;

/// What an entry means to this version of Slowbend.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Meaning {
    /// A kind and version that this version knows.
    Known(Payload),
    /// Not known, or not of its kind's shape: passed over and passed on.
    Skipped,
    /// Not known, and its writer says that nobody may judge without it.
    MustUpdate,
}

macro_rules! payloads {
    ($($kind:literal $v:literal $must:literal $name:ident,)*) => {
        /// What happened.
        #[derive(Clone, Debug, PartialEq, Eq, Serialize)]
        #[serde(untagged)]
        #[allow(missing_docs, reason = "each variant is documented at its fact")]
        pub enum Payload { $($name($name)),* }

        impl Payload {
            /// The name of the kind.
            pub fn kind(&self) -> &'static str {
                match self { $(Self::$name(_) => $kind),* }
            }

            /// The version of the kind's shape.
            pub fn version(&self) -> u32 {
                match self { $(Self::$name(_) => $v),* }
            }

            /// Whether a reader that does not know the kind must not judge: set where a check, a stage or what counts
            /// as said would be misread without it.
            pub fn must_understand(&self) -> bool {
                match self { $(Self::$name(_) => $must),* }
            }

            /// Reads a body by the kind and version that its head names.
            pub fn read(head: &Head<'_>) -> Meaning {
                let body = head.body.get();
                let known = match (head.kind.as_ref(), head.v) {
                    $(($kind, $v) => serde_json::from_str(body).ok().map(Self::$name),)*
                    _ => None,
                };
                match known {
                    Some(payload) => Meaning::Known(payload),
                    None if head.must_understand => Meaning::MustUpdate,
                    None => Meaning::Skipped,
                }
            }

            /// All kinds with their versions, for documents and frozen fixtures.
            pub const KINDS: &'static [(&'static str, u32)] = &[$(($kind, $v)),*];
        }

        $(impl From<$name> for Payload {
            fn from(fact: $name) -> Self {
                Self::$name(fact)
            }
        })*
    };
}

payloads! {
    "crew_joined" 1 false CrewJoined,
    "device_named" 1 false DeviceNamed,
    "pit_added" 1 false PitAdded,
    "thermometer_added" 1 false ThermometerAdded,
    "thermometer_checked" 1 true ThermometerChecked,
    "field_set" 1 true FieldSet,
    "dismissed" 1 false Dismissed,
    "slept" 1 false Slept,
    "woke" 1 false Woke,
    "watch_taken" 1 false WatchTaken,
    "cook_started" 1 false CookStarted,
    "cook_finished" 1 false CookFinished,
    "piece_added" 1 true PieceAdded,
    "piece_meant" 1 false PieceMeant,
    "piece_split" 1 true PieceSplit,
    "pieces_joined" 1 true PiecesJoined,
    "stage_set" 1 true StageSet,
    "piece_moved" 1 false PieceMoved,
    "rub_answered" 1 false RubAnswered,
    "opened" 1 false Opened,
    "checked" 1 true Checked,
    "read" 1 true Read,
    "probe_bound" 1 true ProbeBound,
    "series_saved" 1 false SeriesSaved,
    "fed" 1 false Fed,
    "vent_changed" 1 false VentChanged,
    "fire_seen" 1 false FireSeen,
    "fed" 2 false FedUnits,
    "vent_changed" 2 false VentSet,
    "fire_seen" 2 false FireTended,
    "weather_said" 1 false WeatherSaid,
    "wood_said" 1 false WoodSaid,
    "wood_tamed" 1 false WoodTamed,
    "fire_found_out" 1 true FireFoundOut,
    "smoke_watched" 1 false SmokeWatched,
    "feed_planned" 1 false FeedPlanned,
    "unit_weighed" 1 false UnitWeighed,
    "skipped" 1 false Skipped,
    "put_off" 1 false PutOff,
    "answered" 1 false Answered,
    "went_past" 1 false WentPast,
    "noted" 1 false Noted,
    "dish_added" 1 false DishAdded,
    "dish_ready" 1 false DishReady,
    "batch_planned" 1 false BatchPlanned,
    "trimmings_kept" 1 false TrimmingsKept,
    "salt_weighed" 1 false SaltWeighed,
    "plan_accepted" 1 false PlanAccepted,
    "plan_dropped" 1 false PlanDropped,
    "courses_planned" 1 false CoursesPlanned,
    "sheet_kept" 1 false SheetKept,
    "voided" 1 true Voided,
    "erased" 1 true ErasedFor,
}

impl Payload {
    /// The jobs that it answers, done or not done: a ring for one of them is over with it.
    pub fn answers(&self) -> Vec<Job> {
        match self {
            Self::RubAnswered(fact) => vec![Job::RubSet(fact.piece)],
            Self::Checked(fact) => {
                let read = [Job::ComeUp, Job::KeepHot].map(|job| job(fact.piece));
                let heat = |result: &TestResult| matches!(result, TestResult::Heat(_));
                let heats = fact.results.iter().any(heat);
                [Job::Check(fact.piece), Job::Pull(fact.piece)]
                    .into_iter()
                    .chain(read.into_iter().filter(|_| heats))
                    .collect()
            }
            Self::StageSet(fact) => [
                Job::Check,
                Job::Pull,
                Job::PutAway,
                Job::ComeUp,
                Job::KeepHot,
            ]
            .map(|job| job(fact.piece))
            .into_iter()
            .chain(fact.stage.jobs_done(fact.piece))
            .collect(),
            Self::Read(Read {
                place: Where::Piece { piece, .. },
                ..
            }) => vec![Job::ComeUp(*piece), Job::KeepHot(*piece)],
            Self::WentPast(fact) => [Job::ComeUp, Job::KeepHot, Job::PutAway]
                .map(|job| job(fact.piece))
                .to_vec(),
            Self::Opened(fact) => {
                let wetted = fact.wetted.iter().map(|piece| Job::Wet(*piece));
                let glazed = fact.glazed.iter().map(|piece| Job::Glaze(*piece));
                wetted
                    .chain(glazed)
                    .chain(fact.pit.map(Job::FireRound))
                    .chain(fact.pit.map(Job::Outside))
                    .collect()
            }
            Self::Fed(fact) => vec![Job::FireRound(fact.pit), Job::Outside(fact.pit)],
            Self::VentChanged(fact) => vec![Job::FireRound(fact.pit), Job::Outside(fact.pit)],
            Self::FireSeen(fact) => vec![Job::FireRound(fact.pit)],
            Self::FedUnits(fact) => vec![Job::FireRound(fact.pit), Job::Outside(fact.pit)],
            Self::VentSet(fact) => vec![Job::FireRound(fact.pit), Job::Outside(fact.pit)],
            Self::FireTended(fact) => vec![Job::FireRound(fact.pit)],
            Self::SmokeWatched(fact) => vec![Job::FireRound(fact.pit)],
            Self::Read(Read {
                place: Where::Pit { pit },
                ..
            }) => vec![Job::FireRound(*pit)],
            Self::Skipped(fact) => vec![fact.job],
            Self::PutOff(fact) => vec![fact.job],
            Self::Answered(fact) => vec![fact.job],
            _ => vec![],
        }
    }
}
