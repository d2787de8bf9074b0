//! Numbers that no cook has.

use super::*;

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
                jobs: vec![Job::Wet(butt)],
                minutes: 0,
            },
            "A job can wait 1 to 240 minutes.",
            "Una tarea puede esperar de 1 a 240 minutos.",
        ),
        (
            Act::Later {
                cook,
                jobs: vec![Job::Wet(butt)],
                minutes: 241,
            },
            "A job can wait 1 to 240 minutes.",
            "Una tarea puede esperar de 1 a 240 minutos.",
        ),
    ];
    refuse_all(&mut night, rows);
}
