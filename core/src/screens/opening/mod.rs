//! One opening of a pit as one form: every meat on it, what is due chosen already, confirmed once. Start at [`opening`].
//!
//! Law: what is chosen already is due now or its window is open, may be done to that meat, and may be recorded as it
//! stands; an answer to a question is never chosen already.

mod choices;
mod order;
mod records;

pub use records::*;

use super::{Link, Place, Weight, glance::Glance};
use crate::{
    alarms::{self, Due},
    checks::cut_facts,
    cook::{Cook, Known, Piece},
    ids::{CookId, PitId},
    log::Job,
    moment::{MINUTE, Moment},
    safety::{CautionKind, Doing, cautions_at},
    words::{Arg, Viewer},
};

/// A check that is due within so long is done in the same opening, in milliseconds: 15 min. Common practice, no source.
const CHECK_WITH_MS: i64 = 15 * MINUTE;

/// The opening of a pit; none where the cook or the pit is not known here.
pub fn opening(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    pit: PitId,
    moment: &Moment,
) -> Option<OpeningScreen> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    known.crew.pits.get(&pit)?;
    let dues = alarms::due(known, moment.utc_ms);
    let here: Vec<&Due> = dues.iter().filter(|due| due.pit == Some(pit)).collect();
    let inside = glance.on_pit(pit);
    let (now, later): (Vec<&Due>, Vec<&Due>) =
        here.iter().copied().partition(|due| glance.is_in_it(due));
    let name = glance.pit(pit);
    let mut meats: Vec<OpeningMeat> = inside
        .iter()
        .map(|(of, piece)| glance.opening_meat(of, piece, &here))
        .collect();
    meats.sort_by_key(|meat| (glance.is_poultry(meat.piece), meat.weight));
    Some(OpeningScreen {
        pit,
        cook: cook.id,
        title: glance
            .say
            .with("opening-title", &[("pit", Arg::Text(&name))]),
        state: glance.pit_line_of(pit),
        lead: glance.opening_lead(&inside, &now),
        order: glance.opening_order(&meats),
        after: glance.opening_after(&later),
        meats,
        thermometers: glance.thermometer_choices(),
        labels: glance.opening_labels(),
        links: glance.opening_links(cook, pit),
        cautions: glance.opening_cautions(&inside),
        until: glance.until(&dues),
    })
}

impl Glance<'_> {
    /// The meats on a pit, of all cooks under way.
    pub fn on_pit(&self, pit: PitId) -> Vec<(&Cook, &Piece)> {
        let on = |piece: &Piece| {
            piece.is_on_pit(self.now) && piece.pit(self.now).is_some_and(|(at, _)| at == pit)
        };
        let mut all: Vec<(&Cook, &Piece)> = vec![];
        for cook in self.known.open_cooks() {
            let meats = cook.meats().filter(|piece| on(piece));
            all.extend(meats.map(|piece| (cook, piece)));
        }
        all
    }

    /// Whether it is done in an opening that is made now.
    fn is_in_it(&self, due: &Due) -> bool {
        match due.job {
            Job::Wet(_) | Job::Glaze(_) | Job::RubSet(_) => self.ahead(due.from) <= 0,
            Job::Check(_) | Job::Pull(_) => self.ahead(due.at) <= CHECK_WITH_MS,
            _ => false,
        }
    }

    fn opening_meat(&self, cook: &Cook, piece: &Piece, here: &[&Due]) -> OpeningMeat {
        let ours: Vec<&Due> = here
            .iter()
            .copied()
            .filter(|due| due.job.piece() == Some(piece.id))
            .collect();
        let line = |due: &&Due| {
            let (verb, when) = (self.verb(due.job), self.due(due.at));
            self.line_due(&verb, &when)
        };
        let states: Vec<String> = ours.iter().map(line).collect();
        let weight = ours.iter().map(|due| self.weight(due)).min();
        let spot = piece.pit(self.now).map_or("", |(_, spot)| spot);
        let detail = [
            spot.to_owned(),
            self.where_it_is(piece),
            self.last_temperature(cook, piece).unwrap_or_default(),
        ];
        let detail: Vec<String> = detail.into_iter().filter(|part| !part.is_empty()).collect();
        let tests = cut_facts(piece.cut).tests;
        OpeningMeat {
            piece: piece.id,
            name: piece.name.value.clone(),
            state: match states.is_empty() {
                true => self.say.text("headline-nothing-due"),
                false => states.join(" · "),
            },
            detail: detail.join(" · "),
            weight: weight.unwrap_or(Weight::Calm),
            choices: self.opening_choices(piece, &ours),
            tests: tests
                .into_iter()
                .map(|test| self.test(piece, test))
                .collect(),
            tests_due: ours
                .iter()
                .any(|due| matches!(due.job, Job::Check(_) | Job::Pull(_)) && self.is_in_it(due)),
        }
    }

    fn opening_labels(&self) -> OpeningLabels {
        OpeningLabels {
            order: self.say.text("opening-order"),
            tests: self.say.text("opening-tests"),
            note: self.say.text("opening-note"),
            thermometer: self.say.text("frame-thermometer"),
            other_thermometer: self.say.text("frame-other-thermometer"),
            left_in: self.say.text("frame-left-in"),
            submit: self.say.text("opening-submit"),
        }
    }

    fn opening_links(&self, cook: &Cook, pit: PitId) -> Vec<Link> {
        let others = self.pits_of(cook).into_iter();
        let others = others.filter(|other| *other != pit && !self.on_pit(*other).is_empty());
        let mut all: Vec<Link> = others
            .map(|other| self.opening_link(cook.id, other))
            .collect();
        let cook = cook.id;
        for (label, place) in [
            ("link-trouble", Place::Trouble { cook, pit }),
            ("link-pits", Place::Pits { cook }),
            ("link-now", Place::Now { cook }),
        ] {
            let label = self.say.text(label);
            all.push(Link { label, place });
        }
        all
    }

    /// "Open Kettle".
    pub fn opening_link(&self, cook: CookId, pit: PitId) -> Link {
        let name = self.pit(pit);
        Link {
            label: self.say.with("link-opening", &[("pit", Arg::Text(&name))]),
            place: Place::Opening { cook, pit },
        }
    }

    /// Poultry first: what touched it raw touches nothing else.
    fn opening_cautions(&self, inside: &[(&Cook, &Piece)]) -> Vec<super::Caution> {
        let poultry = inside.iter().any(|(_, piece)| piece.cut.is_poultry());
        let mut kinds: Vec<CautionKind> = match poultry {
            true => [Doing::MoppingPoultry, Doing::CheckingPoultry]
                .into_iter()
                .flat_map(cautions_at)
                .collect(),
            false => cautions_at(Doing::MoppingMeat),
        };
        kinds.retain(|kind| *kind != CautionKind::LocalRulesFirst);
        let mut seen = std::collections::BTreeSet::new();
        kinds.retain(|kind| seen.insert(*kind));
        kinds.push(CautionKind::LocalRulesFirst);
        self.caution_texts(&kinds)
    }
}
