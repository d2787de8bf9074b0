//! Generates the Kotlin, Swift and Python of a built library: `bindgen LIBRARY FOLDER`. The README of this crate has
//! the one command that also builds the library.

use std::process::ExitCode;
use uniffi_bindgen::bindings::{GenerateOptions, TargetLanguage, generate};

const LANGUAGES: [(&str, TargetLanguage); 3] = [
    ("kotlin", TargetLanguage::Kotlin),
    ("swift", TargetLanguage::Swift),
    ("python", TargetLanguage::Python),
];

fn main() -> ExitCode {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let [library, folder] = args.as_slice() else {
        eprintln!("usage: bindgen LIBRARY FOLDER");
        return ExitCode::from(2);
    };
    for (name, language) in LANGUAGES {
        let options = GenerateOptions {
            languages: vec![language],
            source: library.into(),
            out_dir: format!("{folder}/{name}").into(),
            ..GenerateOptions::default()
        };
        if let Err(error) = generate(options) {
            eprintln!("bindgen: {name}: {error:#}");
            return ExitCode::FAILURE;
        }
    }
    ExitCode::SUCCESS
}
