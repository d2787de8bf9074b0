//! Replays one seed of the simulator: `cargo run -p slowbend-tests --bin sim -- 123` prints all that happened.

fn main() -> std::process::ExitCode {
    let seed = std::env::args().nth(1).and_then(|text| text.parse().ok());
    let Some(seed) = seed else {
        eprintln!("which seed? cargo run -p slowbend-tests --bin sim -- 123");
        return std::process::ExitCode::from(2);
    };
    match slowbend_tests::sim::run(seed) {
        Ok(trace) => {
            println!("{trace}seed {seed}: all laws held; trace {}", trace.hash());
            std::process::ExitCode::SUCCESS
        }
        Err(broken) => {
            eprintln!("{broken}");
            std::process::ExitCode::FAILURE
        }
    }
}
