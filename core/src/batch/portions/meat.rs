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
    let need = need(&known, trim, wanted);
    let trimmed = Grams(up(there.0, trim, WHOLE));
    let onto_the_fire = there.0 - trimmed.0;
    let refuse = up(onto_the_fire, known.refuse, WHOLE);
    let cooked = known.of(|yields| Grams(down(onto_the_fire, yields, WHOLE)));
    // Of a few grams, rounding may leave less than the bone weighs.
    let without_bone = |cooked: Grams| Grams((cooked.0 - refuse).max(0));
    let eaten = Range {
        low: without_bone(cooked.low),
        expected: without_bone(cooked.expected),
        high: without_bone(cooked.high),
    };
    MeatAnswer {
        name: meat.name.clone(),
        need_g: need,
        buy_g: Grams((need.0 - there.0).max(0)),
        there_g: there,
        trimmed_g: trimmed,
        cooked_away_g: Grams(onto_the_fire - refuse - eaten.expected.0),
        refuse_g: Grams(refuse),
        eaten_g: eaten,
        cooked_g: cooked,
        weighs: known.weighs,
        refused: known.refused,
    }
}

/// The weight as bought of which `wanted` is eaten at the low end. The three grams are what the three roundings of
/// [`answer`] may take: one of what cooks, one of what is bone, one of what is trimmed off.
fn need(known: &CutYield, trim: i64, wanted: Grams) -> Grams {
    let onto_the_fire = up(wanted.0 + 2, WHOLE, known.low - known.refuse);
    Grams(up(onto_the_fire + 1, WHOLE, WHOLE - trim))
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
