//! Levels and spots of a pit in words: what was said before, then what such a pit usually has.

use super::PlacedMeat;
use crate::{ids::PitId, log::PitKind, screens::glance::Glance, words::key};

impl Glance<'_> {
    /// The meats on a pit, by spot, then by name.
    pub(super) fn placed(&self, pit: PitId) -> Vec<PlacedMeat> {
        let mut all: Vec<PlacedMeat> = self
            .on_pit(pit)
            .into_iter()
            .map(|(_, piece)| {
                let spot = piece.pit(self.now).map_or("", |(_, spot)| spot).to_owned();
                PlacedMeat {
                    piece: piece.id,
                    name: piece.name.value.clone(),
                    state: match spot.is_empty() {
                        true => self.say.text("pits-no-spot"),
                        false => spot.clone(),
                    },
                    spot,
                }
            })
            .collect();
        all.sort_by(|a, b| (&a.spot, &a.name, a.piece).cmp(&(&b.spot, &b.name, b.piece)));
        all
    }

    /// What can be chosen for a spot, each once. The spots of a kind of pit: common practice, no source.
    pub(super) fn spots_of(&self, pit: PitId, meats: &[PlacedMeat]) -> Vec<String> {
        let kind = self.known.crew.pits.get(&pit).map(|pit| pit.kind.value);
        let usual = match kind {
            Some(PitKind::StickBurner) => vec![
                key("spot-near-fire"),
                key("spot-middle"),
                key("spot-far-from-fire"),
            ],
            Some(PitKind::Kettle) => vec![key("spot-over-coals"), key("spot-away-from-coals")],
            Some(PitKind::Drum | PitKind::Ceramic | PitKind::Pellet) => vec![
                key("spot-upper"),
                key("spot-lower"),
                key("spot-front"),
                key("spot-back"),
            ],
            _ => vec![
                key("spot-upper"),
                key("spot-middle-level"),
                key("spot-lower"),
            ],
        };
        let said = meats.iter().map(|meat| meat.spot.clone());
        let usual = usual.into_iter().map(|spot| self.say.text(spot));
        let mut all: Vec<String> = vec![];
        for spot in said.chain(usual) {
            if !spot.is_empty() && !all.contains(&spot) {
                all.push(spot);
            }
        }
        all
    }
}
