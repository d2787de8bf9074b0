//! Looking things up, or saying that they are not here.

use super::Context;
use crate::{
    cook::{Cook, Dish, Piece, Pit, Thermometer},
    error::Refused,
    ids::{CookId, DishId, PieceId, PitId, ThermometerId},
    log::{Subject, Where},
    words::{Arg, Words},
};
use uuid::Uuid;

impl<'a> Context<'a> {
    /// The viewer's words.
    pub(super) fn say(&self) -> Words<'a> {
        Words::of(self.viewer)
    }

    /// When it is by this device's clock.
    pub(super) fn now(&self) -> i64 {
        self.moment.utc_ms
    }

    /// A new id.
    pub(super) fn new_id(&mut self) -> Uuid {
        self.names.next(self.moment.utc_ms)
    }

    /// A cook that is loaded here.
    pub(super) fn cook(&self, id: CookId) -> Result<&'a Cook, Refused> {
        let cook = self.known.cooks.get(&id);
        cook.ok_or_else(|| self.say().refuse("error-cook-unknown", &[]).into())
    }

    /// A meat with its cook, whatever became of it.
    pub(super) fn any_meat(&self, id: PieceId) -> Result<(&'a Cook, &'a Piece), Refused> {
        let found = self.known.piece(id);
        found.ok_or_else(|| self.say().refuse("error-meat-unknown", &[]).into())
    }

    /// A meat that is still a meat of its own, with its cook.
    pub(super) fn meat(&self, id: PieceId) -> Result<(&'a Cook, &'a Piece), Refused> {
        let (cook, piece) = self.any_meat(id)?;
        if piece.is_itself() {
            return Ok((cook, piece));
        }
        let say = self.say();
        let heirs: Vec<&str> = piece
            .became
            .iter()
            .filter_map(|id| cook.pieces.get(id))
            .map(|heir| heir.name.value.as_str())
            .collect();
        let args = [
            ("name", Arg::Text(&piece.name.value)),
            ("heirs", Arg::Text(&say.list(&heirs))),
        ];
        Err(say.refuse("error-meat-became", &args).into())
    }

    /// A meat of that cook, still a meat of its own.
    pub(super) fn meat_of(&self, cook: CookId, id: PieceId) -> Result<&'a Piece, Refused> {
        let (its, piece) = self.meat(id)?;
        if its.id == cook {
            return Ok(piece);
        }
        let args = [("name", Arg::Text(&piece.name.value))];
        Err(self.say().refuse("error-meat-elsewhere", &args).into())
    }

    /// A pit.
    pub(super) fn pit(&self, id: PitId) -> Result<&'a Pit, Refused> {
        let pit = self.known.crew.pits.get(&id);
        pit.ok_or_else(|| self.say().refuse("error-pit-unknown", &[]).into())
    }

    /// What a pit is called.
    pub(super) fn pit_name(&self, id: PitId) -> Result<&'a str, Refused> {
        Ok(&self.pit(id)?.name.value)
    }

    /// A thermometer.
    pub(super) fn thermometer(&self, id: ThermometerId) -> Result<&'a Thermometer, Refused> {
        let found = self.known.crew.thermometers.get(&id);
        found.ok_or_else(|| self.say().refuse("error-thermometer-unknown", &[]).into())
    }

    /// The same where it may be left out.
    pub(super) fn maybe_thermometer(
        &self,
        id: Option<ThermometerId>,
    ) -> Result<Option<ThermometerId>, Refused> {
        id.map(|id| self.thermometer(id).map(|known| known.id))
            .transpose()
    }

    /// A dish of that cook.
    pub(super) fn dish(&self, cook: CookId, id: DishId) -> Result<&'a Dish, Refused> {
        let dish = self.cook(cook)?.dishes.get(&id);
        dish.ok_or_else(|| self.say().refuse("error-dish-unknown", &[]).into())
    }

    /// The cook of a dish that may be in any.
    pub(super) fn dish_anywhere(&self, id: DishId) -> Result<(&'a Cook, &'a Dish), Refused> {
        let found = self
            .known
            .cooks
            .values()
            .find_map(|cook| Some((cook, cook.dishes.get(&id)?)));
        found.ok_or_else(|| self.say().refuse("error-dish-unknown", &[]).into())
    }

    /// A place of that cook where a temperature is taken, its spot cleaned.
    pub(super) fn place(&self, cook: CookId, place: &Where) -> Result<Where, Refused> {
        match place {
            Where::Pit { pit } => Ok(Where::Pit {
                pit: self.pit(*pit)?.id,
            }),
            Where::Piece { piece, spot } => Ok(Where::Piece {
                piece: self.meat_of(cook, *piece)?.id,
                spot: self.line(spot)?,
            }),
        }
    }

    /// Whether `subject` is something that a note of that cook can be about.
    pub(super) fn about(&self, cook: CookId, subject: Subject) -> Result<Subject, Refused> {
        match subject {
            Subject::Crew => {}
            Subject::Cook(id) => {
                self.cook(id)?;
            }
            Subject::Pit(id) => {
                self.pit(id)?;
            }
            Subject::Thermometer(id) => {
                self.thermometer(id)?;
            }
            Subject::Dish(id) => {
                self.dish(cook, id)?;
            }
            Subject::Piece(id) => {
                let (its, piece) = self.any_meat(id)?;
                if its.id != cook {
                    self.meat_of(cook, piece.id)?;
                }
            }
        }
        Ok(subject)
    }
}
