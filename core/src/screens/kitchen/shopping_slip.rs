//! What is written down of the shopping: what else is needed, what is at home, what things cost.

use super::{
    super::{Slip, SlipField, glance::Glance, slip::option},
    rows::rows_for,
};
use crate::{
    batch::{CountedIn, Extra, Line, ShoppingPlan},
    words::key,
};

/// The fewest rows for what else is needed.
const EXTRAS_LEAST: usize = 3;

impl Glance<'_> {
    /// A row for each thing that the sums ask for, or that something was said of; then rows for whatever else.
    pub(super) fn shopping_slip(&self, plan: Option<&ShoppingPlan>, lines: &[Line]) -> Slip {
        let extras: &[Extra] = plan.map_or(&[], |plan| &plan.extras);
        let mut fields = vec![];
        for (row, name) in asked_for(plan, lines).into_iter().enumerate() {
            let one = vec![option(&name, &name)];
            fields.push(self.row_one(("have", row, "name"), key("kitchen-item"), one, &name));
            fields.extend(self.said_of(plan, ("have", row), &name));
        }
        for row in 0..rows_for(extras.len(), EXTRAS_LEAST) {
            let extra = extras.get(row);
            let name = extra.map_or_else(String::new, |extra| extra.name.clone());
            let need = extra.map_or_else(String::new, |extra| {
                self.say.amount_field(extra.amount, extra.unit)
            });
            fields.push(self.row_words(
                ("item", row, "name"),
                key("kitchen-item-else"),
                name.clone(),
            ));
            fields.push(self.row_number(("item", row, "need"), key("kitchen-item-need"), need));
            fields.extend(self.said_of(plan, ("item", row), &name));
        }
        let slip = self.slip("shopping", key("kitchen-shopping"), fields);
        Slip {
            how: self.say.text("kitchen-shopping-how"),
            ..slip
        }
    }

    fn said_of(
        &self,
        plan: Option<&ShoppingPlan>,
        (rows, row): (&str, usize),
        name: &str,
    ) -> [SlipField; 3] {
        let home = plan.and_then(|plan| plan.at_home.iter().find(|home| home.name == name));
        let price = plan.and_then(|plan| plan.prices.iter().find(|price| price.name == name));
        let amount = |amount: i64, unit: CountedIn| self.say.amount_field(amount, unit);
        let home = home.map_or_else(String::new, |home| amount(home.amount, home.unit));
        let cents = price.map_or_else(String::new, |price| self.say.money_field(price.cents.0));
        let per = price.map_or_else(String::new, |price| amount(price.per, price.unit));
        [
            self.row_number((rows, row, "home"), key("kitchen-item-home"), home),
            self.row_number((rows, row, "price"), key("kitchen-item-price"), cents),
            self.row_number((rows, row, "per"), key("kitchen-item-per"), per),
        ]
    }
}

/// Names that the sums ask for, or that something was said of, and that are nothing else that is needed.
fn asked_for(plan: Option<&ShoppingPlan>, lines: &[Line]) -> Vec<String> {
    let mut names: Vec<String> = lines.iter().map(|line| line.name.clone()).collect();
    if let Some(plan) = plan {
        let home = plan.at_home.iter().map(|home| &home.name);
        let said = home.chain(plan.prices.iter().map(|price| &price.name));
        for name in said {
            if !names.contains(name) {
                names.push(name.clone());
            }
        }
        names.retain(|name| !plan.extras.iter().any(|extra| extra.name == *name));
    }
    names
}
