//! The cuts: a list that can be searched, and a page for each.

use super::{Page, layout::Head, parts};
use axum::{Json, extract::Query};
use maud::{Markup, html};
use serde::Deserialize;
use slowbend_core::{
    catalogue::find,
    checks::Cut,
    screens::{CutChoice, CutFact, CutScreen, CutTest, CutsScreen},
};

/// All cuts, or those that are sought.
pub fn all(screen: &CutsScreen) -> (Head, Markup) {
    let main = html! {
        h1 { (screen.title) }
        p .lead { (screen.lead) }
        form .find method="get" action=(Page::Cuts.path()) role="search" {
            label .field { span { (screen.find) } input type="search" name="find" value=(screen.sought) autocomplete="off" maxlength="80"; }
            button .button { (screen.search) }
        }
        @if let Some(none) = &screen.none { p .notice role="status" { (none) } }
        @if !screen.cuts.is_empty() { ul .lines.quiet { @for cut in &screen.cuts { (choice(cut)) } } }
        @if !screen.sought.is_empty() { p .links { a .button href=(Page::Cuts.path()) { (screen.all) } } }
    };
    (head(&screen.title, screen.until), main)
}

fn choice(cut: &CutChoice) -> Markup {
    html! {
        li .line { a href=(Page::Cut(cut.cut).path()) { span .name { (cut.name) } " " span .detail { (cut.detail) } } }
    }
}

/// One cut.
pub fn one(screen: &CutScreen) -> (Head, Markup) {
    let main = html! {
        h1 { (screen.title) }
        p .detail { (screen.also) }
        p .lead { (screen.about) }
        (parts::cautions(&screen.cautions))
        (facts(&screen.facts))
        section { h2 { (screen.tests_heading) } ol .tests { @for test in &screen.tests { (one_test(test)) } } }
        section { h2 { (screen.wrong_heading) } p { (screen.wrong) } }
        section { h2 { (screen.made_of_heading) } (facts(&screen.made_of)) }
        p .links { a .button href=(Page::Cuts.path()) { (screen.all) } }
    };
    (head(&screen.title, screen.until), main)
}

fn head(title: &str, until: i64) -> Head {
    Head {
        title: title.to_owned(),
        until,
        cook: None,
    }
}

fn facts(facts: &[CutFact]) -> Markup {
    html! {
        dl .cut-facts {
            @for fact in facts {
                div { dt { (fact.name) } dd { strong { (fact.value) } @if !fact.how.is_empty() { " " span .how { (fact.how) } } " " cite { (fact.source) } } }
            }
        }
    }
}

fn one_test(test: &CutTest) -> Markup {
    html! {
        li {
            h3 { (test.name) }
            p .how { (test.how) }
            @if !test.spots.is_empty() { ul { @for spot in &test.spots { li { (spot) } } } }
            @if !test.outcomes.is_empty() {
                dl .outcomes { @for outcome in &test.outcomes { div { dt { (outcome.label) } dd { (outcome.means) } } } }
            }
        }
    }
}

/// What is asked of [`found`].
#[derive(Debug, Default, Deserialize)]
pub struct Sought {
    /// What was typed.
    #[serde(default)]
    find: String,
}

/// The names of the cuts that can be meant, the nearest first, for a list that narrows while somebody types.
pub async fn found(Query(sought): Query<Sought>) -> Json<Vec<Cut>> {
    Json(find(&sought.find))
}
