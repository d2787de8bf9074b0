//! One meat: where it is, what is next, what was found, where it can go.

use super::{
    Button, Line, Link, PieceScreen, Place, ReadingsOf, Weight, glance::Glance, pitside::to_do,
};
use crate::{
    acts::Act,
    alarms::{self, Due},
    cadence::rhythm::{Next, Why},
    checks::{Reason, Spot, Temperature, TestResult, cut_facts},
    cook::{Cook, Known, Pass, Piece, rhythm_facts::rhythm_facts, verdict_input::verdict_input},
    ids::PieceId,
    moment::Moment,
    safety::{Doing, minimum},
    words::{Arg, Viewer, key},
};

use std::collections::BTreeMap;

/// So many passes over the tests are shown, latest first.
const CHECKS_SHOWN: usize = 10;

/// The screen of one meat; none where it is not known here.
pub fn piece(
    known: &Known<'_>,
    viewer: &Viewer,
    piece: PieceId,
    moment: &Moment,
) -> Option<PieceScreen> {
    let glance = Glance::of(known, viewer, moment);
    let (cook, piece) = known.piece(piece)?;
    let dues = alarms::due_in(known, cook.id, moment.utc_ms);
    let jobs = to_do(&dues, moment.utc_ms);
    let ours = || jobs.iter().filter(|due| due.job.piece() == Some(piece.id));
    let mut next: Vec<Line> = ours().map(|due| glance.due_line(due)).collect();
    next.extend(glance.why_nothing(cook, piece));
    Some(PieceScreen {
        piece: piece.id,
        cook: cook.id,
        cut: piece.cut,
        title: piece.name.value.clone(),
        about: glance.about(piece),
        state: glance.where_it_is(piece),
        next,
        ahead: glance.ahead_card(cook, piece, &dues),
        facts: glance.facts(cook, piece),
        verdict: glance.verdict_with_job(cook, piece, &dues),
        safety_heading: glance.say.text("safety-heading"),
        safety: glance.safety_lines(cook, piece),
        checks: glance.passes(piece),
        buttons: match cook.is_open() && piece.is_itself() {
            true => glance.answers_and_stages(cook, piece, ours()),
            false => vec![],
        },
        slips: match cook.is_open() && piece.is_itself() {
            true => glance.meat_slips(cook, piece),
            false => vec![],
        },
        links: glance.meat_links(cook, piece),
        cautions: glance.cautions(glance.doing(piece)),
        until: glance.until(&dues),
    })
}

impl Glance<'_> {
    /// The answers to what is due of it, then the stages it can go to.
    fn answers_and_stages<'d>(
        &self,
        cook: &Cook,
        piece: &Piece,
        ours: impl Iterator<Item = &'d Due>,
    ) -> Vec<Button> {
        let mut all: Vec<Button> = ours
            .filter(|due| due.at <= self.now)
            .flat_map(|due| self.answers(due))
            .collect();
        let stages = self.stage_buttons(cook, piece);
        let stages: Vec<Button> = stages
            .into_iter()
            .filter(|stage| all.iter().all(|answer| answer.act != stage.act))
            .collect();
        all.extend(stages);
        all
    }

    /// The answers to one of several things due, each named by what it answers.
    fn answers(&self, due: &Due) -> Vec<Button> {
        let verb = self.verb(due.job);
        let buttons = self.buttons_of(due, &[due]).into_iter();
        buttons
            .map(|button| match button.act {
                Act::SetStage { .. } => button,
                _ => {
                    let args = [
                        ("name", Arg::Text(&verb)),
                        ("does", Arg::Text(&button.label)),
                    ];
                    Button {
                        label: self.say.with("button-named", &args),
                        ..button
                    }
                }
            })
            .collect()
    }

    /// "Spare ribs · whole muscle · 3 lb 8 oz".
    fn about(&self, piece: &Piece) -> String {
        let mut parts = vec![
            self.say.text(piece.cut.key()),
            self.say.text(piece.form.value.key()),
        ];
        parts.extend(piece.weight_g.value.map(|grams| self.say.weight(grams)));
        parts.join(" · ")
    }

    fn why_nothing(&self, cook: &Cook, piece: &Piece) -> Option<Line> {
        let facts = rhythm_facts(cook, piece, self.known.crew, self.viewer.device, self.now);
        let Next::Nothing { why } = facts.next(self.now) else {
            return None;
        };
        let why = match why {
            Why::OffPit => key("why-off-pit"),
            Why::NotOnPit => key("why-not-on-pit"),
            Why::Wrapped => key("why-wrapped"),
            Why::Glazed => key("why-glazed"),
            Why::NoCadence => key("why-no-cadence"),
        };
        Some(self.fact("line-no-mop", self.say.text(why), String::new()))
    }

    pub fn fact(&self, name: &'static str, state: String, detail: String) -> Line {
        Line {
            name: self.say.text(name),
            state,
            detail,
            weight: Weight::Calm,
            link: None,
        }
    }

    fn facts(&self, cook: &Cook, piece: &Piece) -> Vec<Line> {
        let rhythm = rhythm_facts(cook, piece, self.known.crew, self.viewer.device, self.now);
        let pull = piece.pull_at.value.map(|mk| self.say.temperature(mk));
        let usual = cut_facts(piece.cut).done_range;
        let low = usual.low.max(minimum(piece.cut, piece.form.value).temp);
        let usual = match low < usual.high {
            true => self.say.temperature_span(low, usual.high),
            false => self.say.temperature(low),
        };
        let practice = self.say.text("source-common-practice");
        let mut all = vec![];
        all.extend(
            piece
                .pit(self.now)
                .map(|(pit, spot)| self.fact("fact-pit", self.pit(pit), spot.to_owned())),
        );
        all.extend(self.spot_facts(cook, piece));
        all.extend(self.gap_facts(piece));
        let wetted = piece.wrapped(self.now).is_none() && piece.resting_since(self.now).is_none();
        let cadence = || self.cadence(piece.cadence.value);
        all.extend(wetted.then(|| self.fact("fact-cadence", cadence(), String::new())));
        all.extend(
            rhythm
                .wet_at
                .iter()
                .max()
                .map(|at| self.fact("fact-wetted", self.ago(*at), self.say.clock(*at))),
        );
        all.push(match pull {
            Some(pull) => self.fact("fact-pull", pull, String::new()),
            None => self.fact("fact-usual", usual, practice),
        });
        all.extend(self.meant(&piece.meant.unwrap_or_default()));
        all
    }

    /// The last temperature of each spot, apart: no spot speaks for another.
    fn spot_facts(&self, cook: &Cook, piece: &Piece) -> Vec<Line> {
        let input = verdict_input(&self.known, cook, piece, self.now);
        let mut last: BTreeMap<Spot, (i64, Temperature)> = BTreeMap::new();
        for dated in &input.checks {
            if let TestResult::Heat(heat) = dated.result {
                let kept = last.entry(heat.spot).or_insert((dated.at, heat));
                if (dated.at, -heat.mk.0) > (kept.0, -kept.1.mk.0) {
                    *kept = (dated.at, heat);
                }
            }
        }
        let line = |(at, heat): (i64, Temperature)| {
            let (temp, age) = (self.say.temperature(heat.mk), self.ago(at));
            let args = [("temp", Arg::Text(&temp)), ("age", Arg::Text(&age))];
            let state = self.say.with("pit-reads", &args);
            let spot = self.say.text(heat.spot.key());
            let detail = match heat.instant_read {
                true => spot,
                false => self
                    .say
                    .with("line-spot-left-in", &[("spot", Arg::Text(&spot))]),
            };
            self.fact("fact-temperature", state, detail)
        };
        last.into_values().map(line).collect()
    }

    /// The probes in it that fell silent.
    fn gap_facts(&self, piece: &Piece) -> Vec<Line> {
        let gaps = self.gaps_of_meat(piece).into_iter();
        gaps.map(|gap| Line {
            weight: Weight::Call,
            ..self.fact("fact-probe", gap, String::new())
        })
        .collect()
    }

    fn passes(&self, piece: &Piece) -> Vec<Line> {
        let mut passes: Vec<&Pass> = piece.checks.iter().collect();
        passes.sort_by_key(|pass| std::cmp::Reverse((pass.when.at, pass.when.entry)));
        let shown = passes.into_iter().take(CHECKS_SHOWN);
        shown
            .map(|pass| {
                let found: Vec<String> = pass.results.iter().map(|r| self.result(r)).collect();
                Line {
                    name: self.say.clock_day(pass.when.at, self.now),
                    state: found.join(" · "),
                    detail: self.device(pass.when.entry.device),
                    weight: Weight::Calm,
                    link: None,
                }
            })
            .collect()
    }

    /// "Bend: surface cracks", "Temperature: 198 °F, between two middle bones".
    pub fn result(&self, result: &TestResult) -> String {
        let test = self.say.text(result.test().key());
        let found = match result {
            TestResult::Heat(heat) => {
                let (temp, spot) = (
                    self.say.temperature(heat.mk),
                    self.say.text(heat.spot.key()),
                );
                let args = [("temp", Arg::Text(&temp)), ("spot", Arg::Text(&spot))];
                match heat.instant_read {
                    true => self.say.with("line-temp-at", &args),
                    false => self.say.with("line-temp-left-in", &args),
                }
            }
            felt => self.say.text(felt.key()),
        };
        let args = [("test", Arg::Text(&test)), ("found", Arg::Text(&found))];
        self.say.with("line-found", &args)
    }

    fn meat_links(&self, cook: &Cook, piece: &Piece) -> Vec<Link> {
        let of = ReadingsOf::Piece { piece: piece.id };
        let mut links: Vec<Link> = [
            ("link-check", Place::Check { piece: piece.id }),
            ("link-readings", Place::Readings { of }),
            ("link-now", Place::Now { cook: cook.id }),
        ]
        .map(|(label, place)| Link {
            label: self.say.text(label),
            place,
        })
        .into();
        links.extend(self.links_to(&[(key("cuts-about"), Place::Cut { cut: piece.cut })]));
        let kitchen = (key("link-kitchen"), Place::Kitchen { cook: cook.id });
        let busy = piece.is_on_pit(self.now);
        links.extend(if busy {
            vec![]
        } else {
            self.links_to(&[kitchen])
        });
        links.extend(
            self.has_doubted_thermometer(cook, piece)
                .then(|| self.thermometers_link()),
        );
        links
    }

    /// Whether a reading of it was corrected, did not count, or came from what nobody checked.
    fn has_doubted_thermometer(&self, cook: &Cook, piece: &Piece) -> bool {
        let is_doubt = |reason: &Reason| {
            matches!(
                reason,
                Reason::Corrected { .. } | Reason::TooFarOff { .. } | Reason::Unchecked
            )
        };
        self.verdict(cook, piece)
            .is_ok_and(|verdict| verdict.reasons.iter().any(is_doubt))
    }

    /// What is being done to it at the stage where it is.
    fn doing(&self, piece: &Piece) -> Doing {
        let poultry = piece.cut.is_poultry();
        match piece.stage(self.now).map(|passed| passed.stage) {
            Some(stage) if stage.is_off() => Doing::Serving,
            Some(stage) if stage.is_on_pit() && poultry => Doing::CheckingPoultry,
            Some(stage) if stage.is_on_pit() => Doing::CheckingMeat,
            _ => Doing::Preparing,
        }
    }
}
