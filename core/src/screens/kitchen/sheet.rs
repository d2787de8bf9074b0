//! The kitchen on one sheet of paper: how much of what, what is bought, what is done when. Start at [`kitchen_sheet`].

use super::{
    super::{Place, glance::Glance, pitside::to_do},
    KitchenGroup, KitchenLine, KitchenPart, KitchenSheet, LastTime,
    meats::eaters,
};
use crate::{
    alarms::{self, Due},
    batch::BatchKind,
    cook::{Cook, Known},
    ids::CookId,
    moment::Moment,
    words::{Arg, Viewer, key},
};

/// So many of the things that are due stand on it, so that it stays one sheet.
const DUE_SHOWN: usize = 10;

/// The sheet of a cook; none where it is not known here.
pub fn kitchen_sheet(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    moment: &Moment,
) -> Option<KitchenSheet> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    let dues = to_do(
        &alarms::due_in(known, cook.id, moment.utc_ms),
        moment.utc_ms,
    );
    let parts = glance.kitchen_parts(cook, &LastTime::default()).into_iter();
    Some(KitchenSheet {
        cook: cook.id,
        title: cook.name.value.clone(),
        about: glance.sheet_about(cook),
        parts: parts
            .filter(|part| !part.groups.is_empty())
            .map(on_paper)
            .collect(),
        jobs: glance.sheet_jobs(cook, &dues),
        how: glance.say.text("kitchen-sheet-how"),
        links: glance.links_to(&[
            (key("link-kitchen"), Place::Kitchen { cook: cook.id }),
            (key("link-now"), Place::Now { cook: cook.id }),
        ]),
        until: glance.until(&dues),
    })
}

/// The same section as it is printed: what is done is on it, how it was reckoned is not.
fn on_paper(part: KitchenPart) -> KitchenPart {
    KitchenPart {
        by: String::new(),
        buttons: vec![],
        slips: vec![],
        ..part
    }
}

impl Glance<'_> {
    fn sheet_about(&self, cook: &Cook) -> Vec<String> {
        let people = eaters(cook).map(|people| {
            self.say
                .with("kitchen-people", &[("people", Arg::Number(people))])
        });
        let meats: Vec<String> = cook
            .meats()
            .map(|piece| match piece.weight_g.value {
                Some(g) => format!("{} {}", piece.name.value, self.say.weight(g)),
                None => piece.name.value.clone(),
            })
            .collect();
        let serve = match &cook.serve.value {
            Some(serve) => {
                let time = self.say.clock_day(serve.at, self.now);
                self.say
                    .with("kitchen-table-at", &[("time", Arg::Text(&time))])
            }
            None => self.say.text("screen-no-serve"),
        };
        let mut all = vec![serve];
        all.extend(people);
        all.extend((!meats.is_empty()).then(|| self.say.list(&meats)));
        all
    }

    /// What was written down and is to be made, then what is due with its time.
    fn sheet_jobs(&self, cook: &Cook, dues: &[Due]) -> KitchenGroup {
        let to_make = [
            (BatchKind::Shopping, key("kitchen-job-buy")),
            (BatchKind::Brine, key("kitchen-job-brine")),
            (BatchKind::Rub, key("kitchen-job-rub")),
            (BatchKind::Mop, key("kitchen-job-mop")),
        ];
        let made = to_make
            .into_iter()
            .filter(|(kind, _)| cook.batches.contains_key(kind))
            .map(|(_, job)| self.kitchen_line(&self.say.text(job), String::new(), String::new()));
        let due = dues.iter().take(DUE_SHOWN).map(|due| self.sheet_due(due));
        KitchenGroup {
            heading: self.say.text("kitchen-jobs"),
            lines: made.chain(due).collect(),
        }
    }

    fn sheet_due(&self, due: &Due) -> KitchenLine {
        let (verb, what) = (self.verb(due.job), self.object(due.job));
        let time = self.say.clock_day(self.time_of(due), self.now);
        self.kitchen_line(&self.line_job(&verb, &what), time, String::new())
    }
}
