//! Law 1 at every byte that matters: the power fails at each place where a write of an act may end.

use slowbend_core::{acts::Act, log::Subject, moment::MINUTE};
use slowbend_tests::{
    kit,
    sim::{faults::Files, place},
};

#[test]
fn an_act_is_there_whole_or_not_at_all_and_all_before_it_is() {
    let root = place::fresh();
    let (living, fallen) = (root.path().join("living"), root.path().join("fallen"));
    let mut door = kit::open(&living, "phone", &kit::six());
    let lunch = kit::lunch(&mut door, &kit::six());
    let note = |text: &str| Act::Note {
        cook: lunch.cook,
        about: Subject::Cook(lunch.cook),
        text: text.into(),
    };
    let acts = [
        note("smoke is thin and blue"),
        Act::Split {
            piece: lunch.ribs,
            names: vec!["Half for the crew".into(), "Half for the coaches".into()],
        },
        note(&"wind from the lake ".repeat(100)),
        Act::WakeUp,
    ];
    let mut cuts = 0;
    for (i, act) in (1..).zip(&acts) {
        let now = kit::six().plus(i * MINUTE);
        let told = kit::entries(&mut door);
        let before = Files::of(&living);
        let recorded = kit::act(&mut door, act, &now).entries;
        let after = Files::of(&living);
        for files in before.cuts(&after) {
            let _ = std::fs::remove_dir_all(&fallen);
            std::fs::create_dir_all(&fallen).unwrap();
            files.put(&fallen);
            let found = kit::entries(&mut kit::open(&fallen, "phone", &now));
            assert_eq!(
                found[..told.len()],
                told[..],
                "{act:?}, the WAL {} bytes long",
                files.wal.len()
            );
            let rest: Vec<_> = found[told.len()..].iter().map(|entry| entry.key).collect();
            assert!(
                rest.is_empty() || rest == recorded,
                "{act:?}: {rest:?} of {recorded:?}"
            );
            cuts += 1;
        }
        if i == 2 {
            door.work(&now, 9).unwrap();
        }
    }
    assert!(cuts > 100, "only {cuts} places");
}
