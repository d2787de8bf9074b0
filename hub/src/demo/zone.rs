//! The demo's own clock. Its lunch is at two, whenever it is watched, so its pages are read in a zone where it is: one of
//! the zones that lie whole hours from UTC (`Etc/GMT`, IANA time zone database, signs reversed there; from memory).

use crate::{home::Home, viewer::Reader};
use slowbend_core::moment::HOUR;

/// The hour the demo's food is on the table: two o'clock.
const SERVED: i64 = 14;

/// The whole hour nearest to `about`, milliseconds since 1970, and the zone in which it is two o'clock then.
pub fn at_two(about: i64) -> (i64, String) {
    let serve = (about + HOUR / 2).div_euclid(HOUR) * HOUR;
    let ahead = SERVED - serve.div_euclid(HOUR).rem_euclid(24);
    let zone = match ahead {
        0 => "Etc/GMT".into(),
        1.. => format!("Etc/GMT-{ahead}"),
        _ => format!("Etc/GMT+{}", -ahead),
    };
    (serve, zone)
}

/// The reader of the pages of `home`: of the demo's, in the demo's own zone; of any other, as they are.
pub fn reader_of(home: &Home, reader: &Reader) -> Reader {
    let mut reader = reader.clone();
    if let Some(demo) = &home.invented {
        reader.viewer.zone.clone_from(&demo.zone);
        reader.zone_chosen = true;
    }
    reader
}

#[cfg(test)]
mod tests {
    use super::*;
    use slowbend_core::{
        moment::MINUTE,
        words::{Viewer, Words},
    };

    #[test]
    fn at_every_hour_of_the_day_lunch_is_at_two() {
        let device = slowbend_core::ids::DeviceId(uuid::Uuid::nil());
        for quarter in 0..200 {
            let about = crate::tests::NOW + quarter * 15 * MINUTE;
            let (serve, zone) = at_two(about);
            assert!((serve - about).abs() <= HOUR / 2);
            assert!(crate::zone::is_known(&zone), "{zone}");
            let viewer = Viewer {
                zone,
                ..Viewer::default_for(device)
            };
            assert!(Words::of(&viewer).datetime_field(serve).ends_with("T14:00"));
        }
    }
}
