use super::{super::*, *};
use crate::{
    acts::{Act, decide::testing::Night},
    checks::Cut,
    log::{Field, Payload},
    safety::{Form, minimum},
    units::Mk,
};
use proptest::prelude::*;

/// Any JSON at all.
fn any_json() -> impl Strategy<Value = Value> {
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<i64>().prop_map(Value::from),
        any::<f64>().prop_map(Value::from),
        any::<String>().prop_map(Value::from),
        prop::sample::select(&["none", "foil", "drum", "stuffed", "14:00"][..])
            .prop_map(Value::from),
    ];
    leaf.prop_recursive(3, 24, 5, |inside| {
        let names = prop::sample::select(&["mop", "at", "cut", "held", "low_mk", "x"][..]);
        prop_oneof![
            prop::collection::vec(inside.clone(), 0..4).prop_map(Value::from),
            prop::collection::vec((names, inside), 0..4).prop_map(|all| all
                .into_iter()
                .map(|(name, value)| (name.to_owned(), value))
                .collect()),
        ]
    })
}

/// A card with some fields set to anything, numbers near the minimums among them.
fn cards() -> impl Strategy<Value = Value> {
    let fields = [
        "/slowbend_card",
        "/name",
        "/by",
        "/serve",
        "/people",
        "/pits",
        "/pits/0/held",
        "/meats",
        "/meats/0/cut",
        "/meats/0/form",
        "/meats/1/form",
        "/meats/2/form",
        "/meats/0/pull_at_mk",
        "/meats/1/pull_at_mk",
        "/meats/2/pull_at_mk",
        "/meats/0/rest_min",
        "/meats/1/rest_min",
        "/meats/1/name",
        "/meats/2/wrap",
        "/dishes/0",
        "/notes/0",
        "/anything",
    ];
    let forms: Vec<Value> = Form::ALL.iter().map(|form| json!(form)).collect();
    let cuts: Vec<Value> = Cut::ALL.iter().map(|cut| json!(cut)).collect();
    let values = prop_oneof![
        any_json(),
        (0i64..200).prop_map(Value::from),
        (330_000i64..380_000).prop_map(Value::from),
        prop::sample::select(forms),
        prop::sample::select(cuts),
    ];
    let changes = prop::collection::vec((prop::sample::select(fields.to_vec()), values), 0..5);
    changes.prop_map(|changes| {
        let mut card = regatta();
        for (pointer, value) in changes {
            let (place, field) = pointer.rsplit_once('/').expect("they begin with one");
            match card.pointer_mut(place) {
                Some(Value::Object(map)) => {
                    map.insert(field.to_owned(), value);
                }
                Some(Value::Array(list)) => {
                    let at = field.parse().unwrap_or(0);
                    if let Some(slot) = list.get_mut(at) {
                        *slot = value;
                    }
                }
                _ => {}
            }
        }
        card
    })
}

fn begun(card: &Card) -> Begun {
    let meat = |meat: &CardMeat| {
        Some(BegunMeat {
            weight_g: meat.weight_g,
            pit: None,
        })
    };
    Begun {
        name: card.name.clone(),
        serve: None,
        people: card.people,
        meats: card.meats.iter().map(meat).collect(),
    }
}

fn start(card: &Card) -> Act {
    let viewer = viewer(Locale::EnUs);
    plan(&Words::of(&viewer), card, &begun(card))
}

/// The law: what is read is never below a minimum, reads back as itself, and starts a cook.
fn keeps_the_law(text: &str) -> Result<(), TestCaseError> {
    let viewer = viewer(Locale::EsUs);
    let say = Words::of(&viewer);
    let card = match read(&say, text) {
        Ok(read) => read.card,
        Err(refused) => {
            prop_assert!(!refused.reason.contains('⟨'), "{}", refused.reason);
            prop_assert!(refused.reason.chars().count() < 600, "{}", refused.reason);
            return Ok(());
        }
    };
    for meat in &card.meats {
        let least = minimum(meat.cut, meat.done());
        prop_assert!(meat.pull_at_mk.is_none_or(|pull| Mk(pull) >= least.temp));
        prop_assert!(
            meat.rest_min
                .is_none_or(|rest| rest * 60_000 >= least.rest_ms)
        );
    }
    let again = read(&say, &card.compact());
    prop_assert_eq!(again.map(|read| read.card), Ok(card.clone()));
    let decision = Night::new().decide(&start(&card));
    prop_assert!(decision.is_ok(), "{:?}", decision);
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(512))]

    #[test]
    fn whatever_is_handed_over_is_a_sound_card_or_refused(card in cards()) {
        keeps_the_law(&card.to_string())?;
    }

    #[test]
    fn any_json_and_any_text_is_taken_or_refused(json in any_json(), text in any::<String>()) {
        keeps_the_law(&json.to_string())?;
        keeps_the_law(&text)?;
    }

    /// A shell that reads no card, or reads it wrongly, cannot lower a minimum either.
    #[test]
    fn the_act_itself_takes_nothing_below_a_minimum(pull in 300_000i64..380_000, rest in -5i64..10, form in prop::sample::select(Form::ALL), at in 0usize..3) {
        let mut card = taken(&regatta()).card;
        card.meats[at] = CardMeat { form: Some(form), pull_at_mk: Some(pull), rest_min: Some(rest), ..card.meats[at].clone() };
        let least = minimum(card.meats[at].cut, form);
        let is_sound = (least.temp.0..=373_150).contains(&pull) && rest >= 0 && rest * 60_000 >= least.rest_ms;
        let decision = Night::new().decide(&start(&card));
        prop_assert_eq!(decision.is_ok(), is_sound);
        for draft in decision.map(|decision| decision.drafts).unwrap_or_default() {
            if let Payload::FieldSet(set) = draft.payload && let Field::PullAt(Some(temp)) = set.to {
                prop_assert!(temp >= Mk(335_928));
            }
        }
    }
}
