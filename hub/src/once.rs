//! A name for each form that is shown, so that a form sent twice adds nothing.

/// A fresh token: 128 random bits, so that no two forms ever share one.
pub fn token() -> String {
    let bytes = crate::data::entropy();
    bytes[..16]
        .iter()
        .map(|byte| format!("{byte:02x}"))
        .collect()
}

/// Whether a token is one of ours by its looks; anything else is not kept.
pub fn is_token(text: &str) -> bool {
    text.len() == 32 && text.bytes().all(|byte| byte.is_ascii_hexdigit())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tokens_differ_and_are_known_again() {
        let (one, two) = (token(), token());
        assert_ne!(one, two);
        assert!(is_token(&one) && !is_token("") && !is_token("'; drop"));
    }
}
