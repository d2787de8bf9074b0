//! Leftovers: how to get them cold in time.

use crate::{
    cook::{Cook, Piece, safety_facts::heats},
    log::Stage,
    safety::{
        Source,
        cooling::{
            BOTH_MS, COLD, Cooling, CoolingState, FIRST_MS, FIRST_TO, Pan, Surroundings,
            forecast::forecast,
        },
        food_log::TempAt,
    },
    screens::{Line, Weight, glance::Glance},
    units::Mk,
    words::{Arg, TemperatureUnit, key},
};

/// How deep food may lie, millimeters with inches for who reads those: 1, 2, 3 and 4 in. Common practice, no source.
const DEPTHS: [(i64, i64); 4] = [(25, 1), (50, 2), (75, 3), (100, 4)];
/// How hot food is taken to be where nobody read it: the start of the published stages.
const FROM: Mk = Mk::from_f(135);

impl Glance<'_> {
    /// What was put away: how far it is, and how long it takes by how deep it lies.
    pub(super) fn cooling_lines(&self, cook: &Cook, piece: &Piece) -> Vec<Line> {
        let Some(passed) = piece.stage(self.now) else {
            return vec![];
        };
        if passed.stage != Stage::PutAway {
            return vec![];
        }
        let mut readings: Vec<TempAt> = heats(&self.known, cook, piece, self.now)
            .into_values()
            .flatten()
            .filter(|reading| reading.at >= passed.when.at)
            .collect();
        readings.sort_by_key(|reading| reading.at);
        let mut so_far = Cooling::default();
        for reading in &readings {
            so_far.push(*reading).ok();
        }
        let mut all = vec![self.cooling_line(so_far.state(self.minute_end()))];
        let from = readings.last().map_or(FROM, |reading| reading.temp);
        if from > COLD {
            all.extend(
                DEPTHS
                    .iter()
                    .filter_map(|depth| self.depth_line(*depth, from)),
            );
        }
        all
    }

    fn cooling_line(&self, state: CoolingState) -> Line {
        let [first, cold] = [FIRST_TO, COLD].map(|temp| self.say.temperature(temp));
        let (state, weight) = match state {
            CoolingState::NotRead | CoolingState::Hot => {
                let [one, both] = [FIRST_MS, BOTH_MS].map(|ms| self.say.duration(ms));
                let args = [
                    ("first", Arg::Text(&first)),
                    ("cold", Arg::Text(&cold)),
                    ("one", Arg::Text(&one)),
                    ("both", Arg::Text(&both)),
                ];
                (self.say.with("safety-cooling-rule", &args), Weight::Calm)
            }
            CoolingState::First { by } => (self.cold_by(&first, by), Weight::Soon),
            CoolingState::Second { by } => (self.cold_by(&cold, by), Weight::Soon),
            CoolingState::Cold => (self.say.text("safety-cooling-cold"), Weight::Calm),
            CoolingState::TooLong => (self.say.text("safety-cooling-over"), Weight::Call),
        };
        let detail = self.say.text(Source::FoodCodeCooling.key());
        Line {
            weight,
            ..self.fact(key("safety-line-cooling"), state, detail)
        }
    }

    fn cold_by(&self, temp: &str, by: i64) -> String {
        let time = self.say.clock_day(by, self.now);
        let args = [("temp", Arg::Text(temp)), ("time", Arg::Text(&time))];
        self.say.with("safety-cooling-by", &args)
    }

    /// "2 in deep: in the refrigerator 3 h to 9 h, in ice water 1 h to 3 h".
    fn depth_line(&self, (mm, inches): (i64, i64), from: Mk) -> Option<Line> {
        let takes = |surroundings| {
            let pan = Pan {
                depth_mm: mm,
                surroundings,
                temp: None,
            };
            let takes = forecast(&pan, Some(from))?;
            let both = [takes.cold_ms_least, takes.cold_ms_most];
            let [least, most] = both.map(|ms| self.say.duration(quarter(ms)));
            let args = [("least", Arg::Text(&least)), ("most", Arg::Text(&most))];
            let first = [
                takes.first_ms_most <= FIRST_MS,
                takes.cold_ms_most <= BOTH_MS,
            ];
            Some((self.say.with("safety-takes", &args), first == [true, true]))
        };
        let (fridge, fridge_fits) = takes(Surroundings::Refrigerator)?;
        let (ice, ice_fits) = takes(Surroundings::IceBath)?;
        let depth = match self.viewer.temperature {
            TemperatureUnit::Fahrenheit => self
                .say
                .with("safety-depth-inches", &[("count", Arg::Number(inches))]),
            TemperatureUnit::Celsius => self
                .say
                .with("safety-depth-millimeters", &[("count", Arg::Number(mm))]),
        };
        let args = [("fridge", Arg::Text(&fridge)), ("ice", Arg::Text(&ice))];
        let detail = self.say.text(match (fridge_fits, ice_fits) {
            (true, _) => key("safety-depth-fits"),
            (false, true) => key("safety-depth-ice"),
            (false, false) => key("safety-depth-deep"),
        });
        Some(Line {
            name: depth,
            state: self.say.with("safety-depth-takes", &args),
            detail,
            weight: Weight::Calm,
            link: None,
        })
    }
}

/// A forecast is no truer than a quarter of an hour.
const fn quarter(ms: i64) -> i64 {
    let step = 15 * crate::moment::MINUTE;
    (ms + step - 1) / step * step
}
