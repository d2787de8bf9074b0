//! The law of absorbing, by comparing what two stores hold after the same entries in other orders and other pieces.

use super::*;
use crate::{
    ids::Names,
    log::{DeviceNamed, Draft, ErasedFor, Payload},
};
use proptest::prelude::*;
use std::path::Path;
use uuid::Uuid;

fn key((device, n): (u128, i64)) -> EntryKey {
    EntryKey {
        log: LogId(Uuid::from_u128(1)),
        device: DeviceId(Uuid::from_u128(device)),
        n,
    }
}

fn raw(payload: impl Into<Payload>, cook: Option<u128>) -> Body {
    let draft = Draft {
        cook: cook.map(|id| CookId(Uuid::from_u128(id))),
        at: 0,
        payload: payload.into(),
    };
    Body::Raw(draft.raw())
}

/// One version of an entry: of one name there may be many, as a device that was copied writes them.
fn any_entry() -> impl Strategy<Value = Entry> {
    let name = || (1u128..3, 1i64..4);
    let cook = || prop::option::of(7u128..9);
    let erases = (prop::collection::vec(name(), 1..3), cook());
    let body = prop_oneof![
        4 => ("[ab]", cook()).prop_map(|(name, cook)| raw(DeviceNamed { name }, cook)),
        2 => erases.prop_map(|(of, cook)| {
            raw(ErasedFor { targets: of.into_iter().map(key).collect() }, cook)
        }),
        1 => Just(Body::Erased),
    ];
    (name(), 1i64..5, body).prop_map(|(name, stamp, body)| Entry {
        key: key(name),
        stamp: Stamp(stamp),
        body,
    })
}

fn store(place: &Path) -> Store {
    let mut names = Names::new([1; 32]);
    Store::open(place, "here", &mut names, 0).unwrap().store
}

/// All that is held, but for the order of arrival; of what is to be erased, what did not come yet.
fn held(store: &Store) -> Vec<String> {
    let sql = "SELECT log, device, n, stamp, cook, raw FROM entries \
        UNION ALL SELECT log, device, n, stamp, 'fork', raw FROM forks \
        UNION ALL SELECT log, device, n, 0, 'erased', NULL FROM erased \
        WHERE (log, device, n) NOT IN (SELECT log, device, n FROM entries) ORDER BY 1, 2, 3, 4, 5, 6";
    let mut statement = store.connection().prepare(sql).unwrap();
    let rows = statement.query_map([], |row| {
        let value = |i| row.get::<_, rusqlite::types::Value>(i);
        let values: rusqlite::Result<Vec<_>> = (0..6).map(value).collect();
        values.map(|values| format!("{values:?}"))
    });
    rows.unwrap().map(|row| row.unwrap()).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn what_is_held_depends_on_what_came_and_not_on_its_coming(
        (first, second) in prop::collection::vec(any_entry(), 1..14)
            .prop_flat_map(|all| (Just(all.clone()), Just(all).prop_shuffle())),
        split in 1usize..6,
    ) {
        let places = [tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap()];
        let (one, other) = (store(places[0].path()), store(places[1].path()));
        one.absorb(&first).unwrap();
        for part in second.chunks(split) {
            other.absorb(part).unwrap();
            other.absorb(part).unwrap();
        }
        prop_assert_eq!(held(&one), held(&other));
    }
}

#[test]
fn a_number_past_all_counting_is_refused_so_that_this_device_can_count_on() {
    let place = tempfile::tempdir().unwrap();
    let store = store(place.path());
    let ours = |n| Entry {
        key: EntryKey {
            log: store.log,
            device: store.device,
            n,
        },
        stamp: Stamp(1),
        body: Body::Erased,
    };
    let told = store.absorb(&[ours(i64::MAX), ours(0), ours(3)]).unwrap();
    assert_eq!((told.fresh, told.refused), (1, 2));
    assert_eq!(store.next_n().unwrap(), 4);
}
