//! Meats that would be called the same get numbers. Start at [`told_apart`].

use crate::words::typed::NAME_CHARS_MAX;
use std::collections::BTreeSet;

/// The names, told apart from each other and from those that `taken` holds: "Ribs", "Ribs" become "Ribs 1", "Ribs 2";
/// beside a "Ribs" that is there already, one more becomes "Ribs 2". Others stay as they are.
pub(super) fn told_apart(wanted: &[String], taken: &BTreeSet<String>) -> Vec<String> {
    let mut used: BTreeSet<String> = taken.clone();
    used.extend(wanted.iter().filter(|name| once(name, wanted)).cloned());
    let named = |name: &String| {
        if once(name, wanted) && !taken.contains(name) {
            return name.clone();
        }
        let first = if taken.contains(name) { 2 } else { 1 };
        let free = (first..)
            .map(|n| numbered(name, n))
            .find(|new| !used.contains(new));
        let free = free.expect("the numbers never end and the names in use do");
        used.insert(free.clone());
        free
    };
    wanted.iter().map(named).collect()
}

fn once(name: &String, wanted: &[String]) -> bool {
    wanted.iter().filter(|other| *other == name).count() == 1
}

/// The name with its number, shortened where both would not fit.
fn numbered(name: &str, n: i64) -> String {
    let ending = format!(" {n}");
    let room = NAME_CHARS_MAX - ending.len();
    let short: String = name.chars().take(room).collect();
    format!("{}{ending}", short.trim_end())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn apart(wanted: &[&str], taken: &[&str]) -> Vec<String> {
        let wanted: Vec<String> = wanted.iter().map(|name| name.to_string()).collect();
        told_apart(
            &wanted,
            &taken.iter().map(|name| name.to_string()).collect(),
        )
    }

    #[test]
    fn the_same_names_are_numbered_and_others_left() {
        assert_eq!(
            apart(&["Ribs", "Butt", "Ribs"], &[]),
            ["Ribs 1", "Butt", "Ribs 2"]
        );
        assert_eq!(apart(&["Ribs"], &["Ribs"]), ["Ribs 2"]);
        assert_eq!(apart(&["Ribs", "Ribs"], &["Ribs 1"]), ["Ribs 2", "Ribs 3"]);
        assert_eq!(
            apart(&["Ribs", "Ribs", "Ribs 1"], &[]),
            ["Ribs 2", "Ribs 3", "Ribs 1"]
        );
    }

    #[test]
    fn a_long_name_makes_room_for_its_number() {
        let long = "ñ".repeat(NAME_CHARS_MAX);
        let names = apart(&[&long, &long], &[]);
        assert_eq!(names[1], format!("{} 2", "ñ".repeat(NAME_CHARS_MAX - 2)));
    }
}
