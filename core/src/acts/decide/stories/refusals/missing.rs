//! What is not here.

use super::*;

#[test]
fn what_is_not_here_is_not_acted_on() {
    let (mut night, r) = Night::on_the_pits();
    let (cook, piece, pit) = (CookId(nobody()), PieceId(nobody()), PitId(nobody()));
    let dish = DishId(nobody());
    let thermometer = ThermometerId(nobody());
    let (no_cook, es_cook) = ("That cook was taken back", "Esa cocción se deshizo");
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
        (
            Act::Skip {
                cook,
                jobs: vec![job],
            },
            no_cook,
            es_cook,
        ),
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
