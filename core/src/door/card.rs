//! Cook cards: one of any cook, and beginning from one.

use super::{
    Slowbend,
    screens::{no_cook, seen_by},
};
use crate::{
    card::{self, CardAsk, CardRead},
    cook::{Cook, Known},
    error::{Refused, Trouble},
    ids::CookId,
    moment::Moment,
    screens::{self, BeginScreen, CardScreen},
    words::{Viewer, Words},
};

impl Slowbend {
    /// The card of a cook, under way or past.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook or no meat in it, or the disk's trouble.
    pub fn card(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        ask: &CardAsk,
        moment: &Moment,
    ) -> Result<CardScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        let known = seen_by(self, viewer);
        with_meats(&known, viewer, cook)?;
        let screen = screens::card(&known, viewer, cook, ask, moment);
        screen.ok_or_else(|| no_cook(viewer))
    }

    /// The form that begins a cook as an earlier one was: same meats, names and pits; weights are asked anew.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook or no meat in it, or the disk's trouble.
    pub fn again(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<BeginScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        let (say, known) = (Words::of(viewer), seen_by(self, viewer));
        let earlier = with_meats(&known, viewer, cook)?;
        let ask = CardAsk::default();
        let mut card = card::of_cook(&say, earlier, known.crew, &ask, moment.utc_ms);
        card.meats.iter_mut().for_each(|meat| meat.weight_g = None);
        let read = CardRead { card, told: vec![] };
        Ok(screens::begin(&known, viewer, &read, true, moment))
    }

    /// The form that begins a cook from a card that somebody handed over.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where it is no card that can be read here, or the disk's trouble.
    pub fn read_card(
        &mut self,
        viewer: &Viewer,
        text: &str,
        moment: &Moment,
    ) -> Result<BeginScreen, Trouble> {
        self.notice_clock(moment);
        self.store()?;
        let read = card::read(&Words::of(viewer), text)?;
        Ok(screens::begin(
            &seen_by(self, viewer),
            viewer,
            &read,
            false,
            moment,
        ))
    }
}

/// The cook, which has something that a card can carry.
fn with_meats<'k>(known: &Known<'k>, viewer: &Viewer, cook: CookId) -> Result<&'k Cook, Trouble> {
    let cook = known.cooks.get(&cook).ok_or_else(|| no_cook(viewer))?;
    match cook.pieces.is_empty() {
        true => Err(Refused::new(Words::of(viewer).text("card-no-meats")).into()),
        false => Ok(cook),
    }
}
