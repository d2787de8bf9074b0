//! Laws over all bytes.

use super::super::{
    environmental::TEMPERATURE,
    health_thermometer::{
        INTERMEDIATE_TEMPERATURE, MEASUREMENT_INTERVAL, TEMPERATURE_MEASUREMENT, TEMPERATURE_TYPE,
    },
    *,
};
use crate::{
    ids::DeviceId,
    moment::Moment,
    words::{Locale, Viewer},
};
use proptest::{collection::vec, prelude::*};

const READ: [u16; 5] = [
    TEMPERATURE_MEASUREMENT,
    TEMPERATURE_TYPE,
    INTERMEDIATE_TEMPERATURE,
    MEASUREMENT_INTERVAL,
    TEMPERATURE,
];

fn characteristics() -> impl Strategy<Value = u16> {
    prop_oneof![4 => prop::sample::select(&READ[..]), 1 => any::<u16>()]
}

/// Of any length, and often with flags and times that could be sound.
fn sent() -> impl Strategy<Value = Vec<u8>> {
    let stamped = (0..8_u8, any::<[u8; 4]>(), vec(0..32_u8, 0..9));
    prop_oneof![
        vec(any::<u8>(), 0..20),
        stamped.prop_map(|(flags, number, rest)| [&[flags][..], &number, &rest].concat()),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn no_bytes_panic_and_what_is_read_is_a_temperature_in_range_or_a_reason(
        characteristic in characteristics(), bytes in sent(),
    ) {
        if let Ok(word) = decode(characteristic, &bytes) {
            prop_assert_eq!(word.temp.is_some(), word.why_not.is_none());
            prop_assert!(word.temp.is_none_or(|temp| (COLDEST_MK..=HOTTEST_MK).contains(&temp.0)));
            prop_assert!(word.claimed_at.is_none_or(|at| at.wall().is_some()));
        }
    }

    #[test]
    fn there_is_a_reading_or_it_is_said_why_none_in_either_language(
        characteristic in characteristics(), bytes in sent(), utc_ms in any::<i64>(), mars in any::<bool>(),
    ) {
        let zone = if mars { "Mars/Olympus" } else { "America/Chicago" };
        let moment = Moment::at(utc_ms, zone);
        let heard = heard(characteristic, &bytes, &moment);
        let said = Locale::ALL.map(|locale| {
            let viewer = Viewer { locale, ..Viewer::default_for(DeviceId(uuid::Uuid::nil())) };
            why_none(&viewer, characteristic, &bytes, &moment)
        });
        prop_assert!(said.iter().all(|said| said.is_none() == matches!(heard, Ok(Some(_)))));
        prop_assert!(said[0].is_none() || said[0] != said[1]);
        prop_assert!(said.iter().flatten().all(|said| !said.contains('⟨')));
    }

    #[test]
    fn hexadecimal_says_what_the_bytes_say(characteristic in characteristics(), bytes in sent()) {
        let hex: String = bytes.iter().map(|byte| format!("{byte:02x}")).collect();
        let sent = WordInHex { characteristic: format!("0x{characteristic:04x}"), hex };
        prop_assert_eq!(probe_word(&sent), decode(characteristic, &bytes));
    }

    #[test]
    fn any_text_is_read_or_refused(characteristic in ".{0,8}", hex in ".{0,40}") {
        let _word = probe_word(&WordInHex { characteristic, hex });
    }
}
