//! Many cooks at once, on as many threads as there are processors; what comes out stands in the order of its number.

use std::{
    sync::atomic::{AtomicUsize, Ordering},
    thread,
};

/// What each number below `count` comes to.
///
/// # Panics
/// Where one of them does.
pub fn each<T: Send>(count: usize, of: impl Fn(usize) -> T + Sync) -> Vec<T> {
    let next = AtomicUsize::new(0);
    let work = || {
        let mut done = vec![];
        loop {
            let number = next.fetch_add(1, Ordering::Relaxed);
            if number >= count {
                return done;
            }
            done.push((number, of(number)));
        }
    };
    let threads = thread::available_parallelism().map_or(1, usize::from);
    let mut all: Vec<(usize, T)> = thread::scope(|scope| {
        let workers: Vec<_> = (0..threads).map(|_| scope.spawn(work)).collect();
        let done = workers.into_iter().map(|worker| worker.join());
        done.flat_map(|done| done.expect("no cook panics"))
            .collect()
    });
    all.sort_by_key(|(number, _)| *number);
    all.into_iter().map(|(_, one)| one).collect()
}
