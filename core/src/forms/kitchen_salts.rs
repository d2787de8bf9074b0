//! Salt that comes to a meat otherwise than by its rub, as typed.

use super::filled::Fields;
use crate::{
    batch::{AlsoSalt, Grams, MEAT_G, SATURATED_PERMILLE},
    error::Refused,
    words::typed,
};

/// What stands on a label in the United States unless it says otherwise: sodium of 4 oz, 112 g, from memory.
const SERVING_G: i64 = 112;

/// Each that was filled in.
pub(super) fn also(fields: &Fields<'_>) -> Result<Vec<AlsoSalt>, Refused> {
    let all = [
        solution(fields)?,
        sodium(fields)?,
        liquid(fields, "brine", |g, salt_permille| AlsoSalt::Brine {
            g,
            salt_permille,
        })?,
        liquid(fields, "injection", |g, salt_permille| {
            AlsoSalt::Injection { g, salt_permille }
        })?,
        liquid(fields, "mop", |g, salt_permille| AlsoSalt::Mop {
            g,
            salt_permille,
        })?,
    ];
    Ok(all.into_iter().flatten().collect())
}

fn solution(fields: &Fields<'_>) -> Result<Option<AlsoSalt>, Refused> {
    let Some(percent) = fields.ranged("solution", &(1..=60))? else {
        return Ok(None);
    };
    let salt_permille = share(fields, "solution-salt")?;
    Ok(Some(AlsoSalt::LabelSolution {
        percent,
        salt_permille,
    }))
}

/// By the serving, as labels print it; kept of 100 g, rounded up.
fn sodium(fields: &Fields<'_>) -> Result<Option<AlsoSalt>, Refused> {
    let Some(mg) = fields.ranged("sodium", &(0..=10_000))? else {
        return Ok(None);
    };
    let serving = fields.ranged("serving", &(1..=1_000))?.unwrap_or(SERVING_G);
    let mg_per_100g = ((mg * 100 + serving - 1) / serving).min(10_000);
    Ok(Some(AlsoSalt::LabelSodium { mg_per_100g }))
}

fn liquid(
    fields: &Fields<'_>,
    name: &str,
    of: fn(Grams, i64) -> AlsoSalt,
) -> Result<Option<AlsoSalt>, Refused> {
    let Some(text) = fields.given(name) else {
        return Ok(None);
    };
    let g = typed::weight(&fields.say, text, &(1..=*MEAT_G.end()))?;
    let salt = share(fields, &format!("{name}-salt"))?;
    Ok(Some(of(Grams(g), salt)))
}

fn share(fields: &Fields<'_>, field: &str) -> Result<i64, Refused> {
    let text = fields.needed(field)?;
    Ok(typed::permille(
        &fields.say,
        text,
        &(0..=SATURATED_PERMILLE),
    )?)
}
