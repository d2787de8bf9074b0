//! What two meats cost together, exactly. Start with [`Pair`].

use super::meat::{Alone, Meat, Pit};

/// What two meats cost until the end, were they alone in the pit: filled where it is asked for, each cell once. It
/// depends on their rhythms, not on when they are due first.
pub(super) struct Pair {
    a: Meat,
    b: Meat,
    alone: [Alone; 2],
    price: Vec<u64>,
    width: usize,
    /// By both due minutes: one more than the cost; zero where it was not asked for yet.
    cells: Vec<u64>,
}

impl Pair {
    /// The empty table of two meats of `pit`.
    pub fn of(a: &Meat, b: &Meat, pit: &Pit) -> Self {
        let [height, width] = [a, b].map(|meat| (meat.done + meat.late + 1) as usize);
        Self {
            a: a.clone(),
            b: b.clone(),
            alone: [a, b].map(|meat| Alone::of(meat, &pit.price)),
            price: pit.price.clone(),
            width,
            cells: vec![0; width * height],
        }
    }

    /// Whether this is the table of `a` and `b`.
    pub fn is_for(&self, a: &Meat, b: &Meat) -> bool {
        self.a.rhythm() == a.rhythm() && self.b.rhythm() == b.rhythm()
    }

    /// What is left to pay for the two, due at `a` and `b`; where that is `spare` or more, some number from `spare` to
    /// it, for it is not asked exactly then.
    #[inline]
    pub fn cost(&mut self, a: i32, b: i32, spare: u64) -> u64 {
        let cell = (a + self.a.late) as usize * self.width + (b + self.b.late) as usize;
        if self.cells[cell] == 0 {
            let apart = self.alone[0].cost(a).max(self.alone[1].cost(b));
            if apart >= spare {
                return apart;
            }
            self.cells[cell] = 1 + self.least(a, b);
        }
        self.cells[cell] - 1
    }

    /// The least over all first openings: for both, for the one, for the other.
    #[inline(never)]
    fn least(&mut self, a: i32, b: i32) -> u64 {
        if self.a.is_done(a) || self.b.is_done(b) {
            return self.alone[0].cost(a) + self.alone[1].cost(b);
        }
        let (opens_a, opens_b) = (self.a.opens(a), self.b.opens(b));
        let closes = self.a.closes(a).min(self.b.closes(b));
        let mut least = u64::MAX;
        for at in opens_a.max(opens_b)..=closes {
            let now = self.price[at as usize] + self.a.strays(at, a) + self.b.strays(at, b);
            least = self.better(least, now, self.a.after(at), self.b.after(at));
        }
        for at in opens_a..=closes {
            let now = self.price[at as usize] + self.a.strays(at, a);
            least = self.better(least, now, self.a.after(at), b);
        }
        for at in opens_b..=closes {
            let now = self.price[at as usize] + self.b.strays(at, b);
            least = self.better(least, now, a, self.b.after(at));
        }
        least
    }

    #[inline]
    fn better(&mut self, least: u64, now: u64, a: i32, b: i32) -> u64 {
        if now >= least {
            least
        } else {
            least.min(now + self.cost(a, b, least - now))
        }
    }
}
