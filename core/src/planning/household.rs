//! The household of a cook. Start at [`of`].

use super::{Ask, PAGE_NODES, begins, kitchen, night, pits, remaining, servings::Servings};
use crate::{
    cook::{Cook, Known, Piece},
    ids::{DishId, PieceId, PitId},
    log::{Does, Stage, Subject},
    moment::MINUTE,
    plan::{Household, Meat, OnPit, PrepKind, from_catalogue},
    units::Mk,
    words::Words,
};
use std::collections::BTreeSet;

/// What a meat is taken to weigh where nobody weighed it: grams. Common practice, no source.
const USUAL_G: i64 = 2_000;
/// What a plan takes for a weight, grams: what another device claims beyond it counts as the nearer end.
const WEIGHS_G: (i64, i64) = (30, 60_000);
/// So much of its cooking is over at most while a meat is still on: it is not known to be done.
const OVER_MAX: i64 = 900;

/// A household with what its lists stand for.
#[derive(Clone)]
pub(super) struct Planned {
    pub household: Household,
    /// The meats, as listed.
    pub pieces: Vec<PieceId>,
    /// The dishes, as listed.
    pub dishes: Vec<DishId>,
    /// The pits, as listed.
    pub pits: Vec<PitId>,
    /// The pits that are lit and not yet hot, as listed: nobody lights them again.
    pub coming_up: Vec<usize>,
    /// The servings, as listed.
    pub servings: Servings,
    /// The names of places and people, as listed, with the messages that say them in any language.
    pub words: Vec<(String, &'static str)>,
}

impl Planned {
    /// The same with each fire that burns held as it is; none where none does.
    pub(super) fn steady(&self, known: &Known<'_>, cook: &Cook, now: i64) -> Option<Self> {
        let mut steady = self.clone();
        let mut any = false;
        for (pit, id) in steady.household.pits.iter_mut().zip(&self.pits) {
            let held = remaining::held(known, cook, *id, now).filter(|_| pit.hot);
            let kept = held.and_then(|held| pit.temps.iter().find(|at| at.temp == held).copied());
            if let Some(kept) = kept {
                any = true;
                pit.temps = vec![kept];
            }
        }
        any.then_some(steady)
    }
}

/// What is left of a cook, from the next quarter of an hour on.
pub(super) fn of(known: &Known<'_>, cook: &Cook, say: &Words<'_>, ask: &Ask, now: i64) -> Planned {
    let from = begins(
        ask.asked
            .not_before
            .map_or(now, |earliest| earliest.max(now)),
    );
    let pits = pits::of(known, cook, now);
    let temps: BTreeSet<Mk> = pits
        .iter()
        .flat_map(|(_, pit)| &pit.temps)
        .map(|at| at.temp)
        .collect();
    let temps: Vec<Mk> = temps.into_iter().collect();
    let ids: Vec<PitId> = pits.iter().map(|(id, _)| *id).collect();
    let mut names = Names::default();
    let open = cook.meats().filter(|piece| is_open(piece, now));
    let mut pieces: Vec<&Piece> = open.collect();
    pieces.sort_by_key(|piece| piece.id);
    let meats = pieces.iter().map(|piece| {
        let made = meat(piece, &mut names, &ids, &temps, (from, now));
        remaining::of(known, cook, piece, made, (from, now))
    });
    let mut meats: Vec<Meat> = meats.collect();
    let mut dishes = kitchen::dishes(cook, &mut names);
    let of_meats = pieces.iter().map(|piece| Subject::Piece(piece.id));
    let of_dishes = dishes.iter().map(|(id, _)| Subject::Dish(*id));
    let members: Vec<Subject> = of_meats.chain(of_dishes).collect();
    let servings = Servings::of(cook, ask, &members);
    for (piece, meat) in pieces.iter().zip(&mut meats) {
        meat.serving = servings.place(cook, Subject::Piece(piece.id));
    }
    for (id, dish) in &mut dishes {
        dish.serving = servings.place(cook, Subject::Dish(*id));
    }
    let sleep = night::windows(ask, from);
    Planned {
        household: Household {
            from_ms: from,
            zone: Some(ask.serve.zone.clone()),
            confidence_permille: 900,
            shared_permille: 500,
            hands: ask.asked.hands.clamp(0, 3),
            meats,
            dishes: dishes.iter().map(|(_, dish)| dish.clone()).collect(),
            pits: pits.iter().map(|(_, pit)| pit.clone()).collect(),
            places: kitchen::places(say, &ask.asked),
            burners: kitchen::BURNERS,
            servings: servings.listed(cook, ask, &mut names, from),
            watches: night::watches(say, &ask.asked, &sleep),
            quiet: vec![],
            sleep,
            alternatives: 3,
            budget_nodes: PAGE_NODES,
        },
        pieces: pieces.iter().map(|piece| piece.id).collect(),
        dishes: dishes.iter().map(|(id, _)| *id).collect(),
        coming_up: (0..ids.len())
            .filter(|nr| pits::is_coming_up(cook, ids[*nr], now) && !pits[*nr].1.hot)
            .collect(),
        pits: ids,
        servings,
        words: [kitchen::COOLER, kitchen::OVEN, night::WATCHER]
            .map(|message| (say.text(message), message))
            .to_vec(),
    }
}

/// Still to be cooked, rested or cut.
pub(super) fn is_open(piece: &Piece, now: i64) -> bool {
    let stage = piece.stage(now).map(|passed| passed.stage);
    !matches!(
        stage,
        Some(Stage::CutUp | Stage::Served | Stage::PutAway | Stage::Reheated | Stage::ThrownAway)
    )
}

fn meat(
    piece: &Piece,
    names: &mut Names,
    pits: &[PitId],
    temps: &[Mk],
    (from, now): (i64, i64),
) -> Meat {
    let grams = piece
        .weight_g
        .value
        .unwrap_or(USUAL_G)
        .clamp(WEIGHS_G.0, WEIGHS_G.1);
    let name = names.own(&piece.name.value);
    let mut meat = from_catalogue(&name, piece.cut, piece.form.value, grams, 0, temps);
    meat.prep.retain(|prep| !is_prepared(piece, prep.what, now));
    let ago = |at: i64| ((at - from) / MINUTE).min(0);
    let off = piece.resting_since(now);
    if let Some(off) = off {
        meat.off_at_min = Some(ago(off));
    } else if let (true, Some(since)) = (piece.is_on_pit(now), piece.on_pit_at(now)) {
        let on = piece
            .pit(now)
            .and_then(|(id, _)| pits.iter().position(|pit| *pit == id));
        let usual = meat
            .times
            .get(meat.times.len() / 2)
            .map_or(1, |at| at.minutes.p50)
            .max(1);
        let over = (from - since) / MINUTE * 1_000 / usual;
        meat.on = on.map(|pit| OnPit {
            pit,
            since_min: ago(since),
            over_permille: over.clamp(0, OVER_MAX),
        });
    }
    if off.is_some() || meat.on.is_some() {
        meat.prep.clear();
    }
    meat
}

fn is_prepared(piece: &Piece, what: PrepKind, now: i64) -> bool {
    let does = match what {
        PrepKind::Thaw => Does::Thaw,
        PrepKind::Brine => Does::Brine,
        PrepKind::Trim => Does::Trim,
        PrepKind::Rub => Does::Rub,
    };
    let mut passed = piece.stages.iter().filter(|passed| passed.when.at <= now);
    passed.any(|passed| passed.stage.completes(does))
}

/// Names, each once: a plan tells things apart by them.
#[derive(Default)]
pub(super) struct Names(BTreeSet<String>);

impl Names {
    /// The name, numbered where another has it.
    pub(super) fn own(&mut self, name: &str) -> String {
        let name = match name.trim() {
            "" => "–",
            name => name,
        };
        let numbered = |nth: u32| match nth {
            1 => name.to_owned(),
            nth => format!("{name} ({nth})"),
        };
        let own = (1..).map(numbered).find(|own| !self.0.contains(own));
        let own = own.expect("there is always another number");
        self.0.insert(own.clone());
        own
    }
}
