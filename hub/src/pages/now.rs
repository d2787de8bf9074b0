//! Now: the page of a propped phone, read at two meters. The one next thing, huge; then the meats, lane by lane.

use super::{Page, Sheet, layout::Head, parts};
use maud::{Markup, html};
use slowbend_core::{
    acts::Act,
    screens::{Headline, Notice, Pitside, Place, Weight},
    words::Arg,
};

/// `poultry`: the meats of which nothing may be out of sight.
pub fn page(sheet: &Sheet<'_>, screen: &Pitside, poultry: &[Place]) -> (Head, Markup) {
    let head = Head {
        title: screen.title.clone(),
        until: screen.until,
        cook: Some(screen.cook),
    };
    let words = sheet.words;
    // That a sheet no longer fits can wait for what is to be done now: it stands below.
    let keeps = |notice: &Notice| {
        let act = notice.dismiss.as_ref().map(|dismiss| &dismiss.act);
        matches!(act, Some(Act::KeepSheet { .. }))
    };
    let (later, told): (Vec<Notice>, Vec<Notice>) = screen.notices.iter().cloned().partition(keeps);
    let is_due = matches!(screen.now.weight, Weight::Wake | Weight::Call);
    let main = html! {
        div .slip {
            h1 { (screen.title) }
            p .clock { (screen.clock) }
            p .serve { (screen.serve) }
        }
        (parts::notices(sheet, &told))
        div .field-of-view {
            (headline(sheet, &screen.now, is_due))
            div .side {
                (undo(sheet, screen))
                section {
                    h2 { (words.meats) }
                    (parts::lanes(&screen.meats, |line| line.link.is_some_and(|link| poultry.contains(&link))))
                    (counts(sheet, screen))
                    @if !screen.others.is_empty() {
                        details { summary { (screen.rest.as_deref().unwrap_or(words.more_meats)) } (parts::lines(&screen.others)) }
                    }
                }
                div .pits { (parts::section(words.pits, &screen.pits)) }
            }
            @if !is_due { (parts::folded_cautions(sheet, &screen.now.cautions)) }
        }
        (parts::notices(sheet, &later))
        (parts::section(words.next, &screen.next))
        @if !screen.watch.is_empty() {
            section { h2 { (words.watch) } ul .plain { @for line in &screen.watch { li { (line) } } } }
        }
        @if !screen.more.is_empty() {
            section .more { h2 { (words.at_hand) } (parts::buttons(sheet, "more", &screen.more)) }
        }
        (parts::links(&screen.links))
    };
    (head, main)
}

/// The one next thing. What is due shows its verb largest; what is still ahead shows how long that is. Its cautions stand in it once it is due; before, the meats are worth more of the first sight.
fn headline(sheet: &Sheet<'_>, now: &Headline, is_due: bool) -> Markup {
    let link = now.link.as_ref();
    let meat = link.filter(|link| matches!(link.place, Place::Piece { .. }));
    html! {
        section .headline data-weight=(parts::weight(now.weight)) data-speech=(now.speech) data-due[is_due] {
            h2 .verb { (now.verb) }
            @if !now.what.is_empty() {
                p .what {
                    @match meat {
                        Some(link) => a href=(Page::from(link.place).path()) { (now.what) },
                        None => (now.what),
                    }
                }
            }
            @if !now.when.is_empty() { p .when { (now.when) } }
            @if !now.why.is_empty() { p .why { (now.why) } }
            (parts::buttons(sheet, "now", &now.buttons))
            @if meat.is_none() && let Some(link) = link { (parts::links(std::slice::from_ref(link))) }
            @if is_due { (parts::short_cautions(sheet, &now.cautions)) }
        }
    }
}

/// How many meats are not shown, for each number of them that a propped screen may have no room for; the script shows the one
/// that is so.
fn counts(sheet: &Sheet<'_>, screen: &Pitside) -> Markup {
    let others = screen.others.len();
    let all = others + screen.meats.len();
    html! {
        @for left in others + 1..=all {
            p .rest hidden data-rest=(left) data-others=(others) {
                (sheet.say.with("screen-more-meats", &[("count", Arg::Number(i64::try_from(left).unwrap_or(i64::MAX)))]))
            }
        }
    }
}

fn undo(sheet: &Sheet<'_>, screen: &Pitside) -> Markup {
    html! {
        @if let Some(undo) = &screen.undo {
            (parts::undo(sheet, undo))
        }
    }
}
