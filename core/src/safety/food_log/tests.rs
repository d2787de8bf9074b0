use super::*;

fn at(second: i64, f: i64) -> TempAt {
    TempAt {
        at: second * SECOND,
        temp: Mk::from_f(f),
    }
}

fn doubts(readings: &[TempAt]) -> Vec<Option<Doubt>> {
    let mut follow = Follow::default();
    let steps = readings.iter().filter_map(|one| follow.push(*one).unwrap());
    steps.map(|step| step.doubt).collect()
}

#[test]
fn what_food_does_is_believed() {
    let rising = [at(0, 140), at(30, 141), at(60, 142), at(600, 150)];
    assert_eq!(doubts(&rising), [None; 3]);
}

#[test]
fn a_probe_pulled_into_the_hot_air_is_doubted_until_it_is_back() {
    let pulled = [
        at(0, 140),
        at(10, 215),
        at(20, 220),
        at(3600, 221),
        at(3610, 145),
        at(3640, 146),
    ];
    let jump = Some(Doubt::Jump);
    assert_eq!(doubts(&pulled), [jump, jump, jump, None, None]);
}

#[test]
fn a_probe_that_creeps_up_after_a_jump_stays_doubted() {
    let moved: Vec<_> = [at(0, 140), at(10, 160)]
        .into_iter()
        .chain((1..400).map(|n| at(10 + n * 60, 160 + n / 20)))
        .collect();
    assert!(
        doubts(&moved)
            .iter()
            .all(|doubt| *doubt == Some(Doubt::Jump))
    );
}

#[test]
fn silence_and_fire_are_not_known() {
    let readings = [at(0, 140), at(601, 141), at(610, 900), at(620, 142)];
    assert_eq!(doubts(&readings), [Some(Doubt::Gap), Some(Doubt::NotFood)]);
}

#[test]
fn what_is_out_of_order_is_refused() {
    let mut follow = Follow::default();
    follow.push(at(10, 140)).unwrap();
    assert_eq!(follow.push(at(9, 140)), Err(NotALog::OutOfOrder));
    follow.push(at(10, 140)).unwrap();
}
