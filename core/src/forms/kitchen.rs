//! What is written down in the kitchen of a cook: one function a slip. What cannot be read is refused at its own field.

use super::{
    filled::Fields,
    kitchen_rows::{cup, parts_of, rows},
};
use crate::{
    acts::Act,
    batch::{
        AtHome, Basis, Batch, BrinePlan, BrineWay, CUP_G, Cents, CountedIn, Extra, Grams, MEAT_G,
        MopPart, MopPlan, NotABatch, PortionShare, PortionsPlan, Price, RubPlan, ShoppingPlan,
    },
    error::Refused,
    ids::{CookId, PieceId},
    moment::MINUTE,
    words::typed,
};

/// Milliseconds of the longest time that meats are kept wet: two days.
const WET_MS: std::ops::RangeInclusive<i64> = MINUTE..=2_880 * MINUTE;

fn planned(fields: &Fields<'_>, cook: CookId, batch: Batch) -> Result<Act, Refused> {
    batch.check().map_err(|wrong| told(fields, &wrong))?;
    Ok(Act::PlanBatch { cook, batch })
}

fn told(fields: &Fields<'_>, wrong: &NotABatch) -> Refused {
    Refused::new(wrong.said(&fields.say))
}

/// Each meat that was chosen; the field comes once for each.
fn meats(fields: &Fields<'_>) -> Result<Vec<PieceId>, Refused> {
    let pairs = fields.filled.pairs().into_iter();
    let chosen = pairs.filter(|(name, text)| *name == "meat" && !text.is_empty());
    chosen
        .map(|(_, id)| id.parse().map_err(|_| fields.unknown()))
        .collect()
}

pub(super) fn rub(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    let basis: Basis = fields.chosen("basis")?;
    let g_per_kg = fields.ranged("g-per-kg", &(1..=200))?.unwrap_or(20);
    let also = super::kitchen_salts::also(fields)?;
    let parts = parts_of(fields, basis)?;
    let plan = RubPlan {
        pieces: meats(fields)?,
        g_per_kg,
        basis,
        parts,
        also,
    };
    planned(fields, cook, Batch::Rub(plan))
}

pub(super) fn brine(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    let way: BrineWay = fields.chosen("way")?;
    let water = fields.needed("water")?;
    let (ml, unit) = typed::amount(&fields.say, water)?;
    // A milliliter of water is a gram, to a fifth of a percent.
    if unit == CountedIn::Each || !MEAT_G.contains(&ml) {
        let wrong = NotABatch::Outside {
            what: crate::batch::What::Water,
            name: String::new(),
            value: ml,
            low: *MEAT_G.start(),
            high: *MEAT_G.end(),
        };
        return Err(told(fields, &wrong));
    }
    let percent = fields.needed("percent")?;
    let permille = typed::permille(&fields.say, percent, &(1..=way.most()))?;
    let plan = BrinePlan {
        pieces: meats(fields)?,
        water_g: Grams(ml),
        way,
        permille,
    };
    planned(fields, cook, Batch::Brine(plan))
}

pub(super) fn mop(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    let spare_percent = fields.ranged("spare", &(0..=100))?.unwrap_or(10);
    let read = |text| typed::duration(&fields.say, text, &WET_MS);
    let wet = fields.given("wet").map(read).transpose()?;
    let part = |row: usize| {
        let parts = fields.row_number("part", row, "parts", &(1..=10_000))?;
        let name = fields.row_name("part", row)?;
        Ok(MopPart { name, parts })
    };
    let parts = rows(fields, "part", &["name", "parts"])
        .into_iter()
        .map(part)
        .collect::<Result<_, Refused>>()?;
    let plan = MopPlan {
        parts,
        spare_percent,
        wet_min: wet.map(|ms| (ms / MINUTE).max(1)),
    };
    planned(fields, cook, Batch::Mop(plan))
}

/// Of meats, only what differs from what is usual.
pub(super) fn portions(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    let pairs = fields.filled.pairs().into_iter();
    let pieces = pairs.filter_map(|(name, _)| name.strip_prefix("share-")?.parse().ok());
    let share = |piece: PieceId| {
        let share = fields.ranged(&format!("share-{piece}"), &(1..=1_000))?;
        let trim_percent = fields.ranged(&format!("trim-{piece}"), &(0..=70))?;
        let share = share.unwrap_or(1);
        let is_said = share != 1 || trim_percent.is_some();
        Ok(is_said.then_some(PortionShare {
            piece,
            share,
            trim_percent,
        }))
    };
    let shares: Vec<Option<PortionShare>> = pieces.map(share).collect::<Result<_, Refused>>()?;
    let appetite = fields.chosen("appetite")?;
    let children = fields.ranged("children", &(0..=10_000))?.unwrap_or(0);
    let adults = fields.ranged("adults", &(0..=10_000))?.unwrap_or(0);
    let plan = PortionsPlan {
        adults,
        children,
        appetite,
        meats: shares.into_iter().flatten().collect(),
    };
    planned(fields, cook, Batch::Portions(plan))
}

pub(super) fn shopping(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    let mut plan = ShoppingPlan {
        extras: vec![],
        at_home: vec![],
        prices: vec![],
    };
    for row in rows(fields, "have", &["home", "price", "per"]) {
        said_of(fields, ("have", row), &mut plan)?;
    }
    for row in rows(fields, "item", &["name", "need", "home", "price", "per"]) {
        said_of(fields, ("item", row), &mut plan)?;
        let name = fields.row_name("item", row)?;
        let (amount, unit) =
            typed::amount(&fields.say, fields.needed(&format!("item-{row}-need"))?)?;
        plan.extras.push(Extra { name, amount, unit });
    }
    planned(fields, cook, Batch::Shopping(plan))
}

/// What is at home of a thing, and what it costs. A price needs what it is for.
fn said_of(
    fields: &Fields<'_>,
    (rows, row): (&str, usize),
    plan: &mut ShoppingPlan,
) -> Result<(), Refused> {
    let field = |of: &str| format!("{rows}-{row}-{of}");
    let name = fields.row_name(rows, row)?;
    if let Some(home) = fields.given(&field("home")) {
        let (amount, unit) = typed::amount(&fields.say, home)?;
        let name = name.clone();
        plan.at_home.push(AtHome { name, amount, unit });
    }
    let price = fields.given(&field("price"));
    if let Some(cents) = price
        .map(|price| typed::cents(&fields.say, price))
        .transpose()?
    {
        let (per, unit) = typed::amount(&fields.say, fields.needed(&field("per"))?)?;
        let cents = Cents(cents);
        plan.prices.push(Price {
            name,
            cents,
            per,
            unit,
        });
    }
    Ok(())
}

pub(super) fn trimmings(fields: &Fields<'_>, cook: CookId) -> Result<Act, Refused> {
    let range = 1..=60_000;
    let g = typed::weight(&fields.say, fields.needed("weight")?, &range)?;
    Ok(Act::KeepTrimmings {
        cook,
        piece: fields.any_id("piece")?,
        g,
        what: fields.trimmed("what"),
    })
}

/// Left empty, it is not known any more.
pub(super) fn salt(fields: &Fields<'_>, _: CookId) -> Result<Act, Refused> {
    let cup_g = cup(fields, "cup", &CUP_G)?;
    Ok(Act::WeighSalt { cup_g })
}
