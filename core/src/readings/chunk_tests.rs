use super::*;
use proptest::prelude::*;

fn reading(at: i64, temp: i64) -> Reading {
    Reading { at, temp: Mk(temp) }
}

fn any_reading() -> impl Strategy<Value = Reading> {
    prop_oneof![
        (any::<i64>(), any::<i64>()).prop_map(|(at, temp)| reading(at, temp)),
        (0i64..60, 330_000i64..400_000)
            .prop_map(|(n, temp)| reading(1_796_000_000_000 + n * 1_000, temp)),
    ]
}

#[test]
fn the_bytes_are_frozen() {
    let bytes = encode(&[
        reading(1_000, 380_000),
        reading(2_000, 380_056),
        reading(3_000, 380_000),
    ]);
    assert_eq!(
        bytes,
        [1, 3, 0xd0, 0x0f, 0xc0, 0xb1, 0x2e, 0, 0x70, 0, 0x6f]
    );
    let name = ChunkName::of(&bytes).to_string();
    assert_eq!(name, blake3::hash(&bytes).to_hex().as_str());
}

#[test]
fn an_hour_of_one_a_second_is_under_three_bytes_each() {
    let hour: Vec<_> = (0..3600)
        .map(|n| reading(n * 1_000, 380_000 + (n * 7_919 % 11 - 5) * 56))
        .collect();
    assert!(
        encode(&hour).len() < 3 * 3600 + 16,
        "{}",
        encode(&hour).len()
    );
}

#[test]
fn an_encoded_chunk_says_what_it_holds() {
    let chunk = Encoded::of(&[reading(5, 1), reading(3, 2), reading(5, 1)]).unwrap();
    assert_eq!((chunk.from, chunk.to, chunk.count), (3, 5, 2));
    assert_eq!(chunk.name, ChunkName::of(&chunk.bytes));
    assert_eq!(Encoded::of(&[]), None);
}

#[test]
fn malformed_bytes_are_told() {
    let good = encode(&[reading(1, 2), reading(3, 4)]);
    assert_eq!(decode(&[]), Err(BadChunk::CutShort));
    assert_eq!(decode(&[9, 0]), Err(BadChunk::Version { version: 9 }));
    assert_eq!(decode(&good[..good.len() - 1]), Err(BadChunk::CutShort));
    assert_eq!(
        decode(&[&good[..], &[0]].concat()),
        Err(BadChunk::Malformed)
    );
    assert_eq!(
        decode(&[1, 2, 4, 2, 3, 2]),
        Err(BadChunk::Malformed),
        "time stands still"
    );
    assert_eq!(
        decode(&[1, 0xff, 0xff, 0xff, 0xff, 0x0f, 0, 0]),
        Err(BadChunk::CutShort),
        "a count no file can hold"
    );
}

proptest! {
    #[test]
    fn comes_back_settled(readings in prop::collection::vec(any_reading(), 0..80)) {
        prop_assert_eq!(decode(&encode(&readings)).unwrap(), settle::union([readings]));
    }

    #[test]
    fn order_does_not_change_the_name(readings in prop::collection::vec(any_reading(), 0..40)) {
        let turned: Vec<_> = readings.iter().rev().copied().collect();
        prop_assert_eq!(encode(&readings), encode(&turned));
    }

    #[test]
    fn any_bytes_are_read_or_told(bytes in prop::collection::vec(any::<u8>(), 0..200)) {
        let framed = [&[VERSION, (bytes.len() / 3) as u8][..], &bytes].concat();
        for input in [&bytes, &framed] {
            if let Ok(readings) = decode(input) {
                prop_assert_eq!(&encode(&readings), input, "one spelling only");
            }
        }
    }
}
