//! One meat: where it is, what is next, what was found, where it can go.

use super::{
    Button, Line, Link, PieceScreen, Place, Tone, Weight, glance::Glance, meat_line::job_piece,
};
use crate::{
    alarms,
    cadence::rhythm::{Next, Why},
    checks::{TestResult, cut_facts, cuts::WrapKind},
    cook::{Cook, Known, Pass, Piece, rhythm_facts::rhythm_facts},
    ids::PieceId,
    log::{Stage, Wrap},
    moment::Moment,
    safety::Doing,
    words::{Arg, Viewer, key},
};

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
    let ours = dues
        .iter()
        .filter(|due| job_piece(due.job) == Some(piece.id));
    let mut next: Vec<Line> = ours.map(|due| glance.due_line(due)).collect();
    next.extend(glance.why_nothing(cook, piece));
    Some(PieceScreen {
        piece: piece.id,
        cook: cook.id,
        title: piece.name.value.clone(),
        about: glance.about(piece),
        state: glance.where_it_is(piece),
        next,
        facts: glance.facts(cook, piece),
        verdict: glance.verdict_text(cook, piece),
        checks: glance.passes(piece),
        buttons: match cook.is_open() && piece.is_itself() {
            true => glance.stage_buttons(cook, piece),
            false => vec![],
        },
        links: glance.meat_links(cook, piece),
        cautions: glance.cautions(glance.doing(piece)),
        until: glance.until(&dues),
    })
}

impl Glance<'_> {
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

    fn fact(&self, name: &'static str, state: String, detail: String) -> Line {
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
        let usual = self.say.temperature_span(usual.low, usual.high);
        let practice = self.say.text("source-common-practice");
        let mut all = vec![];
        all.extend(
            piece
                .pit(self.now)
                .map(|(pit, spot)| self.fact("fact-pit", self.pit(pit), spot.to_owned())),
        );
        all.extend(
            self.last_temperature(cook, piece)
                .map(|temp| self.fact("fact-temperature", temp, String::new())),
        );
        all.push(self.fact(
            "fact-cadence",
            self.cadence(piece.cadence.value),
            String::new(),
        ));
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
        all
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
                self.say.with("line-temp-at", &args)
            }
            felt => self.say.text(felt.key()),
        };
        let args = [("test", Arg::Text(&test)), ("found", Arg::Text(&found))];
        self.say.with("line-found", &args)
    }

    /// The stages it can go to from where it is.
    fn stage_buttons(&self, cook: &Cook, piece: &Piece) -> Vec<Button> {
        let stage = piece.stage(self.now).map(|passed| passed.stage);
        let next = self.stages_after(piece, stage);
        next.into_iter()
            .map(|(stage, tone)| self.guarded(cook, piece, stage, tone))
            .collect()
    }

    fn stages_after(&self, piece: &Piece, stage: Option<Stage>) -> Vec<(Stage, Tone)> {
        let pits = self.known.crew.pits.keys();
        let on = |tone| {
            pits.clone()
                .map(move |pit| (Stage::OnPit { pit: *pit }, tone))
        };
        let wraps = || {
            let kinds = cut_facts(piece.cut).wraps.into_iter().map(wrap_of);
            kinds.map(|wrap| (Stage::Wrapped { wrap }, Tone::Plain))
        };
        let plain = |stage| (stage, Tone::Plain);
        let main = |stage| (stage, Tone::Main);
        match stage {
            None => [Stage::Trimmed, Stage::Brined, Stage::Rubbed]
                .map(plain)
                .into_iter()
                .chain(on(Tone::Main))
                .collect(),
            Some(Stage::Trimmed | Stage::Brined | Stage::Rubbed | Stage::Resting) => on(Tone::Main)
                .chain([Stage::Rubbed, Stage::Resting].map(plain))
                .filter(|(to, _)| Some(*to) != stage)
                .collect(),
            Some(Stage::OnPit { .. } | Stage::Unwrapped) => {
                std::iter::once(main(Stage::Off)).chain(wraps()).collect()
            }
            Some(Stage::Wrapped { .. }) => vec![main(Stage::Off), plain(Stage::Unwrapped)],
            Some(Stage::Off) => [main(Stage::Held), plain(Stage::CutUp), plain(Stage::Served)]
                .into_iter()
                .chain(on(Tone::Plain))
                .collect(),
            Some(Stage::Held) => vec![
                main(Stage::CutUp),
                plain(Stage::Served),
                plain(Stage::PutAway),
            ],
            Some(Stage::CutUp) => vec![main(Stage::Served), plain(Stage::PutAway)],
            Some(Stage::Served) => vec![main(Stage::PutAway)],
            Some(Stage::PutAway) => vec![main(Stage::Reheated)],
            Some(Stage::Reheated) => vec![main(Stage::Served), plain(Stage::PutAway)],
        }
    }

    /// Serving what was never shown to reach its minimum is asked about first.
    fn guarded(&self, cook: &Cook, piece: &Piece, stage: Stage, tone: Tone) -> Button {
        let mut button = self.stage_button(piece.id, stage, tone);
        let shown = self
            .verdict(cook, piece)
            .is_ok_and(|v| v.safety.state == crate::checks::SafeState::Safe);
        if stage == Stage::Served && !shown {
            button.tone = Tone::Grave;
            button.confirm = Some(self.say.text("confirm-serve"));
        }
        button
    }

    fn meat_links(&self, cook: &Cook, piece: &Piece) -> Vec<Link> {
        [
            ("link-check", Place::Check { piece: piece.id }),
            ("link-now", Place::Now { cook: cook.id }),
        ]
        .map(|(label, place)| Link {
            label: self.say.text(label),
            place,
        })
        .into()
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

const fn wrap_of(kind: WrapKind) -> Wrap {
    match kind {
        WrapKind::Paper => Wrap::Paper,
        WrapKind::Foil => Wrap::Foil,
        WrapKind::Boat => Wrap::Boat,
        WrapKind::Pan => Wrap::Pan,
    }
}
