//! The mop of a cook: how much for the hours ahead, by the rhythms of its own meats, and in how many pots.

use super::{
    super::{Slip, glance::Glance},
    KitchenGroup, KitchenPart,
    meats::distinct,
    planned,
    rows::rows_for,
};
use crate::{
    batch::{
        AHEAD_MIN_MAX, Grams, HELD_AT_LEAST, MopAnswer, MopInput, MopMeat, MopPlan, Pot, Wetting,
        mop,
    },
    cadence::{
        Cadence,
        rhythm::{Next, RUB_FIRST_ASKED_MIN, Why},
    },
    cook::{Cook, Piece, rhythm_facts::rhythm_facts},
    moment::MINUTE,
    safety::CautionKind,
    words::{Arg, key},
};

/// What stays in pot and brush where nothing is said, percent. Common practice, no source.
const USUAL_SPARE: i64 = 10;
/// So long are meats kept wet that are not on a pit yet, where nothing is said, minutes. Common practice, no source.
const USUAL_WET_MIN: i64 = 360;
/// The fewest rows for its parts.
const PARTS_LEAST: usize = 3;

impl Glance<'_> {
    pub(super) fn mop_part(&self, cook: &Cook) -> KitchenPart {
        let plan = planned!(cook, Mop);
        let mut part = self.empty_part("mop", key("kitchen-mop"), self.mop_slip(plan));
        let Some(input) = self.mop_input(cook, plan) else {
            part.lead = self.say.text("kitchen-mop-none");
            return part;
        };
        match mop(&input) {
            Ok(answer) if answer.pots.is_empty() => part.lead = self.say.text("kitchen-mop-none"),
            Ok(answer) => self.mop_answered(&mut part, &input, &answer),
            Err(wrong) => part.flags.push(self.not_a_batch(&wrong)),
        }
        let no_weight = |piece: &&Piece| {
            self.first_wet(cook, piece).is_some() && piece.weight_g.value.is_none()
        };
        let names: Vec<&str> = cook
            .meats()
            .filter(no_weight)
            .map(|piece| piece.name.value.as_str())
            .collect();
        let list = self.say.list(&names);
        part.notes.extend((!names.is_empty()).then(|| {
            self.say
                .with("kitchen-left-out", &[("meats", Arg::Text(&list))])
        }));
        part
    }

    /// What the sum is asked of this cook; none where nothing is to be wetted that has a weight.
    pub(super) fn mop_input(&self, cook: &Cook, plan: Option<&MopPlan>) -> Option<MopInput> {
        let meats: Vec<MopMeat> = distinct(cook.meats())
            .into_iter()
            .filter_map(|(piece, name)| self.mop_meat(cook, piece, name))
            .collect();
        let ahead_min = self.wet_ahead(cook, plan)?;
        (!meats.is_empty()).then(|| MopInput {
            ahead_min,
            meats,
            spare_percent: plan.map_or(USUAL_SPARE, |plan| plan.spare_percent),
            parts: plan.map_or_else(Vec::new, |plan| plan.parts.clone()),
        })
    }

    fn mop_meat(&self, cook: &Cook, piece: &Piece, name: String) -> Option<MopMeat> {
        let wetting = match piece.cadence.value {
            Cadence::None => return None,
            Cadence::Mop { .. } => Wetting::Mop,
            Cadence::Spritz { .. } => Wetting::Spritz,
        };
        let first = self.first_wet(cook, piece)?;
        Some(MopMeat {
            name,
            cut: piece.cut,
            g: Grams(piece.weight_g.value?),
            wetting,
            every_min: piece.cadence.value.every_min()?,
            first_in_min: first.clamp(0, AHEAD_MIN_MAX),
            ml: None,
        })
    }

    /// In how many minutes it is wetted first, by its rhythm; one that is not on yet once its rub could have set. None where
    /// it is not wetted any more.
    fn first_wet(&self, cook: &Cook, piece: &Piece) -> Option<i64> {
        piece.cadence.value.every_min()?;
        let facts = rhythm_facts(cook, piece, self.known.crew, self.viewer.device, self.now);
        match facts.next(self.now) {
            Next::AskRub { due } | Next::Wet { due, .. } => Some(self.ahead(due).max(0) / MINUTE),
            Next::Nothing { why: Why::NotOnPit } => Some(RUB_FIRST_ASKED_MIN),
            Next::Glaze { .. } | Next::Nothing { .. } => None,
        }
    }

    /// How many minutes lie ahead in which meats are wetted; none where they are over. On the minute, as screens change.
    fn wet_ahead(&self, cook: &Cook, plan: Option<&MopPlan>) -> Option<i64> {
        let on = cook
            .meats()
            .filter_map(|piece| piece.on_pit_at(self.now))
            .min();
        let planned = plan.and_then(|plan| plan.wet_min);
        let serve = cook.serve.value.as_ref().map(|serve| serve.at);
        let minutes = match (on, planned, serve) {
            (None, planned, _) => planned.unwrap_or(USUAL_WET_MIN),
            (Some(on), Some(wet), _) => self.ahead(on) / MINUTE + wet,
            (Some(_), None, Some(serve)) => self.ahead(serve) / MINUTE,
            (Some(on), None, None) => self.ahead(on) / MINUTE + USUAL_WET_MIN,
        };
        (minutes > 0).then(|| minutes.min(AHEAD_MIN_MAX))
    }

    fn mop_answered(&self, part: &mut KitchenPart, input: &MopInput, answer: &MopAnswer) {
        let (all, hours) = (
            self.say.volume(answer.ml.0),
            self.say.duration(input.ahead_min * MINUTE),
        );
        let args = [("all", Arg::Text(&all)), ("hours", Arg::Text(&hours))];
        part.lead = self.say.with("kitchen-mop-for", &args);
        part.groups = answer.pots.iter().map(|pot| self.pot(pot)).collect();
        let own = answer.pots.iter().any(|pot| pot.poultry);
        part.flags
            .extend(own.then(|| self.say.text("kitchen-own-pot")));
        let hot = self.say.temperature(HELD_AT_LEAST);
        part.notes.push(
            self.say
                .with("kitchen-pot-hot", &[("hot", Arg::Text(&hot))]),
        );
        // The line above says it also to whoever has put that caution away.
        let mut cautions = answer.cautions.clone();
        cautions.retain(|caution| *caution != CautionKind::MopPotHot);
        part.cautions = self.caution_texts(&cautions);
    }

    fn pot(&self, pot: &Pot) -> KitchenGroup {
        let names = self.say.list(&pot.names);
        let args = [("names", Arg::Text(&names))];
        let heading = match pot.poultry {
            true => self.say.with("kitchen-pot-poultry", &args),
            false => self.say.with("kitchen-pot", &args),
        };
        let times = self
            .say
            .with("kitchen-wettings", &[("count", Arg::Number(pot.wettings))]);
        let parts = pot.parts.iter();
        let parts = parts
            .map(|part| self.kitchen_line(&part.name, self.say.volume(part.ml.0), String::new()));
        let all = self.kitchen_line(
            &self.say.text("kitchen-all"),
            self.say.volume(pot.ml.0),
            times,
        );
        KitchenGroup {
            heading,
            lines: parts.chain([all]).collect(),
        }
    }

    fn mop_slip(&self, plan: Option<&MopPlan>) -> Slip {
        let parts = plan.map_or(&[][..], |plan| &plan.parts);
        let spare = plan
            .map_or(USUAL_SPARE, |plan| plan.spare_percent)
            .to_string();
        let wet = plan.and_then(|plan| plan.wet_min);
        let wet = wet.map(|minutes| self.say.duration(minutes * MINUTE));
        let mut fields = vec![];
        for row in 0..rows_for(parts.len(), PARTS_LEAST) {
            let part = parts.get(row);
            let name = part.map_or_else(String::new, |part| part.name.clone());
            let number = part.map_or_else(String::new, |part| part.parts.to_string());
            fields.push(self.row_words(("part", row, "name"), key("kitchen-part-name"), name));
            fields.push(self.row_number(("part", row, "parts"), key("kitchen-part-parts"), number));
        }
        fields.push(self.number_as("wet", key("kitchen-wet"), wet));
        fields.push(self.number_as("spare", key("kitchen-spare"), Some(spare)));
        let slip = self.slip("mop", key("kitchen-mop"), fields);
        Slip {
            how: self.say.text("kitchen-mop-how"),
            ..slip
        }
    }
}
