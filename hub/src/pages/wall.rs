//! This wall screen: how it rings, stays awake, how large its letters are and how bright it is. All of it is kept in the
//! browser, because it belongs to the glass and not to the viewer.

use super::{Page, Sheet, layout::Head};
use maud::{Markup, html};

/// The outline's width before a card was held to it, in pixels of the page: a card at the 160 to the inch of most phones.
/// Common practice, no source.
const CARD_USUAL_PX: u32 = 340;
/// The narrowest a card can be drawn: a large wall screen with few pixels. Common practice, no source.
const CARD_MIN_PX: u32 = 60;

pub fn page(sheet: &Sheet<'_>) -> (Head, Markup) {
    let text = |key: &str| sheet.say.text(key);
    let head = Head {
        title: text("wall-title"),
        until: i64::MAX,
        cook: None,
    };
    let main = html! {
        h1 { (head.title) }
        p .lead { (text("wall-lead")) }
        noscript { p .refused { (text("wall-needs-script")) } }
        div #set-up .two hidden {
            section .card {
                h2 { (text("wall-ringing")) }
                p { button #ring-test .button type="button" data-tone="main" data-speech=(text("wall-ring-speech")) { (text("wall-ring-test")) } }
                p #rang role="status" hidden { (text("wall-rang")) }
                p #silent role="status" hidden { (text("wall-silent")) }
                label .outcome { input #say-aloud type="checkbox"; span { (text("wall-aloud")) } }
                p #voice .how hidden { (text("wall-no-voice")) }
            }
            section .card {
                h2 { (text("wall-awake")) }
                p data-if="awake" hidden { (text("wall-awake-yes")) }
                p data-if="insecure" hidden { (text("wall-awake-insecure")) }
                p data-if="unknown" hidden { (text("wall-awake-unknown")) }
                p data-if="refused" hidden { (text("wall-awake-refused")) }
                fieldset {
                    legend { (text("wall-light")) }
                    @for (value, key) in [("", "wall-light-device"), ("bright", "wall-light-bright"), ("dark", "wall-light-dark")] {
                        label .outcome { input type="radio" name="inks" value=(value); span { (text(key)) } }
                    }
                }
            }
            (letters(sheet))
        }
    };
    (head, main)
}

fn letters(sheet: &Sheet<'_>) -> Markup {
    let text = |key: &str| sheet.say.text(key);
    html! {
        section .card {
            h2 { (text("wall-letters")) }
            p { (text("wall-letters-how")) }
            div .card-outline {}
            label .field {
                span { (text("wall-card")) }
                input #card-size type="range" min=(CARD_MIN_PX) step="1" data-usual=(CARD_USUAL_PX);
            }
            div .buttons {
                button .button type="button" data-step="-1" { (text("wall-narrower")) }
                button .button type="button" data-step="1" { (text("wall-wider")) }
                button #card-forget .button type="button" { (text("wall-card-forget")) }
            }
            p .sample { (text("wall-sample-next")) }
            p .sample.small { (text("wall-sample-meats")) }
            p .how { (text("wall-letters-source")) }
        }
    }
}

/// The link to it, from the foot of every page.
pub fn link(sheet: &Sheet<'_>) -> Markup {
    html! { p { a href=(Page::Wall.path()) { (sheet.say.text("wall-link")) } } }
}
