//! What a pit of many meats costs at least. Start with [`Guide`].

use super::{
    meat::{Alone, Pit},
    pair::Pair,
};

/// The due minute of each meat of a pit, in the pit's order; unused places are zero.
pub(super) type Dues = [i16; super::NEEDS_MAX];

/// Says what is left to pay at least, never more than the true cost; exactly that for one meat or two.
pub(super) struct Guide<'a> {
    pit: &'a Pit,
    alone: Vec<Alone>,
    tables: Vec<Pair>,
    /// The two meats, and which table is theirs.
    pairs: Vec<(usize, usize, usize)>,
}

impl<'a> Guide<'a> {
    /// The guide of `pit`: up to four meats all pairs, beyond that each meat with the one of the shortest cadence.
    pub fn of(pit: &'a Pit) -> Self {
        let alone = pit
            .meats
            .iter()
            .map(|meat| Alone::of(meat, &pit.price))
            .collect();
        let mut guide = Self {
            pit,
            alone,
            tables: Vec::new(),
            pairs: Vec::new(),
        };
        let many = pit.meats.len();
        let firsts = if many <= 4 { many } else { 1 };
        for (i, j) in (0..firsts).flat_map(|i| (i + 1..many).map(move |j| (i, j))) {
            let table = guide.table(i, j);
            guide.pairs.push((i, j, table));
        }
        guide
    }

    fn table(&mut self, i: usize, j: usize) -> usize {
        let (a, b) = (&self.pit.meats[i], &self.pit.meats[j]);
        self.tables
            .iter()
            .position(|table| table.is_for(a, b))
            .unwrap_or_else(|| {
                self.tables.push(Pair::of(a, b, self.pit));
                self.tables.len() - 1
            })
    }

    /// What is left to pay at least: the most that one meat or one pair costs, and of the others what is lost already.
    /// Once that is known to reach `spare`, how far beyond is not asked.
    pub fn at_least(&mut self, dues: &Dues, spare: u64) -> u64 {
        let meats = &self.pit.meats;
        let lost = |i: usize| meats[i].strays_at_least(i32::from(dues[i]));
        let all: u64 = (0..meats.len()).map(lost).sum();
        let costs =
            (0..meats.len()).map(|i| self.alone[i].cost(i32::from(dues[i])) + all - lost(i));
        let mut most = costs.max().unwrap_or(0);
        for (i, j, table) in &self.pairs {
            if most >= spare {
                break;
            }
            let others = all - lost(*i) - lost(*j);
            let spare = spare.saturating_sub(others);
            let cost = self.tables[*table].cost(i32::from(dues[*i]), i32::from(dues[*j]), spare);
            most = most.max(cost + others);
        }
        most
    }
}
