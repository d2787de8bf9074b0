//! One meat, from the shop to the plate.

use super::{MeatAnswer, PortionMeat, Range};
use crate::batch::{
    CutYield, Grams,
    amount::{down, up},
    yields::cut_yield,
};

const WHOLE: i64 = 1000;

pub(super) fn answer(meat: &PortionMeat, wanted: Grams) -> MeatAnswer {
    let known = cut_yield(meat.cut);
    let trim = meat.trim_percent.map_or(known.trim, |percent| percent * 10);
    let there = meat.there_g.unwrap_or_default();
    let [need, likely] =
        [known.low, known.expected].map(|yields| need(&known, yields, trim, wanted));
    let beyond = |all: Grams| Grams((all.0 - there.0).max(0));
    let trimmed = Grams(up(there.0, trim, WHOLE));
    let onto_the_fire = there.0 - trimmed.0;
    let cooked = known.of(|yields| Grams(down(onto_the_fire, yields, WHOLE)));
    let without_bone = |cooked: Grams| Grams(down(cooked.0, WHOLE - known.refuse, WHOLE));
    let eaten = Range {
        low: without_bone(cooked.low),
        expected: without_bone(cooked.expected),
        high: without_bone(cooked.high),
    };
    MeatAnswer {
        name: meat.name.clone(),
        need_g: need,
        likely_g: likely,
        buy_g: beyond(need),
        likely_buy_g: beyond(likely),
        there_g: there,
        trimmed_g: trimmed,
        cooked_away_g: Grams(onto_the_fire - cooked.expected.0),
        refuse_g: Grams(cooked.expected.0 - eaten.expected.0),
        eaten_g: eaten,
        cooked_g: cooked,
        weighs: known.weighs,
        refused: known.refused,
    }
}

/// The least weight as bought of which `wanted` is eaten where it yields so many thousandths: [`answer`] backwards, each of
/// its three roundings undone exactly.
fn need(known: &CutYield, yields: i64, trim: i64, wanted: Grams) -> Grams {
    let cooked = up(wanted.0, WHOLE, WHOLE - known.refuse);
    let onto_the_fire = up(cooked, WHOLE, yields);
    Grams(up(onto_the_fire, WHOLE, WHOLE - trim))
}

impl CutYield {
    fn of(&self, grams: impl Fn(i64) -> Grams) -> Range {
        Range {
            low: grams(self.low),
            expected: grams(self.expected),
            high: grams(self.high),
        }
    }
}
