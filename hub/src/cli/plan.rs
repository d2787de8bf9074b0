//! `slowbend plan`: the run sheet of a cook card. The card is begun in a folder of its own that is gone afterwards.

use super::{card, end::End, open, out::print};
use clap::Args;
use slowbend_core::{
    acts::Act,
    card as cards,
    door::{OpenArgs, Slowbend},
    error::Trouble,
    forms::{self, BeginMeatTyped, BeginTyped},
    ids::{CookId, PitId},
    log::Subject,
    moment::Moment,
    screens::PlanTyped,
    words::{Viewer, Words},
};
use std::path::PathBuf;

/// What is asked.
#[derive(Args)]
pub struct Asked {
    /// The card; - or nothing is standard input.
    #[arg(value_name = "CARD")]
    from: Option<PathBuf>,
    /// When it is on the table, where the card does not say: "tomorrow 2 pm", "2026-06-13T14:00".
    #[arg(long, value_name = "WHEN", default_value = "")]
    serve: String,
    /// Pairs of hands, 1 to 3.
    #[arg(long, value_name = "N", default_value = "1")]
    hands: String,
    /// Asleep from, "22:00".
    #[arg(long, value_name = "TIME", default_value = "", requires = "sleep_to")]
    sleep_from: String,
    /// Asleep to, "06:00".
    #[arg(long, value_name = "TIME", default_value = "")]
    sleep_to: String,
    /// How many minutes each pit may be left alone.
    #[arg(long, value_name = "MINUTES")]
    alone: Option<i64>,
    /// Print a calendar file in place of words.
    #[arg(long)]
    calendar: bool,
}

/// Prints the sheet.
///
/// # Errors
/// Where the card cannot be read, or nothing can be planned: what stands against it, and what would help.
pub fn run(asked: &Asked) -> Result<(), End> {
    let text = card::text(asked.from.as_deref())?;
    let (clock, zone) = (crate::clock::Clock::machine(), crate::zone::of_machine());
    let viewer = Viewer {
        locale: open::locale(),
        zone: zone.clone(),
        ..Viewer::default_for(slowbend_core::ids::DeviceId(uuid::Uuid::nil()))
    };
    print(&sheet(&text, asked, &viewer, &clock.moment(&zone))?)?;
    Ok(())
}

/// The sheet of the card's text, by the first plan.
fn sheet(text: &str, asked: &Asked, viewer: &Viewer, moment: &Moment) -> Result<String, End> {
    let folder = tempfile::tempdir().map_err(|error| End::refused(error.to_string()))?;
    let mut door = Slowbend::open(
        OpenArgs {
            place: folder.path().into(),
            install_id: "plan".into(),
            entropy: [7; 32],
        },
        moment,
    )?;
    let cook = begin(&mut door, text, asked, viewer, moment)?;
    let typed = PlanTyped {
        go: true,
        hands: asked.hands.clone(),
        sleep_from: asked.sleep_from.clone(),
        sleep_to: asked.sleep_to.clone(),
        cooler: true,
        ..PlanTyped::default()
    };
    let screen = door.plan(viewer, cook, &typed, moment)?;
    let Some(first) = screen.proposals.into_iter().next() else {
        return Err(End::refused(screen.refused.join(" ")));
    };
    door.act(viewer, &first.accept.act, moment)?;
    let sheet = door.run_sheet(viewer, cook, moment)?;
    Ok(match asked.calendar {
        true => sheet.calendar,
        false => sheet.text,
    })
}

/// Begins the card's cook on pits like those it names.
fn begin(
    door: &mut Slowbend,
    text: &str,
    asked: &Asked,
    viewer: &Viewer,
    moment: &Moment,
) -> Result<CookId, End> {
    let card = cards::read(&Words::of(viewer), text)
        .map_err(Trouble::from)?
        .card;
    let pits: Vec<PitId> = card
        .pits
        .iter()
        .map(|pit| {
            let act = Act::AddPit {
                name: pit.name.clone(),
                kind: pit.kind,
                grate_cm2: None,
                alone_minutes: asked.alone,
            };
            let made = door.act(viewer, &act, moment)?.made;
            Ok(made.into_iter().filter_map(|made| match made {
                Subject::Pit(id) => Some(id),
                _ => None,
            }))
        })
        .collect::<Result<Vec<_>, Trouble>>()?
        .into_iter()
        .flatten()
        .collect();
    let meats = card.meats.iter().map(|meat| BeginMeatTyped {
        left_out: false,
        weight: meat
            .weight_g
            .map_or_else(String::new, |grams| format!("{grams} g")),
        pit: meat
            .pit
            .and_then(|pit| pits.get(usize::try_from(pit).ok()?).copied()),
    });
    let serve = match (asked.serve.as_str(), &card.serve) {
        ("", Some(cards::CardServe::At(at))) => at.clone(),
        (typed, _) => typed.to_owned(),
    };
    let form = BeginTyped {
        card: text.to_owned(),
        name: card.name.clone(),
        serve,
        people: card
            .people
            .map_or_else(String::new, |people| people.to_string()),
        meats: meats.collect(),
    };
    let act = forms::begin(viewer, &form, moment).map_err(Trouble::from)?;
    let made = door.act(viewer, &act, moment)?.made;
    let cook = made.into_iter().find_map(|made| match made {
        Subject::Cook(id) => Some(id),
        _ => None,
    });
    cook.ok_or_else(|| End::refused("The card began no cook."))
}

#[cfg(test)]
mod tests {
    use super::*;

    const EXAMPLE: &str = include_str!("../../../docs/cook-card.example.json");

    fn asked(calendar: bool) -> Asked {
        Asked {
            from: None,
            serve: "2026-06-14T14:00".into(),
            hands: "2".into(),
            sleep_from: String::new(),
            sleep_to: String::new(),
            alone: Some(600),
            calendar,
        }
    }

    fn planned(asked: &Asked) -> String {
        let viewer = Viewer {
            zone: "America/Chicago".into(),
            ..Viewer::default_for(slowbend_core::ids::DeviceId(uuid::Uuid::nil()))
        };
        // 2026-06-13 06:00 in Chicago.
        let moment = Moment::at(1_781_348_400_000, "America/Chicago");
        sheet(EXAMPLE, asked, &viewer, &moment).unwrap_or_else(|end| panic!("{}", end.reason()))
    }

    #[test]
    fn the_example_card_is_planned_as_words_and_as_a_calendar() {
        let words = planned(&asked(false));
        assert!(
            words.starts_with("Regatta lunch\n") && words.contains("Put on: "),
            "{words}"
        );
        assert!(!words.contains('⟨'), "{words}");
        let calendar = planned(&asked(true));
        assert!(
            calendar.contains("TZID:America/Chicago\r\n") && calendar.contains("BEGIN:VALARM"),
            "{calendar}"
        );
    }
}
