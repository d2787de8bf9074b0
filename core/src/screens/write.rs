//! Write down: what can be said during a cook beside the buttons.

use super::{
    Slip, SlipField, SlipOption, check::recorded, glance::Glance, probes::spots_of, slip::option,
};
use crate::moment::Moment;
use crate::{
    checks::Cut,
    cook::{Cook, Known},
    ids::CookId,
    log::Where,
    safety::Form,
    units::Mk,
    words::{Arg, Viewer, WeightUnit, key},
};
use serde::{Deserialize, Serialize};

/// What can be said during a cook.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "ffi", derive(uniffi::Record))]
pub struct WriteScreen {
    /// The cook.
    pub cook: CookId,
    /// Heading.
    pub title: String,
    /// The slips, the most used first.
    pub slips: Vec<Slip>,
    /// Until when this is true.
    pub until: i64,
}

/// The screen on which things are written down; none where the cook is not known here.
pub fn write_down(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    moment: &Moment,
) -> Option<WriteScreen> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    Some(WriteScreen {
        cook: cook.id,
        title: glance.say.text("link-write"),
        slips: glance.cook_slips(cook),
        until: glance.until(&[]),
    })
}

impl Glance<'_> {
    fn cook_slips(&self, cook: &Cook) -> Vec<Slip> {
        let mut all = self.of_heat(cook);
        all.extend(self.of_hands(cook));
        all.extend(self.of_table());
        all.extend(self.of_people());
        all.extend(self.of_probes(cook));
        all
    }

    fn of_heat(&self, cook: &Cook) -> Vec<Slip> {
        let note = vec![self.words_field("text", "slip-note-text")];
        let mut all = vec![];
        if let Some(place) = self.place_field(cook) {
            let reading = vec![
                place,
                self.number_field("temp", self.degrees_label("slip-temp")),
                self.thermometer_field(),
                self.ago_field(),
            ];
            all.push(self.slip("reading", "slip-reading", reading));
        }
        all.push(self.slip("note", "slip-note", note));
        all.push(self.hot_air_slip(cook));
        all
    }

    /// Whether the air is above 90 °F: food may then stand half as long.
    fn hot_air_slip(&self, cook: &Cook) -> Slip {
        let mut answers = [true, false].map(|yes| option(yes.to_string(), self.yes_no(yes)));
        if cook.hot_air.value {
            answers.reverse();
        }
        let air = self.say.temperature(Mk::from_f(90));
        let air = [("air", Arg::Text(&air))];
        let label = self.say.with("slip-hot-air-is", &air);
        let field = self.one_of("hot-air", label, answers.into());
        let how = self.say.with("slip-hot-air-how", &air);
        let slip = self.slip("hot-air", "slip-hot-air", vec![field]);
        Slip { how, ..slip }
    }

    /// What hands do at the pit.
    fn of_hands(&self, cook: &Cook) -> Vec<Slip> {
        let (meats, pits) = (self.meat_options(cook), self.pit_options());
        let mut all = vec![];
        if !meats.is_empty() {
            let did = meats.iter().map(|meat| self.did_field(meat));
            let fields = did.chain([self.ago_field()]).collect();
            let how = self.say.text("slip-opening-how");
            let opening = self.slip("opening", "slip-opening", fields);
            all.push(Slip { how, ..opening });
        }
        if pits.is_empty() {
            return all;
        }
        let pit = || self.one_of("pit", self.say.text("slip-pit"), self.pit_options());
        let at_pit =
            |name: &str, label| vec![pit(), self.words_field(name, label), self.ago_field()];
        all.push(self.slip("feed", "slip-feed", at_pit("what", "slip-feed-what")));
        all.push(self.slip("vent", "slip-vent", at_pit("how", "slip-vent-how")));
        if !meats.is_empty() {
            let piece = self.one_of("piece", self.say.text("slip-meat"), meats);
            let mut fields = at_pit("spot", "slip-spot-in-pit");
            fields.insert(0, piece);
            all.push(self.slip("move", "slip-move", fields));
        }
        all
    }

    /// What was done to one meat in an opening.
    fn did_field(&self, meat: &SlipOption) -> SlipField {
        let did = [
            ("", key("slip-did-nothing")),
            ("wet", key("slip-did-wet")),
            ("turn", key("slip-did-turn")),
            ("glaze", key("slip-did-glaze")),
        ];
        let options = did.map(|(value, label)| option(value, self.say.text(label)));
        self.one_of(
            &format!("did-{}", meat.value),
            meat.label.clone(),
            options.into(),
        )
    }

    /// What is on the table and when.
    fn of_table(&self) -> Vec<Slip> {
        let mut cuts = vec![option("", self.say.text("slip-cut-as-typed"))];
        cuts.extend(
            Cut::ALL
                .iter()
                .map(|cut| option(recorded(cut), self.say.text(cut.key()))),
        );
        let mut pits = vec![option("", self.say.text("frame-no-pit"))];
        pits.extend(self.pit_options());
        let meat = vec![
            self.words_field("find", "slip-find-cut"),
            self.one_of("cut", self.say.text("frame-cut"), cuts),
            self.words_field("name", "slip-meat-name"),
            self.number_field("weight", self.weight_label()),
            self.prepared_field(),
            self.one_of(
                "cadence",
                self.say.text("field-cadence"),
                self.cadence_options(),
            ),
            self.one_of("pit", self.say.text("slip-pit"), pits),
        ];
        let held = [
            ("hot", key("slip-dish-hot")),
            ("cold", key("slip-dish-cold")),
        ];
        let held = held.map(|(value, label)| option(value, self.say.text(label)));
        let dish = vec![
            self.words_field("name", "slip-dish-name"),
            self.one_of("hot", self.say.text("slip-dish-held"), held.into()),
        ];
        let serve = vec![self.time_field("serve", "slip-serve-at")];
        vec![
            self.slip("meat", "slip-add-meat", meat),
            self.slip("dish", "slip-add-dish", dish),
            self.slip("serve", "slip-serve", serve),
        ]
    }

    /// Who eats, sleeps and has the watch.
    fn of_people(&self) -> Vec<Slip> {
        let count = self.number_field("people", self.say.text("slip-people-count"));
        let until = self.words_field("until", "slip-sleep-until");
        let note = self.words_field("note", "slip-watch-note");
        let name = self.words_field("name", "slip-cook-name");
        vec![
            self.slip("people", "slip-people", vec![count]),
            self.slip("name", "slip-rename", vec![name]),
            Slip {
                how: self.sleep_caution().unwrap_or_default(),
                ..self.slip("sleep", "slip-sleep", vec![until])
            },
            self.slip("watch", "slip-watch", vec![note]),
        ]
    }

    fn of_probes(&self, cook: &Cook) -> Option<Slip> {
        let fields = vec![
            self.words_field("source", "slip-probe-source"),
            self.words_field("sensor", "slip-probe-sensor"),
            self.place_field(cook)?,
            self.thermometer_field(),
        ];
        Some(self.slip("probe", "slip-probe", fields))
    }

    /// Each place of each meat of the cook as its check names it, then the pits; none where there is neither.
    fn place_field(&self, cook: &Cook) -> Option<SlipField> {
        let seats = cook.meats().flat_map(|piece| {
            let spots = spots_of(piece).into_iter().map(recorded);
            spots.map(move |spot| (piece.id, spot))
        });
        let seats = seats.map(|(piece, spot)| {
            let value = format!("meat:{piece}:{spot}");
            option(value, self.seat(&Where::Piece { piece, spot }))
        });
        let pits = self.pit_options().into_iter();
        let places: Vec<_> = seats
            .chain(pits.map(|pit| option(format!("pit:{}", pit.value), pit.label)))
            .collect();
        (!places.is_empty()).then(|| self.one_of("place", self.say.text("slip-place"), places))
    }

    /// The thermometers, the one checked last first.
    pub fn thermometer_field(&self) -> SlipField {
        let known = self.last_checked_first().into_iter();
        let mut all: Vec<_> = known
            .map(|one| option(one.id.to_string(), one.name.value.clone()))
            .collect();
        all.push(option("", self.say.text("frame-other-thermometer")));
        self.one_of("thermometer", self.say.text("slip-read-with"), all)
    }

    pub fn meat_options(&self, cook: &Cook) -> Vec<SlipOption> {
        let meats = cook.meats().filter(|piece| piece.is_itself());
        meats
            .map(|piece| option(piece.id.to_string(), piece.name.value.clone()))
            .collect()
    }

    fn pit_options(&self) -> Vec<SlipOption> {
        let pits = self.known.crew.pits.values();
        pits.map(|pit| option(pit.id.to_string(), pit.name.value.clone()))
            .collect()
    }

    pub fn weight_label(&self) -> String {
        self.say.text(match self.viewer.weight {
            WeightUnit::Pound => key("start-weight-pounds"),
            WeightUnit::Kilogram => key("start-weight-kilograms"),
        })
    }

    /// What was done to a meat before the pit, in the words of who did it.
    pub fn prepared_field(&self) -> SlipField {
        let forms = [
            (Form::Unknown, key("slip-form-unknown")),
            (Form::Intact, key("slip-form-intact")),
            (Form::Injected, key("slip-form-injected")),
            (Form::Tenderised, key("slip-form-tenderised")),
            (Form::Ground, key("slip-form-ground")),
            (Form::Rolled, key("slip-form-rolled")),
            (Form::Stuffed, key("slip-form-stuffed")),
        ];
        let options = forms.map(|(form, label)| option(recorded(form), self.say.text(label)));
        self.one_of("prepared", self.say.text("slip-form"), options.into())
    }

    /// How often it may be wetted, first as the cut usually is.
    pub fn cadence_options(&self) -> Vec<SlipOption> {
        [
            ("", key("slip-cadence-usual")),
            ("none", key("slip-cadence-none")),
            ("spritz", key("slip-cadence-spritz")),
            ("mop", key("slip-cadence-mop")),
        ]
        .map(|(value, label)| option(value, self.say.text(label)))
        .into()
    }
}
