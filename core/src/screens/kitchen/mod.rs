//! The kitchen of a cook: rub, brine, mop, portions, shopping, trimmings. Start at [`kitchen`]; [`kitchen_sheet`] is the same
//! on one sheet of paper.
//!
//! The sums are those of [`batch`](crate::batch), fed with what is known of the cook: weights of its meats, their rhythm, who
//! eats. Law: nothing here judges a meat; what touches raw meat or hot food carries its cautions.

mod brine;
mod last;
mod meats;
mod mop;
mod portions;
mod records;
mod rows;
mod rub;
mod rub_slip;
mod sheet;
mod shopping;
mod shopping_slip;
mod trimmings;

pub use last::{Last, LastTime, last_time};
pub use records::*;
pub use sheet::kitchen_sheet;

use super::{Place, Slip, buttons::button, glance::Glance, records::Tone};
use crate::{
    acts::Act,
    batch::{BatchKind, NotABatch},
    cook::{Cook, Known},
    ids::CookId,
    moment::Moment,
    words::{Arg, Viewer, key},
};

/// The kitchen of a cook, `last` being what earlier ones had; none where it is not known here.
pub fn kitchen(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    last: &LastTime,
    moment: &Moment,
) -> Option<KitchenScreen> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    let id = cook.id;
    Some(KitchenScreen {
        cook: id,
        title: glance.say.text("kitchen-title"),
        lead: glance.serve(cook),
        parts: glance.kitchen_parts(cook, last),
        links: glance.links_to(&[
            (key("link-now"), Place::Now { cook: id }),
            (key("link-write"), Place::Write { cook: id }),
        ]),
        to_sheet: glance.say.text("kitchen-to-sheet"),
        until: glance.until(&[]),
    })
}

impl Glance<'_> {
    fn kitchen_parts(&self, cook: &Cook, last: &LastTime) -> Vec<KitchenPart> {
        let mut all = vec![
            self.portions_part(cook),
            self.rub_part(cook),
            self.brine_part(cook),
            self.mop_part(cook),
            self.shopping_part(cook),
        ];
        for (part, kind) in all.iter_mut().zip(ORDER) {
            part.by = self.written_by(cook, kind);
            part.buttons.extend(self.as_last_time(cook, kind, last));
        }
        all.push(self.trimmings_part(cook));
        all
    }

    /// A section with nothing in it yet.
    fn empty_part(&self, part: &str, heading: &'static str, slip: Slip) -> KitchenPart {
        KitchenPart {
            part: part.into(),
            heading: self.say.text(heading),
            lead: String::new(),
            groups: vec![],
            notes: vec![],
            flags: vec![],
            cautions: vec![],
            by: String::new(),
            buttons: vec![],
            slips: vec![slip],
        }
    }

    /// What a section is called.
    pub fn batch_name(&self, kind: BatchKind) -> String {
        self.say.text(match kind {
            BatchKind::Rub => key("kitchen-rub"),
            BatchKind::Brine => key("kitchen-brine"),
            BatchKind::Mop => key("kitchen-mop"),
            BatchKind::Portions => key("kitchen-portions"),
            BatchKind::Shopping => key("kitchen-shopping"),
        })
    }

    fn written_by(&self, cook: &Cook, kind: BatchKind) -> String {
        let Some(kept) = cook.batches.get(&kind) else {
            return String::new();
        };
        let (who, when) = (
            self.device(kept.when.entry.device),
            self.say.clock_day(kept.when.at, self.now),
        );
        let args = [("who", Arg::Text(&who)), ("when", Arg::Text(&when))];
        Self::begins(&self.say.with("kitchen-by", &args))
    }

    /// Offered while this cook has none of its own.
    fn as_last_time(&self, cook: &Cook, kind: BatchKind, last: &LastTime) -> Option<super::Button> {
        let last = last
            .0
            .get(&kind)
            .filter(|_| !cook.batches.contains_key(&kind))?;
        let (part, day) = (
            self.batch_name(kind),
            self.say.day_heading(last.started, self.now),
        );
        let args = [
            ("part", Arg::Text(&part)),
            ("name", Arg::Text(&last.name)),
            ("day", Arg::Text(&day)),
        ];
        let act = Act::PlanBatch {
            cook: cook.id,
            batch: last.batch.for_another(),
        };
        let label = self.say.with("kitchen-as-last-time", &args);
        Some(button(label, act, Tone::Main))
    }

    fn kitchen_line(&self, name: &str, amount: String, detail: String) -> KitchenLine {
        KitchenLine {
            name: name.into(),
            amount,
            detail,
        }
    }

    fn not_a_batch(&self, wrong: &NotABatch) -> String {
        wrong.said(&self.say)
    }
}

/// The sections in the order of the work: how much meat, what goes on it, what is bought for it.
const ORDER: [BatchKind; 5] = [
    BatchKind::Portions,
    BatchKind::Rub,
    BatchKind::Brine,
    BatchKind::Mop,
    BatchKind::Shopping,
];

/// The section of a cook as it was written down.
macro_rules! planned {
    ($cook:expr, $kind:ident) => {
        match $cook
            .batches
            .get(&$crate::batch::BatchKind::$kind)
            .map(|kept| &kept.batch)
        {
            Some($crate::batch::Batch::$kind(plan)) => Some(plan),
            _ => None,
        }
    };
}
use planned;
