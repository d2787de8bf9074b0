//! What comes in by form. Start at [`take`]: one act, recorded once; then on to the page that shows it, or back to the
//! form with the reason and what was typed.

pub mod act;
pub mod card;
pub mod check;
pub mod cook;
pub mod field;
pub mod file;
mod handed;
pub mod meat;
pub mod opening;
pub mod rang;
pub mod settings;
pub mod sheet;
pub mod temp_log;
pub mod write;

use crate::{
    demo,
    home::Home,
    once,
    pages::{Beside, Page, answer, render, troubled},
    typed::Typed,
    viewer::Reader,
    words::words,
};
use axum::{
    http::{StatusCode, header},
    response::{IntoResponse, Response},
};
use slowbend_core::{
    acts::{Act, Outcome},
    error::{Refused, Trouble},
    forms,
    moment::Moment,
    words::{Measure, Words, typed},
};
use std::sync::Arc;

/// What reads a form: the viewer, what was typed, and when it is.
pub struct Reading<'a> {
    /// Core's words, for what was typed.
    pub say: Words<'a>,
    /// Our own words.
    pub words: &'static crate::words::HubWords,
    /// What was typed.
    pub typed: &'a Typed,
    /// When it is.
    pub moment: &'a Moment,
}

impl<'a> Reading<'a> {
    /// Reads for `reader` at `moment`.
    pub fn new(reader: &'a Reader, typed: &'a Typed, moment: &'a Moment) -> Self {
        Self {
            say: Words::of(&reader.viewer),
            words: words(reader.viewer.locale),
            typed,
            moment,
        }
    }

    /// When something was done, by the choice of how long ago; none = now.
    pub fn at(&self) -> Option<i64> {
        forms::ago(self.typed.text("ago").parse().ok()?, self.moment)
    }

    /// The field `name` as a grate or a height, in the viewer's units; none where nothing was typed.
    ///
    /// # Errors
    /// What fits, where it does not.
    pub fn measure(&self, name: &str, of: Measure) -> Result<Option<i64>, Refused> {
        let read = |text| typed::measure(&self.say, of, text);
        let kept = self.typed.given(name).map(read).transpose();
        kept.map_err(|refused| Refused::new(refused.reason))
    }
}

/// Records one act, once, and answers.
pub async fn take(
    home: &Arc<Home>,
    reader: &Reader,
    typed: Typed,
    read: impl FnOnce(&Reading<'_>) -> Result<Act, Refused>,
    next: impl FnOnce(Page, &Outcome) -> Page,
) -> Response {
    let moment = home.moment();
    let reader = &demo::reader_of(home, reader);
    let act = read(&Reading::new(reader, &typed, &moment));
    let done = match act {
        Ok(act) => record(home, reader, &once_key(&typed, "act"), act).await,
        Err(refused) => {
            let blamed = typed.blamed();
            return again_for(home, reader, typed, refused.into(), blamed).await;
        }
    };
    match done {
        Ok(outcome) => on(home, reader, next(back(&typed), &outcome), &outcome),
        Err(trouble) => again(home, reader, typed, trouble).await,
    }
}

/// Records `act` under `key`.
///
/// # Errors
/// What the door answers.
pub async fn record(
    home: &Arc<Home>,
    reader: &Reader,
    key: &str,
    act: Act,
) -> Result<Outcome, Trouble> {
    let (viewer, key) = (reader.viewer.clone(), key.to_owned());
    let outcome = home
        .ask(move |door, moment| door.act_once(&key, &viewer, &act, moment))
        .await?;
    home.changed();
    Ok(outcome)
}

/// The name under which a form's part is recorded: its token, which part of it, and what was typed. So a form that is sent
/// twice is one, and one that was changed after "back" is another. A form without a token of ours gets one, so that it is
/// recorded as if sent for the first time.
pub fn once_key(typed: &Typed, part: &str) -> String {
    once_key_of(typed, part, |_| true)
}

/// The same, of only those fields that the part is made of.
pub fn once_key_of(typed: &Typed, part: &str, is_of_it: impl Fn(&str) -> bool) -> String {
    let token = Some(typed.text("token")).filter(|token| once::is_token(token));
    let token = token.map_or_else(once::token, str::to_owned);
    let frame = ["token", "form", "back"];
    let fields: Vec<_> = typed
        .0
        .iter()
        .filter(|(name, _)| !frame.contains(&name.as_str()) && is_of_it(name))
        .collect();
    let json = serde_json::to_vec(&fields).unwrap_or_default();
    format!("{token}/{part}/{}", &blake3::hash(&json).to_hex()[..32])
}

/// The page the form stood on.
pub fn back(typed: &Typed) -> Page {
    Page::at(typed.text("back")).unwrap_or(Page::Start)
}

/// On to `page`, telling what was done.
pub fn on(home: &Home, reader: &Reader, page: Page, outcome: &Outcome) -> Response {
    let words = words(reader.viewer.locale);
    let said = if outcome.repeated {
        words.already
    } else {
        &outcome.said
    };
    on_saying(home, page, said)
}

/// On to `page`, telling `said`.
pub fn on_saying(home: &Home, page: Page, said: &str) -> Response {
    let told = home.told.keep(said.to_owned());
    let to = format!("{}?told={told}", page.path());
    (StatusCode::SEE_OTHER, [(header::LOCATION, to)]).into_response()
}

/// On to `page`, which says all there is to say.
pub fn to(page: Page) -> Response {
    (StatusCode::SEE_OTHER, [(header::LOCATION, page.path())]).into_response()
}

/// The form again, with the reason and what was typed.
pub async fn again(home: &Arc<Home>, reader: &Reader, typed: Typed, trouble: Trouble) -> Response {
    again_for(home, reader, typed, trouble, None).await
}

/// The same, where one field is what was refused.
pub async fn again_for(
    home: &Arc<Home>,
    reader: &Reader,
    typed: Typed,
    trouble: Trouble,
    blamed: Option<String>,
) -> Response {
    let status = match trouble {
        Trouble::Refused { .. } => StatusCode::UNPROCESSABLE_ENTITY,
        _ => return troubled(reader, &trouble, StatusCode::UNPROCESSABLE_ENTITY),
    };
    let page = back(&typed);
    let beside = Beside {
        refused: Some(trouble.reason().to_owned()),
        blamed,
        typed,
        ..Beside::default()
    };
    match render(home, reader, page, beside).await {
        Ok(markup) => answer(status, markup),
        Err(_) => troubled(reader, &trouble, status),
    }
}

/// The name that core's log gives one of its choices.
pub fn name_of<T: serde::Serialize>(choice: &T) -> String {
    let value = serde_json::to_value(choice).unwrap_or_default();
    value.as_str().unwrap_or_default().to_owned()
}
