//! Openings of a pit, with all that was done in them. Start at [`open`].
//!
//! Law: one entry for each cook and pit that was opened, so that the watch on a pit's temperature is muted where its lid
//! was off; a meat is in at most one of them.

use super::{Context, Decision, share};
use crate::{
    cadence::Cadence,
    cook::{Cook, Piece},
    error::Refused,
    ids::{CookId, PieceId, PitId},
    log::{Draft, Opened, Wrap},
    words::Arg,
};
use std::collections::{BTreeMap, BTreeSet};

/// The meats of one list, each once, with their cooks.
type Meats<'a> = Vec<(&'a Cook, &'a Piece)>;

/// Records the wetting, turning and glazing of meats that are on a pit; of none, the opening alone.
pub(super) fn open(
    context: &mut Context<'_>,
    pit: Option<PitId>,
    lists: [&[PieceId]; 3],
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let [wetted, turned, glazed] = lists;
    let reached = Reached {
        wetted,
        turned,
        glazed,
        ..Reached::default()
    };
    open_with(context, pit, &reached, at)
}

/// The meats that were reached in one opening.
#[derive(Default)]
pub(super) struct Reached<'p> {
    pub wetted: &'p [PieceId],
    pub turned: &'p [PieceId],
    pub glazed: &'p [PieceId],
    /// Those that got a mop and brush of their own.
    pub own_mop: &'p [PieceId],
    /// Those that were otherwise seen to, such as tried.
    pub touched: &'p [PieceId],
}

/// The same with meats that had a mop of their own, or were only touched.
pub(super) fn open_with(
    context: &mut Context<'_>,
    pit: Option<PitId>,
    reached: &Reached<'_>,
    at: Option<i64>,
) -> Result<Decision, Refused> {
    let at = context.claimed(at)?;
    if let Some(pit) = pit {
        context.pit(pit)?;
    }
    let wetted = meats(context, reached.wetted)?;
    let turned = meats(context, reached.turned)?;
    let glazed = meats(context, reached.glazed)?;
    let touched = meats(context, reached.touched)?;
    if [&wetted, &turned, &glazed, &touched]
        .iter()
        .all(|list| list.is_empty())
    {
        return open_only(context, pit, at);
    }
    share::apart(context, &share::mopped(&shared(&wetted, reached.own_mop)))?;
    share::apart(context, &shared(&glazed, reached.own_mop))?;
    let mut openings = Openings {
        context,
        pit,
        at,
        found: BTreeMap::new(),
    };
    for (cook, piece) in &wetted {
        not_wrapped(context, piece, at, |_| true)?;
        openings.of(cook, piece)?.wetted.push(piece.id);
    }
    for (cook, piece) in &turned {
        openings.of(cook, piece)?.turned.push(piece.id);
    }
    for (cook, piece) in &glazed {
        not_wrapped(context, piece, at, |wrap| wrap != Wrap::Boat)?;
        openings.of(cook, piece)?.glazed.push(piece.id);
    }
    for (cook, piece) in &touched {
        openings.of(cook, piece)?;
    }
    let said = said(context, [&wetted, &turned, &glazed]);
    Ok(Decision::of(openings.drafts(), said))
}

/// Those that were gone over with what touched others too.
fn shared<'a>(list: &Meats<'a>, own_mop: &[PieceId]) -> Meats<'a> {
    let all = list.iter().copied();
    all.filter(|(_, piece)| !own_mop.contains(&piece.id))
        .collect()
}

fn meats<'a>(context: &Context<'a>, ids: &[PieceId]) -> Result<Meats<'a>, Refused> {
    let once = BTreeSet::from_iter(ids);
    once.into_iter().map(|id| context.meat(*id)).collect()
}

/// Refuses to wet what is wrapped; glaze goes on in a boat, which is open above.
fn not_wrapped(
    context: &Context<'_>,
    piece: &Piece,
    at: i64,
    closed: impl Fn(Wrap) -> bool,
) -> Result<(), Refused> {
    match piece.wrapped(at) {
        Some((_, wrap)) if closed(wrap) => {
            let args = [("name", Arg::Text(&piece.name.value))];
            Err(context.say().refuse("error-wet-wrapped", &args).into())
        }
        _ => Ok(()),
    }
}

/// The openings that one act tells of, by cook and pit.
struct Openings<'c, 'a> {
    context: &'c Context<'a>,
    pit: Option<PitId>,
    at: i64,
    found: BTreeMap<(CookId, Option<PitId>), Opened>,
}

impl Openings<'_, '_> {
    /// The opening in which that meat was reached.
    fn of(&mut self, cook: &Cook, piece: &Piece) -> Result<&mut Opened, Refused> {
        let pit = self.pit_of(piece)?;
        let opened = self.found.entry((cook.id, pit));
        Ok(opened.or_insert_with(|| nothing_done(pit)))
    }

    /// The pit it was on at the claimed time, or is on now where its going on was told later than that.
    fn pit_of(&self, piece: &Piece) -> Result<Option<PitId>, Refused> {
        let (say, name) = (self.context.say(), ("name", Arg::Text(&piece.name.value)));
        let times = [self.at, self.at.max(self.context.now())];
        let Some(then) = times.into_iter().find(|time| piece.is_on_pit(*time)) else {
            return Err(say.refuse("error-open-off-pit", &[name]).into());
        };
        let its = piece.pit(then).map(|(pit, _)| pit);
        match (its, self.pit) {
            (Some(its), Some(asked)) if its != asked => {
                let (its, asked) = (self.context.pit_name(its)?, self.context.pit_name(asked)?);
                let args = [name, ("pit", Arg::Text(its)), ("other", Arg::Text(asked))];
                Err(say.refuse("error-open-other-pit", &args).into())
            }
            _ => Ok(its.or(self.pit)),
        }
    }

    fn drafts(self) -> Vec<Draft> {
        let at = self.at;
        let draft = |((cook, _), opened): ((CookId, _), Opened)| Draft {
            cook: Some(cook),
            at,
            payload: opened.into(),
        };
        self.found.into_iter().map(draft).collect()
    }
}

pub(super) fn nothing_done(pit: Option<PitId>) -> Opened {
    Opened {
        pit,
        wetted: vec![],
        turned: vec![],
        glazed: vec![],
    }
}

/// The lid was off and nothing was done: one entry in each cook that has a meat on that pit.
fn open_only(context: &Context<'_>, pit: Option<PitId>, at: i64) -> Result<Decision, Refused> {
    let say = context.say();
    let Some(pit) = pit else {
        return Err(say.refuse("error-open-nothing", &[]).into());
    };
    let now = at.max(context.now());
    let on_it =
        |piece: &Piece| piece.is_on_pit(now) && piece.pit(now).is_some_and(|(its, _)| its == pit);
    let cooks = context
        .known
        .open_cooks()
        .filter(|cook| cook.meats().any(on_it));
    let drafts: Vec<Draft> = cooks
        .map(|cook| Draft {
            cook: Some(cook.id),
            at,
            payload: nothing_done(Some(pit)).into(),
        })
        .collect();
    let args = [("pit", Arg::Text(context.pit_name(pit)?))];
    if drafts.is_empty() {
        return Err(say.refuse("error-open-empty-pit", &args).into());
    }
    Ok(Decision::of(drafts, say.with("act-opened", &args)))
}

fn said(context: &Context<'_>, [wetted, turned, glazed]: [&Meats<'_>; 3]) -> String {
    let say = context.say();
    let by_spray =
        |(_, piece): &(&Cook, &Piece)| matches!(piece.cadence.value, Cadence::Spritz { .. });
    let (spritzed, mopped): (Meats<'_>, Meats<'_>) = wetted.iter().copied().partition(by_spray);
    let mut sentences = Vec::new();
    let mut tell = |meats: &Meats<'_>, sentence: &dyn Fn(&str) -> String| {
        let names: Vec<&str> = meats.iter().map(|(_, piece)| &*piece.name.value).collect();
        if !names.is_empty() {
            sentences.push(sentence(&say.list(&names)));
        }
    };
    tell(&mopped, &|names| {
        say.with("act-mopped", &[("names", Arg::Text(names))])
    });
    tell(&spritzed, &|names| {
        say.with("act-spritzed", &[("names", Arg::Text(names))])
    });
    tell(turned, &|names| {
        say.with("act-turned", &[("names", Arg::Text(names))])
    });
    tell(glazed, &|names| {
        say.with("act-glazed", &[("names", Arg::Text(names))])
    });
    sentences.join(" ")
}
