//! Laws of every act, tried on acts made of whatever a form, a shell or a script could hand in.

use super::{testing::*, times};
use crate::{
    acts::{Act, NewMeat},
    cadence::Cadence,
    checks::{BarkSet, Cut, Spot, Temperature, TestResult},
    ids::{CookId, DeviceId, DishId, LogId, PieceId, PitId, ThermometerId},
    log::{
        Band, Bath, Entry, EntryKey, Field, Job, MAX_ENTRY_BYTES, Meaning, PitKind, Serve, Stage,
        Stamp, Subject, Where, Wrap,
    },
    moment::HOUR,
    safety::Form,
    units::Mk,
    words::Locale,
};
use proptest::prelude::*;

/// What an act is made of: numbers near every limit, texts of all kinds, and places in lists of ids.
#[derive(Clone, Debug)]
struct Stuff {
    numbers: [i64; 4],
    texts: [String; 2],
    picks: [usize; 4],
    at: Option<i64>,
}

/// The ids that stuff picks from: those of the night, and one that nothing has.
struct Ids {
    cooks: Vec<CookId>,
    pieces: Vec<PieceId>,
    pits: Vec<PitId>,
    entries: Vec<EntryKey>,
}

impl Ids {
    fn of(r: &Regatta) -> Self {
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

fn stuff() -> impl Strategy<Value = Stuff> {
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
fn acts(ids: &Ids, s: &Stuff) -> Vec<Act> {
    [of_crew(ids, s), of_cook(ids, s), of_pieces(ids, s)].concat()
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
        Act::Skip { cook, job },
        Act::Later {
            cook,
            job,
            minutes: a,
        },
        Act::Answer { cook, job },
        Act::Undo {
            targets: targets.clone(),
        },
        Act::Erase { targets },
    ]
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
        Act::Open {
            pit: (s.picks[0] % 2 == 0).then_some(pit),
            wetted: vec![piece, second],
            turned: vec![second],
            glazed: vec![piece],
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

/// The law: an act is refused with a sentence, or its drafts are small, dated within what may be claimed, and read back
/// as what they were; its words exist; and it folds.
fn keeps_the_law(night: &mut Night, act: Act) -> Result<(), TestCaseError> {
    let now = night.moment.utc_ms;
    let decision = match night.decide(&act) {
        Ok(decision) => decision,
        Err(refused) => {
            prop_assert!(refused.reason.contains('.'), "{}", refused.reason);
            prop_assert!(!refused.reason.contains("⟨error"), "{}", refused.reason);
            return Ok(());
        }
    };
    prop_assert!(!decision.drafts.is_empty());
    prop_assert!(!decision.said.is_empty() && !decision.said.contains("⟨act"));
    for draft in &decision.drafts {
        let window = now - times::BACK_MS..=now + times::AHEAD_MS;
        prop_assert!(window.contains(&draft.at), "{}", draft.at);
        let raw = draft.raw();
        prop_assert!(raw.len() <= MAX_ENTRY_BYTES);
        prop_assert_eq!(Entry::meaning(&raw), Meaning::Known(draft.payload.clone()));
    }
    night.does(act);
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn whatever_is_handed_in_is_recorded_soundly_or_refused_with_a_sentence(
        all in prop::collection::vec((stuff(), 0usize..64), 1..8),
        spanish in any::<bool>(),
    ) {
        let (mut night, r) = Night::on_the_pits();
        night.viewer.locale = if spanish { Locale::EsUs } else { Locale::EnUs };
        let ids = Ids::of(&r);
        for (stuff, kind) in all {
            let acts = acts(&ids, &stuff);
            keeps_the_law(&mut night, acts[kind % acts.len()].clone())?;
        }
    }

    #[test]
    fn every_kind_of_act_keeps_the_law(stuff in stuff(), utc_ms in prop::option::of(any::<i64>())) {
        let (mut night, r) = Night::on_the_pits();
        night.moment.utc_ms = utc_ms.unwrap_or(night.moment.utc_ms);
        for act in acts(&Ids::of(&r), &stuff) {
            let (mut fresh, _) = Night::on_the_pits();
            fresh.moment = night.moment.clone();
            keeps_the_law(&mut fresh, act)?;
        }
    }
}

#[test]
fn the_same_night_gives_the_same_decision() {
    let stuff = Stuff {
        numbers: [30, 60, 10, 5],
        texts: ["Butt".into(), "America/Chicago".into()],
        picks: [0, 2, 0, 1],
        at: None,
    };
    let run = || {
        let (mut night, r) = Night::on_the_pits();
        let acts = acts(&Ids::of(&r), &stuff);
        acts.iter().map(|act| night.decide(act)).collect::<Vec<_>>()
    };
    let first = run();
    assert_eq!(first, run());
    assert!(first.iter().filter(|decided| decided.is_ok()).count() > 12);
}
