//! Taking entries back, and erasing them. Start at [`undo`].
//!
//! Law: a mop that several devices recorded is one mop, and taking it back takes back all of its entries, so that no
//! phone's copy of it stays behind. An entry that wetted other meats too is taken back whole; restoring brings all back.

use super::{Context, Decision, Owner};
use crate::{
    cadence::cluster::{Wetting, clusters},
    cook::{Cook, Piece},
    error::Refused,
    ids::CookId,
    log::{Draft, EntryKey, ErasedFor, Voided},
    words::Arg,
};
use std::collections::{BTreeMap, BTreeSet};

/// The most entries that one act takes back or erases. Common practice, no source.
const TARGETS_MAX: usize = 500;
/// What stays: a device's beginning in a log, that something was erased, and what was (its kind is empty).
const NEVER_UNDONE: [&str; 3] = ["crew_joined", "erased", ""];
/// What is never erased: the same, what takes back (else it would come back), and the beginning that holds a cook.
const NEVER_ERASED: [&str; 4] = ["crew_joined", "erased", "voided", "cook_started"];

/// The entries of one act with their kinds, by cook.
type ByCook = BTreeMap<Option<CookId>, BTreeMap<EntryKey, String>>;

/// Takes entries back; of a taking-back, restores. One entry for each cook that the targets belong to.
pub(super) fn undo(context: &mut Context<'_>, targets: &[EntryKey]) -> Result<Decision, Refused> {
    let owned = owned(context, targets)?;
    refuse_kinds(context, &owned, &NEVER_UNDONE, |say| {
        say.refuse("error-undo-never", &[])
    })?;
    let restores = owned
        .values()
        .all(|kinds| kinds.values().all(|kind| kind == "voided"));
    let mut all = 0;
    let drafts: Vec<Draft> = owned
        .into_iter()
        .map(|(cook, kinds)| {
            let targets = with_clusters(context, cook, kinds);
            all += targets.len();
            Draft {
                cook,
                at: context.now(),
                payload: Voided { targets }.into(),
            }
        })
        .collect();
    let say = context.say();
    let asked = BTreeSet::from_iter(targets).len();
    let said = match (restores, all > asked) {
        (true, _) => say.text("act-restored"),
        (false, true) => say.text("act-undone-together"),
        (false, false) => say.text("act-undone"),
    };
    Ok(Decision::of(drafts, said))
}

/// Erases entries of one cook for good.
pub(super) fn erase(context: &mut Context<'_>, targets: &[EntryKey]) -> Result<Decision, Refused> {
    let owned = owned(context, targets)?;
    refuse_kinds(context, &owned, &NEVER_ERASED, |say| {
        say.refuse("error-erase-never", &[])
    })?;
    let say = context.say();
    if owned.len() > 1 {
        return Err(say.refuse("error-erase-cooks", &[]).into());
    }
    let (cook, kinds) = owned.into_iter().next().expect("no targets were refused");
    let targets: Vec<EntryKey> = kinds.into_keys().collect();
    let args = [("count", Arg::Number(targets.len() as i64))];
    let said = say.with("act-erased", &args);
    let fact = ErasedFor { targets };
    Ok(Decision::one(cook, context.now(), fact, said).for_good())
}

/// Whose the targets are. None at all, too many, or one that is not held here are refused.
fn owned(context: &Context<'_>, targets: &[EntryKey]) -> Result<ByCook, Refused> {
    let say = context.say();
    if targets.is_empty() || targets.len() > TARGETS_MAX {
        let args = [("limit", Arg::Number(TARGETS_MAX as i64))];
        return Err(say.refuse("error-targets-count", &args).into());
    }
    let mut owned = ByCook::new();
    for target in targets {
        let Some(Owner { cook, kind }) = (context.owner)(target) else {
            return Err(say.refuse("error-target-unknown", &[]).into());
        };
        owned.entry(cook).or_default().insert(*target, kind);
    }
    Ok(owned)
}

fn refuse_kinds(
    context: &Context<'_>,
    owned: &ByCook,
    kinds: &[&str],
    refusal: impl Fn(crate::words::Words<'_>) -> crate::words::Refused,
) -> Result<(), Refused> {
    let mut all = owned.values().flat_map(BTreeMap::values);
    if all.any(|kind| kinds.contains(&kind.as_str())) {
        return Err(refusal(context.say()).into());
    }
    Ok(())
}

/// The targets, and with each opening all that recorded the same wettings.
fn with_clusters(
    context: &Context<'_>,
    cook: Option<CookId>,
    kinds: BTreeMap<EntryKey, String>,
) -> Vec<EntryKey> {
    let mut all: BTreeSet<EntryKey> = kinds.keys().copied().collect();
    let cook = cook.and_then(|cook| context.known.cooks.get(&cook));
    for (target, kind) in &kinds {
        if let (Some(cook), "opened") = (cook, kind.as_str()) {
            all.extend(same_wettings(cook, target));
        }
    }
    all.into_iter().collect()
}

/// The entries that recorded a wetting which `target` recorded too.
fn same_wettings(cook: &Cook, target: &EntryKey) -> BTreeSet<EntryKey> {
    let wetted_by_it = |piece: &&Piece| piece.wetted.iter().any(|wet| wet.when.entry == *target);
    let pieces = cook.pieces.values().filter(wetted_by_it);
    pieces.flat_map(|piece| cluster_of(piece, target)).collect()
}

fn cluster_of(piece: &Piece, target: &EntryKey) -> Vec<EntryKey> {
    let wettings: Vec<Wetting> = (0..)
        .zip(&piece.wetted)
        .map(|(entry, wet)| Wetting {
            at: wet.when.at,
            device: wet.device,
            entry,
        })
        .collect();
    let key = |wetting: &Wetting| piece.wetted[wetting.entry as usize].when.entry;
    clusters(&wettings, piece.cadence.value)
        .into_iter()
        .map(|cluster| cluster.members.iter().map(key).collect::<Vec<_>>())
        .find(|members| members.contains(target))
        .unwrap_or_default()
}
