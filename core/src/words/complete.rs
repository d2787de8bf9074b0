//! What makes a missing message impossible to ship: every language is complete, and every message that the sources say
//! exists with the variables they give it.

use super::{Locale, bundle};
use fluent_bundle::FluentResource;
use std::{
    collections::{BTreeMap, BTreeSet},
    fs,
    path::Path,
};

/// Each key of a language with the names of its variables.
type Messages = BTreeMap<String, BTreeSet<String>>;

fn messages(locale: Locale) -> Messages {
    let mut found = Messages::new();
    for (file, text) in bundle::files(locale) {
        let mut current = None;
        for line in text.lines().filter(|line| !line.starts_with('#')) {
            if let Some(key) = key_of(line) {
                let twice = found.insert(key.to_owned(), BTreeSet::new()).is_some();
                assert!(
                    !twice,
                    "{}/{file}.ftl says {key} a second time",
                    locale.tag()
                );
                current = Some(key);
            }
            if let Some(key) = current {
                found
                    .entry(key.to_owned())
                    .or_default()
                    .extend(variables(line));
            }
        }
    }
    found
}

fn key_of(line: &str) -> Option<&str> {
    let (key, _) = line.split_once('=')?;
    line.starts_with(|c: char| c.is_ascii_alphabetic())
        .then(|| key.trim())
}

fn variables(line: &str) -> impl Iterator<Item = String> + '_ {
    let after = line.split('$').skip(1);
    after
        .map(|rest| {
            rest.chars()
                .take_while(|&c| c.is_ascii_alphanumeric() || c == '_' || c == '-')
                .collect()
        })
        .filter(|name: &String| name.starts_with(|c: char| c.is_ascii_alphabetic()))
}

#[test]
fn every_file_parses_and_every_file_is_embedded() {
    for locale in Locale::ALL {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR"))
            .join("src/words")
            .join(locale.tag());
        let on_disk: BTreeSet<_> = fs::read_dir(folder)
            .unwrap()
            .map(|file| file.unwrap().file_name().into_string().unwrap())
            .collect();
        let embedded: BTreeSet<_> = bundle::files(locale)
            .iter()
            .map(|(name, _)| format!("{name}.ftl"))
            .collect();
        assert_eq!(
            on_disk,
            embedded,
            "{}: bundle.rs lists the files it embeds",
            locale.tag()
        );
        for (name, text) in bundle::files(locale) {
            if let Err((_, errors)) = FluentResource::try_new((*text).to_owned()) {
                panic!("{}/{name}.ftl: {errors:?}", locale.tag());
            }
        }
    }
}

#[test]
fn every_key_has_a_message_with_the_same_variables_in_each_language() {
    let english = messages(Locale::EnUs);
    assert!(english.len() > 50);
    for locale in Locale::ALL {
        let theirs = messages(locale);
        let bundle = bundle::bundle(locale);
        let keys = |messages: &Messages| messages.keys().cloned().collect::<BTreeSet<_>>();
        let (ours, others) = (keys(&english), keys(&theirs));
        assert_eq!(
            ours.difference(&others).collect::<Vec<_>>(),
            [""; 0],
            "missing in {}",
            locale.tag()
        );
        assert_eq!(
            others.difference(&ours).collect::<Vec<_>>(),
            [""; 0],
            "missing in en-US"
        );
        for (key, variables) in &theirs {
            assert_eq!(
                variables,
                &english[key],
                "variables of {key} in {}",
                locale.tag()
            );
            assert!(
                bundle
                    .get_message(key)
                    .is_some_and(|message| message.value().is_some()),
                "{key} is empty"
            );
        }
    }
}

#[test]
fn every_message_that_is_said_exists_and_is_given_its_variables() {
    let messages = messages(Locale::EnUs);
    let mut faults = Vec::new();
    let mut calls = 0;
    for (path, source) in sources() {
        for call in said(&source) {
            calls += 1;
            match (messages.get(call.key), call.variables) {
                (None, _) => faults.push(format!("{path}: no message {:?}", call.key)),
                (Some(has), Some(given)) if *has != given => {
                    faults.push(format!(
                        "{path}: {} has {has:?}, is given {given:?}",
                        call.key
                    ));
                }
                _ => {}
            }
        }
    }
    assert!(calls > 50, "the scan found only {calls} calls");
    assert_eq!(faults, [""; 0]);
}

/// Run by hand when messages have moved: `cargo test -p slowbend-core words::complete -- --ignored`.
#[test]
#[ignore = "a message may be written before the screen that says it"]
fn every_message_is_said_somewhere() {
    let all: String = sources().into_iter().map(|(_, source)| source).collect();
    let unsaid: Vec<_> = messages(Locale::EnUs)
        .into_keys()
        .filter(|key| !all.contains(&format!("\"{key}\"")))
        .collect();
    assert_eq!(unsaid, [""; 0]);
}

/// Every Rust source that may say a message, with its path. This file only talks about messages.
fn sources() -> Vec<(String, String)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap();
    let mut found = Vec::new();
    for part in ["core/src", "hub/src", "bindings/src"] {
        collect(&root.join(part), &mut found);
    }
    found.retain(|(path, _)| !path.ends_with("words/complete.rs"));
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
struct Said<'s> {
    key: &'s str,
    variables: Option<BTreeSet<String>>,
}

/// Each literal given to `.text(`, `.with(`, `.refuse(` or `key(`; comments do not count.
fn said(source: &str) -> Vec<Said<'_>> {
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
    let list = rest
        .trim_start()
        .strip_prefix(',')?
        .trim_start()
        .strip_prefix("&[")?;
    let mut depth = 1;
    let (end, _) = list.char_indices().find(|(_, c)| {
        depth += match c {
            '[' => 1,
            ']' => -1,
            _ => 0,
        };
        depth == 0
    })?;
    let items = list[..end].trim();
    let names: BTreeSet<String> = items
        .split("(\"")
        .skip(1)
        .filter_map(|item| item.split_once("\","))
        .map(|(name, _)| name.to_owned())
        .collect();
    let tuples_only = items.is_empty()
        || (items.starts_with('(') && items.matches("Arg::").count() == names.len());
    tuples_only.then_some(names)
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
