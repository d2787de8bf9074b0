//! Trying one meat: the tests in order, how each is done, and what each outcome means.

use super::{
    CheckScreen, OutcomeChoice, Place, SpotField, TestForm, ThermometerChoice, glance::Glance,
};
use crate::{
    alarms,
    checks::{
        BarkSet, Bend, BoneShowing, Joint, ProbeFeel, Spot, Standing, Test, TestResult, WrapCall,
        cut_facts, meaning,
    },
    cook::{Known, Piece, Thermometer, verdict_input::standing},
    ids::PieceId,
    moment::Moment,
    safety::Doing,
    units::Mk,
    words::{Arg, TemperatureUnit, Viewer, key},
};

/// The screen on which a meat is tried; none where it is not known here.
pub fn check(
    known: &Known<'_>,
    viewer: &Viewer,
    piece: PieceId,
    moment: &Moment,
) -> Option<CheckScreen> {
    let glance = Glance::of(known, viewer, moment);
    let (cook, piece) = known.piece(piece)?;
    let tests = cut_facts(piece.cut).tests;
    let dues = alarms::due_in(known, cook.id, moment.utc_ms);
    Some(CheckScreen {
        piece: piece.id,
        cook: cook.id,
        cut: piece.cut,
        title: glance.check_title(piece),
        tests: tests.into_iter().map(|t| glance.test(piece, t)).collect(),
        thermometers: glance.thermometer_choices(),
        submit: glance.say.text("button-record"),
        verdict: glance.verdict_with_job(cook, piece, &dues),
        links: [
            vec![glance.thermometers_link()],
            glance.links_to(&[(key("cuts-about"), Place::Cut { cut: piece.cut })]),
        ]
        .concat(),
        cautions: glance.cautions(match piece.cut.is_poultry() {
            true => Doing::CheckingPoultry,
            false => Doing::CheckingMeat,
        }),
        until: glance.until(&dues),
    })
}

/// The name under which something is recorded.
pub(super) fn recorded(what: impl serde::Serialize) -> String {
    match serde_json::to_value(what) {
        Ok(serde_json::Value::String(name)) => name,
        Ok(other) => other.to_string(),
        Err(_) => String::new(),
    }
}

impl Glance<'_> {
    /// The most recently checked first, what nobody checked last: a shell offers the first.
    pub fn last_checked_first(&self) -> Vec<&Thermometer> {
        let mut all: Vec<&Thermometer> = self.known.crew.thermometers.values().collect();
        let checked = |thermometer: &Thermometer| match standing(
            self.known.crew,
            Some(thermometer.id),
            self.now,
        ) {
            Standing::Checked { at, .. } => Some(at),
            _ => None,
        };
        all.sort_by_key(|thermometer| std::cmp::Reverse(checked(thermometer)));
        all
    }

    pub fn thermometer_choices(&self) -> Vec<ThermometerChoice> {
        let all = self.last_checked_first().into_iter();
        all.map(|one| self.thermometer(one)).collect()
    }

    fn check_title(&self, piece: &Piece) -> String {
        let name = [("name", Arg::Text(&piece.name.value))];
        self.say.with("check-title", &name)
    }

    pub fn test(&self, piece: &Piece, test: Test) -> TestForm {
        TestForm {
            field: recorded(test),
            name: self.say.text(test.key()),
            how: self.say.text(test.how_key(piece.cut)),
            outcomes: outcomes(test)
                .into_iter()
                .map(|result| self.outcome(piece, result))
                .collect(),
            spots: match test {
                Test::Temperature => self.spots(piece),
                _ => vec![],
            },
        }
    }

    fn outcome(&self, piece: &Piece, result: TestResult) -> OutcomeChoice {
        let means = meaning(piece.cut, piece.form.value, &result).meaning;
        OutcomeChoice {
            label: self.say.text(result.key()),
            means: self.say.text(means.key()),
            value: recorded(result),
        }
    }

    fn spots(&self, piece: &Piece) -> Vec<SpotField> {
        let mut spots = piece.cut.spots(piece.form.value);
        spots.push(Spot::Elsewhere);
        spots
            .into_iter()
            .map(|spot| SpotField {
                field: format!("temperature-{}", recorded(spot)),
                name: self.say.text(spot.key()),
                spot: recorded(spot),
                unit: self.degrees().into(),
            })
            .collect()
    }

    pub fn degrees(&self) -> &'static str {
        match self.viewer.temperature {
            TemperatureUnit::Fahrenheit => "°F",
            TemperatureUnit::Celsius => "°C",
        }
    }

    fn thermometer(&self, thermometer: &Thermometer) -> ThermometerChoice {
        ThermometerChoice {
            id: thermometer.id.to_string(),
            name: thermometer.name.value.clone(),
            detail: self.standing(thermometer),
        }
    }

    /// When a thermometer was checked, and by how much it is off.
    pub fn standing(&self, thermometer: &Thermometer) -> String {
        let standing = standing(self.known.crew, Some(thermometer.id), self.now);
        let Standing::Checked { off_mk, at } = standing else {
            return self.say.text("thermometer-unchecked");
        };
        let ago = self.ago(at);
        let off = self.say.temperature_difference(Mk(off_mk.abs()));
        let args = [("ago", Arg::Text(&ago)), ("off", Arg::Text(&off))];
        match off_mk {
            _ if !standing.is_checked(self.now) => self
                .say
                .with("thermometer-lapsed", &[("ago", Arg::Text(&ago))]),
            // Less than half a kelvin is right as far as hands and ice can tell. Common practice, no source.
            -500..=500 => self
                .say
                .with("thermometer-right", &[("ago", Arg::Text(&ago))]),
            501.. => self.say.with("thermometer-hot", &args),
            _ => self.say.with("thermometer-cold", &args),
        }
    }
}

/// What can come of a test that is not a number.
pub(super) fn outcomes(test: Test) -> Vec<TestResult> {
    match test {
        Test::BarkSet => all(BarkSet::ALL, TestResult::Bark),
        Test::WrapCall => all(WrapCall::ALL, TestResult::Color),
        Test::BoneShowing => all(BoneShowing::ALL, TestResult::Bone),
        Test::Bend => all(Bend::ALL, TestResult::Lifted),
        Test::ProbeFeel => all(ProbeFeel::ALL, TestResult::Probed),
        Test::Joint => all(Joint::ALL, TestResult::Twisted),
        Test::Temperature => vec![],
    }
}

fn all<T: Copy>(of: &[T], result: impl Fn(T) -> TestResult) -> Vec<TestResult> {
    of.iter().map(|one| result(*one)).collect()
}
