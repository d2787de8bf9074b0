//! A screen as plain text, to be read in a golden.

use crate::screens::{Line, Pitside};
use std::fmt::Write;

pub(super) fn shown(screen: &Pitside) -> String {
    let mut out = String::new();
    let now = &screen.now;
    writeln!(out, "{} | {}", screen.clock, screen.serve).unwrap();
    let parts = [&now.verb, &now.what, &now.when].map(String::as_str);
    let big = parts.into_iter().filter(|part| !part.is_empty());
    writeln!(
        out,
        "{:?}: {}",
        now.weight,
        big.collect::<Vec<_>>().join(" / ")
    )
    .unwrap();
    writeln!(out, "  {}", now.why).unwrap();
    let buttons: Vec<&str> = now.buttons.iter().map(|b| b.label.as_str()).collect();
    if !buttons.is_empty() {
        writeln!(out, "  [{}]", buttons.join("] [")).unwrap();
    }
    lines(&mut out, ">", &screen.next);
    lines(&mut out, "-", &screen.meats);
    lines(&mut out, "#", &screen.pits);
    for line in screen.rest.iter().chain(&screen.watch) {
        writeln!(out, "~ {line}").unwrap();
    }
    for notice in &screen.notices {
        writeln!(out, "! {}", notice.text).unwrap();
    }
    if let Some(undo) = &screen.undo {
        writeln!(out, "< {}", undo.label).unwrap();
    }
    out
}

fn lines(out: &mut String, mark: &str, lines: &[Line]) {
    for line in lines {
        let parts = [&line.name, &line.state, &line.detail].map(String::as_str);
        let parts = parts.into_iter().filter(|part| !part.is_empty());
        writeln!(out, "{mark} {}", parts.collect::<Vec<_>>().join(" | ")).unwrap();
    }
}
