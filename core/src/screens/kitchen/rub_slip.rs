//! What is written down of a rub, and of the crew's salt.

use super::{
    super::{Slip, SlipField, check::recorded, glance::Glance, slip::option},
    rows::rows_for,
    rub::USUAL_G_PER_KG,
};
use crate::{
    batch::{AlsoSalt, Basis, CountedIn, Grams, RubPart, RubPlan, SaltKind},
    cook::Cook,
    words::key,
};

/// The fewest rows for its parts.
const PARTS_LEAST: usize = 4;

impl Glance<'_> {
    pub(super) fn rub_slip(&self, cook: &Cook, plan: Option<&RubPlan>) -> Slip {
        let parts: &[RubPart] = plan.map_or(&[], |plan| &plan.parts);
        let basis = plan.map_or(Basis::Weight, |plan| plan.basis);
        let g = plan.map_or(USUAL_G_PER_KG, |plan| plan.g_per_kg);
        let bases = [
            ("weight", key("kitchen-basis-weight")),
            ("volume", key("kitchen-basis-volume")),
        ];
        let mut fields = vec![
            self.meats_field(cook, plan.map_or(&[], |plan| &plan.pieces)),
            self.number_as("g-per-kg", key("kitchen-g-per-kg"), Some(g.to_string())),
            self.chosen_one("basis", key("kitchen-basis"), &bases, &recorded(basis)),
        ];
        for row in 0..rows_for(parts.len(), PARTS_LEAST) {
            fields.extend(self.part_row(row, parts.get(row)));
        }
        fields.extend(self.also_fields(plan.map_or(&[], |plan| &plan.also)));
        let slip = self.slip("rub", key("kitchen-rub"), fields);
        Slip {
            how: self.say.text("kitchen-rub-how"),
            ..slip
        }
    }

    fn part_row(&self, row: usize, part: Option<&RubPart>) -> [SlipField; 5] {
        let number = |part: Option<i64>| part.map_or_else(String::new, |part| part.to_string());
        let kinds = [
            ("unsalted", key("kitchen-kind-unsalted")),
            ("other_salt", key("kitchen-kind-own-salt")),
            ("table_salt", key("kitchen-kind-table-salt")),
            ("salted", key("kitchen-kind-salted")),
        ];
        let kinds = kinds.map(|(value, label)| option(value, self.say.text(label)));
        let (kind, salt) = match part.map(|part| part.kind) {
            None | Some(SaltKind::Unsalted) => ("unsalted", None),
            Some(SaltKind::OtherSalt) => ("other_salt", None),
            Some(SaltKind::TableSalt) => ("table_salt", None),
            Some(SaltKind::Salted { salt_permille }) => ("salted", Some(salt_permille)),
        };
        let salt = salt.map_or_else(String::new, |permille| self.say.percent_field(permille));
        let cup = part.and_then(|part| part.cup_g).map(|Grams(g)| g);
        let name = part.map_or_else(String::new, |part| part.name.clone());
        [
            self.row_words(("part", row, "name"), key("kitchen-part-name"), name),
            self.row_number(
                ("part", row, "parts"),
                key("kitchen-part-parts"),
                number(part.map(|part| part.parts)),
            ),
            self.row_one(
                ("part", row, "kind"),
                key("kitchen-part-kind"),
                kinds.into(),
                kind,
            ),
            self.row_number(("part", row, "salt"), key("kitchen-part-salt"), salt),
            self.row_number(("part", row, "cup"), key("kitchen-part-cup"), number(cup)),
        ]
    }

    /// Salt that comes otherwise: each kind once.
    fn also_fields(&self, also: &[AlsoSalt]) -> Vec<SlipField> {
        let percent = |permille: i64| self.say.percent_field(permille);
        let weight = |Grams(g): Grams| self.say.amount_field(g, CountedIn::G);
        let find = |pick: &dyn Fn(&AlsoSalt) -> Option<(String, String)>| {
            let found = also.iter().find_map(pick);
            found.map_or((None, None), |(much, salt)| (Some(much), Some(salt)))
        };
        let solution = find(&|also| match also {
            AlsoSalt::LabelSolution {
                percent: of,
                salt_permille,
            } => Some((of.to_string(), percent(*salt_permille))),
            _ => None,
        });
        let sodium = find(&|also| match also {
            AlsoSalt::LabelSodium { mg_per_100g } => Some((mg_per_100g.to_string(), "100".into())),
            _ => None,
        });
        let brine = find(&|also| match also {
            AlsoSalt::Brine { g, salt_permille } => Some((weight(*g), percent(*salt_permille))),
            _ => None,
        });
        let injection = find(&|also| match also {
            AlsoSalt::Injection { g, salt_permille } => Some((weight(*g), percent(*salt_permille))),
            _ => None,
        });
        let mop = find(&|also| match also {
            AlsoSalt::Mop { g, salt_permille } => Some((weight(*g), percent(*salt_permille))),
            _ => None,
        });
        vec![
            self.number_as("solution", key("kitchen-also-solution"), solution.0),
            self.number_as(
                "solution-salt",
                key("kitchen-also-solution-salt"),
                solution.1,
            ),
            self.number_as("sodium", key("kitchen-also-sodium"), sodium.0),
            self.number_as("serving", key("kitchen-also-serving"), sodium.1),
            self.number_as("brine", key("kitchen-also-brine"), brine.0),
            self.number_as("brine-salt", key("kitchen-also-brine-salt"), brine.1),
            self.number_as("injection", key("kitchen-also-injection"), injection.0),
            self.number_as(
                "injection-salt",
                key("kitchen-also-injection-salt"),
                injection.1,
            ),
            self.number_as("mop", key("kitchen-also-mop"), mop.0),
            self.number_as("mop-salt", key("kitchen-also-mop-salt"), mop.1),
        ]
    }

    /// What a level cup of the crew's salt weighs.
    pub(super) fn salt_slip(&self) -> Slip {
        let cup = self.known.crew.salt_cup_g.map(|g| g.to_string());
        let fields = vec![self.number_as("cup", key("kitchen-salt-cup"), cup)];
        let slip = self.slip("salt", key("kitchen-own-salt"), fields);
        Slip {
            how: self.say.text("kitchen-own-salt-how"),
            ..slip
        }
    }
}
