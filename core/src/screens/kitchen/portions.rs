//! Who eats how much, what to buy for it, and whom what is there feeds.

use super::{
    super::{Slip, check::recorded, glance::Glance},
    KitchenGroup, KitchenLine, KitchenPart,
    meats::distinct,
    planned,
};
use crate::{
    batch::{
        Appetite, Grams, Grounds, MeatAnswer, PortionMeat, PortionShare, PortionsAnswer,
        PortionsInput, PortionsPlan, Range, portions,
    },
    cook::{Cook, Piece},
    words::{Arg, key},
};

impl Glance<'_> {
    pub(super) fn portions_part(&self, cook: &Cook) -> KitchenPart {
        let plan = portions_plan(cook);
        let slip = self.portions_slip(cook, plan.as_ref());
        let mut part = self.empty_part("portions", key("kitchen-portions"), slip);
        let Some(plan) = plan else {
            part.lead = self.say.text("kitchen-nobody");
            return part;
        };
        let Some(input) = portions_input(cook, &plan) else {
            part.lead = self.say.text("kitchen-no-meat");
            return part;
        };
        match portions(&input) {
            Ok(answer) => self.portions_answered(&mut part, &plan, &answer),
            Err(wrong) => part.flags.push(self.not_a_batch(&wrong)),
        }
        part
    }

    fn portions_answered(
        &self,
        part: &mut KitchenPart,
        plan: &PortionsPlan,
        answer: &PortionsAnswer,
    ) {
        let (wanted, each) = (
            self.say.weight(answer.wanted_g.0),
            self.say.weighed(answer.adult_g.milligrams().0),
        );
        let args = [
            ("people", Arg::Number(plan.adults + plan.children)),
            ("wanted", Arg::Text(&wanted)),
            ("each", Arg::Text(&each)),
        ];
        part.lead = self.say.with("kitchen-portions-for", &args);
        part.groups.push(KitchenGroup {
            heading: String::new(),
            lines: answer
                .meats
                .iter()
                .map(|meat| self.meat_portion(meat))
                .collect(),
        });
        let there = answer.meats.iter().any(|meat| meat.there_g.0 > 0);
        if there {
            let [low, high] = [answer.feeds.low, answer.feeds.high].map(|count| count.to_string());
            let args = [("low", Arg::Text(&low)), ("high", Arg::Text(&high))];
            part.notes.push(self.say.with("kitchen-feeds", &args));
            let told = match answer.enough {
                true => &mut part.notes,
                false => &mut part.flags,
            };
            told.push(self.say.text(match answer.enough {
                true => key("kitchen-enough"),
                false => key("kitchen-not-enough"),
            }));
        }
        if answer.trimmings_g.0 > 0 {
            let weight = self.say.weight(answer.trimmings_g.0);
            let args = [("weight", Arg::Text(&weight))];
            part.notes
                .push(self.say.with("kitchen-trimmings-expected", &args));
        }
        part.notes.push(self.say.text("kitchen-yield-note"));
        part.cautions = self.caution_texts(&answer.cautions);
    }

    fn meat_portion(&self, meat: &MeatAnswer) -> KitchenLine {
        let [buy, likely] = [meat.buy_g, meat.likely_buy_g].map(|Grams(g)| self.say.weight(g));
        let args = [("buy", Arg::Text(&buy)), ("likely", Arg::Text(&likely))];
        let amount = match (meat.there_g.0 > 0, meat.buy_g.0, meat.likely_buy_g.0) {
            (true, 0, _) => self.on_plates(meat.eaten_g),
            (true, _, 0) => self.say.with("kitchen-buy-maybe", &args),
            (true, ..) => self.say.with("kitchen-buy-more", &args),
            (false, ..) => self.say.with("kitchen-buy", &args),
        };
        let there = self.say.weight(meat.there_g.0);
        let there = (meat.there_g.0 > 0).then(|| {
            self.say
                .with("kitchen-there", &[("weight", Arg::Text(&there))])
        });
        let grounds = self.say.text(match meat.weighs {
            Grounds::Published => key("kitchen-yield-published"),
            Grounds::Nearest => key("kitchen-yield-nearest"),
            Grounds::CommonPractice => key("kitchen-yield-common"),
        });
        let detail: Vec<String> = there.into_iter().chain([grounds]).collect();
        self.kitchen_line(&meat.name, amount, detail.join(" · "))
    }

    fn on_plates(&self, eaten: Range) -> String {
        let [low, high] = [eaten.low, eaten.high].map(|Grams(g)| self.say.weight(g));
        let args = [("low", Arg::Text(&low)), ("high", Arg::Text(&high))];
        self.say.with("kitchen-on-plates", &args)
    }

    fn portions_slip(&self, cook: &Cook, plan: Option<&PortionsPlan>) -> Slip {
        let number = |of: fn(&PortionsPlan) -> i64| plan.map(|plan| of(plan).to_string());
        let appetites = [
            ("light", key("kitchen-appetite-light")),
            ("usual", key("kitchen-appetite-usual")),
            ("hearty", key("kitchen-appetite-hearty")),
        ];
        let appetite = recorded(plan.map_or(Appetite::Usual, |plan| plan.appetite));
        let mut fields = vec![
            self.number_as("adults", key("kitchen-adults"), number(|plan| plan.adults)),
            self.number_as(
                "children",
                key("kitchen-children"),
                number(|plan| plan.children),
            ),
            self.chosen_one("appetite", key("kitchen-appetite"), &appetites, &appetite),
        ];
        for piece in cook.meats() {
            let said = plan.and_then(|plan| share_of(plan, piece));
            let share = said.map_or(1, |said| said.share).to_string();
            let trim = said.and_then(|said| said.trim_percent);
            let named = |label| {
                let (name, label) = (&piece.name.value, self.say.text(label));
                let args = [("name", Arg::Text(name)), ("label", Arg::Text(&label))];
                self.say.with("kitchen-of-meat", &args)
            };
            let labels = [named(key("kitchen-share")), named(key("kitchen-trim"))];
            let usuals = [
                share,
                trim.map_or_else(String::new, |trim| trim.to_string()),
            ];
            for ((field, label), usual) in ["share", "trim"].into_iter().zip(labels).zip(usuals) {
                let field = self.number_field(&format!("{field}-{}", piece.id), label);
                fields.push(super::super::SlipField { usual, ..field });
            }
        }
        let slip = self.slip("portions", key("kitchen-portions"), fields);
        Slip {
            how: self.say.text("kitchen-portions-how"),
            ..slip
        }
    }
}

fn share_of<'a>(plan: &'a PortionsPlan, piece: &Piece) -> Option<&'a PortionShare> {
    plan.meats.iter().find(|said| said.piece == piece.id)
}

/// What was written down, or what the cook says of who eats; none where nobody said.
pub(super) fn portions_plan(cook: &Cook) -> Option<PortionsPlan> {
    let usual = |people| PortionsPlan {
        adults: people,
        children: 0,
        appetite: Appetite::Usual,
        meats: vec![],
    };
    planned!(cook, Portions)
        .cloned()
        .or(cook.people.value.map(usual))
}

/// What the sum is asked of this cook; none where there is no meat.
pub(super) fn portions_input(cook: &Cook, plan: &PortionsPlan) -> Option<PortionsInput> {
    let meat = |(piece, name): (&Piece, String)| {
        let said = share_of(plan, piece);
        PortionMeat {
            name,
            cut: piece.cut,
            there_g: piece.weight_g.value.map(Grams),
            share: said.map_or(1, |said| said.share),
            trim_percent: said.and_then(|said| said.trim_percent),
        }
    };
    let meats: Vec<PortionMeat> = distinct(cook.meats()).into_iter().map(meat).collect();
    (!meats.is_empty()).then_some(PortionsInput {
        adults: plan.adults,
        children: plan.children,
        appetite: plan.appetite,
        meats,
    })
}
