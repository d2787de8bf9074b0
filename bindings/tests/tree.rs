//! What the library depends on, as cargo tells it: neither the generator nor a command line, no clock and no die.

use std::process::Command;

/// The lines of `cargo tree` for `package`, without what is only for tests and builds.
fn tree(package: &str, more: &[&str]) -> Vec<String> {
    let out = Command::new(env!("CARGO"))
        .args([
            "tree",
            "--locked",
            "--edges",
            "normal,no-proc-macro",
            "--prefix",
            "none",
            "--package",
            package,
        ])
        .args(more)
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .expect("cargo runs, since it runs this test");
    assert!(
        out.status.success(),
        "{}",
        String::from_utf8_lossy(&out.stderr)
    );
    String::from_utf8_lossy(&out.stdout)
        .lines()
        .map(str::to_owned)
        .collect()
}

fn holds(lines: &[String], package: &str) -> bool {
    lines
        .iter()
        .any(|line| line.split_whitespace().next() == Some(package))
}

#[test]
fn the_library_carries_no_generator_and_no_command_line() {
    let library = tree("slowbend-bindings", &[]);
    assert!(
        holds(&library, "uniffi") && holds(&library, "slowbend-core"),
        "{library:#?}"
    );
    for package in ["clap", "uniffi_bindgen", "cargo_metadata", "askama"] {
        assert!(!holds(&library, package), "{package} is in the library");
    }
    let generator = tree("slowbend-bindings", &["--features", "bindgen"]);
    assert!(
        holds(&generator, "uniffi_bindgen"),
        "the test sees what it looks for"
    );
}

/// Without the derives of the border, whose own helpers know temporary files and so a die, which they never roll.
#[test]
fn core_has_no_clock_and_no_die() {
    let format = ["--features", "schema", "--format", "{p} [{f}]"];
    let core = tree("slowbend-core", &format);
    let features = |package: &str| -> Vec<String> {
        let line = core
            .iter()
            .find(|line| line.starts_with(&format!("{package} v")))
            .expect("core depends on it");
        let list = line
            .split(['[', ']'])
            .nth(1)
            .expect("the format has brackets");
        list.split(',').map(str::to_owned).collect()
    };
    for clock in ["clock", "now", "iana-time-zone"] {
        assert!(
            !features("chrono").iter().any(|feature| feature == clock),
            "chrono has {clock}"
        );
    }
    for die in ["rng", "rng-getrandom", "rng-rand", "v4", "v7", "fast-rng"] {
        assert!(
            !features("uuid").iter().any(|feature| feature == die),
            "uuid has {die}"
        );
    }
    for package in [
        "getrandom",
        "rand",
        "iana-time-zone",
        "tokio",
        "reqwest",
        "ureq",
    ] {
        assert!(!holds(&core, package), "core depends on {package}");
    }
}
