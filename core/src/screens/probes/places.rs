//! Where a sensor can sit: in each pit of a cook under way, and in each of its meats at each spot of the cut.

use crate::{
    acts::Act,
    checks::{Spot, cut_facts},
    cook::{Cook, Piece},
    log::Where,
    safety::Form,
    screens::{Button, Tone, buttons::button, check::recorded, glance::Glance},
    words::Arg,
};

impl Glance<'_> {
    /// A button for each place where this sensor does not sit yet. Of several cooks each place names its own.
    pub fn places(&self, source: &str, sensor: &str) -> Vec<Button> {
        let several = self.known.open_cooks().count() > 1;
        let mut all = vec![];
        for cook in self.known.open_cooks() {
            let series = (source.to_owned(), sensor.to_owned());
            let sits = cook.probes.get(&series);
            for (place, tone) in self.places_of(cook) {
                if sits.is_some_and(|probe| probe.place == place) {
                    continue;
                }
                let label = self.place_label(cook, &place, several);
                all.push(button(label, bind(cook, source, sensor, place), tone));
            }
        }
        all
    }

    fn place_label(&self, cook: &Cook, place: &Where, several: bool) -> String {
        let seat = self.seat(place);
        match several {
            true => {
                let args = [
                    ("name", Arg::Text(&cook.name.value)),
                    ("does", Arg::Text(&seat)),
                ];
                self.say.with("button-named", &args)
            }
            false => seat,
        }
    }

    fn places_of(&self, cook: &Cook) -> Vec<(Where, Tone)> {
        let pits = self.known.crew.pits.keys();
        let pits = pits.map(|pit| (Where::Pit { pit: *pit }, Tone::Main));
        let meats = cook.meats().filter(|piece| self.can_take_a_probe(piece));
        let spots = meats.flat_map(|piece| {
            let spots = spots_of(piece).into_iter();
            spots.map(|spot| {
                let (piece, spot) = (piece.id, recorded(spot));
                (Where::Piece { piece, spot }, Tone::Plain)
            })
        });
        pits.chain(spots).collect()
    }

    fn can_take_a_probe(&self, piece: &Piece) -> bool {
        let passed = piece.stage(self.now);
        piece.is_itself() && passed.is_none_or(|passed| !passed.stage.is_off())
    }
}

/// The spots of its cut, its stuffing where it has one, and any other.
pub(in crate::screens) fn spots_of(piece: &Piece) -> Vec<Spot> {
    let mut spots = cut_facts(piece.cut).spots;
    if piece.form.value == Form::Stuffed {
        spots.push(Spot::StuffingCenter);
    }
    spots.push(Spot::Elsewhere);
    spots
}

fn bind(cook: &Cook, source: &str, sensor: &str, place: Where) -> Act {
    Act::BindProbe {
        cook: cook.id,
        source: source.into(),
        sensor: sensor.into(),
        place,
        thermometer: None,
    }
}
