//! A cook to begin, as typed.

use super::{given, whole};
use crate::{
    acts::{Act, NewMeat},
    checks::Cut,
    error::Refused,
    ids::PitId,
    log::Serve,
    moment::Moment,
    words::{
        Arg, Viewer, Words,
        typed::{MEAT_GRAMS, name, weight, when},
    },
};
use serde::{Deserialize, Serialize};

/// A cook to begin, as typed on the first screen.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct StartTyped {
    /// What it is called; blanks = as its first meat.
    pub name: String,
    /// When it is on the table: a time of day such as "2 pm", "2 pm tomorrow" or "Saturday 14:00", the next one meant; blanks = not said.
    pub serve: String,
    /// How many eat; blanks = not said.
    pub people: String,
    /// The meats.
    pub meats: Vec<MeatTyped>,
}

/// A meat, as typed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct MeatTyped {
    /// What it is.
    pub cut: Cut,
    /// Its weight; blanks = not weighed.
    pub weight: String,
    /// The pit it will cook in, if it is known.
    pub pit: Option<PitId>,
}

/// The act that begins it.
///
/// # Errors
/// Where a time, a number or a weight cannot be read, or the name is none.
pub fn start(viewer: &Viewer, typed: &StartTyped, moment: &Moment) -> Result<Act, Refused> {
    let say = Words::of(viewer);
    let meats = typed.meats.iter().zip(1..);
    let meats = meats.map(|(typed, row)| {
        meat(&say, typed).map_err(|refused| of_row(&say, row, Some(typed.cut), refused))
    });
    Ok(Act::StartCook {
        name: name(&say, &occasion(&say, typed))?,
        serve: serve(&say, &typed.serve, moment)?,
        people: whole(&say, &typed.people)?,
        meats: meats.collect::<Result<_, _>>()?,
        demo: false,
    })
}

/// What was wrong with a meat, after which row it stands in.
pub fn of_row(say: &Words<'_>, row: i64, cut: Option<Cut>, refused: Refused) -> Refused {
    let cut = cut.map_or_else(|| say.text("screen-some-meat"), |cut| say.text(cut.key()));
    let args = [
        ("row", Arg::Number(row)),
        ("cut", Arg::Text(&cut)),
        ("reason", Arg::Text(&refused.reason)),
    ];
    Refused::new(say.with("error-meat-row", &args))
}

/// What it is called; one without a name is called as its first meat.
fn occasion(say: &Words<'_>, typed: &StartTyped) -> String {
    let first = typed.meats.first().map(|meat| say.text(meat.cut.key()));
    let said = given(&typed.name).map(str::to_owned);
    said.or(first).unwrap_or_default()
}

/// When it is on the table, as typed, in the viewer's zone; none where nothing was typed.
pub(super) fn serve(
    say: &Words<'_>,
    text: &str,
    moment: &Moment,
) -> Result<Option<Serve>, Refused> {
    let Some(text) = given(text) else {
        return Ok(None);
    };
    Ok(Some(Serve {
        at: when(say, text, moment.utc_ms)?,
        zone: say.viewer().zone.clone(),
    }))
}

fn meat(say: &Words<'_>, typed: &MeatTyped) -> Result<NewMeat, Refused> {
    let read = |text| weight(say, text, &MEAT_GRAMS);
    Ok(NewMeat {
        name: String::new(),
        cut: typed.cut,
        form: typed.cut.form_unsaid(),
        weight_g: given(&typed.weight).map(read).transpose()?,
        cadence: None,
        pit: typed.pit,
    })
}
