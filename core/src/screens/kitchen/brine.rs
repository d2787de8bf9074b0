//! The brine of a cook.

use super::{
    super::{Slip, check::recorded, glance::Glance},
    KitchenGroup, KitchenPart,
    meats::weighed,
    planned,
};
use crate::{
    batch::{
        BrineAnswer, BrineInput, BrinePlan, BrineWay, CountedIn, Grams, SaltKind, TABLE_SALT_A_CUP,
        Wanted, brine,
    },
    cook::Cook,
    words::{Arg, key},
};

impl Glance<'_> {
    pub(super) fn brine_part(&self, cook: &Cook) -> KitchenPart {
        let plan = planned!(cook, Brine);
        let mut part = self.empty_part("brine", key("kitchen-brine"), self.brine_slip(cook, plan));
        let Some(plan) = plan else {
            part.lead = self.say.text("kitchen-brine-none");
            return part;
        };
        let found = weighed(cook, &plan.pieces);
        part.lead = self.for_meats(&found);
        part.notes.extend(self.left_out(&found));
        let in_the_meat = plan.way == BrineWay::InTheMeat;
        if in_the_meat && found.with.is_empty() {
            return part;
        }
        match brine(&input(plan, found.all())) {
            Ok(answer) => self.brine_answered(&mut part, plan, &answer),
            Err(wrong) => part.flags.push(self.not_a_batch(&wrong)),
        }
        part
    }

    fn brine_answered(&self, part: &mut KitchenPart, plan: &BrinePlan, answer: &BrineAnswer) {
        let own = self.cup_of_salt(SaltKind::OtherSalt);
        let spoons = |cup: Grams| self.say.by_spoon(answer.salt_mg.0, cup.0);
        let told = |key, cup| {
            let spoons = spoons(cup)?;
            Some(self.say.with(key, &[("spoons", Arg::Text(&spoons))]))
        };
        let detail = match own {
            Some(cup) => told(key("kitchen-of-own-salt"), cup),
            None => told(key("kitchen-of-table-salt"), TABLE_SALT_A_CUP),
        };
        // A milliliter of water is a gram, to a fifth of a percent.
        let water = self.say.volume(plan.water_g.0);
        let salt = self.say.weighed(answer.salt_mg.0);
        part.groups.push(KitchenGroup {
            heading: String::new(),
            lines: vec![
                self.kitchen_line(&self.say.text("kitchen-water"), water, String::new()),
                self.kitchen_line(
                    &self.say.text("kitchen-salt-name"),
                    salt,
                    detail.unwrap_or_default(),
                ),
            ],
        });
        let [water, brine] = [answer.of_the_water, answer.of_the_brine].map(hundredths);
        let args = [("water", Arg::Text(&water)), ("brine", Arg::Text(&brine))];
        part.notes.push(self.say.with("kitchen-strength", &args));
        let in_the_meat = plan.way == BrineWay::InTheMeat;
        part.notes
            .extend(in_the_meat.then(|| self.say.text("kitchen-even")));
        part.cautions = self.caution_texts(&answer.cautions);
    }

    fn brine_slip(&self, cook: &Cook, plan: Option<&BrinePlan>) -> Slip {
        let ways = [
            ("in_the_meat", key("kitchen-way-meat")),
            ("of_the_water", key("kitchen-way-water")),
            ("of_the_brine", key("kitchen-way-brine")),
        ];
        let way = plan.map_or_else(String::new, |plan| recorded(plan.way));
        let water = plan.map(|plan| self.say.amount_field(plan.water_g.0, CountedIn::Ml));
        let percent = plan.map(|plan| self.say.percent_field(plan.permille));
        let fields = vec![
            self.meats_field(cook, plan.map_or(&[], |plan| &plan.pieces)),
            self.number_as("water", key("kitchen-water-how-much"), water),
            self.chosen_one("way", key("kitchen-way"), &ways, &way),
            self.number_as("percent", key("kitchen-percent"), percent),
        ];
        let slip = self.slip("brine", key("kitchen-brine"), fields);
        Slip {
            how: self.say.text("kitchen-brine-how"),
            ..slip
        }
    }
}

fn input(plan: &BrinePlan, meat: Grams) -> BrineInput {
    let permille = plan.permille;
    BrineInput {
        water_g: plan.water_g,
        wanted: match plan.way {
            BrineWay::InTheMeat => Wanted::InTheMeat {
                meat_g: meat,
                permille,
            },
            BrineWay::OfTheWater => Wanted::OfTheWater { permille },
            BrineWay::OfTheBrine => Wanted::OfTheBrine { permille },
        },
    }
}

/// Hundredths of a percent: "5.26".
fn hundredths(of: i64) -> String {
    format!("{}.{:02}", of / 100, of % 100)
}
