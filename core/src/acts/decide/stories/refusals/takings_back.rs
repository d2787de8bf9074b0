//! What may not be taken back or erased.

use super::*;

#[test]
fn what_may_not_be_taken_back_or_erased_is_kept() {
    let (mut night, r) = Night::regatta();
    let unknown = EntryKey {
        log: LogId(nobody()),
        device: DeviceId(nobody()),
        n: 1,
    };
    let woke = night.does(Act::WakeUp).keys[0];
    let voided = night.does(undo(&[woke])).keys[0];
    let erase = |targets: &[EntryKey]| Act::Erase {
        targets: targets.to_vec(),
    };
    let (count, es_count) = (
        "Choose one to 500 entries.",
        "Elige de uno a 500 registros.",
    );
    let (gone, es_gone) = (
        "That entry is not on this device.",
        "Ese registro no está en este dispositivo.",
    );
    let (never, es_never) = ("That cannot be erased", "Eso no se puede borrar");
    let rows = vec![
        (undo(&[]), count, es_count),
        (undo(&[unknown; 501]), count, es_count),
        (erase(&[]), count, es_count),
        (undo(&[woke, unknown]), gone, es_gone),
        (erase(&[unknown]), gone, es_gone),
        (erase(&[voided]), never, es_never),
        (erase(&[r.started[0]]), never, es_never),
        (
            erase(&[woke, r.started[1]]),
            "Those entries belong to several cooks.",
            "Esos registros son de varias cocciones.",
        ),
    ];
    refuse_all(&mut night, rows);
    let erased = night.does(erase(&[woke])).keys[0];
    let rows = vec![
        (
            undo(&[erased]),
            "That cannot be taken back",
            "Eso no se puede deshacer",
        ),
        (erase(&[erased]), never, es_never),
    ];
    refuse_all(&mut night, rows);
}
