//! Letting other phones in: the code, the address, the fingerprint. Only this machine is shown it.

use super::{Sheet, layout::Head};
use crate::{lan::Lan, qr};
use maud::{Markup, html};
use slowbend_core::{moment::HOUR, words::Arg};

pub fn page(sheet: &Sheet<'_>, lan: Option<&Lan>) -> (Head, Markup) {
    let say = &sheet.say;
    let head = Head {
        title: say.text("phones-title"),
        until: sheet.now + HOUR,
        cook: None,
    };
    let main = html! {
        h1 { (head.title) }
        @match lan {
            None => { p { (say.text("phones-off")) } pre { code { "slowbend --lan" } } }
            Some(lan) => (open(sheet, lan)),
        }
    };
    (head, main)
}

fn open(sheet: &Sheet<'_>, lan: &Lan) -> Markup {
    let say = &sheet.say;
    let address = lan.invitation();
    let host = lan.host();
    html! {
        p { (say.text("phones-lead")) }
        @if let Some(code) = qr::code(&address, &say.text("phones-code")) { (code) }
        p { (say.text("phones-typed")) }
        pre { code { (address) } }
        p { (say.with("phones-warning", &[("host", Arg::Text(&host))])) }
        p .detail { (say.text("phones-fingerprint")) }
        pre { code { (lan.fingerprint) } }
        p .notice { (say.text("phones-may")) }
        div .row {
            (sheet.form("new-code", "/phones/new-code", html! { button .button { (say.text("phones-new-code")) } }))
            details {
                summary { (say.text("phones-send-away")) }
                p { (say.text("phones-send-away-ask")) }
                (sheet.form("send-away", "/phones/send-away", html! { button .button { (say.text("phones-send-away-yes")) } }))
            }
        }
    }
}
