//! A clock that was never set.

use super::*;

#[test]
fn a_clock_that_was_never_set_records_nothing() {
    let (mut night, r) = Night::on_the_pits();
    for (utc_ms, shown, es) in [
        (0, "Dec 31, 1969, 6:00 PM", "31 dic 1969, 6:00 p. m."),
        (
            7_258_118_400_000,
            "Dec 31, 2199, 6:00 PM",
            "31 dic 2199, 6:00 p. m.",
        ),
    ] {
        night.moment.utc_ms = utc_ms;
        for (locale, begins) in [
            (
                crate::words::Locale::EnUs,
                format!("The clock of this device says {shown},"),
            ),
            (
                crate::words::Locale::EsUs,
                format!("El reloj de este dispositivo marca {es},"),
            ),
        ] {
            night.viewer.locale = locale;
            let said = night.refuses(&stage(r.butt, Stage::Off));
            assert!(said.starts_with(&begins), "{said}");
        }
    }
    night.moment.utc_ms = 4_070_908_800_000;
    assert!(
        night.decide(&stage(r.butt, Stage::Off)).is_ok(),
        "2099 is a device's own business"
    );
}
