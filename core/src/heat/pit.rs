//! The pit's air over time: as it was logged, straight between two readings, and what an opening does to it. Start at
//! [`PitAir::at`].

/// How much of the difference to the air outside an opening loses in the end: the walls stay hot. From memory, no source.
const FALLS: f64 = 0.7;
/// In how many seconds most of that is lost while it is open, and comes back once it is shut. From memory, no source.
const EMPTIES_S: f64 = 30.0;
const FILLS_S: f64 = 240.0;

/// One opening, seconds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Opened {
    /// When.
    pub at_s: f64,
    /// For how long.
    pub for_s: f64,
}

/// A pit's temperature over time.
#[derive(Clone, Debug, PartialEq)]
pub struct PitAir {
    /// Seconds and °C, times rising; there is at least one. Before the first and after the last it stays.
    pub logged: Vec<(f64, f64)>,
    /// Openings that the log does not show.
    pub opened: Vec<Opened>,
    /// The air outside, °C.
    pub outside_c: f64,
}

impl PitAir {
    /// At this many seconds, °C.
    pub fn at(&self, at_s: f64) -> f64 {
        let logged = self.logged_at(at_s);
        let lost = self.opened.iter().map(|opened| opened.lost(at_s));
        let kept = lost.fold(1.0, |kept, lost| kept * (1.0 - lost));
        self.outside_c + (logged - self.outside_c) * kept
    }

    fn logged_at(&self, at_s: f64) -> f64 {
        let next = self.logged.partition_point(|(time, _)| *time <= at_s);
        let before = next.checked_sub(1).map(|i| self.logged[i]);
        match (before, self.logged.get(next)) {
            (Some((from, low)), Some((to, high))) => {
                low + (high - low) * (at_s - from) / (to - from)
            }
            (Some((_, celsius)), None) => celsius,
            (None, Some((_, celsius))) => *celsius,
            (None, None) => self.outside_c,
        }
    }
}

impl Opened {
    /// The share of the difference to the air outside that is lost.
    pub fn lost(&self, at_s: f64) -> f64 {
        let since = at_s - self.at_s;
        if since <= 0.0 {
            return 0.0;
        }
        let open = since.min(self.for_s);
        let lost = FALLS * (1.0 - libm::exp(-open / EMPTIES_S));
        lost * libm::exp(-(since - open) / FILLS_S)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pit(opened: Vec<Opened>) -> PitAir {
        PitAir {
            logged: vec![(0.0, 100.0), (600.0, 120.0), (900.0, 120.0)],
            opened,
            outside_c: 20.0,
        }
    }

    #[test]
    fn it_is_straight_between_readings_and_stays_beyond_them() {
        let pit = pit(vec![]);
        for (at, celsius) in [(-5.0, 100.0), (300.0, 110.0), (600.0, 120.0), (9e3, 120.0)] {
            assert_eq!(pit.at(at), celsius);
        }
    }

    #[test]
    fn an_opening_is_felt_at_once_and_forgotten_after_a_while() {
        let opened = Opened {
            at_s: 1_000.0,
            for_s: 120.0,
        };
        let pit = pit(vec![opened]);
        assert_eq!(pit.at(1_000.0), 120.0);
        assert!(
            (50.0..55.0).contains(&pit.at(1_120.0)),
            "{}",
            pit.at(1_120.0)
        );
        assert!(pit.at(1_300.0) > 85.0);
        assert!(pit.at(2_500.0) > 119.0);
    }
}
