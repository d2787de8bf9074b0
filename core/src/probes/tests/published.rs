//! The values in `core/tests/published`.

use super::super::*;

/// The rows of a table, without its notes and its header, in cells; the last column may hold commas.
fn rows(table: &str, columns: usize) -> Vec<Vec<&str>> {
    let rows = table.lines().filter(|line| !line.starts_with('#')).skip(1);
    rows.map(|row| row.splitn(columns, ',').collect()).collect()
}

/// The name by which JSON knows it.
fn name(value: impl Serialize) -> String {
    match serde_json::to_value(value).unwrap() {
        serde_json::Value::String(name) => name,
        other => panic!("{other} has no name"),
    }
}

#[test]
fn numbers_and_special_values() {
    let table = include_str!("../../../tests/published/ieee11073_float_sfloat.csv");
    let rows = rows(table, 4);
    assert_eq!(rows.len(), 22);
    for row in rows {
        let bits = u32::from_str_radix(row[1].trim_start_matches("0x"), 16).unwrap();
        let number = match row[0] {
            "FLOAT" => ieee11073::float(bits),
            _ => ieee11073::sfloat(bits as u16),
        };
        match number {
            Ok(number) => assert_eq!(written(number), plain(row[2]), "{row:?}"),
            Err(special) => assert_eq!(special_name(special), row[2], "{row:?}"),
        }
    }
}

fn special_name(special: ieee11073::Special) -> &'static str {
    match special {
        ieee11073::Special::NotANumber => "NaN",
        ieee11073::Special::NotAtThisResolution => "NRes",
        ieee11073::Special::Above => "+INFINITY",
        ieee11073::Special::Below => "-INFINITY",
        ieee11073::Special::Reserved => "reserved",
    }
}

/// A number in millionths.
fn written(number: ieee11073::Decimal) -> i128 {
    let millionths = i128::from(number.mantissa) * 1_000_000;
    let power = 10_i128.pow(number.exponent.unsigned_abs().into());
    match number.exponent {
        0.. => millionths * power,
        _ => millionths / power,
    }
}

/// What a table writes with a decimal point, in millionths.
fn plain(text: &str) -> i128 {
    let (whole, fraction) = text.split_once('.').unwrap_or((text, ""));
    format!("{whole}{fraction:0<6}").parse().unwrap()
}

#[test]
fn words() {
    let table = include_str!("../../../tests/published/probe_words.csv");
    let rows = rows(table, 8);
    assert_eq!(rows.len(), 23);
    for row in rows {
        let sent = WordInHex {
            characteristic: row[0].into(),
            hex: row[1].into(),
        };
        let word = probe_word(&sent).unwrap_or_else(|not| panic!("{row:?}: {not}"));
        let said = [
            word.temp.map(|temp| temp.0.to_string()),
            word.why_not.map(name),
            word.claimed_at.map(|at| at.to_string()),
            word.place.map(name),
            word.every_s.map(|every| every.to_string()),
        ];
        assert_eq!(said.map(Option::unwrap_or_default), row[2..7], "{row:?}");
    }
}
