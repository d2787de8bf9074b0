//! Paths into a screen, and whether what is there is what was told.

use serde_json::Value;

/// What is at `path` of `screen`; nothing there is `null`.
///
/// Segments are divided by `/`: a field, a number (from 0), `field=text` for the first of a list whose field is that text,
/// or `field~text` for the first whose field holds it.
///
/// ```
/// use serde_json::json;
/// use slowbend_tests::stories::find;
/// let screen = json!({ "meats": [{ "name": "Butt" }, { "name": "Slab A", "state": "on the pit" }] });
/// assert_eq!(find(&screen, "meats/1/name"), &json!("Slab A"));
/// assert_eq!(find(&screen, "meats/name~Slab/state"), &json!("on the pit"));
/// assert_eq!(find(&screen, "meats/name=Slab/state"), &json!(null));
/// ```
pub fn find<'a>(screen: &'a Value, path: &str) -> &'a Value {
    path.split('/').fold(screen, step)
}

fn step<'a>(at: &'a Value, segment: &str) -> &'a Value {
    let found = match (at, segment.split_once('='), segment.split_once('~')) {
        (Value::Array(list), Some((field, text)), _) => list.iter().find(|one| one[field] == text),
        (Value::Array(list), None, Some((field, part))) => list
            .iter()
            .find(|one| one[field].as_str().is_some_and(|text| text.contains(part))),
        (Value::Array(list), None, None) => segment.parse::<usize>().ok().and_then(|i| list.get(i)),
        (Value::Object(fields), ..) => fields.get(segment),
        _ => None,
    };
    found.unwrap_or(&Value::Null)
}

/// Whether `found` is as `told`.
///
/// An object of one key is a test: `has` a part of a text, or an element of a list that is equal; `lacks` it; `count` of a
/// list; `not` equal. Anything else must be equal.
///
/// ```
/// use serde_json::json;
/// use slowbend_tests::stories::holds;
/// assert!(holds(&json!("Mop both slabs"), &json!({ "has": "Mop" })));
/// assert!(holds(&json!(["a", "b"]), &json!({ "count": 2 })));
/// assert!(!holds(&json!("Mop"), &json!({ "not": "Mop" })));
/// ```
pub fn holds(found: &Value, told: &Value) -> bool {
    let test = told
        .as_object()
        .filter(|fields| fields.len() == 1)
        .and_then(|fields| fields.iter().next());
    match test.map(|(key, value)| (key.as_str(), value)) {
        Some(("has", part)) => has(found, part),
        Some(("lacks", part)) => !has(found, part),
        Some(("count", n)) => found
            .as_array()
            .is_some_and(|list| Some(list.len() as u64) == n.as_u64()),
        Some(("not", other)) => found != other,
        _ => found == told,
    }
}

fn has(found: &Value, part: &Value) -> bool {
    match (found, part) {
        (Value::String(text), Value::String(part)) => text.contains(part),
        (Value::Array(list), part) => list.contains(part),
        _ => false,
    }
}
