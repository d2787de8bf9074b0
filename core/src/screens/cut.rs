//! One cut: what it is, how it is tried, how long it takes, what goes wrong, and where each value comes from.

use super::{CutFact, CutOutcome, CutScreen, CutTest, check::outcomes, glance::Glance};
use crate::{
    cadence::Cadence,
    catalogue::{CutWords, cut_words},
    checks::{
        Cut, CutFacts, Test, TestResult, cut_facts,
        cuts::{BastingHint, Composition, CookTime, Degrees, Minutes},
        meaning,
    },
    cook::Known,
    moment::{MINUTE, Moment},
    safety::{CautionKind, Form, Source, minimum},
    units::Mk,
    words::{Arg, Viewer, key},
};

/// From here on the skin of a bird crisps. Common practice, no source.
const CRISP: Mk = Mk::from_f(325);
/// At this it stays tough. Common practice, no source.
const SLOW: Mk = Mk::from_f(275);
/// What is held is held at this or above: USDA, see the source of [`CautionKind::HoldHot`].
const HELD: Mk = Mk::from_f(140);
/// A weight that is easy to measure by, where the time goes with the weight: 4 lb in grams.
const EXAMPLE_G: i64 = 1_814;

/// The page of one cut.
pub fn cut(known: &Known<'_>, viewer: &Viewer, cut: Cut, moment: &Moment) -> CutScreen {
    let glance = Glance::of(known, viewer, moment);
    let (facts, words) = (cut_facts(cut), cut_words(cut));
    let text = |key| glance.say.text(key);
    CutScreen {
        cut,
        title: text(cut.key()),
        also: text(words.also),
        about: text(words.about),
        facts: glance.cut_facts_of(&facts, words),
        tests_heading: text("cuts-tests"),
        tests: facts
            .tests
            .iter()
            .map(|test| glance.cut_test(&facts, *test))
            .collect(),
        wrong_heading: text("cuts-wrong"),
        wrong: text(words.wrong),
        made_of_heading: text("cuts-made-of"),
        made_of: glance.made_of(facts.composition),
        cautions: glance.caution_texts(cautions(cut)),
        all: text("cuts-all"),
        until: i64::MAX,
    }
}

/// What to heed with this cut; the deferring one last.
const fn cautions(cut: Cut) -> &'static [CautionKind] {
    use CautionKind::{HoldHot, LocalRulesFirst, PoultryThreePlaces, RawPoultryBrush};
    match cut.is_poultry() {
        true => &[
            PoultryThreePlaces,
            RawPoultryBrush,
            HoldHot,
            LocalRulesFirst,
        ],
        false => &[HoldHot, LocalRulesFirst],
    }
}

impl Glance<'_> {
    fn cut_facts_of(&self, facts: &CutFacts, words: CutWords) -> Vec<CutFact> {
        vec![
            self.pit_fact(facts),
            self.time_fact(facts),
            self.done_fact(facts),
            self.minimum_fact(facts),
            self.read_fact(facts),
            self.common(
                key("cut-fact-wet"),
                self.cadence(usual(facts.basting)),
                String::new(),
            ),
            self.wrap_fact(facts, words),
            self.common(
                key("cut-fact-rest"),
                self.minutes(facts.rest),
                self.say.text(words.rest),
            ),
            self.hold_fact(facts),
            self.first_check_fact(facts),
        ]
    }

    fn common(&self, name: &'static str, value: String, how: String) -> CutFact {
        self.sourced(name, value, how, Source::CommonPractice)
    }

    fn sourced(&self, name: &'static str, value: String, how: String, source: Source) -> CutFact {
        CutFact {
            name: self.say.text(name),
            value,
            how,
            source: self.say.text(source.key()),
        }
    }

    fn pit_fact(&self, facts: &CutFacts) -> CutFact {
        let skin = self.skin(facts.cut).unwrap_or_default();
        self.common(key("cut-fact-pit"), self.degrees_of(facts.pit), skin)
    }

    fn time_fact(&self, facts: &CutFacts) -> CutFact {
        let how = self.say.text("cut-time-how");
        self.common(key("cut-fact-time"), self.time_at(facts), how)
    }

    /// "4 h to 6 h at 275 °F".
    pub(super) fn time_at(&self, facts: &CutFacts) -> String {
        let (time, pit) = (
            self.cook_time(facts.cook_time),
            self.degrees_of(facts.time_at),
        );
        let args = [("time", Arg::Text(&time)), ("pit", Arg::Text(&pit))];
        self.say.with("cut-time-at", &args)
    }

    /// What a slow pit does to the skin of a bird, where there is one.
    pub(super) fn skin(&self, cut: Cut) -> Option<String> {
        let (crisp, slow) = (self.say.temperature(CRISP), self.say.temperature(SLOW));
        let args = [("crisp", Arg::Text(&crisp)), ("slow", Arg::Text(&slow))];
        let has_skin = cut.is_poultry() && !cut.is_ground();
        has_skin.then(|| self.say.with("cut-skin", &args))
    }

    fn degrees_of(&self, range: Degrees) -> String {
        match range.low == range.high {
            true => self.say.temperature(range.low),
            false => self.say.temperature_span(range.low, range.high),
        }
    }

    fn done_fact(&self, facts: &CutFacts) -> CutFact {
        let how = self.say.text(facts.done_by.key());
        self.common(key("cut-fact-done"), self.degrees_of(facts.done_range), how)
    }

    fn minimum_fact(&self, facts: &CutFacts) -> CutFact {
        let whole = minimum(facts.cut, Form::Intact);
        let temp = self.say.temperature(whole.temp);
        let value = match whole.rest_ms {
            0 => self
                .say
                .with("cut-minimum", &[("minimum", Arg::Text(&temp))]),
            rest => {
                let rest = self.say.duration(rest);
                let args = [("minimum", Arg::Text(&temp)), ("rest", Arg::Text(&rest))];
                self.say.with("cut-minimum-rest", &args)
            }
        };
        self.sourced(
            key("cut-fact-minimum"),
            value,
            self.minimum_how(facts),
            whole.source,
        )
    }

    /// What the minimum is not: where the cut is good, or enough for meat that is not whole muscle.
    fn minimum_how(&self, facts: &CutFacts) -> String {
        let tender = self.say.temperature(facts.tender_from());
        let raised = self.say.temperature(minimum(facts.cut, Form::Unknown).temp);
        match facts.cut {
            cut if cut.is_poultry() => self.say.text("cut-minimum-poultry"),
            cut if cut.is_ground() => self.say.text("cut-minimum-ground"),
            _ if facts.is_done_far_above() => self
                .say
                .with("cut-minimum-tough", &[("tender", Arg::Text(&tender))]),
            _ => self
                .say
                .with("cut-minimum-whole", &[("raised", Arg::Text(&raised))]),
        }
    }

    fn read_fact(&self, facts: &CutFacts) -> CutFact {
        let spots: Vec<String> = facts
            .spots
            .iter()
            .map(|spot| self.say.text(spot.key()))
            .collect();
        let how = self.say.text(match facts.by_hand {
            true => key("cut-read-by-hand"),
            false => key("cut-read-any"),
        });
        let source = match facts.cut.is_poultry() {
            true => Source::OwnCaution,
            false => Source::CommonPractice,
        };
        self.sourced(key("cut-fact-read"), self.say.list(&spots), how, source)
    }

    fn wrap_fact(&self, facts: &CutFacts, words: CutWords) -> CutFact {
        let wraps: Vec<String> = facts
            .wraps
            .iter()
            .map(|wrap| self.say.text(wrap.key()))
            .collect();
        let value = match wraps.is_empty() {
            true => self.say.text("cut-wrap-none"),
            false => self.say.list(&wraps),
        };
        let how = words.wrap.map_or(String::new(), |wrap| self.say.text(wrap));
        self.common(key("cut-fact-wrap"), value, how)
    }

    fn hold_fact(&self, facts: &CutFacts) -> CutFact {
        let most = self.say.duration(facts.hold_minutes_max * MINUTE);
        let hot = self.say.temperature(HELD);
        let value = self
            .say
            .with("cut-hold-up-to", &[("most", Arg::Text(&most))]);
        let how = self.say.with("cut-hold-how", &[("hot", Arg::Text(&hot))]);
        self.common(key("cut-fact-hold"), value, how)
    }

    fn first_check_fact(&self, facts: &CutFacts) -> CutFact {
        let wait = self
            .say
            .duration(facts.first_check_minutes(EXAMPLE_G) * MINUTE);
        let weight = self.say.weight(EXAMPLE_G);
        let (wait, weight) = (("wait", Arg::Text(&wait)), ("weight", Arg::Text(&weight)));
        let value = match facts.cook_time {
            CookTime::Whole { .. } => self.say.with("cut-first-check", &[wait]),
            CookTime::PerPound { .. } => self.say.with("cut-first-check-a-weight", &[wait, weight]),
        };
        self.common(key("cut-fact-first-check"), value, String::new())
    }

    /// "45 min to 2 h".
    pub(super) fn minutes(&self, Minutes { least, most }: Minutes) -> String {
        let (least, most) = (
            self.say.duration(least * MINUTE),
            self.say.duration(most * MINUTE),
        );
        let args = [("least", Arg::Text(&least)), ("most", Arg::Text(&most))];
        self.say.with("cut-time", &args)
    }

    fn cut_test(&self, facts: &CutFacts, test: Test) -> CutTest {
        let outcome = |result| CutOutcome {
            label: self.say.text(TestResult::key(&result)),
            means: self
                .say
                .text(meaning(facts.cut, Form::Intact, &result).meaning.key()),
        };
        let spots = match test {
            Test::Temperature => facts.spots.as_slice(),
            _ => &[],
        };
        CutTest {
            name: self.say.text(test.key()),
            how: self.say.text(test.how_key(facts.cut)),
            outcomes: outcomes(test).into_iter().map(outcome).collect(),
            spots: spots.iter().map(|spot| self.say.text(spot.key())).collect(),
        }
    }

    fn made_of(&self, made: Composition) -> Vec<CutFact> {
        let source = self.say.text(Composition::SOURCE.key());
        let row = [
            ("source", Arg::Text(&source)),
            ("row", Arg::Number(i64::from(made.ndb))),
        ];
        let source = self.say.with("cut-row", &row);
        let line = |name: &'static str, hundredths: i64| {
            let grams = format!("{}.{:02}", hundredths / 100, hundredths % 100);
            CutFact {
                name: self.say.text(name),
                value: self.say.with("cut-grams", &[("grams", Arg::Text(&grams))]),
                how: String::new(),
                source: source.clone(),
            }
        };
        vec![
            line(key("cut-fact-water"), made.water),
            line(key("cut-fact-protein"), made.protein),
            line(key("cut-fact-fat"), made.fat),
            line(key("cut-fact-ash"), made.ash),
        ]
    }
}

/// How it is usually kept wet, as a cadence.
const fn usual(basting: BastingHint) -> Cadence {
    match basting {
        BastingHint::Dry => Cadence::None,
        BastingHint::Mop { every_minutes } => Cadence::Mop {
            every_min: every_minutes,
        },
        BastingHint::Spritz { every_minutes } => Cadence::Spritz {
            every_min: every_minutes,
        },
    }
}
