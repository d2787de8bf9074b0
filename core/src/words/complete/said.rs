//! Finds the messages that Rust sources say.

use std::{collections::BTreeSet, fs, path::Path};

/// Every source of core, with its path: nobody else says messages by their keys. This folder only talks about them.
pub(super) fn sources() -> Vec<(String, String)> {
    let mut found = Vec::new();
    collect(
        &Path::new(env!("CARGO_MANIFEST_DIR")).join("src"),
        &mut found,
    );
    found.retain(|(path, _)| !path.contains("words/complete"));
    found
}

fn collect(folder: &Path, found: &mut Vec<(String, String)>) {
    let Ok(entries) = fs::read_dir(folder) else {
        return;
    };
    for path in entries.map(|entry| entry.unwrap().path()) {
        if path.is_dir() {
            collect(&path, found);
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            found.push((
                path.display().to_string(),
                fs::read_to_string(&path).unwrap(),
            ));
        }
    }
}

/// One message said in a source: its key, and the variables where they are written out in the call.
#[derive(Debug, PartialEq)]
pub(super) struct Said<'s> {
    pub(super) key: &'s str,
    pub(super) variables: Option<BTreeSet<String>>,
}

/// Each literal given to `.text(`, `.with(`, `.refuse(` or `key(`; comments do not count.
pub(super) fn said(source: &str) -> Vec<Said<'_>> {
    let mut found = Vec::new();
    for (call, named) in [
        (".text(", true),
        (".with(", false),
        (".refuse(", false),
        ("key(", true),
    ] {
        for (at, _) in source.match_indices(call) {
            let (before, after) = (&source[..at], source[at + call.len()..].trim_start());
            let line = before.rsplit('\n').next().unwrap_or_default();
            let other = call == "key("
                && before.ends_with(|c: char| c.is_alphanumeric() || c == '_' || c == '.');
            let literal = after
                .strip_prefix('"')
                .and_then(|rest| rest.split_once('"'));
            let Some((key, rest)) = literal.filter(|_| !other && !line.contains("//")) else {
                continue;
            };
            let none = (call == ".text(").then(BTreeSet::new);
            found.push(Said {
                key,
                variables: if named { none } else { given(rest) },
            });
        }
    }
    found
}

/// The names in `, &[("name", …), …]`; none where the arguments are made elsewhere.
fn given(rest: &str) -> Option<BTreeSet<String>> {
    let mut rest = rest
        .trim_start()
        .strip_prefix(',')?
        .trim_start()
        .strip_prefix("&[")?;
    let mut names = BTreeSet::new();
    loop {
        rest = rest.trim_start_matches([',', ' ', '\n']);
        if rest.starts_with(']') {
            return Some(names);
        }
        let (name, value) = rest
            .strip_prefix('(')?
            .trim_start()
            .strip_prefix('"')?
            .split_once('"')?;
        names.insert(name.to_owned());
        rest = after_parenthesis(value)?;
    }
}

/// What follows the parenthesis that closes the one `text` is in; those in string literals do not count.
fn after_parenthesis(text: &str) -> Option<&str> {
    let (mut depth, mut quoted) = (1, false);
    for (at, c) in text.char_indices() {
        match c {
            '"' => quoted = !quoted,
            '(' if !quoted => depth += 1,
            ')' if !quoted => depth -= 1,
            _ => {}
        }
        if depth == 0 {
            return Some(&text[at + 1..]);
        }
    }
    None
}

#[test]
fn the_scan_sees_what_it_must_see() {
    let source = "say.text(\n  \"a-b\"); say.with(\"c\", &[(\"n\", Arg::Number(x[0])), (\"m\", Arg::Text(&t))]);
        cut.key(\"not\"); key(\"d\") // key(\"neither\")\n say.with(\"e\", &args); is_key(\"nor\")";
    let names = |names: &[&str]| Some(names.iter().map(|name| name.to_string()).collect());
    let expected = [
        ("a-b", names(&[])),
        ("c", names(&["m", "n"])),
        ("e", None),
        ("d", None),
    ];
    assert_eq!(
        said(source),
        expected.map(|(key, variables)| Said { key, variables })
    );
}
