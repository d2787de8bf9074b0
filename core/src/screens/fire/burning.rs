//! A fire as the log tells it: its feeds, the weather at each, how hot its pit is held.

use crate::{
    alarms::band_of,
    cook::{Cook, Pit, PitCare, Timed, ahead::counts},
    fire::{Feed, FuelUnit, Weather, WeatherTap, heat_kj_per_kg, power_w},
    moment::MINUTE,
    screens::glance::Glance,
    units::Mk,
};

/// How hot a pit is taken to be held where nobody said, 250 °F. Common practice, no source.
const HELD: Mk = Mk::from_f(250);

impl Glance<'_> {
    /// What was done at that pit in that cook.
    pub(super) fn care_of<'c>(&self, cook: &'c Cook, pit: &Pit) -> Option<&'c PitCare> {
        cook.pits.get(&pit.id)
    }

    /// What was put on last that keeps it hot: when, and what and how much where that was said.
    pub(super) fn last_feed(
        &self,
        cook: &Cook,
        pit: &Pit,
    ) -> Option<(i64, Option<(FuelUnit, i64)>)> {
        let care = self.care_of(cook, pit)?;
        let heats = care
            .heats(pit.kind.value)
            .filter(|when| counts(when.at, self.now));
        let last = heats.max_by_key(|when| when.at)?;
        Some((last.at, amount(care, last)))
    }

    /// The feeds of one cook, for the rhythm.
    pub(super) fn feeds_of(&self, cook: &Cook, pit: &Pit) -> Vec<Feed> {
        let care = self.care_of(cook, pit);
        let heats = care.into_iter().flat_map(|care| {
            let heats = care.heats(pit.kind.value);
            heats.map(move |when| (when, amount(care, when)))
        });
        let heats = heats.filter(|(when, _)| counts(when.at, self.now));
        let feed = |(when, amount): (&Timed, Option<(FuelUnit, i64)>)| Feed {
            at_min: when.at.div_euclid(MINUTE),
            kj: amount.map(|(unit, quarters)| kj(pit, unit, quarters)),
            loss_w: self.loss_w(pit, &self.weather_at(cook, when.at)),
        };
        heats.map(feed).collect()
    }

    /// The weather that was said for that time; before the first word on it the first word counts.
    pub(super) fn weather_at(&self, cook: &Cook, at: i64) -> Weather {
        let said = cook
            .weather
            .iter()
            .filter(|(when, _)| counts(when.at, self.now));
        let mut said: Vec<&(Timed, WeatherTap)> = said.collect();
        said.sort_by_key(|(when, _)| when.at);
        let (before, after): (Vec<_>, Vec<_>) =
            said.into_iter().partition(|(when, _)| when.at <= at);
        let in_order = after.into_iter().rev().chain(before);
        in_order.fold(Weather::FAIR, |weather, said: &(Timed, WeatherTap)| {
            weather.tapped(said.1)
        })
    }

    /// Whether all four taps of the weather were said.
    pub(super) fn is_weather_said(&self, cook: &Cook) -> bool {
        let said = cook
            .weather
            .iter()
            .filter(|(when, _)| counts(when.at, self.now));
        let mut taps = [false; 4];
        said.for_each(|(_, tap)| taps[place_of(*tap)] = true);
        taps == [true; 4]
    }

    pub(super) fn loss_w(&self, pit: &Pit, weather: &Weather) -> i64 {
        let held = self.pit_held(pit).c_milli() as f64 / 1_000.0;
        power_w(pit.kind.value, pit.grate_cm2.value, held, weather)
    }

    /// The middle of its band.
    pub(super) fn pit_held(&self, pit: &Pit) -> Mk {
        let mut cooks = self.known.open_cooks();
        let band = cooks.find_map(|cook| band_of(&self.known, cook, pit.id, self.now));
        band.map_or(HELD, |band| Mk(band.low.0.midpoint(band.high.0)))
    }
}

/// Which of the four taps it is.
pub(super) const fn place_of(tap: WeatherTap) -> usize {
    match tap {
        WeatherTap::Air(_) => 0,
        WeatherTap::Blows(_) => 1,
        WeatherTap::Falls(_) => 2,
        WeatherTap::Shines(_) => 3,
    }
}

fn amount(care: &PitCare, fed: &Timed) -> Option<(FuelUnit, i64)> {
    let what = care.fuel.iter().find(|(when, ..)| when.entry == fed.entry);
    what.map(|(_, unit, quarters)| (*unit, *quarters))
}

/// What so many quarters of a unit give, kJ. What another device claims beyond a hundred of them counts as a hundred.
fn kj(pit: &Pit, unit: FuelUnit, quarters: i64) -> i64 {
    let grams = pit.unit_grams(unit).clamp(1, 50_000) * quarters.clamp(1, 400) / 4;
    let heat = heat_kj_per_kg(unit.fuel(), None).map_or(1, |heat| heat.likely);
    (grams * heat / 1_000).max(1)
}
