//! An address, and the page it names. Start at [`Page`].

use slowbend_core::{
    checks::Cut,
    ids::{CookId, PieceId, PitId},
    screens::{Place, ReadingsOf},
};

/// One page, as its address names it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Page {
    /// The first one.
    Start,
    /// The propped phone.
    Now(CookId),
    /// What happened.
    Timeline(CookId),
    /// What can be written down.
    Write(CookId),
    /// One meat.
    Meat(PieceId),
    /// Trying one meat.
    Check(PieceId),
    /// The card of a cook.
    Card(CookId),
    /// Beginning a cook once more.
    Again(CookId),
    /// Beginning from a card that was handed over.
    Cards,
    /// Pits, thermometers, habits and the viewer's choices.
    Settings,
    /// Letting other phones in.
    Phones,
    /// The screen it is shown on.
    Wall,
    /// All cuts, or those that are sought.
    Cuts,
    /// One cut.
    Cut(Cut),
    /// Readings with their chart.
    Readings(ReadingsOf),
    /// Checking thermometers.
    Thermometers,
    /// A file of readings that is being taken into a cook, by its number.
    Taking(CookId, u128),
    /// One opening of a pit.
    Opening(CookId, PitId),
    /// The fire of a pit.
    Fire(CookId, PitId),
    /// What to try at a pit.
    Trouble(CookId, PitId),
    /// What to do with food whose fire went out.
    FireOut(CookId, PitId),
    /// The temperatures that were read.
    TempLog(CookId),
    /// What sits where.
    Pits(CookId),
    /// What is not meat.
    Dishes(CookId),
    /// What is mixed, shared out and bought.
    Kitchen(CookId),
    /// The same on one sheet of paper.
    KitchenSheet(CookId),
    /// Who has the watch.
    Watch(CookId),
    /// The run sheet.
    RunSheet(CookId),
    /// The run sheet for each student of a class.
    HandOut(CookId),
    /// Planning a cook.
    Plan(CookId),
}

impl Page {
    /// The page at `path`, if there is one.
    pub fn at(path: &str) -> Option<Self> {
        let parts: Vec<&str> = path.strip_prefix('/')?.split('/').collect();
        Some(match parts[..] {
            [""] => Self::Start,
            ["settings"] => Self::Settings,
            ["phones"] => Self::Phones,
            ["wall"] => Self::Wall,
            ["cuts"] => Self::Cuts,
            ["cuts", cut] => Self::Cut(serde_json::from_value(cut.into()).ok()?),
            ["card"] => Self::Cards,
            ["thermometers"] => Self::Thermometers,
            ["cook", id] => Self::Now(id.parse().ok()?),
            ["cook", id, "timeline"] => Self::Timeline(id.parse().ok()?),
            ["cook", id, "write"] => Self::Write(id.parse().ok()?),
            ["cook", id, "card"] => Self::Card(id.parse().ok()?),
            ["cook", id, "again"] => Self::Again(id.parse().ok()?),
            ["cook", id, "readings"] => Self::Readings(ReadingsOf::Cook {
                cook: id.parse().ok()?,
            }),
            ["cook", id, "taking", number] => {
                Self::Taking(id.parse().ok()?, u128::from_str_radix(number, 16).ok()?)
            }
            ["cook", id, "pit", pit, "readings"] => Self::Readings(ReadingsOf::Pit {
                cook: id.parse().ok()?,
                pit: pit.parse().ok()?,
            }),
            ["cook", id, "pits"] => Self::Pits(id.parse().ok()?),
            ["cook", id, "dishes"] => Self::Dishes(id.parse().ok()?),
            ["cook", id, "kitchen"] => Self::Kitchen(id.parse().ok()?),
            ["cook", id, "kitchen", "sheet"] => Self::KitchenSheet(id.parse().ok()?),
            ["cook", id, "watch"] => Self::Watch(id.parse().ok()?),
            ["cook", id, "sheet"] => Self::RunSheet(id.parse().ok()?),
            ["cook", id, "plan"] => Self::Plan(id.parse().ok()?),
            ["cook", id, "hand-out"] => Self::HandOut(id.parse().ok()?),
            ["cook", id, "pit", pit, "opening"] => {
                Self::Opening(id.parse().ok()?, pit.parse().ok()?)
            }
            ["cook", id, "pit", pit, "fire"] => Self::Fire(id.parse().ok()?, pit.parse().ok()?),
            ["cook", id, "pit", pit, "trouble"] => {
                Self::Trouble(id.parse().ok()?, pit.parse().ok()?)
            }
            ["cook", id, "pit", pit, "fire-out"] => {
                Self::FireOut(id.parse().ok()?, pit.parse().ok()?)
            }
            ["cook", id, "log"] => Self::TempLog(id.parse().ok()?),
            ["meat", id] => Self::Meat(id.parse().ok()?),
            ["meat", id, "check"] => Self::Check(id.parse().ok()?),
            ["meat", id, "readings"] => Self::Readings(ReadingsOf::Piece {
                piece: id.parse().ok()?,
            }),
            _ => return None,
        })
    }

    /// Its address.
    pub fn path(self) -> String {
        match self {
            Self::Start => "/".into(),
            Self::Settings => "/settings".into(),
            Self::Phones => "/phones".into(),
            Self::Cards => "/card".into(),
            Self::Card(cook) => format!("/cook/{cook}/card"),
            Self::Again(cook) => format!("/cook/{cook}/again"),
            Self::Wall => "/wall".into(),
            Self::Cuts => "/cuts".into(),
            Self::Cut(cut) => format!("/cuts/{}", crate::forms::name_of(&cut)),
            Self::Now(cook) => format!("/cook/{cook}"),
            Self::Timeline(cook) => format!("/cook/{cook}/timeline"),
            Self::Write(cook) => format!("/cook/{cook}/write"),
            Self::Meat(piece) => format!("/meat/{piece}"),
            Self::Check(piece) => format!("/meat/{piece}/check"),
            Self::Thermometers => "/thermometers".into(),
            Self::Readings(of) => readings_path(of),
            Self::Taking(cook, number) => format!("/cook/{cook}/taking/{number:032x}"),
            Self::Opening(cook, pit) => format!("/cook/{cook}/pit/{pit}/opening"),
            Self::Fire(cook, pit) => format!("/cook/{cook}/pit/{pit}/fire"),
            Self::Trouble(cook, pit) => format!("/cook/{cook}/pit/{pit}/trouble"),
            Self::FireOut(cook, pit) => format!("/cook/{cook}/pit/{pit}/fire-out"),
            Self::TempLog(cook) => format!("/cook/{cook}/log"),
            Self::Pits(cook) => format!("/cook/{cook}/pits"),
            Self::Dishes(cook) => format!("/cook/{cook}/dishes"),
            Self::Kitchen(cook) => format!("/cook/{cook}/kitchen"),
            Self::KitchenSheet(cook) => format!("/cook/{cook}/kitchen/sheet"),
            Self::Watch(cook) => format!("/cook/{cook}/watch"),
            Self::RunSheet(cook) => format!("/cook/{cook}/sheet"),
            Self::Plan(cook) => format!("/cook/{cook}/plan"),
            Self::HandOut(cook) => format!("/cook/{cook}/hand-out"),
        }
    }

    /// The cook whose alarms the page shows anyway.
    pub const fn cook(self) -> Option<CookId> {
        match self {
            Self::Now(cook) => Some(cook),
            _ => None,
        }
    }
}

fn readings_path(of: ReadingsOf) -> String {
    match of {
        ReadingsOf::Cook { cook } => format!("/cook/{cook}/readings"),
        ReadingsOf::Piece { piece } => format!("/meat/{piece}/readings"),
        ReadingsOf::Pit { cook, pit } => format!("/cook/{cook}/pit/{pit}/readings"),
    }
}

impl From<Place> for Page {
    fn from(place: Place) -> Self {
        match place {
            Place::Start => Self::Start,
            Place::Now { cook } => Self::Now(cook),
            Place::Piece { piece } => Self::Meat(piece),
            Place::Check { piece } => Self::Check(piece),
            Place::Timeline { cook } => Self::Timeline(cook),
            Place::Write { cook } => Self::Write(cook),
            Place::Settings => Self::Settings,
            Place::Readings { of } => Self::Readings(of),
            Place::Thermometers => Self::Thermometers,
            Place::Opening { cook, pit } => Self::Opening(cook, pit),
            Place::Fire { cook, pit } => Self::Fire(cook, pit),
            Place::Trouble { cook, pit } => Self::Trouble(cook, pit),
            Place::FireOut { cook, pit } => Self::FireOut(cook, pit),
            Place::TempLog { cook } => Self::TempLog(cook),
            Place::Pits { cook } => Self::Pits(cook),
            Place::Dishes { cook } => Self::Dishes(cook),
            Place::Kitchen { cook } => Self::Kitchen(cook),
            Place::KitchenSheet { cook } => Self::KitchenSheet(cook),
            Place::Watch { cook } => Self::Watch(cook),
            Place::RunSheet { cook } => Self::RunSheet(cook),
            Place::Plan { cook } => Self::Plan(cook),
            Place::HandOut { cook } => Self::HandOut(cook),
            Place::Card { cook } => Self::Card(cook),
            Place::Again { cook } => Self::Again(cook),
            Place::Cards => Self::Cards,
            Place::Cuts => Self::Cuts,
            Place::Cut { cut } => Self::Cut(cut),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use slowbend_core::ids::PitId;

    #[test]
    fn each_page_is_found_at_its_own_address() {
        let id: uuid::Uuid = "01936f1e-0000-7000-8000-000000000001".parse().unwrap();
        let (cook, piece, pit) = (CookId(id), PieceId(id), PitId(id));
        for page in [
            Page::Start,
            Page::Settings,
            Page::Phones,
            Page::Wall,
            Page::Cuts,
            Page::Cut(Cut::PlateRibs),
            Page::Now(cook),
            Page::Timeline(cook),
            Page::Write(cook),
            Page::Card(cook),
            Page::Again(cook),
            Page::Cards,
            Page::Meat(piece),
            Page::Check(piece),
            Page::Thermometers,
            Page::FireOut(cook, pit),
            Page::TempLog(cook),
            Page::Taking(cook, 17),
            Page::Readings(ReadingsOf::Cook { cook }),
            Page::Readings(ReadingsOf::Piece { piece }),
            Page::Readings(ReadingsOf::Pit {
                cook,
                pit: PitId(id),
            }),
            Page::Opening(cook, pit),
            Page::Fire(cook, pit),
            Page::Trouble(cook, pit),
            Page::Pits(cook),
            Page::Dishes(cook),
            Page::Kitchen(cook),
            Page::KitchenSheet(cook),
            Page::Watch(cook),
            Page::RunSheet(cook),
            Page::HandOut(cook),
            Page::Plan(cook),
        ] {
            assert_eq!(Page::at(&page.path()), Some(page));
        }
        for path in [
            "",
            "cook",
            "/cook",
            "/cook/x",
            "/settings/x",
            "/cuts/unicorn",
            "/meat/1/check/2",
            "//evil.example",
        ] {
            assert_eq!(Page::at(path), None, "{path}");
        }
    }
}
