//! The rub of a cook.

use super::{
    super::glance::Glance,
    KitchenGroup, KitchenPart,
    meats::{eaters, weighed},
    planned,
};
use crate::{
    batch::{
        Basis, Grams, Level, RubAnswer, RubInput, RubPart, RubPlan, SaltFrom, SaltKind,
        TABLE_SALT_A_CUP, rub,
    },
    cook::Cook,
    words::{Arg, key},
};

/// So much rub on a kilogram where nothing is said, grams. Common practice, no source.
pub(super) const USUAL_G_PER_KG: i64 = 20;

impl Glance<'_> {
    pub(super) fn rub_part(&self, cook: &Cook) -> KitchenPart {
        let plan = planned!(cook, Rub);
        let mut part = self.empty_part("rub", key("kitchen-rub"), self.rub_slip(cook, plan));
        part.slips.push(self.salt_slip());
        let Some(plan) = plan else {
            part.lead = self.say.text("kitchen-rub-none");
            return part;
        };
        let found = weighed(cook, &plan.pieces);
        part.lead = self.for_meats(&found);
        part.notes.extend(self.left_out(&found));
        if found.with.is_empty() {
            return part;
        }
        match rub(&self.rub_input(cook, plan)) {
            Ok(answer) => self.rub_answered(&mut part, cook, plan, &answer),
            Err(wrong) => part.flags.push(self.not_a_batch(&wrong)),
        }
        part
    }

    /// What the sum is asked of this cook.
    pub(super) fn rub_input(&self, cook: &Cook, plan: &RubPlan) -> RubInput {
        RubInput {
            meat_g: weighed(cook, &plan.pieces).all(),
            portions: eaters(cook).unwrap_or(1),
            rub_g_per_kg: plan.g_per_kg,
            basis: plan.basis,
            parts: plan.parts.iter().map(|part| self.with_cup(part)).collect(),
            also: plan.also.clone(),
        }
    }

    /// The crew's own salt has the weight of its cup.
    fn with_cup(&self, part: &RubPart) -> RubPart {
        let cup_g = part.cup_g.or(self.cup_of_salt(part.kind));
        RubPart {
            cup_g,
            ..part.clone()
        }
    }

    /// What a cup of a salt weighs, as far as that is known.
    pub(super) fn cup_of_salt(&self, kind: SaltKind) -> Option<Grams> {
        match kind {
            SaltKind::TableSalt => Some(TABLE_SALT_A_CUP),
            SaltKind::OtherSalt => self.known.crew.salt_cup_g.map(Grams),
            SaltKind::Salted { .. } | SaltKind::Unsalted => None,
        }
    }

    fn rub_answered(
        &self,
        part: &mut KitchenPart,
        cook: &Cook,
        plan: &RubPlan,
        answer: &RubAnswer,
    ) {
        let with_plan = answer.parts.iter().zip(&plan.parts);
        let lines = with_plan.map(|(weighed, part)| {
            let cup = self.with_cup(part).cup_g;
            let spoons = cup.and_then(|cup| self.say.by_spoon(weighed.mg.0, cup.0));
            let amount = self.say.weighed(weighed.mg.0);
            self.kitchen_line(&weighed.name, amount, spoons.unwrap_or_default())
        });
        let mut lines: Vec<_> = lines.collect();
        let all = self.say.weighed(answer.rub_mg.0);
        lines.push(self.kitchen_line(&self.say.text("kitchen-all"), all, self.basis(plan)));
        part.groups.push(KitchenGroup {
            heading: String::new(),
            lines,
        });
        part.notes.push(self.salt_note(answer));
        let shares = answer.salt.len() > 1;
        part.notes.extend(shares.then(|| self.salt_shares(answer)));
        let people = eaters(cook);
        part.notes.extend(people.map(|people| {
            let mg = answer.sodium_mg_a_portion.0.to_string();
            let args = [("mg", Arg::Text(&mg)), ("people", Arg::Number(people))];
            self.say.with("kitchen-sodium", &args)
        }));
        let flag = match answer.level {
            Level::Below => Some(key("kitchen-salt-below")),
            Level::Common => None,
            Level::Above => Some(key("kitchen-salt-above")),
        };
        part.flags.extend(flag.map(|flag| self.say.text(flag)));
    }

    fn basis(&self, plan: &RubPlan) -> String {
        let g = plan.g_per_kg.to_string();
        let args = [("g", Arg::Text(&g))];
        match plan.basis {
            Basis::Weight => self.say.with("kitchen-by-weight", &args),
            Basis::Volume => self.say.with("kitchen-by-volume", &args),
        }
    }

    fn salt_note(&self, answer: &RubAnswer) -> String {
        let (all, per_kg) = (
            self.say.weighed(answer.salt_mg.0),
            self.say.grams(answer.salt_mg_per_kg.0),
        );
        let args = [("all", Arg::Text(&all)), ("per_kg", Arg::Text(&per_kg))];
        self.say.with("kitchen-salt", &args)
    }

    fn salt_shares(&self, answer: &RubAnswer) -> String {
        let share = |share: &crate::batch::SaltShare| {
            let from = self.say.text(match share.from {
                SaltFrom::Rub => key("kitchen-from-rub"),
                SaltFrom::Label => key("kitchen-from-label"),
                SaltFrom::Brine => key("kitchen-from-brine"),
                SaltFrom::Injection => key("kitchen-from-injection"),
                SaltFrom::Mop => key("kitchen-from-mop"),
            });
            format!("{from} {}", self.say.grams(share.mg.0))
        };
        let shares: Vec<String> = answer.salt.iter().map(share).collect();
        let shares = self.say.list(&shares);
        self.say
            .with("kitchen-salt-from", &[("shares", Arg::Text(&shares))])
    }
}
