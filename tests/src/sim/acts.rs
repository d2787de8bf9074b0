//! Acts that somebody might try: legal ones mostly, and some that nobody should get away with.

use super::{picture::Picture, rng::Rng};
use slowbend_core::{
    acts::{Act, NewDish, NewMeat, PlannedMeat},
    batch::{Appetite, Batch, MopPart, MopPlan, PortionsPlan},
    cadence::Cadence,
    checks::{BarkSet, Bend, Cut, ProbeFeel, Spot, Temperature, TestResult},
    fire::{FireDid, FuelUnit, WeatherTap, Wind},
    ids::{CookId, DishId, PieceId, PitId, ThermometerId},
    log::{
        AcceptedPlan, Band, Bath, Course, Does, EntryKey, Field, Job, OnSheet, PitKind, PlanAsked,
        PlannedJob, Serve, Stage, Subject, Where, Wrap,
    },
    moment::{HOUR, MINUTE},
    safety::Form,
    units::Mk,
};
use std::collections::BTreeSet;
use uuid::Uuid;

/// What acts are made from.
pub struct Making<'a> {
    /// Chance.
    pub rng: &'a mut Rng,
    /// What the device knows.
    pub picture: &'a Picture,
    /// The entries it holds.
    pub keys: &'a [EntryKey],
    /// When it is, by the device's wall.
    pub now: i64,
}

/// What a random act is about.
#[derive(Clone, Copy)]
enum About {
    Crew,
    Cook,
    Meat,
    Fire,
    Job,
    Plan,
    Undo,
    Erase,
    Nonsense,
}

impl Making<'_> {
    /// An act.
    pub fn act(&mut self) -> Act {
        if self.picture.crew.pits.is_empty() {
            return self.pit();
        }
        if self.picture.cooks.values().all(|cook| !cook.is_open()) {
            return self.start();
        }
        let about = self.rng.weighed(&[
            (10, About::Crew),
            (8, About::Cook),
            (45, About::Meat),
            (15, About::Fire),
            (10, About::Job),
            (4, About::Plan),
            (9, About::Undo),
            (1, About::Erase),
            (2, About::Nonsense),
        ]);
        match about {
            About::Crew => self.of_crew(),
            About::Cook => self.of_cook(),
            About::Meat => self.of_meat(),
            About::Fire => self.of_fire(),
            About::Job => self.of_job(),
            About::Plan => self.of_plan(),
            About::Undo => Act::Undo {
                targets: self.targets(2),
            },
            About::Erase => Act::Erase {
                targets: self.targets(1),
            },
            About::Nonsense => self.nonsense(),
        }
    }

    fn pit(&mut self) -> Act {
        let kinds = [
            PitKind::Drum,
            PitKind::Kettle,
            PitKind::StickBurner,
            PitKind::Pellet,
        ];
        Act::AddPit {
            name: format!("Pit {}", self.rng.below(100)),
            kind: *self.rng.pick(&kinds).expect("there are kinds"),
            grate_cm2: Some(2_500),
            alone_minutes: self.rng.chance(50).then_some(45),
        }
    }

    fn start(&mut self) -> Act {
        let meats: Vec<NewMeat> = (0..self.rng.from_to(0, 3))
            .map(|_| self.new_meat())
            .collect();
        let serve = Serve {
            at: self.now + self.rng.from_to(1, 14) * HOUR,
            zone: "America/Chicago".into(),
        };
        if self.rng.chance(25) {
            return self.start_planned(meats, serve);
        }
        Act::StartCook {
            name: "Regatta lunch".into(),
            serve: self.rng.chance(80).then_some(serve),
            people: Some(14),
            meats,
            demo: false,
        }
    }

    /// As from a cook card, one in some that wishes for too little among them.
    fn start_planned(&mut self, meats: Vec<NewMeat>, serve: Serve) -> Act {
        let planned = meats.into_iter().map(|meat| PlannedMeat {
            meat,
            pull_at: self
                .rng
                .chance(30)
                .then(|| Mk::from_f(self.rng.from_to(150, 205))),
            wrap: self.rng.chance(40).then_some(Wrap::Paper),
            rest_min: self.rng.chance(40).then_some(20),
            pit_heat: None,
        });
        Act::StartPlanned {
            name: "Regatta lunch".into(),
            serve: Some(serve),
            people: Some(14),
            meats: planned.collect(),
            dishes: vec![NewDish {
                name: "Slaw".into(),
                hot: false,
            }],
            notes: vec!["Wind from the lake".into()],
        }
    }

    fn new_meat(&mut self) -> NewMeat {
        let cut = *self.rng.pick(Cut::ALL).expect("there are cuts");
        let cadences = [
            None,
            Some(Cadence::mop()),
            Some(Cadence::spritz()),
            Some(Cadence::None),
            Some(Cadence::Mop { every_min: 20 }),
        ];
        NewMeat {
            name: String::new(),
            cut,
            form: *self
                .rng
                .pick(&[Form::Intact, Form::Intact, Form::Injected])
                .expect("there are forms"),
            weight_g: self.rng.chance(70).then_some(1_400),
            cadence: *self.rng.pick(&cadences).expect("there are cadences"),
            pit: self.any_pit(),
        }
    }

    fn of_crew(&mut self) -> Act {
        let now = self.now;
        match self.rng.below(8) {
            0 => self.pit(),
            1 => Act::AddThermometer {
                name: "Dial".into(),
            },
            2 => Act::CheckThermometer {
                thermometer: self.thermometer(),
                against: Bath::Ice,
                read: Mk::from_f(33),
            },
            3 => Act::Sleep {
                until: now + self.rng.from_to(1, 8) * HOUR,
            },
            4 => Act::WakeUp,
            5 => Act::TakeWatch {
                note: "Holding at two twenty five".into(),
            },
            6 => Act::NameDevice {
                name: format!("Phone {}", self.rng.below(9)),
            },
            _ => Act::SetField {
                of: Subject::Pit(self.pit_or_none()),
                to: self.pit_field(),
                saw: None,
            },
        }
    }

    fn pit_field(&mut self) -> Field {
        match self.rng.below(3) {
            0 => Field::Name(format!("The drum {}", self.rng.below(9))),
            1 => Field::Band(Band {
                low: Mk::from_f(225),
                high: Mk::from_f(275),
                minutes: 10,
            }),
            _ => Field::AloneMinutes(Some(self.rng.from_to(10, 240))),
        }
    }

    fn of_cook(&mut self) -> Act {
        let cook = self.cook();
        match self.rng.below(9) {
            0 => self.start(),
            1 => Act::AddMeat {
                cook,
                meat: self.new_meat(),
            },
            2 => Act::Note {
                cook,
                about: Subject::Cook(cook),
                text: "Wind from the lake <b>".into(),
            },
            3 => Act::AddDish {
                cook,
                name: "Beans".into(),
                hot: true,
            },
            4 => Act::ReadyDish {
                cook,
                dish: self.dish(cook),
                ready: self.rng.chance(80),
            },
            6 => Act::PlanBatch {
                cook,
                batch: self.batch(),
            },
            7 => Act::KeepTrimmings {
                cook,
                piece: None,
                g: self.rng.from_to(1, 900),
                what: "for stock".into(),
            },
            5 => Act::SetField {
                of: Subject::Cook(cook),
                to: Field::People(Some(self.rng.from_to(1, 40))),
                saw: None,
            },
            _ => match self.rng.chance(30) {
                true => Act::FinishCook { cook },
                false => Act::SetField {
                    of: Subject::Cook(cook),
                    to: Field::Name("Lunch at the boathouse".into()),
                    saw: None,
                },
            },
        }
    }

    /// A section of the kitchen, now and then one that cannot be meant.
    fn batch(&mut self) -> Batch {
        let parts = self.rng.from_to(0, 3);
        match self.rng.chance(50) {
            true => Batch::Mop(MopPlan {
                parts: vec![MopPart {
                    name: "Cider vinegar".into(),
                    parts,
                }],
                spare_percent: 10,
                wet_min: None,
            }),
            false => Batch::Portions(PortionsPlan {
                adults: parts * 5,
                children: 0,
                appetite: Appetite::Usual,
                meats: vec![],
            }),
        }
    }

    fn of_meat(&mut self) -> Act {
        let Some((piece, cut)) = self.meat() else {
            return Act::AddMeat {
                cook: self.cook(),
                meat: self.new_meat(),
            };
        };
        let at = self.claimed();
        match self.rng.below(14) {
            0..=2 => Act::SetStage {
                piece,
                stage: self.stage(),
                at,
            },
            3..=4 => Act::AnswerRub {
                piece,
                set: self.rng.chance(60),
                at,
            },
            5..=8 => self.opening(piece, at),
            9..=10 => Act::Check {
                piece,
                results: self.results(cut),
                at,
            },
            11 => Act::Move {
                piece,
                pit: self.pit_or_none(),
                spot: "upper".into(),
                at,
            },
            12 => Act::Split {
                piece,
                names: vec!["Half for the crew".into(), "Half for later".into()],
            },
            _ => match self.rng.chance(50) {
                true => Act::SetField {
                    of: Subject::Piece(piece),
                    to: Field::WeightG(Some(self.rng.from_to(400, 6000))),
                    saw: None,
                },
                false => self.joining(piece),
            },
        }
    }

    fn opening(&mut self, piece: PieceId, at: Option<i64>) -> Act {
        let also = self
            .meat()
            .map(|(piece, _)| piece)
            .filter(|other| *other != piece && self.rng.chance(40));
        let all: Vec<PieceId> = std::iter::once(piece).chain(also).collect();
        let some = |yes: bool| if yes { all.clone() } else { vec![] };
        Act::Open {
            pit: self.any_pit(),
            wetted: some(self.rng.chance(85)),
            turned: some(self.rng.chance(20)),
            glazed: some(self.rng.chance(10)),
            at,
        }
    }

    fn joining(&mut self, piece: PieceId) -> Act {
        let other = self.meat().map_or(piece, |(other, _)| other);
        Act::Join {
            pieces: vec![piece, other],
            name: "Both slabs".into(),
        }
    }

    fn stage(&mut self) -> Stage {
        let pit = self.pit_or_none();
        let stages = [
            Stage::Rubbed,
            Stage::OnPit { pit },
            Stage::OnPit { pit },
            Stage::OnPit { pit },
            Stage::Wrapped { wrap: Wrap::Paper },
            Stage::Unwrapped,
            Stage::Off,
            Stage::Held,
            Stage::Served,
            Stage::PutAway,
            Stage::ThrownAway,
        ];
        *self.rng.pick(&stages).expect("there are stages")
    }

    fn results(&mut self, cut: Cut) -> Vec<TestResult> {
        let spots = cut.spots(Form::Intact);
        let mut heats: Vec<TestResult> = Vec::new();
        for spot in spots
            .into_iter()
            .chain([Spot::Elsewhere])
            .take(self.rng.below(4))
        {
            heats.push(TestResult::Heat(Temperature {
                mk: Mk::from_f(self.rng.from_to(120, 210)),
                spot,
                thermometer: None,
                instant_read: self.rng.chance(80),
            }));
        }
        let felt = [
            TestResult::Bark(BarkSet::Holds),
            TestResult::Lifted(Bend::Bows),
            TestResult::Lifted(Bend::Cracks),
            TestResult::Probed(ProbeFeel::Grabs),
            TestResult::Probed(ProbeFeel::Slides),
        ];
        heats.extend(self.rng.pick(&felt).copied());
        heats
    }

    fn of_fire(&mut self) -> Act {
        let (cook, pit, at) = (self.cook(), self.pit_or_none(), self.claimed());
        match self.rng.below(10) {
            0 => Act::Feed {
                cook,
                pit,
                what: "half a chimney".into(),
                at,
            },
            5 | 6 => Act::FeedUnits {
                cook,
                pit,
                unit: self.one_of(&FuelUnit::ALL),
                quarters: self.rng.from_to(1, 8),
                at,
            },
            7 => Act::TendFire {
                cook,
                pit,
                did: self.one_of(FireDid::ALL),
                at,
            },
            8 => Act::SayWeather {
                cook,
                said: WeatherTap::Blows(self.one_of(Wind::ALL)),
            },
            9 => Act::PlanFeed {
                cook,
                pit,
                due: self.now + self.rng.from_to(1, 90) * MINUTE,
            },
            1 => Act::ChangeVent {
                cook,
                pit,
                how: "bottom, a quarter open".into(),
                at,
            },
            2 => Act::SeeFire { cook, pit, at },
            3 => Act::Read {
                cook,
                place: Where::Pit { pit },
                thermometer: None,
                temp: Mk::from_f(self.rng.from_to(200, 300)),
                at,
            },
            _ => Act::BindProbe {
                cook,
                source: "drum probe".into(),
                sensor: "grate".into(),
                place: Where::Pit { pit },
                thermometer: None,
            },
        }
    }

    fn one_of<T: Copy>(&mut self, all: &[T]) -> T {
        *self.rng.pick(all).expect("none of these lists is empty")
    }

    fn of_job(&mut self) -> Act {
        let (cook, job) = (self.cook(), self.job());
        match self.rng.below(3) {
            0 => Act::Skip {
                cook,
                jobs: vec![job],
            },
            1 => Act::Later {
                cook,
                jobs: vec![job],
                minutes: self.rng.from_to(1, 60),
            },
            _ => Act::Answer { cook, job },
        }
    }

    /// A plan of what the cook knows, one in some that cannot be kept; or going on without.
    fn of_plan(&mut self) -> Act {
        let cook = self.cook();
        if self.rng.chance(15) {
            return Act::DropPlan { cook };
        }
        if self.rng.chance(10) {
            return self.of_courses(cook);
        }
        let jobs = (0..self.rng.from_to(1, 8)).map(|_| self.planned_job());
        let jobs: Vec<PlannedJob> = jobs.collect();
        let mut seen = BTreeSet::new();
        let once = jobs.into_iter().filter(|job| seen.insert(job.job));
        Act::AcceptPlan {
            cook,
            plan: AcceptedPlan {
                serve: Serve {
                    at: self.now + 6 * HOUR,
                    zone: "America/Chicago".into(),
                },
                jobs: once.collect(),
                chance_permille: Some(900),
                asked: PlanAsked::default(),
            },
        }
    }

    /// Up to three courses, one in some in the past or of a meat of another cook.
    fn of_courses(&mut self, cook: CookId) -> Act {
        let courses = (1..=self.rng.from_to(0, 3)).map(|nr| Course {
            nr,
            name: format!("Course {nr}"),
            serve: Serve {
                at: self.now + self.rng.from_to(-60, 480) * MINUTE,
                zone: "America/Chicago".into(),
            },
            latest: None,
            window_min: self.rng.chance(30).then_some(5),
            of: self
                .meat()
                .map(|(id, _)| Subject::Piece(id))
                .into_iter()
                .collect(),
        });
        Act::PlanCourses {
            cook,
            courses: courses.collect(),
        }
    }

    fn planned_job(&mut self) -> PlannedJob {
        let pit = self.pit_or_none();
        let of_meat = [
            Does::Rub,
            Does::PutOn,
            Does::Wrap,
            Does::TakeOff,
            Does::Hold,
        ];
        let of_pit = [Does::Light, Does::Step, Does::Feed];
        let (does, on) = match self.meat() {
            Some((piece, _)) if self.rng.chance(70) => {
                (self.rng.pick(&of_meat), Subject::Piece(piece))
            }
            _ => (self.rng.pick(&of_pit), Subject::Pit(pit)),
        };
        let at = self.now + self.rng.from_to(-60, 480) * MINUTE;
        PlannedJob {
            job: OnSheet {
                does: *does.expect("there are jobs"),
                on,
                nth: 0,
            },
            at,
            until: at + 15 * MINUTE,
            hands: self.rng.from_to(0, 1),
            wakes: self.rng.chance(20),
            pit: Some(pit),
            temp: None,
            wrap: None,
            what: String::new(),
            why: None,
        }
    }

    fn job(&mut self) -> Job {
        let pit = self.pit_or_none();
        match self.meat() {
            Some((piece, _)) => match self.rng.below(5) {
                0 => Job::RubSet(piece),
                1 => Job::Check(piece),
                2 => Job::Pull(piece),
                _ => Job::Wet(piece),
            },
            None if self.rng.chance(50) => Job::FireRound(pit),
            None => Job::Silent(pit),
        }
    }

    /// What must be refused, or at least do no harm.
    fn nonsense(&mut self) -> Act {
        let nobody = PieceId(Uuid::from_u128(0xdead));
        let cook = self.cook();
        let mut meat = self.new_meat();
        match self.rng.below(7) {
            0 => Act::SetStage {
                piece: nobody,
                stage: Stage::Off,
                at: None,
            },
            1 => {
                meat.weight_g = Some(900_000);
                Act::AddMeat { cook, meat }
            }
            2 => Act::Read {
                cook,
                place: Where::Pit {
                    pit: self.pit_or_none(),
                },
                thermometer: None,
                temp: Mk::from_f(9_000),
                at: None,
            },
            3 => Act::Undo {
                targets: vec![self.unheard_of()],
            },
            4 => Act::AddPit {
                name: String::new(),
                kind: PitKind::Drum,
                grate_cm2: Some(-1),
                alone_minutes: None,
            },
            5 => Act::SeeFire {
                cook,
                pit: self.pit_or_none(),
                at: Some(0),
            },
            _ => Act::Sleep { until: i64::MAX },
        }
    }

    fn unheard_of(&mut self) -> EntryKey {
        let mut key = self.keys.first().copied().expect("a pit was added before");
        key.n = 1_000_000;
        key
    }

    /// Of entries: often the latest, else any.
    fn targets(&mut self, most: i64) -> Vec<EntryKey> {
        let count = self.rng.from_to(1, most);
        let recent = self.rng.chance(60);
        let from = if recent {
            self.keys.len().saturating_sub(4)
        } else {
            0
        };
        (0..count)
            .filter_map(|_| self.rng.pick(&self.keys[from..]).copied())
            .collect()
    }

    fn claimed(&mut self) -> Option<i64> {
        let back = self.rng.from_to(0, 90) * MINUTE;
        self.rng.chance(25).then_some(self.now - back)
    }

    fn any_pit(&mut self) -> Option<PitId> {
        let pits: Vec<PitId> = self.picture.crew.pits.keys().copied().collect();
        self.rng.pick(&pits).copied()
    }

    fn pit_or_none(&mut self) -> PitId {
        self.any_pit().unwrap_or(PitId(Uuid::nil()))
    }

    fn thermometer(&mut self) -> ThermometerId {
        let all: Vec<ThermometerId> = self.picture.crew.thermometers.keys().copied().collect();
        self.rng
            .pick(&all)
            .copied()
            .unwrap_or(ThermometerId(Uuid::nil()))
    }

    fn cook(&mut self) -> CookId {
        let all: Vec<CookId> = self.picture.cooks.keys().copied().collect();
        let open: Vec<CookId> = self
            .picture
            .cooks
            .values()
            .filter(|cook| cook.is_open())
            .map(|cook| cook.id)
            .collect();
        let from = if self.rng.chance(90) { &open } else { &all };
        self.rng.pick(from).copied().unwrap_or(CookId(Uuid::nil()))
    }

    fn dish(&mut self, cook: CookId) -> DishId {
        let cook = self.picture.cooks.get(&cook);
        let all: Vec<DishId> = cook
            .into_iter()
            .flat_map(|cook| cook.dishes.keys().copied())
            .collect();
        self.rng.pick(&all).copied().unwrap_or(DishId(Uuid::nil()))
    }

    fn meat(&mut self) -> Option<(PieceId, Cut)> {
        let cooks = self.picture.cooks.values().filter(|cook| cook.is_open());
        let all: Vec<(PieceId, Cut)> = cooks
            .flat_map(|cook| cook.meats().map(|piece| (piece.id, piece.cut)))
            .collect();
        self.rng.pick(&all).copied()
    }
}
