//! Lists in a sentence.

use super::super::{Arg, Words};

impl Words<'_> {
    /// "A", "A and B", "A, B and C"; in Spanish "A, B y C", and "e" before the sound of i ("carne e ijares").
    pub fn list<S: AsRef<str>>(&self, items: &[S]) -> String {
        let Some((last, before)) = items.split_last() else {
            return String::new();
        };
        let last = last.as_ref();
        let joined = before
            .iter()
            .map(AsRef::as_ref)
            .fold(String::new(), |list, item| self.appended(list, item));
        let args = [("list", Arg::Text(&joined)), ("item", Arg::Text(last))];
        match before {
            [] => last.to_owned(),
            _ if sounds_as_i(last) => self.with("list-last-alike", &args),
            _ => self.with("list-last", &args),
        }
    }

    /// "A; B; C": things that hold commas themselves, so that each is seen to be one.
    pub fn list_apart<S: AsRef<str>>(&self, items: &[S]) -> String {
        let apart = |list: String, item: &S| match list.as_str() {
            "" => item.as_ref().to_owned(),
            list => {
                let args = [
                    ("list", Arg::Text(list)),
                    ("item", Arg::Text(item.as_ref())),
                ];
                self.with("list-apart", &args)
            }
        };
        items.iter().fold(String::new(), apart)
    }

    fn appended(&self, list: String, item: &str) -> String {
        if list.is_empty() {
            return item.to_owned();
        }
        self.with(
            "list-more",
            &[("list", Arg::Text(&list)), ("item", Arg::Text(item))],
        )
    }
}

/// Whether a Spanish word begins with the vowel i, where "y" becomes "e": i- and hi-, but not the ie and ia of "hielo"
/// and "hiato" (Spanish orthography, from memory).
fn sounds_as_i(word: &str) -> bool {
    let word = word.to_lowercase();
    let vowel = word.strip_prefix('h').unwrap_or(&word);
    let mut letters = vowel.chars();
    matches!(letters.next(), Some('i' | 'í'))
        && !matches!(letters.next(), Some('e' | 'é' | 'a' | 'á' | 'o'))
}

#[cfg(test)]
mod tests {
    use super::super::super::{Locale, test_viewer};
    use super::*;

    #[test]
    fn lists_join_as_each_language_does() {
        let (en, es) = (test_viewer(Locale::EnUs), test_viewer(Locale::EsUs));
        let (en, es) = (Words::of(&en), Words::of(&es));
        assert_eq!(en.list::<&str>(&[]), "");
        assert_eq!(en.list(&["ribs"]), "ribs");
        assert_eq!(en.list(&["ribs", "butt"]), "ribs and butt");
        assert_eq!(
            en.list_apart(&["the flat, its thickest", "the point"]),
            "the flat, its thickest; the point"
        );
        assert_eq!(
            en.list(&["ribs", "butt", "turkey"]),
            "ribs, butt and turkey"
        );
        assert_eq!(
            es.list(&["costillas", "paleta", "pavo"]),
            "costillas, paleta y pavo"
        );
        assert_eq!(es.list(&["Ana", "Inés"]), "Ana e Inés");
        assert_eq!(es.list(&["agua", "hielo"]), "agua y hielo");
        assert_eq!(en.list(&["oak", "ice"]), "oak and ice");
    }
}
