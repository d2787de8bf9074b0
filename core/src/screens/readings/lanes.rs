//! What was done while readings were taken: openings, checks, stages, fuel and vents, each kind in a lane of its own.

use super::{Lane, ReadingsOf, Wanted, strands::shows};
use crate::{
    cook::{Cook, Timed, ahead::counts},
    ids::PitId,
    log::Stage,
    screens::glance::Glance,
    words::{Arg, key},
};
use std::collections::{BTreeMap, BTreeSet};

/// So many things that were done are told, the latest; all of them stand under "what happened".
const MARKS_TOLD: usize = 40;

/// The kinds of things, in the order of their lanes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Kind {
    Opened,
    Checked,
    Staged,
    Fed,
    Vent,
}

/// One thing that was done.
struct Mark {
    at: i64,
    kind: Kind,
    what: String,
}

/// What was done in one opening.
#[derive(Default)]
struct Opening {
    pits: BTreeSet<String>,
    wetted: BTreeSet<String>,
    turned: BTreeSet<String>,
    glazed: BTreeSet<String>,
}

impl Glance<'_> {
    /// A lane for each kind that there is, and one for a change of the clocks.
    pub(super) fn lanes(&self, cook: &Cook, wanted: &Wanted) -> Vec<Lane> {
        let mut lanes: BTreeMap<Kind, (i64, BTreeSet<i32>)> = BTreeMap::new();
        for mark in self.marks(cook, wanted) {
            let (count, at) = lanes.entry(mark.kind).or_default();
            *count += 1;
            at.extend(column(wanted, mark.at));
        }
        let done = lanes.into_iter().map(|(kind, (count, at))| Lane {
            name: self
                .say
                .with(lane_key(kind), &[("count", Arg::Number(count))]),
            at: at.into_iter().collect(),
        });
        let changes = self
            .clock_changes(&wanted.span)
            .into_iter()
            .map(|(at, said)| Lane {
                name: self.say.text(said),
                at: column(wanted, at).into_iter().collect(),
            });
        done.chain(changes).collect()
    }

    /// In words, latest first.
    pub(super) fn mark_lines(&self, cook: &Cook, wanted: &Wanted) -> Vec<String> {
        let mut marks = self.marks(cook, wanted);
        marks.sort_by(|a, b| (b.at, a.kind, &a.what).cmp(&(a.at, b.kind, &b.what)));
        let told = marks.into_iter().take(MARKS_TOLD);
        told.map(|mark| {
            let (when, kind) = (
                self.say.clock_day(mark.at, self.now),
                self.say.text(kind_key(mark.kind)),
            );
            let args = [
                ("when", Arg::Text(&when)),
                ("kind", Arg::Text(&kind)),
                ("what", Arg::Text(&mark.what)),
            ];
            match mark.what.as_str() {
                "" => self.say.with("chart-mark-bare", &args[..2]),
                _ => self.say.with("chart-mark", &args),
            }
        })
        .collect()
    }

    fn marks(&self, cook: &Cook, wanted: &Wanted) -> Vec<Mark> {
        let mut all = self.openings(cook, wanted.of);
        all.extend(self.of_meats(cook, wanted.of));
        all.extend(self.of_pits(cook, wanted.of));
        all.retain(|mark| counts(mark.at, self.now) && wanted.span.column(mark.at).is_some());
        all
    }

    /// What was done at one instant is one opening.
    fn openings(&self, cook: &Cook, of: ReadingsOf) -> Vec<Mark> {
        let mut all: BTreeMap<i64, Opening> = BTreeMap::new();
        for (pit, care) in cook
            .pits
            .iter()
            .filter(|(pit, _)| self.tends(cook, of, **pit))
        {
            for when in &care.opened {
                all.entry(when.at).or_default().pits.insert(self.pit(*pit));
            }
        }
        for piece in cook.pieces.values().filter(|piece| shows(of, piece)) {
            let mut put = |at: i64, into: fn(&mut Opening) -> &mut BTreeSet<String>| {
                into(all.entry(at).or_default()).insert(piece.name.value.clone());
            };
            piece
                .wetted
                .iter()
                .for_each(|wetted| put(wetted.when.at, |o| &mut o.wetted));
            piece
                .turned
                .iter()
                .for_each(|when| put(when.at, |o| &mut o.turned));
            piece
                .glazed
                .iter()
                .for_each(|when| put(when.at, |o| &mut o.glazed));
        }
        let mark = |(at, opening): (i64, Opening)| Mark {
            at,
            kind: Kind::Opened,
            what: self.opening(opening),
        };
        all.into_iter().map(mark).collect()
    }

    fn opening(&self, opening: Opening) -> String {
        let mut parts: Vec<String> = opening.pits.into_iter().collect();
        let done = [
            (opening.wetted, key("opened-wetted")),
            (opening.turned, key("opened-turned")),
            (opening.glazed, key("opened-glazed")),
        ];
        for (names, said) in done.into_iter().filter(|(names, _)| !names.is_empty()) {
            let names = self.say.list(&names.into_iter().collect::<Vec<_>>());
            parts.push(self.say.with(said, &[("names", Arg::Text(&names))]));
        }
        parts.join(" · ")
    }

    fn of_meats(&self, cook: &Cook, of: ReadingsOf) -> Vec<Mark> {
        let meats = cook.pieces.values().filter(|piece| shows(of, piece));
        meats
            .flat_map(|piece| {
                let name = &piece.name.value;
                let checked = piece
                    .checks
                    .iter()
                    .map(|pass| (pass.when.at, Kind::Checked, name.clone()));
                let staged = piece
                    .stages
                    .iter()
                    .filter(|passed| is_at_fire(&passed.stage));
                let staged = staged.map(move |passed| {
                    let stage = self.stage(Some(passed.stage));
                    (passed.when.at, Kind::Staged, format!("{name} · {stage}"))
                });
                checked.chain(staged)
            })
            .map(|(at, kind, what)| Mark { at, kind, what })
            .collect()
    }

    fn of_pits(&self, cook: &Cook, of: ReadingsOf) -> Vec<Mark> {
        let pits = cook
            .pits
            .iter()
            .filter(|(pit, _)| self.tends(cook, of, **pit));
        pits.flat_map(|(pit, care)| {
            let name = self.pit(*pit);
            let mark = move |when: &Timed, kind| Mark {
                at: when.at,
                kind,
                what: name.clone(),
            };
            let fed: Vec<Mark> = care.fed.iter().map(|when| mark(when, Kind::Fed)).collect();
            let vents: Vec<Mark> = care
                .vents
                .iter()
                .map(|when| mark(when, Kind::Vent))
                .collect();
            fed.into_iter().chain(vents)
        })
        .collect()
    }

    /// Whether what is done for a pit bears on what is asked for: on a meat, if it was ever on that pit.
    fn tends(&self, cook: &Cook, of: ReadingsOf, pit: PitId) -> bool {
        match of {
            ReadingsOf::Cook { .. } => true,
            ReadingsOf::Pit { pit: id, .. } => id == pit,
            ReadingsOf::Piece { piece } => cook.pieces.get(&piece).is_some_and(|piece| {
                let staged = piece
                    .stages
                    .iter()
                    .any(|passed| passed.stage == Stage::OnPit { pit });
                staged || piece.moves.iter().any(|(_, to, _)| *to == pit)
            }),
        }
    }
}

/// Stages that a curve shows: on, wrapped, off.
fn is_at_fire(stage: &Stage) -> bool {
    stage.is_on_pit() || matches!(stage, Stage::Off | Stage::Held)
}

fn column(wanted: &Wanted, at: i64) -> Option<i32> {
    wanted
        .span
        .column(at)
        .and_then(|column| i32::try_from(column).ok())
}

const fn lane_key(kind: Kind) -> &'static str {
    match kind {
        Kind::Opened => key("chart-lane-opened"),
        Kind::Checked => key("chart-lane-checked"),
        Kind::Staged => key("chart-lane-staged"),
        Kind::Fed => key("chart-lane-fed"),
        Kind::Vent => key("chart-lane-vent"),
    }
}

const fn kind_key(kind: Kind) -> &'static str {
    match kind {
        Kind::Opened => key("kind-opened"),
        Kind::Checked => key("kind-checked"),
        Kind::Staged => key("kind-stage-set"),
        Kind::Fed => key("kind-fed"),
        Kind::Vent => key("kind-vent-changed"),
    }
}
