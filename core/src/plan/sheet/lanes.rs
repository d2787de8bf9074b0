//! Jobs of one slot, one after the other, in as many rows as there are hands. Start at [`lay`].

use crate::plan::{answer::Job, household::GRID_MIN, model::Model};

/// Sets the minutes of jobs with hands on inside their slots, so that no pair of hands has two at once. They fit: the search
/// saw to it.
pub(super) fn lay(jobs: &mut [Job], hands: usize) {
    let mut order: Vec<usize> = (0..jobs.len())
        .filter(|at| jobs[*at].hands_min > 0 && !jobs[*at].done)
        .collect();
    order.sort_by(|a, b| key(&jobs[*a]).cmp(&key(&jobs[*b])));
    let mut slot = i64::MIN;
    let mut rows: Vec<Vec<usize>> = vec![];
    let mut busy: Vec<i64> = vec![i64::MIN; hands];
    for at in order {
        let its = jobs[at].start_min.div_euclid(GRID_MIN);
        if its != slot {
            settle(jobs, &rows, &mut busy, slot);
            (slot, rows) = (its, vec![vec![]; hands]);
        }
        let counted = i64::from(Model::hands_on(jobs[at].hands_min));
        let free = |row: &usize| {
            let taken: i64 = rows[*row]
                .iter()
                .map(|at| i64::from(Model::hands_on(jobs[*at].hands_min)))
                .sum();
            busy[*row] <= slot * GRID_MIN && (taken == 0 || taken + counted <= GRID_MIN)
        };
        let row = (0..hands).find(free).unwrap_or(0);
        rows[row].push(at);
    }
    settle(jobs, &rows, &mut busy, slot);
}

/// By slot; in it the longest first, so that short ones fill what is left.
fn key(job: &Job) -> (i64, i64, &str) {
    (
        job.start_min.div_euclid(GRID_MIN),
        -i64::from(Model::hands_on(job.hands_min)),
        &job.id,
    )
}

/// Lays a row's jobs one after the other, in the order of what is done.
fn settle(jobs: &mut [Job], rows: &[Vec<usize>], busy: &mut [i64], slot: i64) {
    for (row, taken) in rows.iter().enumerate() {
        let mut taken = taken.clone();
        taken.sort_by(|a, b| (jobs[*a].what, &jobs[*a].id).cmp(&(jobs[*b].what, &jobs[*b].id)));
        let mut at = slot.saturating_mul(GRID_MIN);
        for nr in taken {
            let job = &mut jobs[nr];
            let moved = at - job.start_min;
            job.start_min = at;
            // Where only its hands-on time counts, its end moves along.
            if job.end_min - job.hands_min + moved == job.start_min
                || job.end_min < at + job.hands_min
            {
                job.end_min = at + job.hands_min;
            }
            at += i64::from(Model::hands_on(job.hands_min));
        }
        busy[row] = busy[row].max(at);
    }
}
