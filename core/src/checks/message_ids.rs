//! Every message id that checks and safety can ask the words for. Start at [`message_ids`].

use super::{
    BarkSet, Bend, BoneShowing, Cut, DoneState, Joint, Level, ProbeFeel, Reason, Refusal,
    SafeState, Spot, Test, WrapCall,
    cuts::{DoneBy, Species, WrapKind},
    meaning::Meaning,
};
use crate::safety::{CautionKind, Doing, Form, Source};

/// All Fluent message ids, sorted, each once. A language is complete when it has a text for each.
pub fn message_ids() -> Vec<&'static str> {
    let mut ids = Reason::KEYS.to_vec();
    macro_rules! all {
        ($($kind:ident)*) => { $(ids.extend($kind::ALL.iter().map(|one| one.key()));)* };
    }
    all!(BarkSet Bend BoneShowing Cut DoneState Joint Level ProbeFeel Refusal SafeState Spot Test WrapCall);
    all!(DoneBy Species WrapKind Meaning CautionKind Doing Form Source);
    let hows = |cut: &Cut| {
        let cut = *cut;
        Test::ALL.iter().map(move |test| test.how_key(cut))
    };
    ids.extend(Cut::ALL.iter().flat_map(hows));
    ids.sort_unstable();
    ids.dedup();
    ids
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_shoulder_is_not_felt_between_ribs() {
        let how = |cut| Test::ProbeFeel.how_key(cut);
        assert_eq!(how(Cut::PorkButt), "how-probe-feel-blade");
        assert_eq!(how(Cut::Brisket), "how-probe-feel-no-ribs");
        assert_eq!(how(Cut::SpareRibs), "how-probe-feel");
    }

    #[test]
    fn each_id_stands_for_one_text_and_is_a_fluent_identifier() {
        let ids = message_ids();
        assert!(
            ids.windows(2).all(|pair| pair[0] < pair[1]),
            "an id comes twice"
        );
        let fluent = |id: &&str| {
            id.starts_with(|c: char| c.is_ascii_lowercase())
                && id
                    .chars()
                    .all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-')
        };
        assert!(ids.iter().all(fluent));
    }
}
