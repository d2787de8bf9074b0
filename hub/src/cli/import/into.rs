//! Which cook a file goes into.

use crate::{
    cli::{End, Opened},
    pages::Page,
};
use slowbend_core::{ids::CookId, words::Viewer};

const NO_COOK: &str = "There is no cook yet. Start one on the page first: slowbend serve";

/// The cook called `to`, or of that id; without it, the only one under way.
///
/// # Errors
/// Where that is none, or not one.
pub fn cook(opened: &mut Opened, viewer: &Viewer, to: Option<&str>) -> Result<CookId, End> {
    let moment = opened.moment();
    let start = opened.door.start(viewer, None, &moment)?;
    let known =
        start
            .open
            .iter()
            .chain(&start.past)
            .filter_map(|line| match line.link.map(Page::from) {
                Some(Page::Now(cook) | Page::Timeline(cook)) => Some((cook, line.name.as_str())),
                _ => None,
            });
    let known: Vec<(CookId, &str)> = known.collect();
    let Some(to) = to else {
        return only(&known[..start.open.len().min(known.len())], &known);
    };
    if let Ok(id) = to.parse() {
        return Ok(id);
    }
    let named = known
        .iter()
        .filter(|(_, name)| name.to_lowercase() == to.to_lowercase());
    match named.collect::<Vec<_>>()[..] {
        [(cook, _)] => Ok(*cook),
        _ if known.is_empty() => Err(End::refused(NO_COOK)),
        _ => Err(End::refused(format!(
            "No one cook is called “{to}”. Name it by one of these ids:\n{}",
            listed(&known)
        ))),
    }
}

fn only(open: &[(CookId, &str)], known: &[(CookId, &str)]) -> Result<CookId, End> {
    match open {
        [(cook, _)] => Ok(*cook),
        [] if known.is_empty() => Err(End::refused(NO_COOK)),
        _ => Err(End::refused(format!(
            "Which cook? Give --cook with one of these ids:\n{}",
            listed(known)
        ))),
    }
}

fn listed(known: &[(CookId, &str)]) -> String {
    let lines = known.iter().map(|(cook, name)| format!("  {cook}  {name}"));
    lines.collect::<Vec<_>>().join("\n")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn with_several_cooks_the_choice_is_asked_for() {
        let id = |n: u8| CookId(uuid::Uuid::from_bytes([n; 16]));
        let known = [(id(1), "Lunch"), (id(2), "Supper")];
        assert_eq!(only(&known[..1], &known), Ok(id(1)));
        let asked = only(&known, &known).unwrap_err();
        assert!(
            asked.reason().contains("--cook") && asked.reason().contains("Supper"),
            "{}",
            asked.reason()
        );
        assert!(only(&[], &[]).unwrap_err().reason().contains("Start one"));
    }
}
