//! How a bench is run and told: ours and the peer in turns in one process, medians, one row each.
//!
//! Start at [`in_turns`]. The two sides alternate, and which goes first alternates too, so that what else the machine
//! does hits both. One turn of each is run before and thrown away.

mod table;

pub use table::{Reach, Row, table, time};

use std::{error::Error, time::Duration};

/// What a bench comes to; errors are anything, told as they are.
pub type Result<T> = std::result::Result<T, Box<dyn Error>>;

/// The medians of both sides.
#[derive(Clone, Copy, Debug)]
pub struct Pair {
    /// Ours.
    pub ours: Duration,
    /// The peer's.
    pub peer: Duration,
}

impl Pair {
    /// How much longer ours takes.
    pub fn ratio(&self) -> f64 {
        self.ours.as_secs_f64() / self.peer.as_secs_f64()
    }
}

/// Runs both sides `turns` times in turns; each side answers how long the part that counts took.
pub fn in_turns(
    turns: usize,
    mut ours: impl FnMut() -> Result<Duration>,
    mut peer: impl FnMut() -> Result<Duration>,
) -> Result<Pair> {
    ours()?;
    peer()?;
    let (mut of_ours, mut of_peer) = (vec![], vec![]);
    for turn in 0..turns {
        if turn % 2 == 0 {
            of_ours.push(ours()?);
        }
        of_peer.push(peer()?);
        if turn % 2 == 1 {
            of_ours.push(ours()?);
        }
    }
    Ok(Pair {
        ours: median(of_ours),
        peer: median(of_peer),
    })
}

/// Runs one side `turns` times after a turn that does not count.
pub fn alone(turns: usize, mut ours: impl FnMut() -> Result<Duration>) -> Result<Duration> {
    ours()?;
    Ok(median((0..turns).map(|_| ours()).collect::<Result<_>>()?))
}

/// The one in the middle; there has to be one.
pub fn median(mut times: Vec<Duration>) -> Duration {
    times.sort_unstable();
    times[times.len() / 2]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_sides_take_turns_and_the_middle_counts() {
        let calls = std::cell::RefCell::new(vec![]);
        let side = |name: &'static str| {
            let calls = &calls;
            move || {
                calls.borrow_mut().push(name);
                Ok(Duration::from_millis(calls.borrow().len() as u64))
            }
        };
        let pair = in_turns(3, side("ours"), side("peer")).unwrap();
        let told = calls.borrow().join(" ");
        assert_eq!(told, "ours peer ours peer peer ours ours peer");
        assert_eq!((pair.ours.as_millis(), pair.peer.as_millis()), (6, 5));
    }
}
