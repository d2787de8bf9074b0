//! The run sheet as plain words: to be sent, read aloud, or pinned up.

use super::{SheetDay, SheetLine};

/// A heading, what it is about, and a line for each job under its day.
pub fn text(title: &str, about: &[String], days: &[SheetDay]) -> String {
    let mut all = vec![title.to_owned()];
    all.extend(about.iter().cloned());
    for day in days {
        all.push(String::new());
        all.push(day.heading.clone());
        all.extend(day.lines.iter().map(one));
    }
    all.join("\n") + "\n"
}

fn one(line: &SheetLine) -> String {
    let parts = [
        line.job.as_str(),
        line.why.as_str(),
        if line.ticked { line.state.as_str() } else { "" },
    ];
    let said: Vec<&str> = parts.into_iter().filter(|part| !part.is_empty()).collect();
    format!("{}  {}", line.time, said.join(" · "))
}
