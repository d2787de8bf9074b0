use super::*;
use proptest::prelude::*;

type Read3 = Result<Vec<(u64, bool, Vec<String>)>, FileFault>;

fn rows_of(reader: impl Read, delimiter: Delimiter) -> Read3 {
    let mut rows = Rows::open(reader, delimiter)?;
    let mut all = Vec::new();
    while let Some(row) = rows.next_row()? {
        let cells = (0..row.len())
            .map(|n| String::from_utf8_lossy(row.cell(n as u32).unwrap()).into_owned());
        all.push((row.line, row.open_quote, cells.collect()));
    }
    Ok(all)
}

fn lines(text: &str) -> Vec<(u64, String)> {
    let rows = rows_of(text.as_bytes(), Delimiter::Comma).unwrap();
    rows.into_iter()
        .map(|(line, _, cells)| (line, cells.join("|")))
        .collect()
}

#[test]
fn every_row_knows_the_line_it_begins_on() {
    let expected = [
        (1, "a|b".to_string()),
        (2, "1|2".into()),
        (4, "3|4".into()),
        (5, "5|6".into()),
    ];
    for end in ["\n", "\r\n", "\r"] {
        assert_eq!(
            lines(&["a,b", "1,2", "", "3,4", "5,6"].join(end)),
            expected,
            "{end:?}"
        );
    }
}

#[test]
fn quotes_hold_commas_quotes_and_line_ends() {
    let text = "\u{feff}a,\"b \"\"x\"\", c\"\r\n\"two\r\nlines\",1\r\n3,4\r\n";
    let expected = [
        (1, "a|b \"x\", c".to_string()),
        (2, "two\r\nlines|1".into()),
        (4, "3|4".into()),
    ];
    assert_eq!(lines(text), expected);
}

#[test]
fn a_quote_that_never_closes_is_told() {
    let swallowed = "a,b\n1,\"2\n3,4\n5,6\n";
    assert_eq!(
        rows_of(swallowed.as_bytes(), Delimiter::Comma),
        Err(FileFault::NeverEnds { line: 2 })
    );
    let by_accident = format!("a,b\n1,\"2\n{}1,\"2\n", "3,4\n".repeat(60));
    assert_eq!(
        rows_of(by_accident.as_bytes(), Delimiter::Comma),
        Err(FileFault::NeverEnds { line: 2 })
    );
    let huge = format!("a,b\n1,\"2\n{}", "3,4\n".repeat(40_000));
    assert_eq!(
        rows_of(huge.as_bytes(), Delimiter::Comma),
        Err(FileFault::NeverEnds { line: 2 })
    );
    let cut_off = rows_of(&b"a,b\n1,2\n3,\"4"[..], Delimiter::Comma).unwrap();
    assert_eq!(cut_off[2], (3, true, vec!["3".into(), "4".into()]));
    assert!(cut_off[..2].iter().all(|row| !row.1));
}

#[test]
fn what_is_no_text_is_told() {
    assert_eq!(rows_of(&b""[..], Delimiter::Comma), Err(FileFault::Empty));
    for bytes in [&b"PK\x03\x04rest"[..], b"\xff\xfea\0,\0", b"GIF\0\0"] {
        assert_eq!(rows_of(bytes, Delimiter::Comma), Err(FileFault::NotText));
    }
}

/// Gives its bytes in pieces of the given sizes, and is interrupted now and then.
pub struct Pieces<'a> {
    pub rest: &'a [u8],
    pub sizes: std::iter::Cycle<std::vec::IntoIter<usize>>,
}

impl Read for Pieces<'_> {
    fn read(&mut self, into: &mut [u8]) -> std::io::Result<usize> {
        let size = self.sizes.next().unwrap_or(1);
        if size == 0 {
            return Err(ErrorKind::Interrupted.into());
        }
        let len = size.min(into.len()).min(self.rest.len());
        let (now, rest) = self.rest.split_at(len);
        into[..len].copy_from_slice(now);
        self.rest = rest;
        Ok(len)
    }
}

proptest! {
    #[test]
    fn any_bytes_are_rows_or_told(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        let _ = rows_of(&bytes[..], Delimiter::Semicolon);
    }

    #[test]
    fn how_the_bytes_are_cut_does_not_show(text in "([a-z\",\r\n]{0,6}){0,60}", mut sizes in prop::collection::vec(0usize..9, 1..8)) {
        sizes.push(1);
        let cut = Pieces { rest: text.as_bytes(), sizes: sizes.into_iter().cycle() };
        prop_assert_eq!(rows_of(cut, Delimiter::Comma), rows_of(text.as_bytes(), Delimiter::Comma));
    }
}
