//! The demo's own clock. Its lunch is at two, whenever it is watched, so its pages are read in a zone where it is: one of
//! the zones that lie whole hours from UTC (`Etc/GMT`, IANA time zone database, signs reversed there; from memory).

use super::kept;
use crate::{home::Home, pages::Page, viewer::Reader};
use slowbend_core::{
    door::Slowbend,
    error::Trouble,
    ids::CookId,
    moment::{HOUR, Moment},
    screens::{Line, Place, StartScreen},
    words::Viewer,
};
use std::sync::Arc;

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

/// The reader of `page`: of a demo's, in that demo's own zone; of any other, as they are.
pub async fn reader_of(home: &Arc<Home>, reader: &Reader, page: Page) -> Reader {
    let mut reader = reader.clone();
    let Some(demo) = kept(&home.data) else {
        return reader;
    };
    let cook = match page {
        Page::Now(cook) | Page::Timeline(cook) | Page::Write(cook) => Some(cook),
        Page::Meat(piece) | Page::Check(piece) => {
            let viewer = reader.viewer.clone();
            let found = home.ask(move |door, moment| door.piece(&viewer, piece, moment));
            found.await.ok().map(|screen| screen.cook)
        }
        Page::Start | Page::Settings => None,
    };
    if let Some(zone) = cook.and_then(|cook: CookId| demo.zones.get(&cook)) {
        reader.viewer.zone.clone_from(zone);
    }
    reader
}

/// Tells the times of a demo that is under way in its own zone, on the first page too.
///
/// # Errors
/// What the door answers.
pub fn in_its_zone(
    door: &mut Slowbend,
    viewer: &Viewer,
    (cook, zone): (CookId, String),
    screen: &mut StartScreen,
    moment: &Moment,
) -> Result<(), Trouble> {
    let is_it = |line: &&mut Line| line.link == Some(Place::Now { cook });
    let Some(line) = screen.open.iter_mut().find(is_it) else {
        return Ok(());
    };
    let mut there = viewer.clone();
    there.zone = zone;
    let open = door.start(&there, None, moment)?.open;
    if let Some(told) = open.into_iter().find(|told| told.link == line.link) {
        *line = told;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use slowbend_core::{moment::MINUTE, words::Words};

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
