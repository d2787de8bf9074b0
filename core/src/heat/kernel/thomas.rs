//! Three diagonals solved by elimination without pivots (Thomas), which is stable because each row's own coefficient is at
//! least the sum of its neighbors': conduction and seepage have no others.

use super::{lanes::Lanes, number::Real};

/// A chain of cells, each bound to its two neighbors: `own[i] x[i] = from_left[i] x[i-1] + from_right[i] x[i+1] + given[i]`.
#[derive(Clone, Debug)]
pub struct Chain<F, const N: usize, const L: usize> {
    /// What the cell before it gives; of the first nothing.
    pub from_left: [Lanes<F, L>; N],
    /// Its own coefficient.
    pub own: [Lanes<F, L>; N],
    /// What the cell after it gives; of the last nothing.
    pub from_right: [Lanes<F, L>; N],
    /// The right side.
    pub given: [Lanes<F, L>; N],
}

impl<F: Real, const N: usize, const L: usize> Chain<F, N, L> {
    /// A chain of cells that are not bound yet: `own[i] x[i] = given[i]`.
    #[inline(always)]
    pub fn unbound(own: [Lanes<F, L>; N], given: [Lanes<F, L>; N]) -> Self {
        Self {
            from_left: [Lanes::all(0.0); N],
            own,
            from_right: [Lanes::all(0.0); N],
            given,
        }
    }

    /// Binds cell `i` to the next: `right` is what this one gives the next for each unit it holds, `left` what it gets.
    #[inline(always)]
    pub fn bind(&mut self, i: usize, right: Lanes<F, L>, left: Lanes<F, L>) {
        self.from_left[i + 1] = right;
        self.from_right[i] = left;
        self.own[i] = self.own[i] + left;
        self.own[i + 1] = self.own[i + 1] + right;
    }

    /// What all cells come to.
    #[inline(always)]
    pub fn solve(&self) -> [Lanes<F, L>; N] {
        let (mut x, mut onward) = (self.given, self.from_right);
        for i in 0..N {
            let mut own = self.own[i];
            if i > 0 {
                own = own - self.from_left[i] * onward[i - 1];
                x[i] = x[i] + self.from_left[i] * x[i - 1];
            }
            let share = Lanes::all(1.0) / own;
            onward[i] = onward[i] * share;
            x[i] = x[i] * share;
        }
        for i in (0..N.saturating_sub(1)).rev() {
            x[i] = x[i] + onward[i] * x[i + 1];
        }
        x
    }
}
