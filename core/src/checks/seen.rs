//! What has been seen of a meat so far: the latest result of each test, and the readings that count.

use super::{
    Cut, CutFacts, Level, Spot, Temperature, Test, TestResult, Trust, VerdictInput,
    reading::Reading,
};
use crate::{checks::DatedResult, safety::Form};
use std::collections::{BTreeMap, BTreeSet};

/// The input, put in order.
pub(super) struct Seen {
    pub cut: Cut,
    pub form: Form,
    pub now: i64,
    /// The latest result of each test and when; of two at one instant the less done.
    pub latest: BTreeMap<Test, (i64, TestResult)>,
    /// The temperatures that count, corrected.
    pub readings: Vec<Reading>,
    /// By how much thermometers are off whose readings were corrected.
    pub corrected: BTreeSet<i64>,
    /// By how much thermometers are off whose readings do not count.
    pub too_far_off: BTreeSet<i64>,
    /// Whether any thermometer was not checked.
    pub unchecked: bool,
}

impl Seen {
    pub(super) fn of(input: &VerdictInput) -> Self {
        let mut seen = Self {
            cut: input.cut,
            form: input.form,
            now: input.now,
            latest: BTreeMap::new(),
            readings: vec![],
            corrected: BTreeSet::new(),
            too_far_off: BTreeSet::new(),
            unchecked: false,
        };
        input.checks.iter().for_each(|check| seen.take(check));
        seen
    }

    fn take(&mut self, check: &DatedResult) {
        let at = check.at.min(self.now);
        let known = self
            .latest
            .entry(check.result.test())
            .or_insert((at, check.result));
        if at > known.0 || (at == known.0 && check.result < known.1) {
            *known = (at, check.result);
        }
        if let TestResult::Heat(heat) = &check.result {
            self.read(at, heat, check);
        }
    }

    fn read(&mut self, at: i64, heat: &Temperature, check: &DatedResult) {
        let Some(standing) = check.standing else {
            return;
        };
        self.unchecked |= !standing.is_checked(self.now);
        let mk = match standing.trust(heat.mk) {
            Trust::Counts(mk) => mk,
            Trust::Corrected(mk) => {
                self.corrected.insert(standing.off_mk());
                mk
            }
            Trust::TooFarOff => {
                self.too_far_off.insert(standing.off_mk());
                return;
            }
        };
        self.readings.push(Reading {
            at,
            spot: place(self.cut, self.form, heat.spot),
            mk,
            instant: heat.instant_read,
        });
    }

    /// What the deciding tests of this cut feel like: the less done one counts.
    pub(super) fn feel(&self, facts: &CutFacts) -> Option<Level> {
        self.feels(facts).min()
    }

    /// Every deciding feel.
    pub(super) fn feels(&self, facts: &CutFacts) -> impl Iterator<Item = Level> {
        facts
            .feel_by
            .iter()
            .filter_map(|test| self.latest.get(test)?.1.feel())
    }

    /// What the bones or the joint hint at, where they tell anything.
    pub(super) fn hint(&self, facts: &CutFacts) -> Option<Level> {
        let hints = [Test::BoneShowing, Test::Joint];
        hints
            .iter()
            .filter(|test| facts.tests.contains(test))
            .find_map(|test| self.latest.get(test)?.1.feel())
    }
}

/// A place that is none of this cut's is elsewhere.
fn place(cut: Cut, form: Form, spot: Spot) -> Spot {
    if cut.spots(form).contains(&spot) {
        spot
    } else {
        Spot::Elsewhere
    }
}
