//! The kitchen of the regatta lunch: what is reckoned of it, and what is written down.

use super::regatta::{moment, told_until, viewer};
use crate::{
    acts::Act,
    batch::*,
    cook::story::{Story, cook, piece},
    forms::{self, FieldFilled, SlipFilled},
    log::{BatchPlanned, SaltWeighed, TrimmingsKept},
    screens::{self, KitchenPart, KitchenScreen, LastTime, Slip, SlipKind},
    words::{Locale, Viewer, WeightUnit},
};

fn part_of(name: &str, parts: i64, kind: SaltKind, cup_g: Option<i64>) -> RubPart {
    RubPart {
        name: name.into(),
        parts,
        kind,
        cup_g: cup_g.map(Grams),
    }
}

fn rub() -> Batch {
    Batch::Rub(RubPlan {
        pieces: vec![piece(1), piece(2)],
        g_per_kg: 15,
        basis: Basis::Volume,
        parts: vec![
            part_of("Salt", 1, SaltKind::OtherSalt, None),
            part_of("Pepper", 1, SaltKind::Unsalted, Some(105)),
            part_of(
                "Garlic salt",
                1,
                SaltKind::Salted { salt_permille: 725 },
                Some(200),
            ),
        ],
        also: vec![
            AlsoSalt::LabelSolution {
                percent: 8,
                salt_permille: 35,
            },
            AlsoSalt::LabelSodium { mg_per_100g: 61 },
            AlsoSalt::Injection {
                g: Grams(227),
                salt_permille: 20,
            },
        ],
    })
}

fn brine() -> Batch {
    Batch::Brine(BrinePlan {
        pieces: vec![piece(4)],
        water_g: Grams(3_785),
        way: BrineWay::InTheMeat,
        permille: 15,
    })
}

fn mop() -> Batch {
    let part = |name: &str, parts| MopPart {
        name: name.into(),
        parts,
    };
    Batch::Mop(MopPlan {
        parts: vec![part("Cider vinegar", 2), part("Water", 1)],
        spare_percent: 20,
        wet_min: Some(255),
    })
}

fn portions() -> Batch {
    Batch::Portions(PortionsPlan {
        adults: 10,
        children: 4,
        appetite: Appetite::Hearty,
        meats: vec![PortionShare {
            piece: piece(3),
            share: 2,
            trim_percent: Some(4),
        }],
    })
}

fn shopping() -> Batch {
    let named = |name: &str| name.to_owned();
    Batch::Shopping(ShoppingPlan {
        extras: vec![Extra {
            name: named("Charcoal"),
            amount: 2,
            unit: CountedIn::Each,
        }],
        at_home: vec![AtHome {
            name: named("Pepper"),
            amount: 40,
            unit: CountedIn::G,
        }],
        prices: vec![
            Price {
                name: named("Slab 1"),
                cents: Cents(499),
                per: 454,
                unit: CountedIn::G,
            },
            Price {
                name: named("Charcoal"),
                cents: Cents(1_899),
                per: 1,
                unit: CountedIn::Each,
            },
        ],
    })
}

fn all() -> [Batch; 5] {
    [rub(), brine(), mop(), portions(), shopping()]
}

fn planned(at: i64, batches: impl IntoIterator<Item = Batch>) -> Story {
    let mut story = told_until(at);
    let now = moment(at).utc_ms;
    story.say(1, now, None, SaltWeighed { cup_g: Some(140) });
    for batch in batches {
        story.say(2, now, Some(cook(1)), BatchPlanned { batch });
    }
    story
}

fn shown(story: &Story, at: i64, viewer: &Viewer) -> KitchenScreen {
    let told = story.told();
    screens::kitchen(
        &told.known(1),
        viewer,
        cook(1),
        &LastTime::default(),
        &moment(at),
    )
    .unwrap()
}

fn part<'a>(screen: &'a KitchenScreen, name: &str) -> &'a KitchenPart {
    screen.parts.iter().find(|part| part.part == name).unwrap()
}

/// As a shell sends it back when nothing was touched; what is chosen of several comes once for each.
fn untouched(slip: &Slip) -> SlipFilled {
    let of = |field: &str, text: &str| FieldFilled {
        field: field.into(),
        text: text.into(),
    };
    let fields = slip.fields.iter().flat_map(|field| match field.kind {
        SlipKind::Some => field
            .usual
            .split(',')
            .map(|one| of(&field.field, one))
            .collect(),
        _ => vec![of(&field.field, &field.usual)],
    });
    SlipFilled {
        cook: cook(1),
        piece: None,
        slip: slip.slip.clone(),
        fields: fields.collect(),
    }
}

#[test]
fn what_stands_in_a_slip_is_read_back_as_it_was_written_down() {
    let story = planned(-200, all());
    for (locale, weight) in [
        (Locale::EnUs, WeightUnit::Pound),
        (Locale::EsUs, WeightUnit::Kilogram),
        (Locale::EsUs, WeightUnit::Pound),
    ] {
        let viewer = Viewer {
            weight,
            ..viewer(locale)
        };
        let screen = shown(&story, -200, &viewer);
        for (name, batch) in ["rub", "brine", "mop", "portions", "shopping"]
            .into_iter()
            .zip(all())
        {
            let filled = untouched(&part(&screen, name).slips[0]);
            let read = forms::slip(&viewer, &filled, &moment(-200));
            let cook = cook(1);
            assert_eq!(
                read,
                Ok(Act::PlanBatch { cook, batch }),
                "{locale:?} {weight:?}"
            );
        }
        let salt = forms::slip(
            &viewer,
            &untouched(&part(&screen, "rub").slips[1]),
            &moment(-200),
        );
        assert_eq!(salt, Ok(Act::WeighSalt { cup_g: Some(140) }));
    }
}

#[test]
fn a_rub_by_the_cup_is_weighed_with_the_crews_salt_and_all_salt_counted() {
    let screen = shown(&planned(-200, all()), -200, &viewer(Locale::EnUs));
    let rub = part(&screen, "rub");
    assert_eq!(rub.lead, "For 7 lb 4 oz: Slab 1 and Slab 2");
    // 3300 g take 49.5 g of rub, 140 to 105 to 200.
    let lines: Vec<_> = rub.groups[0]
        .lines
        .iter()
        .map(|line| {
            (
                line.name.as_str(),
                line.amount.as_str(),
                line.detail.as_str(),
            )
        })
        .collect();
    assert_eq!(
        lines,
        [
            ("Salt", "0.5 oz (16 g)", "1¾ tbsp"),
            ("Pepper", "0.4 oz (12 g)", "1¾ tbsp"),
            ("Garlic salt", "0.8 oz (22 g)", "1¾ tbsp"),
            (
                "All of it",
                "1.7 oz (50 g)",
                "parts by cup, 15 g on a kilogram"
            ),
        ]
    );
    assert!(
        rub.notes.iter().any(|note| note.contains("for 14 people")),
        "{:?}",
        rub.notes
    );
    assert_eq!(rub.by, "Ben wrote it down 2:40 AM.");
}

#[test]
fn raw_poultry_has_a_pot_of_its_own_and_each_pot_is_hot_or_boiled() {
    let mut story = planned(-200, [mop()]);
    let to = crate::log::Field::Cadence(crate::cadence::Cadence::spritz());
    let of = crate::log::Subject::Piece(piece(4));
    let now = moment(-200).utc_ms;
    story.say(
        1,
        now,
        Some(cook(1)),
        crate::log::FieldSet { of, to, saw: None },
    );
    let screen = shown(&story, -200, &viewer(Locale::EsUs));
    let mop = part(&screen, "mop");
    let pots: Vec<&str> = mop.groups.iter().map(|pot| pot.heading.as_str()).collect();
    assert_eq!(
        pots,
        [
            "Olla para Slab 1 y Slab 2",
            "Una olla propia para Turkey breast"
        ]
    );
    assert_eq!(mop.flags.len(), 1, "{:?}", mop.flags);
    assert!(
        mop.notes
            .iter()
            .any(|note| note.contains("140 °F") && note.contains("hiérvela"))
    );
    assert!(
        mop.cautions
            .iter()
            .any(|caution| caution.source.contains("USDA"))
    );
}

/// Halfway through, the slab that is still mopped takes less than both did before they were on; what is wrapped takes none.
#[test]
fn a_mop_is_for_what_lies_ahead_of_each_meat() {
    let of = |at| shown(&told_until(at), at, &viewer(Locale::EnUs));
    let (before, midway, end) = (of(-100), of(240), of(470));
    let lead = |screen: &KitchenScreen| part(screen, "mop").lead.clone();
    assert!(
        lead(&before).contains("9 h 40 min ahead"),
        "{}",
        lead(&before)
    );
    assert!(lead(&midway).contains("4 h ahead"), "{}", lead(&midway));
    assert_ne!(part(&before, "mop").groups, part(&midway, "mop").groups);
    assert!(
        lead(&end).starts_with("No meat is to be wetted"),
        "{}",
        lead(&end)
    );
}

#[test]
fn portions_are_of_the_cooks_people_until_somebody_says_more() {
    let story = told_until(-200);
    let screen = shown(&story, -200, &viewer(Locale::EnUs));
    let usual = part(&screen, "portions");
    assert!(
        usual.lead.starts_with("14 people eat 4 lb 10 oz"),
        "{}",
        usual.lead
    );
    assert_eq!(usual.by, "");
    // 150 g for each of 14: all of it is there.
    assert!(
        usual
            .notes
            .contains(&"That is enough even at the low end.".to_owned())
    );
    let hungry = Batch::Portions(PortionsPlan {
        adults: 60,
        children: 0,
        appetite: Appetite::Hearty,
        meats: vec![],
    });
    let screen = shown(&planned(-200, [hungry]), -200, &viewer(Locale::EnUs));
    let hungry = part(&screen, "portions");
    assert_eq!(hungry.flags, ["At the low end that is not enough."]);
    let buy = hungry.groups[0].lines.iter();
    assert!(
        buy.clone().all(|line| line.amount.starts_with("Buy ")),
        "{buy:?}"
    );
}

#[test]
fn one_list_says_what_is_paid_and_what_a_plate_costs() {
    let screen = shown(&planned(-200, all()), -200, &viewer(Locale::EnUs));
    let shopping = part(&screen, "shopping");
    let bought: Vec<&str> = shopping.groups[0]
        .lines
        .iter()
        .map(|line| line.name.as_str())
        .collect();
    assert!(
        bought.contains(&"Charcoal") && bought.contains(&"Salt"),
        "{bought:?}"
    );
    let home: Vec<&str> = shopping.groups[1]
        .lines
        .iter()
        .map(|line| line.name.as_str())
        .collect();
    assert_eq!(home, ["Pepper"]);
    assert_eq!(shopping.notes[0], "To pay: $37.98.");
    assert_eq!(shopping.notes[1], "A plate: $2.72.");
    assert!(
        shopping.notes[2].starts_with("With what is there already: $55."),
        "{:?}",
        shopping.notes
    );
}

#[test]
fn trimmings_are_added_up_and_gone_when_taken_back() {
    let mut story = told_until(-200);
    for (of, g) in [(Some(piece(3)), 120), (None, 334)] {
        let kept = TrimmingsKept {
            piece: of,
            g,
            what: "for stock".into(),
        };
        story.say(1, moment(-200).utc_ms, Some(cook(1)), kept);
    }
    let screen = shown(&story, -200, &viewer(Locale::EnUs));
    let kept = part(&screen, "trimmings");
    assert_eq!(kept.lead, "1 lb kept");
    assert_eq!(kept.groups[0].lines[0].name, "Butt · for stock");
}

#[test]
fn a_sheet_has_what_was_reckoned_and_what_is_done_and_no_forms() {
    let story = planned(-200, all());
    let told = story.told();
    let sheet = screens::kitchen_sheet(
        &told.known(1),
        &viewer(Locale::EnUs),
        cook(1),
        &moment(-200),
    )
    .unwrap();
    let parts: Vec<&str> = sheet.parts.iter().map(|part| part.part.as_str()).collect();
    assert_eq!(parts, ["portions", "rub", "brine", "mop", "shopping"]);
    assert!(
        sheet
            .parts
            .iter()
            .all(|part| part.slips.is_empty() && part.buttons.is_empty())
    );
    assert_eq!(sheet.about[0], "On the table 2:00 PM");
    assert_eq!(sheet.about[1], "For 14 people");
    let jobs: Vec<&str> = sheet
        .jobs
        .lines
        .iter()
        .map(|line| line.name.as_str())
        .collect();
    assert_eq!(jobs[0], "Buy what is listed");
    assert!(jobs.len() > 4, "{jobs:?}");
}

#[test]
fn nothing_in_the_kitchen_calls_a_meat_done_or_safe() {
    for at in [-200, 100, 300, 500] {
        for locale in Locale::ALL {
            let screen = shown(&planned(at, all()), at, &viewer(locale));
            for part in &screen.parts {
                let groups = part.groups.iter().flat_map(|group| &group.lines);
                let lines = groups.flat_map(|line| [&line.name, &line.amount, &line.detail]);
                let said = part
                    .notes
                    .iter()
                    .chain(&part.flags)
                    .chain([&part.lead])
                    .chain(lines);
                for text in said {
                    let text = text.to_lowercase();
                    let words = ["safe", "done", "segur"];
                    assert!(!words.iter().any(|word| text.contains(word)), "{text}");
                }
            }
        }
    }
}

#[test]
fn what_does_not_fit_is_told_in_the_viewers_language() {
    let filled = |slip: &str, fields: &[(&str, &str)]| SlipFilled {
        cook: cook(1),
        piece: None,
        slip: slip.into(),
        fields: fields
            .iter()
            .map(|(field, text)| FieldFilled {
                field: (*field).into(),
                text: (*text).into(),
            })
            .collect(),
    };
    for (slip, fields, says) in [
        ("rub", &[("basis", "weight")][..], "al menos una parte"),
        (
            "rub",
            &[
                ("basis", "volume"),
                ("part-0-name", "Sal"),
                ("part-0-parts", "1"),
                ("part-0-kind", "unsalted"),
            ],
            "taza rasa",
        ),
        (
            "rub",
            &[("basis", "weight"), ("part-0-parts", "1")],
            "nombre",
        ),
        (
            "rub",
            &[
                ("basis", "weight"),
                ("part-0-name", "Sal"),
                ("part-0-parts", "0"),
            ],
            "de 1 a 10000",
        ),
        (
            "brine",
            &[("way", "of_the_brine"), ("water", "4 l"), ("percent", "40")],
            "26.3",
        ),
        (
            "brine",
            &[("way", "of_the_brine"), ("water", "some")],
            "no es una cantidad",
        ),
        ("mop", &[("part-0-name", "Vinagre")], "Falta"),
        ("portions", &[("appetite", "usual")], "Nadie va a comer"),
        ("shopping", &[("item-0-name", "Carbón")], "Falta"),
        (
            "shopping",
            &[("have-0-name", "Sal"), ("have-0-price", "3")],
            "Falta",
        ),
        ("trimmings", &[("weight", "")], "Falta"),
        ("salt", &[("cup", "5000")], "de 1 a 1000"),
    ] {
        let refused = forms::slip(&viewer(Locale::EsUs), &filled(slip, fields), &moment(0));
        let reason = refused.unwrap_err().reason;
        assert!(reason.contains(says), "{slip} {fields:?}: {reason}");
    }
}

#[test]
fn a_cook_that_has_none_is_offered_what_the_last_one_had() {
    let mut story = planned(-200, [rub()]);
    let later = crate::log::CookStarted {
        id: cook(2),
        name: "Boathouse supper".into(),
        serve: None,
        people: Some(6),
        demo: true,
    };
    story.say(1, moment(-100).utc_ms, Some(cook(2)), later);
    let told = story.told();
    let known = told.known(1);
    let of = &known.cooks[&cook(2)];
    let last = screens::last_time(known.cooks.values(), of);
    let screen =
        screens::kitchen(&known, &viewer(Locale::EnUs), cook(2), &last, &moment(-90)).unwrap();
    let button = &part(&screen, "rub").buttons[0];
    assert!(
        button.label.starts_with("Rub as last time (Regatta lunch"),
        "{}",
        button.label
    );
    let Act::PlanBatch {
        batch: Batch::Rub(plan),
        ..
    } = &button.act
    else {
        panic!("{:?}", button.act);
    };
    assert!(
        plan.pieces.is_empty() && plan.also.is_empty(),
        "other meats, other labels"
    );
    assert_eq!(plan.parts.len(), 3);
    assert!(part(&screen, "mop").buttons.is_empty());
    // The earlier cook is offered nothing of the later one.
    let first = &known.cooks[&cook(1)];
    assert_eq!(
        screens::last_time(known.cooks.values(), first),
        LastTime::default()
    );
}
