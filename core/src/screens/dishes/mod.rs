//! What is not meat: ready or not, held hot or cold, and for how long. Start at [`dishes`].
//!
//! No clock here knows how warm a dish is: what is counted is the time since it was ready, and the caution says what that
//! means. Law: no line calls a dish safe.

mod records;

pub use records::*;

use super::{Line, Link, Place, Tone, Weight, buttons::button, glance::Glance};
use crate::{
    acts::Act,
    alarms,
    cook::{Cook, Dish, Known, ahead::counts},
    ids::CookId,
    log::Subject,
    moment::{HOUR, MINUTE, Moment},
    safety::Doing,
    units::Mk,
    words::{Arg, Viewer, key},
};

/// The two hours of USDA's rule: see the source of the caution on them.
const TWO_HOURS_MS: i64 = 2 * HOUR;
/// So long before, it is said; and so long before serving a dish that is not ready asks for an eye, in milliseconds.
/// Common practice, no source.
const SOON_MS: i64 = 30 * MINUTE;
/// So many notes of a dish are shown.
const NOTES_SHOWN: usize = 5;

/// The dishes of a cook; none where it is not known here.
pub fn dishes(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    moment: &Moment,
) -> Option<DishesScreen> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    let dues = alarms::due_in(known, cook.id, moment.utc_ms);
    let mut all: Vec<DishCard> = cook
        .dishes
        .values()
        .map(|dish| glance.dish_card(cook, dish))
        .collect();
    all.sort_by(|a, b| (a.weight, &a.name, a.dish).cmp(&(b.weight, &b.name, b.dish)));
    Some(DishesScreen {
        cook: cook.id,
        title: glance.say.text("dishes-title"),
        serve: glance.serve(cook),
        dishes: all,
        none: glance.say.text("dishes-none"),
        labels: glance.dish_labels(),
        links: glance.links_to(&[(key("link-now"), Place::Now { cook: cook.id })]),
        cautions: glance.cautions(Doing::HoldingDishes),
        until: glance.until(&dues),
    })
}

impl Glance<'_> {
    /// Links with their labels.
    pub fn links_to(&self, places: &[(&'static str, Place)]) -> Vec<Link> {
        let link = |(label, place): &(&'static str, Place)| Link {
            label: self.say.text(label),
            place: *place,
        };
        places.iter().map(link).collect()
    }

    fn dish_card(&self, cook: &Cook, dish: &Dish) -> DishCard {
        let since = dish
            .ready
            .map(|when| when.at)
            .filter(|at| counts(*at, self.now));
        DishCard {
            dish: dish.id,
            name: dish.name.value.clone(),
            state: self.dish_state(since),
            detail: self.dish_detail(dish, since),
            weight: self.dish_weight(cook, since),
            buttons: match cook.is_open() {
                true => vec![self.ready_button(cook, dish, since.is_none())],
                false => vec![],
            },
            notes: self.notes_about(cook, Subject::Dish(dish.id)),
        }
    }

    fn dish_state(&self, since: Option<i64>) -> String {
        let Some(since) = since else {
            return self.say.text("dish-state-not-ready");
        };
        let (time, lasting) = (self.say.the_clock_day(since, self.now), self.lasting(since));
        let args = [("time", Arg::Text(&time)), ("lasting", Arg::Text(&lasting))];
        self.say.with("dish-state-ready", &args)
    }

    /// How it is held; once it has stood for two hours, what that means where nobody read it.
    fn dish_detail(&self, dish: &Dish, since: Option<i64>) -> String {
        let [cold, hot] = [40, 140].map(|f| self.say.temperature(Mk::from_f(f)));
        let held = match dish.hot {
            true => self.say.with("dish-held-hot", &[("hot", Arg::Text(&hot))]),
            false => self
                .say
                .with("dish-held-cold", &[("cold", Arg::Text(&cold))]),
        };
        let args = [("cold", Arg::Text(&cold)), ("hot", Arg::Text(&hot))];
        match since.map(|since| self.ahead(since).saturating_neg()) {
            Some(TWO_HOURS_MS..) => [held, self.say.with("dish-two-hours", &args)].join(" "),
            _ => held,
        }
    }

    fn dish_weight(&self, cook: &Cook, since: Option<i64>) -> Weight {
        match since.map(|since| self.ahead(since).saturating_neg()) {
            Some(TWO_HOURS_MS..) => return Weight::Call,
            Some(stood) if stood >= TWO_HOURS_MS - SOON_MS => return Weight::Soon,
            Some(_) => return Weight::Calm,
            None => {}
        }
        let serve = cook.serve.value.as_ref().filter(|_| cook.is_open());
        match serve.map(|serve| self.ahead(serve.at)) {
            Some(ahead) if ahead <= SOON_MS => Weight::Call,
            Some(ahead) if ahead <= 2 * SOON_MS => Weight::Soon,
            _ => Weight::Calm,
        }
    }

    fn ready_button(&self, cook: &Cook, dish: &Dish, ready: bool) -> super::Button {
        let (label, tone) = match ready {
            true => (key("button-dish-ready"), Tone::Main),
            false => (key("button-dish-not-ready"), Tone::Plain),
        };
        let (cook, dish) = (cook.id, dish.id);
        button(
            self.say.text(label),
            Act::ReadyDish { cook, dish, ready },
            tone,
        )
    }

    /// What was written down about something, latest first.
    pub fn notes_about(&self, cook: &Cook, about: Subject) -> Vec<Line> {
        let notes = cook.notes.iter().rev().filter(|note| note.about == about);
        let line = |note: &crate::cook::Note| Line {
            name: self.say.clock_day(note.when.at, self.now),
            state: note.text.clone(),
            detail: self.device(note.when.entry.device),
            weight: Weight::Calm,
            link: None,
        };
        notes.take(NOTES_SHOWN).map(line).collect()
    }

    fn dish_labels(&self) -> DishLabels {
        DishLabels {
            add: self.say.text("dishes-add"),
            name: self.say.text("field-name"),
            held: self.say.text("dishes-held"),
            hot: self.say.text("dishes-hot"),
            cold: self.say.text("dishes-cold"),
            note: self.say.text("dishes-note"),
            write: self.say.text("dishes-write"),
        }
    }
}
