//! Areas of grates and heights above the sea as typed.

use super::{
    super::{WeightUnit, format::Round, measure::Measure},
    Arg, Refused, Words,
    scan::{Fault, Thousandths, number, plain},
};

/// Reads "341", "2200 cm²", "5280 ft" to whole square centimeters or meters; without a unit, in the viewer's.
///
/// # Errors
/// What cannot be read or lies outside [`Measure::range`], with what fits, in the viewer's units.
pub fn measure(say: &Words<'_>, of: Measure, text: &str) -> Result<i64, Refused> {
    let kept = read(&plain(text), of, say.viewer().weight)
        .map_err(|fault| fault.refused(say, text, || unfit(say, of)))?;
    match of.range().contains(&kept) {
        true => Ok(kept),
        false => Err(unfit(say, of)),
    }
}

fn unfit(say: &Words<'_>, of: Measure) -> Refused {
    let range = of.range();
    let low = say.measured(of, *range.start(), Round::Up).to_string();
    let high = say.measured(of, *range.end(), Round::Down).to_string();
    let args = [
        ("low", Arg::Text(&low)),
        ("high", Arg::Text(&high)),
        ("unit", Arg::Text(say.measure_unit(of))),
    ];
    say.refuse("error-measure", &args)
}

fn read(text: &str, of: Measure, viewers: WeightUnit) -> Result<i64, Fault> {
    let (below_zero, size) = text
        .strip_prefix(['-', '−'])
        .map_or((false, text), |rest| (true, rest.trim_start()));
    let (size, rest) = number(size)?;
    let unit = unit(rest.trim(), of, viewers).ok_or(Fault::Unread)?;
    let size: Thousandths = if below_zero { -size } else { size };
    let kept = size.saturating_mul(of.in_kept(unit));
    Ok(Round::Nearest.divide(kept, 10_000_000))
}

fn unit(word: &str, of: Measure, viewers: WeightUnit) -> Option<WeightUnit> {
    Some(match (of, word.trim_end_matches('.')) {
        (_, "") => viewers,
        (Measure::Grate, "in²" | "in2" | "sq in" | "in" | "pulg²" | "pulg2") => WeightUnit::Pound,
        (Measure::Grate, "cm²" | "cm2" | "sq cm" | "cm") => WeightUnit::Kilogram,
        (Measure::Altitude, "ft" | "feet" | "foot" | "pies" | "pie") => WeightUnit::Pound,
        (Measure::Altitude, "m" | "meters" | "meter" | "metros" | "metro") => WeightUnit::Kilogram,
        _ => return None,
    })
}
