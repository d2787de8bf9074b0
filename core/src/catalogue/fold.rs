//! How words are compared: without case and accents, and with a slip of the finger forgiven. Start at [`fold`].

/// Lower case without the accents that Spanish has, written with their letter or apart from it; what is neither letter nor
/// digit parts words.
pub(crate) fn fold(text: &str) -> Vec<String> {
    let plain: String = text
        .chars()
        .flat_map(char::to_lowercase)
        .filter(|c| !matches!(c, '\u{300}'..='\u{36f}'))
        .map(bare)
        .collect();
    let words = plain.split(|c: char| !c.is_alphanumeric());
    words
        .filter(|word| !word.is_empty())
        .map(str::to_owned)
        .collect()
}

const fn bare(letter: char) -> char {
    match letter {
        'á' | 'à' | 'ä' | 'â' => 'a',
        'é' | 'è' | 'ë' | 'ê' => 'e',
        'í' | 'ì' | 'ï' | 'î' => 'i',
        'ó' | 'ò' | 'ö' | 'ô' => 'o',
        'ú' | 'ù' | 'ü' | 'û' => 'u',
        'ñ' => 'n',
        'ç' => 'c',
        other => other,
    }
}

/// How many slips are forgiven in a word of so many letters: short words are too easily others. Our own choice, no source.
const fn slips(letters: usize) -> usize {
    match letters {
        0..=3 => 0,
        4..=6 => 1,
        _ => 2,
    }
}

/// How far `typed` is from `word`: 0 the same, 1 its beginning, more for slips; none where it is another word.
pub(super) fn distance(typed: &str, word: &str) -> Option<usize> {
    if typed == word {
        return Some(0);
    }
    if typed.chars().count() >= 2 && word.starts_with(typed) {
        return Some(1);
    }
    let (typed, word): (Vec<char>, Vec<char>) = (typed.chars().collect(), word.chars().collect());
    let allowed = slips(typed.len().min(word.len()));
    let far = edits(&typed, &word);
    (far <= allowed).then_some(1 + far)
}

/// Letters left out, added, changed, or swapped with their neighbor (optimal string alignment).
fn edits(from: &[char], to: &[char]) -> usize {
    let mut rows: Vec<Vec<usize>> = vec![(0..=to.len()).collect()];
    for (i, letter) in from.iter().enumerate() {
        let mut row = vec![i + 1];
        for (j, other) in to.iter().enumerate() {
            let changed = rows[i][j] + usize::from(letter != other);
            let mut least = changed.min(rows[i][j + 1] + 1).min(row[j] + 1);
            let is_swap = i > 0 && j > 0 && *letter == to[j - 1] && from[i - 1] == *other;
            if is_swap {
                least = least.min(rows[i - 1][j - 1] + 1);
            }
            row.push(least);
        }
        rows.push(row);
    }
    rows[from.len()][to.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn case_accents_and_marks_part_nothing_that_belongs_together() {
        assert_eq!(
            fold("  Tri-Tip, ¡COSTILLÓN! ñame "),
            ["tri", "tip", "costillon", "name"]
        );
        assert!(fold(" ,;- ").is_empty());
    }

    #[test]
    fn one_slip_in_a_short_word_and_two_in_a_long_one() {
        assert_eq!(distance("ribs", "ribs"), Some(0));
        assert_eq!(distance("ri", "ribs"), Some(1));
        assert_eq!(distance("r", "ribs"), None);
        assert_eq!(distance("bostno", "boston"), Some(2), "a swap is one slip");
        assert_eq!(distance("brisquet", "brisket"), Some(3));
        assert_eq!(
            distance("rib", "rob"),
            None,
            "three letters forgive nothing"
        );
        assert_eq!(distance("butt", "beef"), None);
    }

    #[test]
    fn slips_are_counted_the_same_from_either_side() {
        for (a, b) in [
            ("brisket", "briskt"),
            ("pollo", "polo"),
            ("lamb", "lmab"),
            ("", "ab"),
        ] {
            let letters = |text: &str| text.chars().collect::<Vec<_>>();
            assert_eq!(
                edits(&letters(a), &letters(b)),
                edits(&letters(b), &letters(a))
            );
        }
    }
}
