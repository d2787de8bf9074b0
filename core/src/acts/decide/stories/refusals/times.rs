//! Instants that cannot be meant.

use super::*;

#[test]
fn no_instant_is_taken_that_cannot_be_meant() {
    let (mut night, r) = Night::on_the_pits();
    let now = night.moment.utc_ms;
    let off = |at| Act::SetStage {
        piece: r.butt,
        stage: Stage::Off,
        at: Some(at),
    };
    let serve = |at, zone: &str| {
        let zone = zone.into();
        set(
            Subject::Cook(r.cook),
            Field::Serve(Some(Serve { at, zone })),
        )
    };
    let chicago = "America/Chicago";
    let rows = vec![
        (
            off(0),
            "Dec 31, 1969, 6:00 PM is too long ago",
            "31 dic 1969, 6:00 p. m.: hace demasiado",
        ),
        (
            off(now - 48 * HOUR - 1),
            "Wed 10:59 PM is too long ago",
            "mié 10:59 p. m.: hace demasiado",
        ),
        (
            off(7_258_118_400_000),
            "Dec 31, 2199, 6:00 PM has not come",
            "31 dic 2199, 6:00 p. m.: esa hora",
        ),
        (
            off(now + 10 * MINUTE + 1),
            "11:10 PM has not come yet.",
            "11:10 p. m.: esa hora todavía",
        ),
        (off(i64::MAX), "Dec 30, 9999", "30 dic 9999"),
        (
            Act::Sleep { until: now },
            "Sleep ends after 11:00 PM and before tomorrow 11:00 PM",
            "El descanso termina después de 11:00 p. m.",
        ),
        (
            Act::Sleep {
                until: now + 24 * HOUR + 1,
            },
            "Sleep ends after",
            "El descanso termina",
        ),
        (
            serve(now - HOUR - 1, chicago),
            "9:59 PM is no serving time",
            "9:59 p. m.: esa hora de servir",
        ),
        (
            serve(now + 15 * 24 * HOUR, chicago),
            "Jun 27, 11:00 PM is no serving time",
            "27 jun, 11:00 p. m.: esa hora de servir",
        ),
        (
            serve(now + HOUR, "Mars/Base"),
            "The time zone “Mars/Base” is not known",
            "La zona horaria “Mars/Base” no se conoce",
        ),
    ];
    refuse_all(&mut night, rows);
    for at in [now - 48 * HOUR, now + 10 * MINUTE] {
        assert_eq!(night.decide(&off(at)).unwrap().drafts[0].at, at);
    }
}
