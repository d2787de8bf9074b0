use super::*;
use crate::safety::food_log::walk::walk;
use crate::{
    checks::Cut,
    moment::{HOUR, MINUTE},
    safety::{Form, clocks::Rules, minimum},
};
use proptest::prelude::*;

const BREAST: Kept = Kept {
    rules: Rules::Consumer,
    hot_air: false,
    intact: false,
    was_hot: false,
};

fn at(minute: i64, f: i64) -> TempAt {
    TempAt {
        at: minute * MINUTE,
        temp: Mk::from_f(f),
    }
}

fn ask(kept: Kept, readings: Vec<TempAt>, found: i64, now: i64) -> FireOutAnswer {
    fire_out(&FireOutInput {
        kept,
        minimum: minimum(Cut::TurkeyBreast, Form::Intact),
        readings,
        burned_until: None,
        outages: vec![],
        found_at: found * MINUTE,
        now: now * MINUTE,
    })
    .unwrap()
}

#[test]
fn a_breast_that_was_warm_when_last_read_and_cool_when_found_has_to_be_hot_before_its_two_hours() {
    let answer = ask(BREAST, vec![at(0, 60), at(5, 62), at(95, 90)], 95, 96);
    let (above, by) = (Mk::from_f(140), 125 * MINUTE);
    assert_eq!(answer.advice, FireOutAdvice::HeatBy { above, by });
    assert_eq!(answer.unknown_ms, 90 * MINUTE);
    assert_eq!(answer.then_to, Mk::from_f(165));
}

#[test]
fn five_hours_of_silence_in_a_raw_breast_are_the_end_of_it_even_if_it_reads_hot_now() {
    let warmed = ask(
        BREAST,
        vec![at(0, 60), at(300, 150), at(301, 150)],
        300,
        301,
    );
    assert_eq!(warmed.advice, FireOutAdvice::Discard);
}

#[test]
fn an_intact_butt_whose_probe_kept_reading_has_six_hours_and_a_cooked_one_two() {
    let butt = Kept {
        intact: true,
        ..BREAST
    };
    let night = (0..=60).map(|n| at(n * 5, 70 + n / 2)).collect();
    let raw = ask(butt, night, 290, 300);
    assert_eq!(
        raw.advice,
        FireOutAdvice::HeatBy {
            above: Mk::from_f(140),
            by: 6 * HOUR
        }
    );
    let cooked = Kept {
        was_hot: true,
        ..butt
    };
    let cooked = ask(cooked, vec![at(0, 180), at(121, 120)], 121, 121);
    assert_eq!(cooked.advice, FireOutAdvice::Discard);
}

#[test]
fn without_a_reading_since_it_is_read_first() {
    let answer = ask(BREAST, vec![at(0, 60), at(5, 62)], 90, 95);
    assert_eq!(answer.advice, FireOutAdvice::ReadNow { by: 125 * MINUTE });
}

#[test]
fn what_stayed_hot_through_a_short_silence_carries_on_with_its_minutes_spent() {
    let kept = Kept {
        was_hot: true,
        ..BREAST
    };
    let answer = ask(kept, vec![at(0, 170), at(30, 165)], 30, 31);
    assert_eq!(answer.advice, FireOutAdvice::CarryOn);
    assert_eq!(answer.clocks.standing.spent_ms, 30 * MINUTE);
}

/// How hard an answer is: discarding is hardest, then by how soon.
fn hardness(advice: FireOutAdvice) -> (i64, i64) {
    match advice {
        FireOutAdvice::Discard => (2, 0),
        FireOutAdvice::HeatBy { by, .. } | FireOutAdvice::ReadNow { by } => (1, -by),
        FireOutAdvice::CarryOn => (0, 0),
    }
}

proptest! {
    /// Law: no path through the gap gives a harder answer than the gap itself.
    #[test]
    fn no_path_through_the_gap_is_harder(
        start in 40i64..170,
        changes in prop::collection::vec(-60i64..60, 2..24),
        intact: bool,
        was_hot: bool,
    ) {
        let kept = Kept { intact, was_hot, ..BREAST };
        let path = walk(start, &changes, 40..=170);
        let now = 9 * changes.len() as i64;
        let gap = ask(kept, vec![path[0], path[changes.len()]], now, now);
        let known = ask(kept, path, now, now);
        prop_assert_eq!(known.unknown_ms, 0);
        prop_assert!(hardness(gap.advice) >= hardness(known.advice), "{:?} {:?}", gap, known);
    }

    /// Law: a fire that burns again makes nothing known of the time that it was out.
    #[test]
    fn no_path_through_an_outage_that_is_over_is_harder(
        start in 40i64..170,
        changes in prop::collection::vec(-60i64..60, 6..24),
        cut in 0usize..5,
        intact: bool,
        was_hot: bool,
    ) {
        let kept = Kept { intact, was_hot, ..BREAST };
        let path = walk(start, &changes, 40..=170);
        let (from, back) = (cut, changes.len() - cut / 2);
        let now = 9 * changes.len() as i64;
        let read = [&path[..=from], &path[back..]].concat();
        let gap = fire_out(&FireOutInput {
            kept,
            minimum: minimum(Cut::TurkeyBreast, Form::Intact),
            outages: vec![Outage { from: path[from].at, back: path[back].at }],
            burned_until: Some(now * MINUTE),
            readings: read,
            found_at: now * MINUTE,
            now: now * MINUTE,
        }).unwrap();
        let known = ask(kept, path, now, now);
        prop_assert!(hardness(gap.advice) >= hardness(known.advice), "{:?} {:?}", gap, known);
    }
}
