//! Benches.

mod csv_import;

fn main() -> std::io::Result<()> {
    println!("{}", csv_import::line()?);
    Ok(())
}
