use super::{brute, *};
use proptest::prelude::*;

/// Follows each meat through the plan and fails where a wetting is outside its window or missing.
pub fn keeps_every_window(pit: &LidOpenings, plan: &Openings) {
    let mut strays = 0;
    for need in &pit.needs {
        let end = need
            .until_min
            .unwrap_or(i64::MAX)
            .min(pit.from_min + pit.horizon_min);
        let mut due = need.last_min + need.every_min;
        if plan.overdue.contains(&need.name) {
            assert!(
                due + need.late_min < pit.from_min && end > pit.from_min,
                "{need:?} is not overdue"
            );
            due = pit.from_min - need.late_min;
            strays -= need.late_min;
        }
        for opening in plan
            .openings
            .iter()
            .filter(|opening| opening.names.contains(&need.name))
        {
            let window = due - need.early_min..=due + need.late_min;
            assert!(
                window.contains(&opening.at_min),
                "{} at {}, window {window:?}",
                need.name,
                opening.at_min
            );
            strays += (opening.at_min - due).abs();
            due = opening.at_min + need.every_min;
        }
        assert!(
            due + need.late_min >= end || end <= pit.from_min,
            "{} is forgotten at {due}",
            need.name
        );
    }
    assert_eq!(strays, plan.deviation_min);
    assert!(plan.openings.is_sorted_by(|a, b| a.at_min < b.at_min));
    assert_eq!(
        plan.count,
        plan.openings
            .iter()
            .filter(|opening| !opening.fixed)
            .count() as i64
    );
}

fn score(pit: &LidOpenings, plan: &Openings) -> brute::Score {
    let own = plan.openings.iter().filter(|opening| !opening.fixed);
    (
        plan.count,
        plan.deviation_min,
        own.map(|opening| opening.at_min - pit.from_min).sum(),
    )
}

/// The same pit with every minute `by` times as long.
fn scaled(pit: &LidOpenings, by: i64) -> LidOpenings {
    let meat = |need: &Need| Need {
        name: need.name.clone(),
        last_min: need.last_min * by,
        every_min: need.every_min * by,
        early_min: need.early_min * by,
        late_min: need.late_min * by,
        until_min: need.until_min.map(|until| until * by),
    };
    LidOpenings {
        from_min: pit.from_min * by,
        horizon_min: pit.horizon_min * by,
        needs: pit.needs.iter().map(meat).collect(),
        fixed_min: pit.fixed_min.iter().map(|at| at * by).collect(),
    }
}

#[test]
fn a_grid_of_two_meats_equals_brute_force() {
    let rhythms = || {
        [(10, 0), (10, 3), (13, 2), (16, 5)]
            .into_iter()
            .flat_map(|r| [1, 6, 12].map(|ago| (r, ago)))
    };
    for ((every, slack), ago) in rhythms() {
        for ((other_every, other_slack), other_ago) in rhythms() {
            for fixed_min in [vec![], vec![8]] {
                let needs = vec![
                    need("ribs", -ago, every, slack),
                    need("shoulder", -other_ago, other_every, other_slack),
                ];
                let pit = LidOpenings {
                    fixed_min,
                    ..pit(26, needs)
                };
                let plan = plan(&pit);
                assert!(plan.exact);
                assert_eq!(score(&pit, &plan), brute::best(&pit), "{pit:?}");
            }
        }
    }
}

prop_compose! {
    /// One meat whose cadence is `least` minutes or more, wetted at most 30 minutes before or 5 minutes after now.
    fn any_need(least: i64)(
        every_min in least..=2 * least,
        (early, late) in (0i64..=100, 0i64..=100),
        last_min in -30i64..=5,
        until_min in prop::option::weighted(0.2, -5i64..40),
    ) -> Need {
        let half = every_min / 2;
        Need { early_min: half * early / 100, late_min: half * late / 100, until_min, ..need("", last_min, every_min, 0) }
    }
}

fn named(needs: Vec<Need>) -> Vec<Need> {
    needs
        .into_iter()
        .enumerate()
        .map(|(i, need)| Need {
            name: format!("meat {i}"),
            ..need
        })
        .collect()
}

prop_compose! {
    fn small_pit(least: i64, horizon: i64, meats: usize)(
        from_min in -50i64..50,
        horizon_min in 1..=horizon,
        needs in prop::collection::vec(any_need(least), 0..=meats),
        fixed_min in prop::collection::vec(0..horizon, 0..3),
    ) -> LidOpenings {
        let from = |need: Need| Need {
            last_min: need.last_min + from_min,
            until_min: need.until_min.map(|until| until + from_min),
            ..need
        };
        let needs = named(needs.into_iter().map(from).collect());
        LidOpenings { from_min, horizon_min, needs, fixed_min: fixed_min.into_iter().map(|at| at + from_min).collect() }
    }
}

prop_compose! {
    fn large_pit()(
        horizon_min in 1i64..=240,
        needs in prop::collection::vec((10i64..=240, 0i64..=50, 0i64..=50, -400i64..100, prop::option::of(-60i64..600)), 0..=5),
        fixed_min in prop::collection::vec(-60i64..500, 0..8),
    ) -> LidOpenings {
        let need = |(every_min, early, late, last_min, until_min)| Need {
            name: String::new(), last_min, every_min, until_min,
            early_min: every_min * early / 100,
            late_min: every_min * late / 100,
        };
        LidOpenings { fixed_min, ..pit(horizon_min, named(needs.into_iter().map(need).collect())) }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 250, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn up_to_three_meats_equal_brute_force(pit in small_pit(10, 28, 3)) {
        let plan = plan(&pit);
        prop_assert!(plan.exact && plan.at_least == plan.count);
        prop_assert_eq!(score(&pit, &plan), brute::best(&pit));
    }

    /// Every difference that a plan has to keep is a multiple of five, so the best plan can be had on that grid: fixed
    /// which opening serves which meat, the minutes are the dual of a network flow, and its corners are on the grid.
    #[test]
    fn half_hours_and_hours_equal_brute_force_on_a_grid_of_five_minutes(pit in small_pit(3, 20, 3)) {
        let (grid, real) = (brute::best(&pit), scaled(&pit, 5));
        prop_assume!(real.needs.iter().all(|need| need.every_min >= 10));
        let plan = plan(&real);
        prop_assert_eq!(score(&real, &plan), (grid.0, grid.1 * 5, grid.2 * 5));
    }

}

proptest! {
    #![proptest_config(ProptestConfig { cases: 40, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn every_window_is_kept_or_said_to_have_passed(pit in large_pit()) {
        keeps_every_window(&pit, &plan(&pit));
    }

    #[test]
    fn the_order_of_the_meats_and_the_minute_it_is_change_nothing(pit in large_pit(), by in -500i64..500) {
        let told = plan(&pit);
        let mut turned = pit.clone();
        turned.needs.reverse();
        turned.fixed_min.reverse();
        prop_assert_eq!(&told, &plan(&turned));
        turned.from_min += by;
        turned.fixed_min.iter_mut().for_each(|at| *at += by);
        for need in &mut turned.needs {
            need.last_min += by;
            need.until_min = need.until_min.map(|until| until + by);
        }
        let mut moved = plan(&turned);
        moved.openings.iter_mut().for_each(|opening| opening.at_min -= by);
        prop_assert_eq!(told, moved);
    }
}
