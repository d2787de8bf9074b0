//! The card of a cook: to be scanned, kept as a file, sent as text or printed. Start at [`card`].

use super::{Caution, Line, Weight, glance::Glance};
use crate::{
    card::{Card, CardAsk, CardDish, CardMeat, CardServe, of_cook},
    checks::cuts::Degrees,
    cook::{Crew, Known},
    ids::CookId,
    log::Meant,
    moment::{MINUTE, Moment},
    qr::{Qr, qr},
    readings::Tails,
    safety::{CautionKind, Form, minimum},
    units::Mk,
    words::{
        Arg, Viewer, Words,
        typed::{Seek, time_field},
    },
};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// The card of a cook.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct CardScreen {
    /// The cook.
    pub cook: CookId,
    /// Heading: what the cook is called.
    pub title: String,
    /// When it is on the table, for how many, and who wrote it.
    pub about: Vec<String>,
    /// The pits it was meant for.
    pub pits: Vec<Line>,
    /// The meats.
    pub meats: Vec<Line>,
    /// What is not meat.
    pub dishes: Vec<Line>,
    /// What is to be remembered.
    pub notes: Vec<String>,
    /// The published minimum of each cut in its form, with who says so: whoever has the card has these too.
    pub minimums: Vec<String>,
    /// The card itself, as short as it gets: what is scanned, pasted or sent.
    pub text: String,
    /// The card as a file.
    pub file: String,
    /// A name for the file.
    pub file_name: String,
    /// The plan as plain words, for whoever has no Slowbend.
    pub words: String,
    /// The code of the text; none where it is too long for one.
    pub qr: Option<Qr>,
    /// What to do with the code, or with the file where there is no code.
    pub how: String,
    /// What goes before whatever a card says.
    pub cautions: Vec<Caution>,
    /// The labels of the page.
    pub labels: CardLabels,
    /// Until when this is true.
    pub until: i64,
}

/// The labels of the page of a card.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct CardLabels {
    /// Heading of the dishes.
    pub dishes: String,
    /// Heading of the notes.
    pub notes: String,
    /// What the code is, for who hears it.
    pub code: String,
    /// The button that keeps the file.
    pub file: String,
    /// The button that sends the card as text.
    pub text: String,
    /// The button that sends the plan in plain words.
    pub words: String,
    /// Heading of what goes on it.
    pub asked: String,
    /// Label of who wrote it.
    pub by: String,
    /// Label of the switch for the notes.
    pub with_notes: String,
    /// The button that makes it so.
    pub make: String,
}

/// The card of `cook`; none where there is no such cook here.
pub fn card(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    ask: &CardAsk,
    moment: &Moment,
) -> Option<CardScreen> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    let card = of_cook(&glance.say, cook, known.crew, ask, moment.utc_ms);
    let text = card.compact();
    let qr = qr(&text);
    Some(CardScreen {
        cook: cook.id,
        title: glance.cook_name(&card.name, cook.demo),
        about: glance.card_about(&card),
        pits: glance.card_pits(&card),
        meats: glance.card_meats(&card),
        dishes: glance.card_dishes(&card.dishes),
        notes: card.notes.clone(),
        minimums: glance.card_minimums(&card),
        file: card.pretty(),
        file_name: file_name(&card.name),
        words: glance.card_words(&card),
        how: match &qr {
            Some(_) => glance.say.text("card-how-scan"),
            None => glance.say.text("card-how-file"),
        },
        text,
        qr,
        cautions: glance.caution_texts(&heeded(&card)),
        labels: labels(&glance.say),
        until: glance.until(&[]),
    })
}

fn labels(say: &Words<'_>) -> CardLabels {
    CardLabels {
        dishes: say.text("card-dishes"),
        notes: say.text("card-notes"),
        code: say.text("card-code"),
        file: say.text("card-file"),
        text: say.text("card-text"),
        words: say.text("card-words"),
        asked: say.text("card-for"),
        by: say.text("card-by"),
        with_notes: say.text("card-with-notes"),
        make: say.text("card-make"),
    }
}

/// The plan of a card in plain words, for whoever has no Slowbend.
pub fn card_words(viewer: &Viewer, card: &Card, moment: &Moment) -> String {
    let (crew, cooks, tails) = (Crew::default(), BTreeMap::new(), Tails::default());
    let nothing = Known {
        crew: &crew,
        cooks: &cooks,
        tails: &tails,
        ahead: &crate::ahead::NOTHING,
        lessons: &crate::ahead::UNTAUGHT,
        device: viewer.device,
        warnings: &[],
    };
    Glance::of(&nothing, viewer, moment).card_words(card)
}

/// The cautions that go with a card, the deferring one last.
fn heeded(card: &Card) -> Vec<CautionKind> {
    let poultry = card.meats.iter().any(|meat| meat.cut.is_poultry());
    let first = poultry.then_some(CautionKind::PoultryThreePlaces);
    first
        .into_iter()
        .chain([CautionKind::LocalRulesFirst])
        .collect()
}

/// A name that every disk takes: letters and digits of the cook's name.
fn file_name(name: &str) -> String {
    let plain: String = name
        .chars()
        .map(|c| if c.is_alphanumeric() { c } else { '-' })
        .collect();
    let parts: Vec<&str> = plain.split('-').filter(|part| !part.is_empty()).collect();
    let name = parts.join("-").to_lowercase();
    match name.as_str() {
        "" => "cook.card.json".into(),
        name => format!("{name}.card.json"),
    }
}

impl Glance<'_> {
    fn card_about(&self, card: &Card) -> Vec<String> {
        let serve = card.serve.as_ref().map(|serve| self.card_serve(serve));
        let people = card.people.map(|people| {
            self.say
                .with("card-people", &[("people", Arg::Number(people))])
        });
        let by = self.card_by(card);
        [serve, people, by].into_iter().flatten().collect()
    }

    pub(super) fn card_by(&self, card: &Card) -> Option<String> {
        let by = card.by.as_ref()?;
        Some(self.say.with("card-by-line", &[("by", Arg::Text(by))]))
    }

    fn card_serve(&self, serve: &CardServe) -> String {
        let time = match serve {
            CardServe::At(at) => {
                let read = time_field(&self.say, at, self.now, Seek::Next);
                read.map_or_else(|_| at.clone(), |at| self.say.the_clock(at))
            }
            CardServe::AfterMin(minutes) => {
                let after = self.say.duration(minutes * MINUTE);
                let args = [("after", Arg::Text(&after))];
                return self.say.with("card-serve-after", &args);
            }
        };
        self.say
            .with("card-serve-at", &[("time", Arg::Text(&time))])
    }

    fn card_pits(&self, card: &Card) -> Vec<Line> {
        let pits = card.pits.iter();
        pits.map(|pit| {
            let held = pit.held.as_ref();
            let held =
                held.map(|held| self.say.temperature_span(Mk(held.low_mk), Mk(held.high_mk)));
            plain_line(&pit.name, self.pit_kind(pit.kind), held.unwrap_or_default())
        })
        .collect()
    }

    pub(super) fn card_meats(&self, card: &Card) -> Vec<Line> {
        let meats = card.meats.iter();
        meats.map(|meat| self.card_meat(card, meat)).collect()
    }

    fn card_meat(&self, card: &Card, meat: &CardMeat) -> Line {
        let cut = self.say.text(meat.cut.key());
        let form = meat.form.filter(|form| *form != Form::Intact);
        let form = form.map(|form| self.say.text(form.key()));
        let weight = meat.weight_g.map(|grams| self.say.weight(grams));
        let name = meat.name.clone().unwrap_or_else(|| cut.clone());
        let cut = (name != cut).then_some(cut);
        let state: Vec<String> = [cut, form, weight].into_iter().flatten().collect();
        plain_line(&name, state.join(" · "), self.card_meant(card, meat))
    }

    /// "Drum · mopped every 30 min · taken off at 203 °F · butcher paper · rests 30 min".
    pub(super) fn card_meant(&self, card: &Card, meat: &CardMeat) -> String {
        let pit = meat.pit.and_then(|pit| usize::try_from(pit).ok());
        let pit = pit.and_then(|pit| Some(card.pits.get(pit)?.name.clone()));
        let cadence = meat.cadence.map(|cadence| self.cadence(cadence.into()));
        let pull = meat.pull_at_mk.map(|pull| {
            let temp = self.say.temperature(Mk(pull));
            self.say.with("card-pull", &[("temp", Arg::Text(&temp))])
        });
        let meant = Meant {
            wrap: meat.wrap,
            rest_min: meat.rest_min,
            pit: None::<Degrees>,
        };
        let meant = self.meant(&meant).into_iter();
        let meant = meant.map(|line| {
            let args = [
                ("test", Arg::Text(&line.name)),
                ("found", Arg::Text(&line.state)),
            ];
            Some(self.say.with("line-found", &args))
        });
        let parts = [pit, cadence, pull].into_iter().chain(meant).flatten();
        parts.collect::<Vec<_>>().join(" · ")
    }

    pub(super) fn card_dishes(&self, dishes: &[CardDish]) -> Vec<Line> {
        let held = |dish: &CardDish| match dish.hot {
            true => self.say.text("card-dish-hot"),
            false => self.say.text("card-dish-cold"),
        };
        dishes
            .iter()
            .map(|dish| plain_line(&dish.name, held(dish), String::new()))
            .collect()
    }

    /// "Safe minimum, turkey breast: 165 °F (who says so)."
    fn card_minimums(&self, card: &Card) -> Vec<String> {
        let mut all: Vec<String> = vec![];
        for meat in &card.meats {
            let form = meat.done();
            let least = minimum(meat.cut, form);
            let kinds = [self.say.text(meat.cut.key()), self.say.text(form.key())];
            let args = [("meat", Arg::Text(&kinds.join(", ")))];
            let of = self.say.with("card-minimum-of", &args);
            let told = self.minimum(&of, &least);
            if !all.contains(&told) {
                all.push(told);
            }
        }
        all
    }

    /// The plan as it may be sent to anybody.
    fn card_words(&self, card: &Card) -> String {
        let mut all = vec![card.name.clone()];
        all.extend(self.card_about(card));
        for (heading, lines) in [
            (self.say.text("frame-pits"), self.card_pits(card)),
            (self.say.text("frame-meats"), self.card_meats(card)),
            (self.say.text("card-dishes"), self.card_dishes(&card.dishes)),
        ] {
            if !lines.is_empty() {
                all.extend([String::new(), heading]);
                all.extend(lines.iter().map(spoken));
            }
        }
        if !card.notes.is_empty() {
            all.extend([String::new(), self.say.text("card-notes")]);
            all.extend(card.notes.iter().map(|note| format!("– {note}")));
        }
        all.push(String::new());
        all.extend(self.card_minimums(card));
        all.push(self.say.text("card-wish"));
        let cautions = self.caution_texts(&heeded(card)).into_iter();
        all.extend(cautions.map(|caution| caution.text));
        all.join("\n")
    }
}

fn spoken(line: &Line) -> String {
    let parts = [&line.name, &line.state, &line.detail];
    let parts: Vec<&str> = parts
        .into_iter()
        .map(String::as_str)
        .filter(|part| !part.is_empty())
        .collect();
    format!("– {}", parts.join(" · "))
}

pub(super) fn plain_line(name: &str, state: String, detail: String) -> Line {
    Line {
        name: name.to_owned(),
        state,
        detail,
        weight: Weight::Calm,
        link: None,
    }
}
