//! What was trimmed off and kept.

use super::{
    super::{Slip, glance::Glance, slip::option},
    KitchenGroup, KitchenPart,
};
use crate::{
    cook::{Cook, Trimmings},
    words::{Arg, key},
};

impl Glance<'_> {
    pub(super) fn trimmings_part(&self, cook: &Cook) -> KitchenPart {
        let slip = self.trimmings_slip(cook);
        let mut part = self.empty_part("trimmings", key("kitchen-trimmings"), slip);
        if cook.trimmings.is_empty() {
            part.lead = self.say.text("kitchen-trimmings-none");
            return part;
        }
        let line = |kept: &Trimmings| {
            let of = kept.piece.map(|piece| self.piece_name(piece));
            let all = [of.unwrap_or_default(), kept.what.clone()];
            let all: Vec<String> = all.into_iter().filter(|one| !one.is_empty()).collect();
            let when = self.say.clock_day(kept.when.at, self.now);
            self.kitchen_line(&all.join(" · "), self.say.weight(kept.g), when)
        };
        let lines = cook.trimmings.iter().map(line).collect();
        let heading = String::new();
        part.groups.push(KitchenGroup { heading, lines });
        let all = self
            .say
            .weight(cook.trimmings.iter().map(|kept| kept.g).sum());
        part.lead = self
            .say
            .with("kitchen-trimmings-all", &[("weight", Arg::Text(&all))]);
        part
    }

    fn trimmings_slip(&self, cook: &Cook) -> Slip {
        let mut meats = vec![option("", self.say.text("kitchen-trimmings-several"))];
        meats.extend(self.meat_options(cook));
        let fields = vec![
            self.one_of("piece", self.say.text("slip-meat"), meats),
            self.number_field("weight", self.weight_label()),
            self.words_field("what", key("kitchen-trimmings-what")),
        ];
        let slip = self.slip("trimmings", key("kitchen-trimmings"), fields);
        Slip {
            how: self.say.text("kitchen-trimmings-how"),
            ..slip
        }
    }
}
