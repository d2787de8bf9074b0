//! One list of all that is bought for a cook, and what a plate costs.

use super::{
    super::glance::Glance,
    KitchenGroup, KitchenLine, KitchenPart,
    meats::weighed,
    planned,
    portions::{portions_input, portions_plan},
};
use crate::{
    batch::{Line, NotABatch, ShoppingAnswer, ShoppingInput, ShoppingPlan, shopping},
    cook::Cook,
    words::{Arg, key},
};

impl Glance<'_> {
    pub(super) fn shopping_part(&self, cook: &Cook) -> KitchenPart {
        let plan = planned!(cook, Shopping);
        let asked = shopping(&self.shopping_input(cook, plan));
        let lines = asked.as_ref().map_or(&[][..], |answer| &answer.lines);
        let slip = self.shopping_slip(plan, lines);
        let mut part = self.empty_part("shopping", key("kitchen-shopping"), slip);
        match &asked {
            Ok(answer) => self.shopping_answered(&mut part, answer),
            Err(NotABatch::Nothing) => part.lead = self.say.text("kitchen-shopping-none"),
            Err(wrong) => part.flags.push(self.not_a_batch(wrong)),
        }
        part
    }

    /// Of the sums that can be reckoned; one that cannot says so in its own section.
    fn shopping_input(&self, cook: &Cook, plan: Option<&ShoppingPlan>) -> ShoppingInput {
        let portions = portions_plan(cook).and_then(|plan| portions_input(cook, &plan));
        let rub = planned!(cook, Rub)
            .filter(|plan| !weighed(cook, &plan.pieces).with.is_empty())
            .map(|plan| self.rub_input(cook, plan));
        let mop = self.mop_input(cook, planned!(cook, Mop));
        ShoppingInput {
            portions: portions.filter(|input| crate::batch::portions(input).is_ok()),
            rub: rub.filter(|input| crate::batch::rub(input).is_ok()),
            mop: mop.filter(|input| crate::batch::mop(input).is_ok()),
            extras: plan.map_or_else(Vec::new, |plan| plan.extras.clone()),
            at_home: plan.map_or_else(Vec::new, |plan| plan.at_home.clone()),
            prices: plan.map_or_else(Vec::new, |plan| plan.prices.clone()),
        }
    }

    fn shopping_answered(&self, part: &mut KitchenPart, answer: &ShoppingAnswer) {
        let (buy, home): (Vec<&Line>, Vec<&Line>) = answer
            .lines
            .iter()
            .filter(|line| line.need > 0)
            .partition(|line| line.buy > 0);
        let group = |heading, lines: Vec<KitchenLine>| KitchenGroup { heading, lines };
        if buy.is_empty() {
            part.lead = self.say.text("kitchen-shopping-all-there");
        } else {
            let lines = buy.into_iter().map(|line| self.to_buy(line)).collect();
            part.groups
                .push(group(self.say.text("kitchen-to-buy"), lines));
        }
        if !home.is_empty() {
            let line = |line: &Line| {
                let need = self.say.amount(line.need, line.unit);
                self.kitchen_line(&line.name, need, String::new())
            };
            let lines = home.into_iter().map(line).collect();
            part.groups
                .push(group(self.say.text("kitchen-at-home"), lines));
        }
        part.notes.extend(self.costs(answer));
    }

    fn to_buy(&self, line: &Line) -> KitchenLine {
        let amount = self.say.amount(line.buy, line.unit);
        let home = (line.at_home > 0).then(|| {
            let home = self.say.amount(line.at_home, line.unit);
            self.say
                .with("kitchen-home-has", &[("amount", Arg::Text(&home))])
        });
        let cents = line.cents.map(|cents| self.say.money(cents.0));
        let detail: Vec<String> = home.into_iter().chain(cents).collect();
        self.kitchen_line(&line.name, amount, detail.join(" · "))
    }

    fn costs(&self, answer: &ShoppingAnswer) -> Vec<String> {
        let mut all = vec![];
        let priced = answer.worth.0 > 0;
        let [cost, plate, worth, all_plate] = [
            Some(answer.cost),
            answer.cost_a_plate,
            Some(answer.worth),
            answer.worth_a_plate,
        ]
        .map(|cents| cents.map_or_else(String::new, |cents| self.say.money(cents.0)));
        if priced && answer.cost.0 > 0 {
            all.push(self.say.with("kitchen-cost", &[("cost", Arg::Text(&cost))]));
            let args = [("plate", Arg::Text(&plate))];
            all.extend(answer.plates.map(|_| self.say.with("kitchen-plate", &args)));
        }
        if answer.worth > answer.cost {
            let args = [
                ("worth", Arg::Text(&worth)),
                ("plate", Arg::Text(&all_plate)),
            ];
            all.extend(answer.plates.map(|_| self.say.with("kitchen-worth", &args)));
        }
        if priced && !answer.without_price.is_empty() {
            let names = self.say.list(&answer.without_price);
            all.push(
                self.say
                    .with("kitchen-unpriced", &[("names", Arg::Text(&names))]),
            );
        }
        all
    }
}
