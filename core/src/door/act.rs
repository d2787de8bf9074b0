//! Recording an act: decide, write, fold, answer.

use super::{Slowbend, known::line_of};
use crate::{
    acts::{
        Act, Outcome, Undo,
        decide::{Context, Decision, Owner, decide},
    },
    cook::fold,
    error::Trouble,
    ids::CookId,
    log::{Body, Draft, Entry, EntryKey, Field, Payload, Stamp, Subject},
    moment::{Moment, SECOND},
    store::{Along, Chunks, CookLine, Group, Store, StoreTrouble},
    words::{Viewer, Words},
};
use std::collections::BTreeSet;

/// How long an undo is shown huge.
pub const UNDO_MS: i64 = 30 * SECOND;

impl Slowbend {
    /// Records one thing that was done: all or nothing, on disk when it returns.
    ///
    /// # Errors
    /// [`Trouble::Refused`] with what to do instead; or the disk's trouble, and then nothing was recorded.
    pub fn act(&mut self, viewer: &Viewer, act: &Act, moment: &Moment) -> Result<Outcome, Trouble> {
        let done = self.do_act(None, viewer, act, moment);
        self.heed(done)
    }

    /// The same under a token of the caller's: the second time it answers as the first, and records nothing.
    ///
    /// # Errors
    /// As [`act`](Self::act).
    pub fn act_once(
        &mut self,
        token: &str,
        viewer: &Viewer,
        act: &Act,
        moment: &Moment,
    ) -> Result<Outcome, Trouble> {
        if let Some(answer) = self.store()?.answered_before(token)? {
            let outcome: Outcome =
                serde_json::from_str(&answer).map_err(|_| StoreTrouble::Damaged)?;
            return Ok(Outcome {
                repeated: true,
                ..outcome
            });
        }
        let done = self.do_act(Some(token), viewer, act, moment);
        self.heed(done)
    }

    fn do_act(
        &mut self,
        token: Option<&str>,
        viewer: &Viewer,
        act: &Act,
        moment: &Moment,
    ) -> Result<Outcome, Trouble> {
        self.notice_clock(moment);
        self.flush_if_due(moment)?;
        self.want_objects(act)?;
        let decision = self.decide(viewer, act, moment)?;
        let stamps = self.stamps(decision.drafts.len(), moment);
        let outcome = self.outcome(viewer, &decision, moment);
        let once = token.map(|token| (token, moment.utc_ms, to_json(&outcome)));
        let written = self.write(&decision.drafts, &stamps, once, Chunks::default());
        written.map_err(|trouble| trouble.with_reason(Words::of(viewer).text(trouble.key())))?;
        Ok(outcome)
    }

    fn decide(&mut self, viewer: &Viewer, act: &Act, moment: &Moment) -> Result<Decision, Trouble> {
        self.store()?;
        let mut names = self.names.clone();
        let known = self.known();
        let store = self.store.as_ref().expect("it was opened above");
        let owner = |key: &EntryKey| owner(store, key);
        let mut context = Context {
            known,
            viewer,
            moment,
            owner: &owner,
            names: &mut names,
        };
        let decision = decide(&mut context, act)?;
        self.names = names;
        Ok(decision)
    }

    fn outcome(&self, viewer: &Viewer, decision: &Decision, moment: &Moment) -> Outcome {
        let store = self.store.as_ref().expect("deciding opened it");
        let key = |i: usize| EntryKey {
            log: store.log,
            device: store.device,
            n: self.next_n + i as i64,
        };
        let entries: Vec<EntryKey> = (0..decision.drafts.len()).map(key).collect();
        let undo = decision.undoable.then(|| Undo {
            label: Words::of(viewer).text("act-undo"),
            act: Act::Undo {
                targets: entries.clone(),
            },
            until: moment.utc_ms + UNDO_MS,
        });
        Outcome {
            said: decision.said.clone(),
            entries,
            made: decision.made.clone(),
            undo,
            repeated: false,
        }
    }

    fn stamps(&self, count: usize, moment: &Moment) -> Vec<Stamp> {
        let next = |last: &Stamp| Some(last.tick(moment.utc_ms));
        std::iter::successors(next(&self.stamp), next)
            .take(count)
            .collect()
    }

    /// Writes drafts and folds them. Where the writing fails, what is known stays as it was.
    pub(super) fn write(
        &mut self,
        drafts: &[Draft],
        stamps: &[Stamp],
        once: Option<(&str, i64, String)>,
        chunks: Chunks<'_>,
    ) -> Result<(), StoreTrouble> {
        if drafts.is_empty() {
            return Ok(());
        }
        let lines = new_lines(drafts);
        let n = self.next_n;
        let store = self.store.as_mut().expect("deciding opened it");
        let recorded = store.append(
            drafts,
            n,
            stamps,
            Along {
                once,
                lines: &lines,
                changes_lines: drafts.iter().any(|draft| changes_line(&draft.payload)),
                chunks,
            },
        )?;
        self.next_n += drafts.len() as i64;
        self.stamp = stamps.last().copied().unwrap_or(self.stamp);
        self.fold_recorded(drafts, &recorded.entries, recorded.seq)
            .map_err(|trouble| StoreTrouble::Other(trouble.reason().to_owned()))
    }

    fn fold_recorded(
        &mut self,
        drafts: &[Draft],
        entries: &[Entry],
        seq: i64,
    ) -> Result<(), Trouble> {
        let groups: BTreeSet<Group> = drafts.iter().map(|draft| draft.cook.into()).collect();
        for group in groups {
            let of_group = drafts
                .iter()
                .zip(entries)
                .filter(|(draft, _)| Group::from(draft.cook) == group);
            let of_group: Vec<fold::Known> = of_group
                .map(|(draft, entry)| fold::Known::recorded(entry, draft))
                .collect();
            self.follow(group, &of_group, seq)?;
        }
        let changed = drafts
            .iter()
            .filter(|draft| changes_line(&draft.payload))
            .filter_map(|draft| draft.cook);
        let changed: BTreeSet<CookId> = changed.collect();
        self.refresh_lines(&Vec::from_iter(changed))
    }

    /// Loads what an act speaks of, where it belongs to a past cook.
    fn want_objects(&mut self, act: &Act) -> Result<(), Trouble> {
        if let Some(id) = act.cook() {
            self.want_cook(id)?;
        }
        for piece in act.pieces() {
            self.want_piece(piece)?;
        }
        for key in act.targets() {
            if let Some((_, Some(cook))) = self.store()?.entry(key)? {
                self.want_cook(cook)?;
            }
        }
        Ok(())
    }
}

fn owner(store: &Store, key: &EntryKey) -> Option<Owner> {
    let (entry, cook) = store.entry(key).ok()??;
    let kind = match &entry.body {
        Body::Raw(raw) => Entry::head(raw)
            .map(|head| head.kind.into_owned())
            .unwrap_or_default(),
        Body::Erased => String::new(),
    };
    Some(Owner { cook, kind })
}

fn to_json(outcome: &Outcome) -> String {
    serde_json::to_string(outcome).expect("outcomes are plain records, which JSON always takes")
}

/// The line of a cook that begins with these drafts, so that it is on disk with them.
fn new_lines(drafts: &[Draft]) -> Vec<CookLine> {
    let begun = drafts.iter().find_map(|draft| match &draft.payload {
        Payload::CookStarted(fact) => Some((fact, draft.at)),
        _ => None,
    });
    let by = crate::cook::fold::By {
        stamp: Stamp::default(),
        device: crate::ids::DeviceId(uuid::Uuid::nil()),
    };
    begun
        .map(|(fact, at)| line_of(&crate::cook::Cook::started(fact.clone(), at, by)))
        .into_iter()
        .collect()
}

/// Whether the list of cooks may read differently after it.
fn changes_line(payload: &Payload) -> bool {
    match payload {
        Payload::CookFinished(_) | Payload::Voided(_) | Payload::ErasedFor(_) => true,
        Payload::FieldSet(set) => matches!((set.of, &set.to), (Subject::Cook(_), Field::Name(_))),
        _ => false,
    }
}

impl Act {
    /// The cook that it names.
    pub fn cook(&self) -> Option<CookId> {
        match self {
            Self::FinishCook { cook }
            | Self::AddMeat { cook, .. }
            | Self::Read { cook, .. }
            | Self::BindProbe { cook, .. }
            | Self::Feed { cook, .. }
            | Self::ChangeVent { cook, .. }
            | Self::SeeFire { cook, .. }
            | Self::FeedUnits { cook, .. }
            | Self::SetVent { cook, .. }
            | Self::TendFire { cook, .. }
            | Self::SayWeather { cook, .. }
            | Self::SayWood { cook, .. }
            | Self::TameWood { cook, .. }
            | Self::FindFireOut { cook, .. }
            | Self::WatchSmoke { cook, .. }
            | Self::PlanFeed { cook, .. }
            | Self::AcceptPlan { cook, .. }
            | Self::AcceptAgain { cook, .. }
            | Self::DropPlan { cook }
            | Self::PlanCourses { cook, .. }
            | Self::KeepSheet { cook, .. }
            | Self::Skip { cook, .. }
            | Self::Later { cook, .. }
            | Self::Answer { cook, .. }
            | Self::Note { cook, .. }
            | Self::AddDish { cook, .. }
            | Self::ReadyDish { cook, .. }
            | Self::SetField {
                of: Subject::Cook(cook),
                ..
            } => Some(*cook),
            _ => None,
        }
    }

    /// The meats that it names outside a cook.
    pub fn pieces(&self) -> Vec<crate::ids::PieceId> {
        match self {
            Self::Split { piece, .. }
            | Self::SetStage { piece, .. }
            | Self::Move { piece, .. }
            | Self::AnswerRub { piece, .. }
            | Self::Check { piece, .. }
            | Self::SetField {
                of: Subject::Piece(piece),
                ..
            } => vec![*piece],
            Self::DoOpening { meats, .. } => meats.iter().map(|meat| meat.piece).collect(),
            Self::MoveMeats { moves, .. } => moves.iter().map(|to| to.piece).collect(),
            Self::Join { pieces, .. } | Self::AnswerRubs { pieces, .. } => pieces.clone(),
            Self::Open {
                wetted,
                turned,
                glazed,
                ..
            } => [wetted, turned, glazed]
                .into_iter()
                .flatten()
                .copied()
                .collect(),
            _ => vec![],
        }
    }

    /// The entries that it names.
    pub fn targets(&self) -> &[EntryKey] {
        match self {
            Self::Undo { targets } | Self::Erase { targets } => targets,
            _ => &[],
        }
    }
}
