//! A button of a screen: it carries its act.

use super::{again, back, on, once_key, record};
use crate::{home::Home, pages::Page, typed::Typed, viewer::Reader, words::words};
use axum::{Form, extract::State, response::Response};
use slowbend_core::{acts::Act, error::Refused, forms::done_ago, moment::Moment};
use std::sync::Arc;

/// Records the act of the button that was pressed.
pub async fn post(
    State(home): State<Arc<Home>>,
    reader: Reader,
    Form(fields): Form<Vec<(String, String)>>,
) -> Response {
    let typed = Typed::from(fields);
    let Some((button, act)) = pressed(&typed, &home.moment()) else {
        let stale = Refused::new(words(reader.viewer.locale).stale_button);
        return again(&home, &reader, typed, stale.into()).await;
    };
    let reader = crate::demo::reader_of(&home, &reader);
    // The button's number is part of the name: two buttons of one form are two acts.
    let next = match &act {
        Act::AcceptPlan { cook, .. } => Page::RunSheet(*cook),
        _ => match back(&typed) {
            // What was proposed there is settled.
            Page::Plan(cook) => Page::RunSheet(cook),
            page => page,
        },
    };
    match record(&home, &reader, &once_key(&typed, &button), act).await {
        Ok(outcome) => on(&home, &reader, next, &outcome),
        Err(trouble) => again(&home, &reader, typed, trouble).await,
    }
}

/// Which button, and its act with the time that was chosen beside it.
fn pressed(typed: &Typed, moment: &Moment) -> Option<(String, Act)> {
    let (button, json) = typed.text("act").split_once('|')?;
    let act = serde_json::from_str(json).ok()?;
    let minutes = typed.text("ago").parse().unwrap_or(0);
    Some((button.to_owned(), done_ago(&act, minutes, moment)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use slowbend_core::moment::MINUTE;

    fn press(act: &str, ago: &str) -> Option<(String, Act)> {
        let typed = Typed::from(vec![("act".into(), act.into()), ("ago".into(), ago.into())]);
        pressed(&typed, &Moment::at(1_795_000_000_000, "UTC"))
    }

    #[test]
    fn a_button_carries_its_act_and_may_say_how_long_ago() {
        let open = |at: &str| {
            format!(
                r#"2|{{"act":"open","pit":null,"wetted":[],"turned":[],"glazed":[],"at":{at}}}"#
            )
        };
        let at = |pressed: Option<(String, Act)>| match pressed {
            Some((button, Act::Open { at, .. })) => (button, at),
            other => panic!("{other:?}"),
        };
        assert_eq!(
            at(press(&open("null"), "5")),
            ("2".into(), Some(1_795_000_000_000 - 5 * MINUTE))
        );
        assert_eq!(at(press(&open("null"), "0")), ("2".into(), None));
        assert_eq!(at(press(&open("7"), "5")), ("2".into(), Some(7)));
        assert!(press("no", "").is_none() && press("1|{}", "").is_none());
    }
}
