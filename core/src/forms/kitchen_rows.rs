//! Rows of a kitchen's slip, `part-0-name`, `part-0-parts`: which are filled in, and what is in them.

use super::{filled::Fields, refused};
use crate::{
    batch::{Basis, CUP_G, Grams, LINES_MAX, RubPart, SaltKind},
    error::Refused,
    words::{key, typed},
};
use std::{collections::BTreeSet, ops::RangeInclusive};

/// The numbers of the rows in which one of `of` is filled in.
pub(super) fn rows(fields: &Fields<'_>, rows: &str, of: &[&str]) -> Vec<usize> {
    let pairs = fields.filled.pairs().into_iter();
    let row = |(name, text): (&str, &str)| {
        let (row, field) = name
            .strip_prefix(rows)?
            .strip_prefix('-')?
            .split_once('-')?;
        let row: usize = row.parse().ok()?;
        let counts = of.contains(&field) && !text.trim().is_empty();
        (counts && row < LINES_MAX as usize).then_some(row)
    };
    let found: BTreeSet<usize> = pairs.filter_map(row).collect();
    found.into_iter().collect()
}

/// The parts of a rub. By volume each needs the weight of its cup, save table salt and the crew's own.
pub(super) fn parts_of(fields: &Fields<'_>, basis: Basis) -> Result<Vec<RubPart>, Refused> {
    let all = rows(fields, "part", &["name", "parts", "salt", "cup"]);
    if all.is_empty() {
        fields.trimmed("part-0-name");
        return Err(refused(&fields.say, key("form-rub-parts")));
    }
    let mut seen = BTreeSet::new();
    let mut parts = vec![];
    for row in all {
        let field = |of: &str| format!("part-{row}-{of}");
        let count = fields.row_number("part", row, "parts", &(1..=10_000))?;
        let kind = salt_kind(fields, row)?;
        let cup_g = cup(fields, &field("cup"), &CUP_G)?.map(Grams);
        let salt = matches!(kind, SaltKind::TableSalt | SaltKind::OtherSalt);
        if basis == Basis::Volume && cup_g.is_none() && !salt {
            return Err(refused(&fields.say, key("form-cup-needed")));
        }
        let name = fields.row_name("part", row)?;
        if !seen.insert(name.clone()) {
            return Err(refused(&fields.say, key("form-twice")));
        }
        parts.push(RubPart {
            name,
            parts: count,
            kind,
            cup_g,
        });
    }
    Ok(parts)
}

fn salt_kind(fields: &Fields<'_>, row: usize) -> Result<SaltKind, Refused> {
    let kind = format!("part-{row}-kind");
    Ok(match fields.filled.field(&kind) {
        "" | "unsalted" => SaltKind::Unsalted,
        "other_salt" => SaltKind::OtherSalt,
        "table_salt" => SaltKind::TableSalt,
        "salted" => {
            let share = fields.needed(&format!("part-{row}-salt"))?;
            let salt_permille = typed::permille(&fields.say, share, &(1..=1000))?;
            SaltKind::Salted { salt_permille }
        }
        _ => return Err(fields.unknown()),
    })
}

/// Grams of a level cup; none where nothing was typed.
pub(super) fn cup(
    fields: &Fields<'_>,
    field: &str,
    range: &RangeInclusive<i64>,
) -> Result<Option<i64>, Refused> {
    fields.ranged(field, range)
}

impl<'a> Fields<'a> {
    /// What stands in a field that may not be empty.
    pub(super) fn needed(&self, field: &str) -> Result<&'a str, Refused> {
        self.given(field)
            .ok_or_else(|| refused(&self.say, key("form-needed")))
    }

    /// A whole number within `range`; none where nothing was typed.
    pub(super) fn ranged(
        &self,
        field: &str,
        range: &RangeInclusive<i64>,
    ) -> Result<Option<i64>, Refused> {
        let read = |text| typed::whole(&self.say, text, range);
        Ok(self.given(field).map(read).transpose()?)
    }

    pub(super) fn row_name(&self, rows: &str, row: usize) -> Result<String, Refused> {
        self.name(&format!("{rows}-{row}-name"))
    }

    pub(super) fn row_number(
        &self,
        rows: &str,
        row: usize,
        of: &str,
        range: &RangeInclusive<i64>,
    ) -> Result<i64, Refused> {
        let field = format!("{rows}-{row}-{of}");
        self.needed(&field)?;
        let read = self.ranged(&field, range)?;
        read.ok_or_else(|| refused(&self.say, key("form-needed")))
    }
}
