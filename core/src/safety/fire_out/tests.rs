use super::*;
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
        found_at: found * MINUTE,
        now: now * MINUTE,
    })
    .unwrap()
}

#[test]
fn a_breast_that_was_warm_when_last_read_and_cool_when_found_has_to_be_hot_before_its_four_hours() {
    let answer = ask(BREAST, vec![at(0, 60), at(5, 62), at(125, 90)], 125, 126);
    let by = 4 * HOUR;
    assert_eq!(
        answer.advice,
        FireOutAdvice::HeatBy {
            above: Mk::from_f(140),
            by
        }
    );
    assert_eq!(answer.unknown_ms, 120 * MINUTE);
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
fn an_intact_butt_has_six_hours_and_a_cooked_one_two() {
    let butt = Kept {
        intact: true,
        ..BREAST
    };
    let raw = ask(butt, vec![at(0, 70), at(300, 110)], 300, 300);
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
    assert_eq!(answer.advice, FireOutAdvice::ReadNow { by: 4 * HOUR });
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
        end in 40i64..170,
        inside in prop::collection::vec(40i64..170, 1..20),
        intact: bool,
        was_hot: bool,
    ) {
        let kept = Kept { intact, was_hot, ..BREAST };
        let now = 11 * (inside.len() as i64 + 1);
        let mut path = vec![at(0, start)];
        path.extend(inside.iter().zip(1..).map(|(f, n)| at(11 * n, *f)));
        path.push(at(now, end));
        let gap = ask(kept, vec![at(0, start), at(now, end)], now, now);
        let known = ask(kept, path, now, now);
        if gap.clocks.was_hot == known.clocks.was_hot {
            prop_assert!(hardness(gap.advice) >= hardness(known.advice), "{gap:?} {known:?}");
        }
    }
}
