//! Acts made of whatever a form, a shell or a script could hand in: numbers near every limit, texts of all kinds, ids
//! that are known and one that is not.

use super::super::testing::*;
use crate::{
    acts::{Act, InOpening, MeatMove, NewDish, NewMeat, PlannedMeat},
    batch::{
        AlsoSalt, Appetite, Basis, Batch, BrinePlan, BrineWay, Cents, CountedIn, Extra, Grams,
        MopPart, MopPlan, PortionShare, PortionsPlan, Price, RubPart, RubPlan, SaltKind,
        ShoppingPlan,
    },
    cadence::Cadence,
    checks::{BarkSet, Cut, Spot, Temperature, TestResult, cuts::Degrees},
    fire::{FireDid, FuelUnit, SmokeSeen, SmokeWood, Vent, WeatherTap, Wind},
    ids::{CookId, DeviceId, DishId, LogId, PieceId, PitId, ThermometerId},
    log::{
        AcceptedPlan, Band, Bath, Course, Does, EntryKey, Field, Job, OnSheet, PitKind, PlanAsked,
        PlannedJob, PlannedWhy, Serve, Stage, Stamp, Strain, Subject, Where, WhyArg, WhyValue,
        Wrap,
    },
    moment::HOUR,
    safety::Form,
    units::Mk,
};
use proptest::prelude::*;

/// What an act is made of: numbers near every limit, texts of all kinds, and places in lists of ids.
#[derive(Clone, Debug)]
pub struct Stuff {
    pub numbers: [i64; 4],
    pub texts: [String; 2],
    pub picks: [usize; 4],
    pub at: Option<i64>,
}

/// The ids that stuff picks from: those of the night, and one that nothing has.
pub struct Ids {
    cooks: Vec<CookId>,
    pieces: Vec<PieceId>,
    pits: Vec<PitId>,
    entries: Vec<EntryKey>,
}

impl Ids {
    pub fn of(r: &Regatta) -> Self {
        let unknown = EntryKey {
            log: LogId(nobody()),
            device: DeviceId(nobody()),
            n: i64::MAX,
        };
        Self {
            cooks: vec![r.cook, CookId(nobody())],
            pieces: vec![r.ribs[0], r.ribs[1], r.butt, r.turkey, PieceId(nobody())],
            pits: vec![r.drum, r.kettle, PitId(nobody())],
            entries: [r.started.clone(), vec![unknown]].concat(),
        }
    }
}

fn pick<T: Copy>(from: &[T], i: usize) -> T {
    from[i % from.len()]
}

fn numbers() -> impl Strategy<Value = i64> {
    let limits = vec![
        i64::MIN,
        -501,
        -1,
        0,
        1,
        9,
        10,
        30,
        120,
        240,
        1_440,
        5_000,
        60_000,
        273_150,
        340_000,
        373_124,
        773_150,
        i64::MAX,
    ];
    prop_oneof![
        3 => prop::sample::select(limits),
        2 => 0i64..400_000,
        2 => NIGHT - 60 * HOUR..NIGHT + 40 * HOUR,
        1 => any::<i64>(),
    ]
}

fn texts() -> impl Strategy<Value = String> {
    prop_oneof![
        any::<String>(),
        "[a-zA-Z ñ{}$<>&]{0,70}",
        Just("America/Chicago".to_owned()),
        (55usize..2_100).prop_map(|n| "ñ".repeat(n)),
    ]
}

/// Any stuff.
pub fn stuff() -> impl Strategy<Value = Stuff> {
    let at = prop::option::of(numbers());
    let picks = prop::array::uniform4(0usize..40);
    (
        prop::array::uniform4(numbers()),
        prop::array::uniform2(texts()),
        picks,
        at,
    )
        .prop_map(|(numbers, texts, picks, at)| Stuff {
            numbers,
            texts,
            picks,
            at,
        })
}

/// One act of each kind made of that stuff.
pub fn acts(ids: &Ids, s: &Stuff) -> Vec<Act> {
    [
        of_crew(ids, s),
        of_cook(ids, s),
        of_pieces(ids, s),
        of_fire(ids, s),
    ]
    .concat()
}

fn field(s: &Stuff) -> Field {
    let [a, b, c, _] = s.numbers;
    let fields = [
        Field::Name(s.texts[0].clone()),
        Field::PitKind(PitKind::Kettle),
        Field::GrateCm2(Some(a)),
        Field::AloneMinutes(Some(a)),
        Field::Band(Band {
            low: Mk(a),
            high: Mk(b),
            minutes: c,
        }),
        Field::Serve(Some(serve(s))),
        Field::People(Some(a)),
        Field::WeightG(Some(a)),
        Field::Cadence(Cadence::Mop { every_min: a }),
        Field::Form(Form::Stuffed),
        Field::PullAt(Some(Mk(a))),
        Field::MopMinutes(a),
        Field::SpritzMinutes(a),
        Field::AltitudeM(a),
    ];
    fields[s.picks[3] % fields.len()].clone()
}

fn serve(s: &Stuff) -> Serve {
    Serve {
        at: s.numbers[0],
        zone: s.texts[1].clone(),
    }
}

fn subject(ids: &Ids, s: &Stuff) -> Subject {
    let all = [
        Subject::Crew,
        Subject::Cook(pick(&ids.cooks, s.picks[1])),
        Subject::Pit(pick(&ids.pits, s.picks[1])),
        Subject::Piece(pick(&ids.pieces, s.picks[1])),
        Subject::Dish(DishId(nobody())),
        Subject::Thermometer(ThermometerId(nobody())),
    ];
    pick(&all, s.picks[2])
}

/// A section of the kitchen, of whatever numbers and names.
fn batch(s: &Stuff, piece: PieceId) -> Batch {
    let [a, b, ..] = s.numbers;
    let [text, other] = s.texts.clone();
    let part = |name: String, kind| RubPart {
        name,
        parts: a,
        kind,
        cup_g: Some(Grams(b)),
    };
    let all = [
        Batch::Rub(RubPlan {
            pieces: vec![piece],
            g_per_kg: b,
            basis: Basis::Volume,
            parts: vec![
                part(text.clone(), SaltKind::OtherSalt),
                part(other.clone(), SaltKind::Salted { salt_permille: a }),
            ],
            also: vec![AlsoSalt::Injection {
                g: Grams(a),
                salt_permille: b,
            }],
        }),
        Batch::Brine(BrinePlan {
            pieces: vec![piece],
            water_g: Grams(a),
            way: BrineWay::InTheMeat,
            permille: b,
        }),
        Batch::Mop(MopPlan {
            parts: vec![MopPart {
                name: text.clone(),
                parts: a,
            }],
            spare_percent: b,
            wet_min: Some(a),
        }),
        Batch::Portions(PortionsPlan {
            adults: a,
            children: b,
            appetite: Appetite::Usual,
            meats: vec![PortionShare {
                piece,
                share: a,
                trim_percent: Some(b),
            }],
        }),
        Batch::Shopping(ShoppingPlan {
            extras: vec![Extra {
                name: text.clone(),
                amount: a,
                unit: CountedIn::G,
            }],
            at_home: vec![],
            prices: vec![Price {
                name: other,
                cents: Cents(a),
                per: b,
                unit: CountedIn::Each,
            }],
        }),
    ];
    all[s.picks[3] % all.len()].clone()
}

fn of_crew(ids: &Ids, s: &Stuff) -> Vec<Act> {
    let [a, b, ..] = s.numbers;
    let [text, other] = s.texts.clone();
    vec![
        Act::AddPit {
            name: text.clone(),
            kind: PitKind::Drum,
            grate_cm2: Some(a),
            alone_minutes: Some(b),
        },
        Act::AddThermometer { name: text.clone() },
        Act::CheckThermometer {
            thermometer: ThermometerId(nobody()),
            against: Bath::Boiling { altitude_m: a },
            read: Mk(b),
        },
        Act::SetField {
            of: subject(ids, s),
            to: field(s),
            saw: Some(Stamp(b)),
        },
        Act::NameDevice { name: text.clone() },
        Act::Dismiss { notice: other },
        Act::WeighSalt { cup_g: Some(b) },
        Act::Sleep { until: a },
        Act::WakeUp,
        Act::TakeWatch { note: text },
    ]
}

fn of_cook(ids: &Ids, s: &Stuff) -> Vec<Act> {
    let [a, b, ..] = s.numbers;
    let [text, other] = s.texts.clone();
    let cook = pick(&ids.cooks, s.picks[0]);
    let piece = pick(&ids.pieces, s.picks[1]);
    let pit = pick(&ids.pits, s.picks[2]);
    let job = [Job::Wet(piece), Job::Serve(cook), Job::Silent(pit)][s.picks[3] % 3];
    let meat = NewMeat {
        name: other.clone(),
        cut: Cut::ALL[s.picks[3] % Cut::ALL.len()],
        form: Form::Intact,
        weight_g: Some(a),
        cadence: (b > 0).then_some(Cadence::Spritz { every_min: b }),
        pit: Some(pit),
    };
    let targets: Vec<EntryKey> = s.picks.iter().map(|i| pick(&ids.entries, *i)).collect();
    vec![
        Act::StartCook {
            name: text.clone(),
            serve: Some(serve(s)),
            people: Some(b),
            meats: vec![meat.clone(), meat.clone()],
            demo: false,
        },
        Act::StartPlanned {
            name: text.clone(),
            serve: None,
            people: Some(b),
            meats: vec![PlannedMeat {
                meat: meat.clone(),
                pull_at: Some(Mk(a)),
                wrap: Some(Wrap::Foil),
                rest_min: Some(b),
                pit_heat: Some(Degrees {
                    low: Mk(a),
                    high: Mk(b),
                }),
            }],
            dishes: vec![NewDish {
                name: other.clone(),
                hot: false,
            }],
            notes: vec![text.clone()],
        },
        Act::AddMeat { cook, meat },
        Act::FinishCook { cook },
        Act::Note {
            cook,
            about: subject(ids, s),
            text: text.clone(),
        },
        Act::AddDish {
            cook,
            name: text,
            hot: true,
        },
        Act::ReadyDish {
            cook,
            dish: DishId(nobody()),
            ready: true,
        },
        Act::PlanBatch {
            cook,
            batch: batch(s, piece),
        },
        Act::KeepTrimmings {
            cook,
            piece: Some(piece),
            g: a,
            what: other.clone(),
        },
        Act::AcceptPlan {
            cook,
            plan: plan(ids, s),
        },
        Act::AcceptAgain {
            cook,
            entry: targets[0],
        },
        Act::DropPlan { cook },
        Act::PlanCourses {
            cook,
            courses: courses(ids, s),
        },
        Act::KeepSheet {
            cook,
            sheet: targets[0],
            against: plan(ids, s)
                .jobs
                .iter()
                .map(|job| Strain {
                    job: job.job,
                    by_min: a,
                })
                .collect(),
        },
        Act::Skip {
            cook,
            jobs: vec![job],
        },
        Act::Later {
            cook,
            jobs: vec![job],
            minutes: a,
        },
        Act::Answer { cook, job },
        Act::Undo {
            targets: targets.clone(),
        },
        Act::Erase { targets },
    ]
}

fn courses(ids: &Ids, s: &Stuff) -> Vec<Course> {
    let [a, b, c, d] = s.numbers;
    let course = |nr: i64, name: &String| Course {
        nr,
        name: name.clone(),
        serve: Serve {
            at: s.at.unwrap_or(a),
            zone: "America/Chicago".into(),
        },
        latest: (d % 2 == 0).then_some(b),
        window_min: (d % 3 == 0).then_some(c),
        of: vec![Subject::Piece(pick(&ids.pieces, s.picks[0]))],
    };
    s.texts
        .iter()
        .zip([c, d])
        .map(|(name, nr)| course(nr, name))
        .collect()
}

fn plan(ids: &Ids, s: &Stuff) -> AcceptedPlan {
    let [at, until, hands, nth] = s.numbers;
    let job = |does| PlannedJob {
        job: OnSheet {
            does,
            on: subject(ids, s),
            nth,
        },
        at,
        until,
        hands,
        wakes: true,
        pit: Some(pick(&ids.pits, s.picks[2])),
        temp: Some(Mk(hands)),
        wrap: Some(Wrap::Foil),
        what: s.texts[0].clone(),
        why: Some(PlannedWhy {
            key: s.texts[1].clone(),
            args: vec![WhyArg {
                name: "time".into(),
                value: WhyValue::Time(at),
            }],
        }),
    };
    AcceptedPlan {
        serve: serve(s),
        jobs: vec![job(Does::PutOn), job(Does::Step)],
        chance_permille: Some(until),
        asked: PlanAsked::default(),
    }
}

fn of_pieces(ids: &Ids, s: &Stuff) -> Vec<Act> {
    let (at, temp) = (s.at, Mk(s.numbers[0]));
    let [text, other] = s.texts.clone();
    let cook = pick(&ids.cooks, s.picks[0]);
    let piece = pick(&ids.pieces, s.picks[1]);
    let second = pick(&ids.pieces, s.picks[3]);
    let pit = pick(&ids.pits, s.picks[2]);
    let place = [
        Where::Pit { pit },
        Where::Piece {
            piece,
            spot: text.clone(),
        },
    ][s.picks[3] % 2]
        .clone();
    let wrap = Wrap::Foil;
    let stages = [Stage::OnPit { pit }, Stage::Wrapped { wrap }, Stage::Off];
    let heat = TestResult::Heat(Temperature {
        mk: temp,
        spot: Spot::ALL[s.picks[2] % Spot::ALL.len()],
        thermometer: None,
        instant_read: true,
    });
    vec![
        Act::Split {
            piece,
            names: vec![text.clone(), other.clone(), text.clone()],
        },
        Act::Join {
            pieces: vec![piece, second],
            name: text.clone(),
        },
        Act::SetStage {
            piece,
            stage: stages[s.picks[3] % 3],
            at,
        },
        Act::Move {
            piece,
            pit,
            spot: text.clone(),
            at,
        },
        Act::AnswerRub {
            piece,
            set: true,
            at,
        },
        Act::AnswerRubs {
            pieces: vec![piece, second],
            set: true,
            at,
        },
        Act::Open {
            pit: s.picks[0].is_multiple_of(2).then_some(pit),
            wetted: vec![piece, second],
            turned: vec![second],
            glazed: vec![piece],
            at,
        },
        Act::DoOpening {
            pit: s.picks[1].is_multiple_of(2).then_some(pit),
            meats: vec![
                InOpening {
                    wetted: s.picks[0].is_multiple_of(2),
                    turned: true,
                    rub_set: Some(s.picks[2].is_multiple_of(2)),
                    note: text.clone(),
                    ..InOpening::of(piece)
                },
                InOpening {
                    wetted: true,
                    own_mop: s.picks[3].is_multiple_of(2),
                    results: vec![heat],
                    ..InOpening::of(second)
                },
            ],
            at,
        },
        Act::MoveMeats {
            moves: vec![
                MeatMove {
                    piece,
                    pit,
                    spot: text.clone(),
                },
                MeatMove {
                    piece: second,
                    pit,
                    spot: other.clone(),
                },
            ],
            at,
        },
        Act::Check {
            piece,
            results: vec![heat, TestResult::Bark(BarkSet::Holds)],
            at,
        },
        Act::Read {
            cook,
            place: place.clone(),
            thermometer: None,
            temp,
            at,
        },
        Act::BindProbe {
            cook,
            source: text.clone(),
            sensor: other.clone(),
            place,
            thermometer: None,
        },
        Act::Feed {
            cook,
            pit,
            what: text,
            at,
        },
        Act::ChangeVent {
            cook,
            pit,
            how: other,
            at,
        },
        Act::SeeFire { cook, pit, at },
    ]
}

/// What hands do at a fire, of any numbers.
fn of_fire(ids: &Ids, s: &Stuff) -> Vec<Act> {
    let (at, [a, b, c, _]) = (s.at, s.numbers);
    let (cook, pit) = (pick(&ids.cooks, s.picks[0]), pick(&ids.pits, s.picks[2]));
    let unit = pick(&FuelUnit::ALL, s.picks[1]);
    vec![
        Act::FeedUnits {
            cook,
            pit,
            unit,
            quarters: a,
            at,
        },
        Act::SetVent {
            cook,
            pit,
            vent: Vent::Upper,
            quarters: b,
            at,
        },
        Act::TendFire {
            cook,
            pit,
            did: FireDid::Ash,
            at,
        },
        Act::SayWeather {
            cook,
            said: WeatherTap::Blows(Wind::Windy),
        },
        Act::SayWood {
            cook,
            pit,
            wood: SmokeWood::Mesquite,
        },
        Act::TameWood {
            cook,
            pit,
            wood: SmokeWood::Mesquite,
        },
        Act::FindFireOut {
            cook,
            pit,
            burned_until: c,
            at,
        },
        Act::WatchSmoke {
            cook,
            pit,
            seen: SmokeSeen::Stings,
            at,
        },
        Act::PlanFeed { cook, pit, due: c },
        Act::WeighUnit {
            pit,
            unit,
            grams: a,
        },
    ]
}
