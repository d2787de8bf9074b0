//! What past cooks taught, in plain words.

use crate::{
    ahead::Lesson,
    checks::Cut,
    ids::PitId,
    screens::{Line, Weight, glance::Glance},
    units::Mk,
    words::{Arg, key},
};

/// A pit that is off by less than this is said to be true, millikelvin: 2 °F, as of a thermometer.
const TRUE_MK: i64 = 1_111;
/// A cut that takes longer or shorter by less than so many hundredths takes what is usual. Common practice, no source.
const USUAL_PERCENT: i64 = 3;

impl Glance<'_> {
    /// What was learned of a pit.
    pub fn pit_learned(&self, pit: PitId) -> Option<Line> {
        let lesson = self.known.lessons.pits.get(&pit)?;
        let by = self.say.temperature_difference(Mk(lesson.value.abs()));
        let args = [("by", Arg::Text(&by))];
        let state = match lesson.value {
            off if off.abs() < TRUE_MK => self.say.text("lesson-pit-true"),
            0.. => self.say.with("lesson-pit-hotter", &args),
            _ => self.say.with("lesson-pit-colder", &args),
        };
        Some(self.lesson_line(self.say.text("lesson-name"), state, lesson))
    }

    /// What was learned of pits and cuts: for the pit book.
    pub fn learned(&self) -> Vec<Line> {
        let lessons = self.known.lessons;
        let pits = lessons.pits.keys().filter_map(|pit| {
            let line = self.pit_learned(*pit)?;
            Some(Line {
                name: self.pit(*pit),
                ..line
            })
        });
        let cuts = lessons.cuts.iter();
        pits.chain(cuts.map(|(cut, lesson)| self.cut_learned(*cut, lesson)))
            .collect()
    }

    fn cut_learned(&self, cut: Cut, lesson: &Lesson) -> Line {
        let percent = percent_longer(lesson.value);
        let args = [("percent", Arg::Number(percent.abs()))];
        let said = match percent {
            near if near.abs() < USUAL_PERCENT => key("lesson-cut-usual"),
            0.. => key("lesson-cut-longer"),
            _ => key("lesson-cut-shorter"),
        };
        let state = match said {
            "lesson-cut-usual" => self.say.text("lesson-cut-usual"),
            said => self.say.with(said, &args),
        };
        self.lesson_line(self.say.text(cut.key()), state, lesson)
    }

    fn lesson_line(&self, name: String, state: String, lesson: &Lesson) -> Line {
        Line {
            name,
            state,
            detail: self
                .say
                .with("lesson-from", &[("count", Arg::Number(lesson.meats))]),
            weight: Weight::Calm,
            link: None,
        }
    }
}

/// How many hundredths longer something takes, of the millionths of its logarithm: e^x − 1 ≈ x + x²/2, within a hundredth up
/// to a third.
fn percent_longer(micro: i64) -> i64 {
    let squared = micro.saturating_mul(micro) / 2_000_000;
    micro
        .saturating_add(squared)
        .saturating_add(5_000)
        .div_euclid(10_000)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_logarithm_becomes_hundredths() {
        assert_eq!(percent_longer(0), 0);
        assert_eq!(percent_longer(100_000), 11);
        assert_eq!(percent_longer(-100_000), -9);
        assert_eq!(percent_longer(262_364), 30);
    }
}
