//! Whole numbers in as few bytes as they need: seven bits a byte, low bits first, the top bit says "more follows".
//! Signed ones zigzag first (0, −1, 1, −2…), so that small steps either way are one byte. Each number has exactly one
//! spelling; any other is malformed.

/// Writes `value` at the end of `out`.
#[inline]
pub fn put(out: &mut Vec<u8>, mut value: u64) {
    while value >= 0x80 {
        out.push(value as u8 | 0x80);
        value >>= 7;
    }
    out.push(value as u8);
}

/// Reads the number at the front of `bytes` and moves past it; none when cut short, too long or not the one spelling.
#[inline]
pub fn take(bytes: &mut &[u8]) -> Option<u64> {
    let mut value = 0u64;
    for shift in (0..64).step_by(7) {
        let (&byte, rest) = bytes.split_first()?;
        *bytes = rest;
        let bits = u64::from(byte & 0x7f);
        if (bits << shift) >> shift != bits {
            return None;
        }
        value |= bits << shift;
        if byte < 0x80 {
            return (byte != 0 || shift == 0).then_some(value);
        }
    }
    None
}

/// Signed to unsigned: small stays small.
#[inline]
pub const fn zigzag(value: i64) -> u64 {
    ((value << 1) ^ (value >> 63)) as u64
}

/// Back from [`zigzag`].
#[inline]
pub const fn unzigzag(value: u64) -> i64 {
    (value >> 1) as i64 ^ -((value & 1) as i64)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn only_the_shortest_spelling_is_read() {
        assert_eq!(take(&mut &[0x80, 0x00][..]), None, "zero in two bytes");
        assert_eq!(take(&mut &[0x80][..]), None, "cut short");
        assert_eq!(take(&mut &[0xff; 11][..]), None, "never ends");
        let over = [0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0x02];
        assert_eq!(take(&mut &over[..]), None, "more than 64 bits");
    }

    #[test]
    fn small_steps_are_one_byte() {
        for step in -64..64 {
            let mut out = Vec::new();
            put(&mut out, zigzag(step));
            assert_eq!(out.len(), 1, "{step}");
        }
    }

    proptest! {
        #[test]
        fn comes_back(value in any::<i64>()) {
            let mut out = Vec::new();
            put(&mut out, zigzag(value));
            let mut rest = &out[..];
            prop_assert_eq!(take(&mut rest).map(unzigzag), Some(value));
            prop_assert!(rest.is_empty());
        }
    }
}
