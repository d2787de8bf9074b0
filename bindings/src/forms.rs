//! What was typed, read into acts; and the words around the screens. None of these touches the disk.

use crate::Slowbend;
use slowbend_core::{
    acts::Act,
    catalogue,
    checks::Cut,
    error::Trouble,
    forms::{
        self, BandTyped, BathTyped, BeginTyped, CheckTyped, FieldTyped, MovesTyped, OpeningTyped,
        SlipFilled, StartTyped,
    },
    moment::Moment,
    screens::{self, Frame},
    words::Viewer,
};

#[uniffi::export]
impl Slowbend {
    /// The headings and buttons that stand around every screen.
    pub fn frame(&self, viewer: &Viewer) -> Frame {
        screens::frame(viewer)
    }

    /// The cuts that can be meant by what was typed, the nearest first; all of them where nothing was.
    pub fn find_cuts(&self, sought: &str) -> Vec<Cut> {
        catalogue::find(sought)
    }

    /// The act that begins the cook that was typed.
    pub fn read_start(
        &self,
        viewer: &Viewer,
        typed: &StartTyped,
        moment: &Moment,
    ) -> Result<Act, Trouble> {
        Ok(forms::start(viewer, typed, moment)?)
    }

    /// The act that begins the cook that was typed over a card.
    pub fn read_begin(
        &self,
        viewer: &Viewer,
        typed: &BeginTyped,
        moment: &Moment,
    ) -> Result<Act, Trouble> {
        Ok(forms::begin(viewer, typed, moment)?)
    }

    /// The act of the check that was typed.
    pub fn read_check(&self, viewer: &Viewer, typed: &CheckTyped) -> Result<Act, Trouble> {
        Ok(forms::check(viewer, typed)?)
    }

    /// The act of the opening that was confirmed.
    pub fn read_opening(&self, viewer: &Viewer, typed: &OpeningTyped) -> Result<Act, Trouble> {
        Ok(forms::opening(viewer, typed)?)
    }

    /// The act that says where meats sit.
    pub fn read_moves(&self, typed: &MovesTyped) -> Act {
        forms::moves(typed)
    }

    /// The act that sets the field that was typed.
    pub fn read_field(&self, viewer: &Viewer, typed: &FieldTyped) -> Result<Act, Trouble> {
        Ok(forms::field(viewer, typed)?)
    }

    /// The act that sets the band that was typed.
    pub fn read_band(&self, viewer: &Viewer, typed: &BandTyped) -> Result<Act, Trouble> {
        Ok(forms::band(viewer, typed)?)
    }

    /// The act that records what a thermometer showed.
    pub fn read_bath(&self, viewer: &Viewer, typed: &BathTyped) -> Result<Act, Trouble> {
        Ok(forms::bath(viewer, typed)?)
    }

    /// The act of a slip that was filled in.
    pub fn read_slip(
        &self,
        viewer: &Viewer,
        filled: &SlipFilled,
        moment: &Moment,
    ) -> Result<Act, Trouble> {
        Ok(forms::slip(viewer, filled, moment)?)
    }

    /// The same act, done so many minutes ago, where its time is open.
    pub fn done_ago(&self, act: &Act, minutes: i64, moment: &Moment) -> Act {
        forms::done_ago(act, minutes, moment)
    }
}
