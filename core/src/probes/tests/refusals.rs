//! Bad input is told, not guessed at.

use super::super::{
    health_thermometer::{TEMPERATURE_MEASUREMENT as MEASURED, TEMPERATURE_TYPE},
    *,
};

/// 36.4 °C with a time and a place.
const WHOLE: [u8; 13] = [0x06, 0x6C, 0x01, 0x00, 0xFF, 0xEA, 0x07, 7, 4, 15, 30, 0, 2];

#[test]
fn every_length_but_the_one_the_flags_say_is_told() {
    for flags in 0..=u8::MAX {
        let wanted = 5 + [0, 7][usize::from(flags >> 1 & 1)] + usize::from(flags >> 2 & 1);
        for got in 1..=20 {
            let mut bytes = WHOLE[..got.min(13)].to_vec();
            bytes.resize(got, 2);
            bytes[0] = flags;
            match decode(MEASURED, &bytes) {
                Err(NotAWord::Length {
                    wanted: told,
                    got: of,
                }) => {
                    assert_eq!((told, of), (wanted, got));
                    assert_ne!(wanted, got);
                }
                word => assert_eq!(wanted, got, "{word:?}"),
            }
        }
    }
    let empty = NotAWord::Length { wanted: 5, got: 0 };
    assert_eq!(decode(MEASURED, &[]), Err(empty));
}

#[test]
fn the_short_ones_have_one_length_each() {
    for (characteristic, wanted) in [(TEMPERATURE_TYPE, 1), (0x2A21, 2), (0x2A6E, 2)] {
        for got in 0..20 {
            let told = decode(characteristic, &vec![1; got]);
            match got == wanted {
                true => assert!(told.is_ok()),
                false => assert_eq!(told, Err(NotAWord::Length { wanted, got })),
            }
        }
    }
}

#[test]
fn a_time_that_no_calendar_has_is_told() {
    // Which byte of the whole, and what no clock shows there.
    for (byte, bad) in [
        (6, 0x28),
        (6, 1),
        (7, 13),
        (8, 32),
        (9, 24),
        (10, 60),
        (11, 60),
    ] {
        let mut bytes = WHOLE;
        bytes[byte] = bad;
        assert_eq!(
            decode(MEASURED, &bytes),
            Err(NotAWord::NoSuchTime),
            "{bytes:?}"
        );
    }
    let mut february = WHOLE;
    (february[7], february[8]) = (2, 29);
    assert_eq!(decode(MEASURED, &february), Err(NotAWord::NoSuchTime));
    february[5] = 0xEC;
    assert!(decode(MEASURED, &february).is_ok(), "2028 is a leap year");
}

#[test]
fn a_temperature_that_no_probe_shows_is_told() {
    let float = |flags, mantissa: i32, exponent: i8| {
        let [a, b, c, _] = mantissa.to_le_bytes();
        decode(MEASURED, &[flags, a, b, c, exponent as u8])
    };
    assert_eq!(float(0, 800, 0).unwrap().temp, Some(Mk(HOTTEST_MK)));
    assert_eq!(float(0, -60, 0).unwrap().temp, Some(Mk(COLDEST_MK)));
    assert_eq!(float(1, -76, 0).unwrap().temp, Some(Mk(COLDEST_MK)));
    assert_eq!(float(0, 800_001, -3), Err(NotAWord::TooHot));
    assert_eq!(float(0, -60_001, -3), Err(NotAWord::TooCold));
    assert_eq!(float(0, 1, 127), Err(NotAWord::TooHot));
    assert_eq!(float(1, -1, 127), Err(NotAWord::TooCold));
    assert_eq!(decode(0x2A6E, &[0x8F, 0xE8]), Err(NotAWord::TooCold));
    assert_eq!(
        decode(0x2A6E, &[0x90, 0xE8]).unwrap().temp,
        Some(Mk(COLDEST_MK))
    );
}

#[test]
fn flags_that_are_kept_for_later_are_passed_over() {
    let word = decode(MEASURED, &[0xF8, 0x6C, 0x01, 0x00, 0xFF]).unwrap();
    assert_eq!(word.temp, Some(Mk::from_c_milli(36_400)));
}

#[test]
fn a_place_without_a_name_keeps_its_code() {
    for code in [0, 10, 255] {
        let place = decode(TEMPERATURE_TYPE, &[code]).unwrap().place;
        assert_eq!(place, Some(BodyPlace::Other { code: code.into() }));
    }
}

#[test]
fn a_text_that_is_not_hexadecimal_is_told() {
    let ask = |characteristic: &str, hex: &str| {
        let sent = WordInHex {
            characteristic: characteristic.into(),
            hex: hex.into(),
        };
        probe_word(&sent).unwrap_err().to_string()
    };
    for bad in ["2A1", "2A1C0", "+A1C", "0x", ""] {
        assert!(ask(bad, "00").contains("such as 2A1C"));
    }
    for bad in ["0", "0 06C", "zz", "é0", "0x00"] {
        assert!(ask("2A1C", bad).contains(&format!("“{bad}”")));
    }
    assert!(ask("2A00", "00").contains("0x2A00"));
    assert!(ask("2A1C", "").contains("0 bytes instead of 5"));
}

#[test]
fn every_refusal_says_what_to_do() {
    let claimed = LocalTime {
        year: 2026,
        month: 7,
        day: 4,
        hour: 5,
        minute: 6,
        second: 7,
    };
    assert_eq!(
        NotAWord::ClockOff { claimed }.to_string(),
        "The probe's clock says 2026-07-04 05:06:07, which is still to come or more than a day ago. Set it to the time of \
         this place."
    );
    assert_eq!(
        NotAWord::length(12, 5).to_string(),
        "The probe sent a message of 5 bytes instead of 12. Switch it off and on; if it goes on, use another probe."
    );
}
