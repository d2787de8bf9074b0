//! What two meats cost together, exactly; and from that, what many cost at least. Start with [`Guide`].

use super::meat::{Alone, Meat, Pit};

/// What two meats cost until the end, were they alone in the pit: filled where it is asked for, each cell once.
struct Pair {
    a: Meat,
    b: Meat,
    width: usize,
    /// By both due minutes: one more than the cost; zero where it was not asked for yet.
    cells: Vec<u64>,
}

impl Pair {
    fn of(a: &Meat, b: &Meat, price: &[u64]) -> Self {
        let [height, width] = [a, b].map(|meat| (meat.done + meat.late + 1) as usize);
        let mut pair = Self {
            a: a.clone(),
            b: b.clone(),
            width,
            cells: vec![0; width * height],
        };
        let [alone_a, alone_b] = [a, b].map(|meat| Alone::of(meat, price));
        for due in -a.late..=a.done {
            let cell = pair.cell(due, b.done);
            pair.cells[cell] = 1 + alone_a.cost(due);
        }
        for due in -b.late..=b.done {
            let cell = pair.cell(a.done, due);
            pair.cells[cell] = 1 + alone_b.cost(due);
        }
        pair
    }

    fn cell(&self, a: i32, b: i32) -> usize {
        (a + self.a.late) as usize * self.width + (b + self.b.late) as usize
    }

    /// What is left to pay for the two, due at `a` and `b`.
    #[inline]
    fn cost(&mut self, a: i32, b: i32, price: &[u64]) -> u64 {
        let cell = self.cell(a, b);
        if self.cells[cell] == 0 {
            self.cells[cell] = 1 + self.least(a, b, price);
        }
        self.cells[cell] - 1
    }

    /// The least over all first openings: for the one, for the other, for both.
    #[inline(never)]
    fn least(&mut self, a: i32, b: i32, price: &[u64]) -> u64 {
        let (opens_a, opens_b) = (self.a.opens(a), self.b.opens(b));
        let closes = self.a.closes(a).min(self.b.closes(b));
        let mut least = u64::MAX;
        for at in opens_a..=closes {
            let left = self.cost(self.a.after(at), b, price);
            least = least.min(price[at as usize] + self.a.strays(at, a) + left);
        }
        for at in opens_b..=closes {
            let left = self.cost(a, self.b.after(at), price);
            least = least.min(price[at as usize] + self.b.strays(at, b) + left);
        }
        for at in opens_a.max(opens_b)..=closes {
            let left = self.cost(self.a.after(at), self.b.after(at), price);
            least =
                least.min(price[at as usize] + self.a.strays(at, a) + self.b.strays(at, b) + left);
        }
        least
    }
}

/// The due minute of each meat of a pit, in the pit's order; unused places are zero.
pub(super) type Dues = [i16; super::NEEDS_MAX];

/// Says what is left to pay at least, never more than the true cost; exactly that for one meat or two.
pub(super) struct Guide<'a> {
    pit: &'a Pit,
    alone: Vec<Alone>,
    pairs: Vec<(usize, usize, Pair)>,
}

impl<'a> Guide<'a> {
    /// The guide of `pit`: up to four meats all pairs, beyond that each meat with the one of the shortest cadence.
    pub fn of(pit: &'a Pit) -> Self {
        let many = pit.meats.len();
        let firsts = if many <= 4 { many } else { 1 };
        let pairs = (0..firsts).flat_map(|i| (i + 1..many).map(move |j| (i, j)));
        Self {
            pit,
            alone: pit
                .meats
                .iter()
                .map(|meat| Alone::of(meat, &pit.price))
                .collect(),
            pairs: pairs
                .map(|(i, j)| (i, j, Pair::of(&pit.meats[i], &pit.meats[j], &pit.price)))
                .collect(),
        }
    }

    /// What is left to pay at least: the most that one meat or one pair costs, and of the others what is lost already.
    pub fn at_least(&mut self, dues: &Dues) -> u64 {
        let meats = &self.pit.meats;
        let lost = |i: usize| meats[i].strays_at_least(i32::from(dues[i]));
        let all: u64 = (0..meats.len()).map(lost).sum();
        if let [alone] = &self.alone[..] {
            return alone.cost(i32::from(dues[0]));
        }
        let price = &self.pit.price;
        let bounds = self.pairs.iter_mut().map(|(i, j, pair)| {
            pair.cost(i32::from(dues[*i]), i32::from(dues[*j]), price) + all - lost(*i) - lost(*j)
        });
        bounds.max().unwrap_or(0)
    }
}
