//! Everything that is not taken, with the first words of what is said instead, in both languages.

use super::super::testing::*;
use crate::{
    acts::{Act, NewMeat},
    cadence::Cadence,
    checks::{BoneShowing, Cut, Spot, Temperature, TestResult},
    ids::{CookId, DeviceId, DishId, LogId, PieceId, PitId, ThermometerId},
    log::{Band, Bath, EntryKey, Field, Job, PitKind, Serve, Stage, Subject, Where, Wrap},
    moment::{HOUR, MINUTE},
    units::Mk,
};

/// An act, and how its refusal begins in English and in Spanish.
type Row = (Act, &'static str, &'static str);

fn refuse_all(night: &mut Night, rows: Vec<Row>) {
    for (act, english, spanish) in rows {
        for (locale, begins) in [
            (crate::words::Locale::EnUs, english),
            (crate::words::Locale::EsUs, spanish),
        ] {
            night.viewer.locale = locale;
            let said = night.refuses(&act);
            assert!(
                said.starts_with(begins),
                "{act:?}\n said: {said}\n want: {begins}"
            );
            assert!(
                !said.contains("⟨error") && said.matches('.').count() >= 1,
                "{said}"
            );
        }
    }
}

fn set(of: Subject, to: Field) -> Act {
    Act::SetField { of, to, saw: None }
}

fn open(pit: Option<PitId>, wetted: &[PieceId], turned: &[PieceId], glazed: &[PieceId]) -> Act {
    Act::Open {
        pit,
        wetted: wetted.to_vec(),
        turned: turned.to_vec(),
        glazed: glazed.to_vec(),
        at: None,
    }
}

fn heat(mk: Mk, spot: Spot, thermometer: Option<ThermometerId>) -> TestResult {
    TestResult::Heat(Temperature {
        mk,
        spot,
        thermometer,
        instant_read: true,
    })
}

#[test]
fn what_is_not_here_is_not_acted_on() {
    let (mut night, r) = Night::on_the_pits();
    let (cook, piece, pit) = (CookId(nobody()), PieceId(nobody()), PitId(nobody()));
    let dish = DishId(nobody());
    let thermometer = ThermometerId(nobody());
    let (no_cook, es_cook) = ("That cook was taken back", "Esa jornada se deshizo");
    let (no_meat, es_meat) = ("That meat was taken back", "Esa carne se deshizo");
    let (no_pit, es_pit) = ("That pit was taken back", "Ese asador se deshizo");
    let (no_dish, es_dish) = ("That dish was taken back", "Ese platillo se deshizo");
    let (no_therm, es_therm) = (
        "That thermometer was taken back",
        "Ese termómetro se deshizo",
    );
    let new = || meat(Cut::PorkButt, "", None);
    let at_pit = |pit| Where::Pit { pit };
    let read = |cook, place, thermometer| Act::Read {
        cook,
        place,
        thermometer,
        temp: Mk::from_f(200),
        at: None,
    };
    let note = |about| Act::Note {
        cook: r.cook,
        about,
        text: "x".into(),
    };
    let job = Job::Wet(piece);
    let rows = vec![
        (Act::FinishCook { cook }, no_cook, es_cook),
        (Act::AddMeat { cook, meat: new() }, no_cook, es_cook),
        (
            Act::AddDish {
                cook,
                name: "Slaw".into(),
                hot: false,
            },
            no_cook,
            es_cook,
        ),
        (
            Act::SeeFire {
                cook,
                pit: r.drum,
                at: None,
            },
            no_cook,
            es_cook,
        ),
        (read(cook, at_pit(r.drum), None), no_cook, es_cook),
        (Act::Skip { cook, job }, no_cook, es_cook),
        (
            set(Subject::Cook(cook), Field::People(None)),
            no_cook,
            es_cook,
        ),
        (stage(piece, Stage::Off), no_meat, es_meat),
        (
            Act::Split {
                piece,
                names: vec![],
            },
            no_meat,
            es_meat,
        ),
        (
            Act::Join {
                pieces: vec![piece, r.butt],
                name: "Both".into(),
            },
            no_meat,
            es_meat,
        ),
        (
            Act::AnswerRub {
                piece,
                set: true,
                at: None,
            },
            no_meat,
            es_meat,
        ),
        (
            Act::Check {
                piece,
                results: vec![],
                at: None,
            },
            no_meat,
            es_meat,
        ),
        (mop(&[piece]), no_meat, es_meat),
        (Act::Answer { cook: r.cook, job }, no_meat, es_meat),
        (note(Subject::Piece(piece)), no_meat, es_meat),
        (stage(r.butt, Stage::OnPit { pit }), no_pit, es_pit),
        (
            Act::Move {
                piece: r.butt,
                pit,
                spot: String::new(),
                at: None,
            },
            no_pit,
            es_pit,
        ),
        (
            Act::Feed {
                cook: r.cook,
                pit,
                what: String::new(),
                at: None,
            },
            no_pit,
            es_pit,
        ),
        (
            Act::ChangeVent {
                cook: r.cook,
                pit,
                how: String::new(),
                at: None,
            },
            no_pit,
            es_pit,
        ),
        (
            Act::SeeFire {
                cook: r.cook,
                pit,
                at: None,
            },
            no_pit,
            es_pit,
        ),
        (open(Some(pit), &[], &[], &[]), no_pit, es_pit),
        (read(r.cook, at_pit(pit), None), no_pit, es_pit),
        (note(Subject::Pit(pit)), no_pit, es_pit),
        (
            set(Subject::Pit(pit), Field::AloneMinutes(None)),
            no_pit,
            es_pit,
        ),
        (
            start("Lunch", vec![meat(Cut::PorkButt, "", Some(pit))]),
            no_pit,
            es_pit,
        ),
        (
            Act::ReadyDish {
                cook: r.cook,
                dish,
                ready: true,
            },
            no_dish,
            es_dish,
        ),
        (
            set(Subject::Dish(dish), Field::Name("Slaw".into())),
            no_dish,
            es_dish,
        ),
        (note(Subject::Dish(dish)), no_dish, es_dish),
        (
            read(r.cook, at_pit(r.drum), Some(thermometer)),
            no_therm,
            es_therm,
        ),
        (note(Subject::Thermometer(thermometer)), no_therm, es_therm),
        (
            Act::CheckThermometer {
                thermometer,
                against: Bath::Ice,
                read: Mk::from_f(32),
            },
            no_therm,
            es_therm,
        ),
        (
            Act::Check {
                piece: r.ribs[0],
                results: vec![heat(Mk::from_f(190), Spot::BetweenBones, Some(thermometer))],
                at: None,
            },
            no_therm,
            es_therm,
        ),
    ];
    refuse_all(&mut night, rows);
}

#[test]
fn no_instant_is_taken_that_cannot_be_meant() {
    let (mut night, r) = Night::on_the_pits();
    let now = night.moment.utc_ms;
    let off = |at| Act::SetStage {
        piece: r.butt,
        stage: Stage::Off,
        at: Some(at),
    };
    let serve = |at, zone: &str| {
        let zone = zone.into();
        set(
            Subject::Cook(r.cook),
            Field::Serve(Some(Serve { at, zone })),
        )
    };
    let chicago = "America/Chicago";
    let rows = vec![
        (
            off(0),
            "Dec 31, 1969, 6:00 PM is too long ago",
            "31 dic 1969, 6:00 p. m.: hace demasiado",
        ),
        (
            off(now - 48 * HOUR - 1),
            "Wed 10:59 PM is too long ago",
            "mié 10:59 p. m.: hace demasiado",
        ),
        (
            off(7_258_118_400_000),
            "Dec 31, 2199, 6:00 PM has not come",
            "31 dic 2199, 6:00 p. m.: esa hora",
        ),
        (
            off(now + 10 * MINUTE + 1),
            "11:10 PM has not come yet.",
            "11:10 p. m.: esa hora todavía",
        ),
        (off(i64::MAX), "Dec 30, 9999", "30 dic 9999"),
        (
            Act::Sleep { until: now },
            "Sleep ends after 11:00 PM and before tomorrow 11:00 PM",
            "El descanso termina después de 11:00 p. m.",
        ),
        (
            Act::Sleep {
                until: now + 24 * HOUR + 1,
            },
            "Sleep ends after",
            "El descanso termina",
        ),
        (
            serve(now - HOUR - 1, chicago),
            "9:59 PM is no serving time",
            "9:59 p. m.: esa hora de servir",
        ),
        (
            serve(now + 15 * 24 * HOUR, chicago),
            "Jun 27, 11:00 PM is no serving time",
            "27 jun, 11:00 p. m.: esa hora de servir",
        ),
        (
            serve(now + HOUR, "Mars/Base"),
            "The time zone “Mars/Base” is not known",
            "La zona horaria “Mars/Base” no se conoce",
        ),
    ];
    refuse_all(&mut night, rows);
    for at in [now - 48 * HOUR, now + 10 * MINUTE] {
        assert_eq!(night.decide(&off(at)).unwrap().drafts[0].at, at);
    }
}

#[test]
fn a_clock_that_was_never_set_records_nothing() {
    let (mut night, r) = Night::on_the_pits();
    for (utc_ms, shown, es) in [
        (0, "Dec 31, 1969, 6:00 PM", "31 dic 1969, 6:00 p. m."),
        (
            7_258_118_400_000,
            "Dec 31, 2199, 6:00 PM",
            "31 dic 2199, 6:00 p. m.",
        ),
    ] {
        night.moment.utc_ms = utc_ms;
        for (locale, begins) in [
            (
                crate::words::Locale::EnUs,
                format!("The clock of this device says {shown},"),
            ),
            (
                crate::words::Locale::EsUs,
                format!("El reloj de este dispositivo marca {es},"),
            ),
        ] {
            night.viewer.locale = locale;
            let said = night.refuses(&stage(r.butt, Stage::Off));
            assert!(said.starts_with(&begins), "{said}");
        }
    }
    night.moment.utc_ms = 4_070_908_800_000;
    assert!(
        night.decide(&stage(r.butt, Stage::Off)).is_ok(),
        "2099 is a device's own business"
    );
}

#[test]
fn no_number_is_taken_that_no_cook_has() {
    let (mut night, r) = Night::on_the_pits();
    let (cook, butt, pit) = (r.cook, r.butt, r.drum);
    let of_pit = |to| set(Subject::Pit(pit), to);
    let of_butt = |to| set(Subject::Piece(butt), to);
    let of_crew = |to| set(Subject::Crew, to);
    let band = |low, high, minutes| {
        let (low, high) = (Mk::from_f(low), Mk::from_f(high));
        of_pit(Field::Band(Band { low, high, minutes }))
    };
    let read = |place, temp| Act::Read {
        cook,
        place,
        thermometer: None,
        temp,
        at: None,
    };
    let in_butt = || Where::Piece {
        piece: butt,
        spot: String::new(),
    };
    let weighing = |grams| Act::AddMeat {
        cook,
        meat: NewMeat {
            weight_g: Some(grams),
            ..meat(Cut::PorkButt, "", None)
        },
    };
    let (people, es_people) = (
        "How many eat goes from 1 to 5",
        "Los comensales van de 1 a 5",
    );
    let (alone, es_alone) = (
        "A pit may be left alone for 0 to 1",
        "Un asador se puede dejar solo de 0 a 1",
    );
    let (weight, es_weight) = (
        "That cannot be the weight of one meat.",
        "Ese no puede ser el peso",
    );
    let (every, es_every) = (
        "A meat is mopped or spritzed every 10 to 240",
        "Una carne se baña o se rocía cada 10 a 240",
    );
    let (pit_heat, es_pit_heat) = (
        "A pit stands between -40 °F and 932 °F.",
        "Un asador está entre -40 °F y 932 °F.",
    );
    let (pull, es_pull) = (
        "Take it off between 145 °F and 212 °F.",
        "Sácala entre 145 °F y 212 °F.",
    );
    let rows = vec![
        (
            set(Subject::Cook(cook), Field::People(Some(0))),
            people,
            es_people,
        ),
        (
            set(Subject::Cook(cook), Field::People(Some(5_001))),
            people,
            es_people,
        ),
        (of_pit(Field::AloneMinutes(Some(-1))), alone, es_alone),
        (of_pit(Field::AloneMinutes(Some(1_441))), alone, es_alone),
        (
            of_pit(Field::GrateCm2(Some(1))),
            "A grate has 100 to",
            "Una parrilla tiene de 100 a",
        ),
        (weighing(0), weight, es_weight),
        (weighing(900_000), weight, es_weight),
        (of_butt(Field::WeightG(Some(29))), weight, es_weight),
        (
            of_butt(Field::Cadence(Cadence::Mop { every_min: 9 })),
            every,
            es_every,
        ),
        (
            of_butt(Field::Cadence(Cadence::Spritz { every_min: 241 })),
            every,
            es_every,
        ),
        (of_crew(Field::MopMinutes(5)), every, es_every),
        (of_crew(Field::SpritzMinutes(i64::MAX)), every, es_every),
        (
            of_crew(Field::AltitudeM(9_000)),
            "Altitude goes from -500 to 6",
            "La altitud va de -500 a 6",
        ),
        (
            band(275, 225, 15),
            "The lower temperature must be below",
            "La temperatura baja debe ser menor",
        ),
        (
            band(225, 225, 15),
            "The lower temperature must be below",
            "La temperatura baja debe ser menor",
        ),
        (
            band(225, 275, 0),
            "A pit rings after 1 to 120 minutes",
            "Un asador avisa tras 1 a 120 minutos",
        ),
        (band(225, 1_000, 15), pit_heat, es_pit_heat),
        (
            read(Where::Pit { pit }, Mk::from_f(9_000)),
            pit_heat,
            es_pit_heat,
        ),
        (
            read(Where::Pit { pit }, Mk(i64::MIN)),
            pit_heat,
            es_pit_heat,
        ),
        (
            read(in_butt(), Mk::from_f(1_000)),
            "The inside of a meat is between -4 °F and 392 °F.",
            "El interior de una carne está entre -4 °F y 392 °F.",
        ),
        (of_butt(Field::PullAt(Some(Mk::from_f(140)))), pull, es_pull),
        (of_butt(Field::PullAt(Some(Mk::from_f(250)))), pull, es_pull),
        (
            set(
                Subject::Piece(r.turkey),
                Field::PullAt(Some(Mk::from_f(160))),
            ),
            "Take it off between 165 °F and 212 °F.",
            "Sácala entre 165 °F y 212 °F.",
        ),
        (
            Act::Later {
                cook,
                job: Job::Wet(butt),
                minutes: 0,
            },
            "A job can wait 1 to 240 minutes.",
            "Una tarea puede esperar de 1 a 240 minutos.",
        ),
        (
            Act::Later {
                cook,
                job: Job::Wet(butt),
                minutes: 241,
            },
            "A job can wait 1 to 240 minutes.",
            "Una tarea puede esperar de 1 a 240 minutos.",
        ),
    ];
    refuse_all(&mut night, rows);
}

#[test]
fn no_text_is_taken_that_cannot_be_shown() {
    let (mut night, r) = Night::on_the_pits();
    let (cook, about) = (r.cook, Subject::Crew);
    let note = |text: String| Act::Note { cook, about, text };
    let bind = |source: &str, sensor: &str| Act::BindProbe {
        cook,
        source: source.into(),
        sensor: sensor.into(),
        place: Where::Pit { pit: r.drum },
        thermometer: None,
    };
    let pit = |name: String| Act::AddPit {
        name,
        kind: PitKind::Drum,
        grate_cm2: None,
        alone_minutes: None,
    };
    let (empty, es_empty) = ("The name is empty.", "El nombre está vacío.");
    let rows = vec![
        (pit("\u{200b} \u{7}".into()), empty, es_empty),
        (
            Act::AddThermometer {
                name: String::new(),
            },
            empty,
            es_empty,
        ),
        (Act::NameDevice { name: " ".into() }, empty, es_empty),
        (start("", vec![]), empty, es_empty),
        (
            set(Subject::Piece(r.butt), Field::Name(" ".into())),
            empty,
            es_empty,
        ),
        (
            pit("x".repeat(61)),
            "The name has 61 characters.",
            "El nombre tiene 61 caracteres.",
        ),
        (
            note(" \n\t\u{202e}".into()),
            "The note is empty.",
            "La nota está vacía.",
        ),
        (note("x".repeat(2_001)), "That has 2", "Eso tiene 2"),
        (
            Act::TakeWatch {
                note: "x".repeat(201),
            },
            "That has 201 characters. Shorten it to 200",
            "Eso tiene 201 caracteres. Acórtalo a 200",
        ),
        (
            bind("", "P1"),
            "“” cannot name a probe.",
            "“” no puede ser el nombre de una sonda.",
        ),
        (
            bind("box", " P1"),
            "“ P1” cannot name a probe.",
            "“ P1” no puede ser el nombre",
        ),
        (
            bind("box", "P\u{0}1"),
            "“P1” cannot name a probe.",
            "“P1” no puede ser el nombre",
        ),
        (
            bind(&"x".repeat(121), "P1"),
            "That has 121 characters.",
            "Eso tiene 121 caracteres.",
        ),
        (
            start("Lunch", vec![meat(Cut::PorkButt, "", None); 61]),
            "At most 60 meats can be added at once.",
            "Se pueden agregar a lo más 60 carnes",
        ),
    ];
    refuse_all(&mut night, rows);
}

#[test]
fn nothing_is_done_to_a_meat_that_cannot_be() {
    let (mut night, r) = Night::on_the_pits();
    let add = Act::AddMeat {
        cook: r.cook,
        meat: meat(Cut::PorkButt, "Late butt", None),
    };
    let late = match night.does(add).decision.made[..] {
        [Subject::Piece(id)] => id,
        ref other => panic!("one meat was made, not {other:?}"),
    };
    let wrap = Wrap::Paper;
    night.does(stage(r.ribs[1], Stage::Wrapped { wrap }));
    let check = |piece, result| Act::Check {
        piece,
        results: vec![result],
        at: None,
    };
    let nothing = Act::Check {
        piece: r.butt,
        results: vec![],
        at: None,
    };
    let names = |n: usize| vec![String::new(); n];
    let split = |n| Act::Split {
        piece: r.butt,
        names: names(n),
    };
    let join = |pieces: &[PieceId]| Act::Join {
        pieces: pieces.to_vec(),
        name: "All".into(),
    };
    let (parts, es_parts) = (
        "Give 2 to 20 different parts.",
        "Da de 2 a 20 partes distintas.",
    );
    let kettle = Some(r.kettle);
    let rows = vec![
        (split(1), parts, es_parts),
        (split(21), parts, es_parts),
        (join(&[r.butt, r.butt]), parts, es_parts),
        (
            join(&[r.butt, r.turkey]),
            "Only meats of one cut",
            "Solo carnes del mismo corte",
        ),
        (
            stage(late, Stage::Wrapped { wrap }),
            "Late butt has not been on a pit yet.",
            "Late butt todavía no ha estado",
        ),
        (
            stage(late, Stage::Unwrapped),
            "Late butt has not been on a pit yet.",
            "Late butt todavía no ha estado",
        ),
        (
            nothing,
            "A check has one to 40 results.",
            "Una revisión tiene de uno a 40",
        ),
        (
            check(r.turkey, TestResult::Bone(BoneShowing::HalfInch)),
            "That test is not for Turkey.",
            "Esa prueba no es para Turkey.",
        ),
        (
            check(r.butt, heat(Mk::from_f(195), Spot::BetweenBones, None)),
            "Butt has no such place.",
            "Butt no tiene ese lugar.",
        ),
        (
            check(r.butt, heat(Mk::from_f(900), Spot::Center, None)),
            "The inside of a meat is between",
            "El interior de una carne está",
        ),
        (
            open(None, &[], &[], &[]),
            "Nothing was chosen.",
            "No elegiste nada.",
        ),
        (
            mop(&[late]),
            "Late butt is not on a pit",
            "Que se sepa, Late butt no está",
        ),
        (
            open(None, &[], &[late], &[]),
            "Late butt is not on a pit",
            "Que se sepa, Late butt no está",
        ),
        (
            open(kettle, &[r.butt], &[], &[]),
            "Butt is on Drum, not on Kettle.",
            "Butt está en Drum, no en Kettle.",
        ),
        (
            mop(&[r.ribs[1]]),
            "Ribs 2 is wrapped.",
            "Ribs 2 está en su envoltura.",
        ),
        (
            open(None, &[], &[], &[r.ribs[1]]),
            "Ribs 2 is wrapped.",
            "Ribs 2 está en su envoltura.",
        ),
        (
            mop(&[r.ribs[0], r.turkey]),
            "One mop must not touch both",
            "Una misma brocha no debe tocar",
        ),
        (
            open(None, &[], &[], &[r.butt, r.turkey]),
            "One mop must not touch both",
            "Una misma brocha no debe tocar",
        ),
    ];
    refuse_all(&mut night, rows);
    night.does(stage(r.turkey, Stage::Off));
    let empty = vec![(
        open(kettle, &[], &[], &[]),
        "Nothing is on Kettle",
        "Que se sepa, no hay nada en Kettle",
    )];
    refuse_all(&mut night, empty);
}

#[test]
fn nothing_is_recorded_in_the_wrong_cook_or_on_the_wrong_thing() {
    let (mut night, r) = Night::on_the_pits();
    let other = match night.does(start("Class", vec![])).decision.made[..] {
        [Subject::Cook(id)] => id,
        ref other => panic!("one cook was made, not {other:?}"),
    };
    let unused = night.pit("Spare", PitKind::Electric);
    let in_butt = || Where::Piece {
        piece: r.butt,
        spot: String::new(),
    };
    let (elsewhere, es_elsewhere) = ("Butt belongs to another cook.", "Butt es de otra jornada.");
    let (no_job, es_job) = (
        "That is nothing to be done in this cook.",
        "Eso no es tarea de esta jornada.",
    );
    let (not_its, es_not_its) = ("That cannot be set here.", "Eso no se puede poner aquí.");
    let read = Act::Read {
        cook: other,
        place: in_butt(),
        thermometer: None,
        temp: Mk::from_f(200),
        at: None,
    };
    let note = Act::Note {
        cook: other,
        about: Subject::Piece(r.butt),
        text: "x".into(),
    };
    let rows = vec![
        (read, elsewhere, es_elsewhere),
        (note, elsewhere, es_elsewhere),
        (
            Act::Answer {
                cook: other,
                job: Job::Check(r.butt),
            },
            elsewhere,
            es_elsewhere,
        ),
        (
            Act::Answer {
                cook: other,
                job: Job::Serve(r.cook),
            },
            no_job,
            es_job,
        ),
        (
            Act::Skip {
                cook: r.cook,
                job: Job::FireRound(unused),
            },
            no_job,
            es_job,
        ),
        (
            set(Subject::Crew, Field::Name("x".into())),
            not_its,
            es_not_its,
        ),
        (
            set(Subject::Pit(r.drum), Field::People(None)),
            not_its,
            es_not_its,
        ),
        (
            set(Subject::Cook(r.cook), Field::WeightG(None)),
            not_its,
            es_not_its,
        ),
        (
            set(Subject::Piece(r.butt), Field::Serve(None)),
            not_its,
            es_not_its,
        ),
    ];
    refuse_all(&mut night, rows);
    night.does(Act::FinishCook { cook: other });
    let over = vec![(
        Act::FinishCook { cook: other },
        "Class is over already.",
        "Class ya terminó.",
    )];
    refuse_all(&mut night, over);
}

#[test]
fn a_thermometer_out_of_its_bath_is_not_believed() {
    let mut night = Night::new();
    let name = "Stick".into();
    let thermometer = match night.does(Act::AddThermometer { name }).decision.made[..] {
        [Subject::Thermometer(id)] => id,
        ref other => panic!("one thermometer was made, not {other:?}"),
    };
    let check = |against, read| Act::CheckThermometer {
        thermometer,
        against,
        read,
    };
    let sea = Bath::Boiling { altitude_m: 0 };
    let moon = Bath::Boiling { altitude_m: 6_001 };
    let rows = vec![
        (
            check(Bath::Ice, Mk::from_f(70)),
            "70 °F is too far from 32 °F for crushed ice",
            "70 °F está muy lejos de 32 °F para hielo",
        ),
        (check(Bath::Ice, Mk(i64::MIN)), "", ""),
        (
            check(sea, Mk::from_f(180)),
            "180 °F is too far from 212 °F, where water boils",
            "180 °F está muy lejos de 212 °F, donde hierve",
        ),
        (
            check(moon, Mk::from_f(180)),
            "Altitude goes from",
            "La altitud va de",
        ),
    ];
    refuse_all(&mut night, rows);
}

#[test]
fn what_may_not_be_taken_back_or_erased_is_kept() {
    let (mut night, r) = Night::regatta();
    let unknown = EntryKey {
        log: LogId(nobody()),
        device: DeviceId(nobody()),
        n: 1,
    };
    let woke = night.does(Act::WakeUp).keys[0];
    let voided = night.does(undo(&[woke])).keys[0];
    let erase = |targets: &[EntryKey]| Act::Erase {
        targets: targets.to_vec(),
    };
    let (count, es_count) = (
        "Choose one to 500 entries.",
        "Elige de uno a 500 registros.",
    );
    let (gone, es_gone) = (
        "That entry is not on this device.",
        "Ese registro no está en este dispositivo.",
    );
    let (never, es_never) = ("That cannot be erased", "Eso no se puede borrar");
    let rows = vec![
        (undo(&[]), count, es_count),
        (undo(&[unknown; 501]), count, es_count),
        (erase(&[]), count, es_count),
        (undo(&[woke, unknown]), gone, es_gone),
        (erase(&[unknown]), gone, es_gone),
        (erase(&[voided]), never, es_never),
        (erase(&[r.started[0]]), never, es_never),
        (
            erase(&[woke, r.started[1]]),
            "Those entries belong to several cooks.",
            "Esos registros son de varias jornadas.",
        ),
    ];
    refuse_all(&mut night, rows);
    let erased = night.does(erase(&[woke])).keys[0];
    let rows = vec![
        (
            undo(&[erased]),
            "That cannot be taken back",
            "Eso no se puede deshacer",
        ),
        (erase(&[erased]), never, es_never),
    ];
    refuse_all(&mut night, rows);
}
