//! A thermometer out of its bath.

use super::*;

#[test]
fn a_thermometer_out_of_its_bath_is_not_believed() {
    let mut night = Night::new();
    let name = "Stick".into();
    let thermometer = match night.does(Act::AddThermometer { name }).decision.made[..] {
        [Subject::Thermometer(id)] => id,
        ref other => panic!("one thermometer was made, not {other:?}"),
    };
    let check = |against, read| Act::CheckThermometer {
        thermometer,
        against,
        read,
    };
    let sea = Bath::Boiling { altitude_m: 0 };
    let moon = Bath::Boiling { altitude_m: 6_001 };
    let rows = vec![
        (
            check(Bath::Ice, Mk::from_f(70)),
            "70 °F is too far from 32 °F for crushed ice",
            "70 °F está muy lejos de 32 °F para hielo",
        ),
        (check(Bath::Ice, Mk(i64::MIN)), "", ""),
        (
            check(sea, Mk::from_f(180)),
            "180 °F is too far from 212 °F, where water boils",
            "180 °F está muy lejos de 212 °F, donde hierve",
        ),
        (
            check(moon, Mk::from_f(180)),
            "Altitude goes from",
            "La altitud va de",
        ),
    ];
    refuse_all(&mut night, rows);
}
