//! Doubts of a verdict by name: which thermometers nobody checked, and which readings show nothing.

use super::glance::Glance;
use crate::{
    checks::{DatedResult, Safety, Spot, Temperature, TestResult},
    cook::{Cook, Piece, verdict_input::verdict_input},
    units::Mk,
    words::Arg,
};
use std::collections::BTreeSet;

impl Glance<'_> {
    /// "Not checked in 30 days: Pen and the probe in the thickest part."
    pub fn unchecked_by_name(&self, cook: &Cook, piece: &Piece) -> String {
        let names: BTreeSet<String> = self
            .heats(cook, piece)
            .filter(|(dated, _)| {
                let checked = dated.standing.map(|one| one.is_checked(self.now));
                checked == Some(false)
            })
            .map(|(_, heat)| self.instrument(&heat))
            .collect();
        let names = self.say.list(&names.into_iter().collect::<Vec<_>>());
        let ice = self.say.temperature(Mk::from_f(32));
        let args = [("names", Arg::Text(&names)), ("ice", Arg::Text(&ice))];
        self.say.with("reason-unchecked-named", &args)
    }

    /// The hottest reading that would show the minimum if it had been taken at a place of the check; none once it is
    /// shown, or where there is none.
    pub fn read_elsewhere(&self, cook: &Cook, piece: &Piece, safety: &Safety) -> Option<String> {
        if safety.rest_left_ms.is_some() {
            return None;
        }
        let places = piece.cut.spots(piece.form.value);
        let hot = self
            .heats(cook, piece)
            .map(|(_, heat)| heat)
            .filter(|heat| heat.mk >= safety.minimum.temp && !places.contains(&heat.spot));
        let temp = self.say.temperature(hot.map(|heat| heat.mk).max()?);
        Some(
            self.say
                .with("reason-elsewhere", &[("temp", Arg::Text(&temp))]),
        )
    }

    fn heats(
        &self,
        cook: &Cook,
        piece: &Piece,
    ) -> impl Iterator<Item = (DatedResult, Temperature)> {
        let checks = verdict_input(&self.known, cook, piece, self.now).checks;
        checks.into_iter().filter_map(|dated| match dated.result {
            TestResult::Heat(heat) => Some((dated, heat)),
            _ => None,
        })
    }

    /// What a temperature was read with.
    fn instrument(&self, heat: &Temperature) -> String {
        let known = |id| self.known.crew.thermometers.get(&id);
        match heat.thermometer.and_then(known) {
            Some(thermometer) => thermometer.name.value.clone(),
            None if heat.instant_read => self.say.text("unchecked-by-hand"),
            None => {
                let spot = self.spot_text(heat.spot);
                self.say
                    .with("unchecked-left-in", &[("spot", Arg::Text(&spot))])
            }
        }
    }

    fn spot_text(&self, spot: Spot) -> String {
        self.say.text(spot.key())
    }
}
