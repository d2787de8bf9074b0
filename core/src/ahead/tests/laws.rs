//! Laws of facts cut short.

use super::along::three_hours;
use crate::{
    ahead::{print, until},
    finish::GRID_MS,
};
use proptest::prelude::*;

proptest! {
    #[test]
    fn cut_short_twice_is_cut_short_once(a in 0i64..40, b in 0i64..40) {
        let facts = three_hours();
        let at = |n: i64| facts.put_on + n * GRID_MS;
        let both = until(&until(&facts, at(a.max(b))), at(a.min(b)));
        let once = until(&facts, at(a.min(b)));
        prop_assert_eq!(print(&both), print(&once));
        prop_assert!(once.inside.iter().flatten().all(|reading| reading.at < once.now));
        prop_assert_eq!(a == b, print(&until(&facts, at(a))) == print(&until(&facts, at(b))));
    }
}
