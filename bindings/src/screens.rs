//! One call for each screen.

use crate::Slowbend;
use slowbend_core::{
    card::CardAsk,
    checks::Cut,
    error::Trouble,
    ids::{CookId, PieceId, PitId},
    moment::Moment,
    probes::Hearing,
    screens::{
        BeginScreen, CardScreen, CheckScreen, CutScreen, CutsScreen, DishesScreen, FireOutScreen,
        FireScreen, HandOutScreen, KitchenScreen, KitchenSheet, NightScreen, OpeningScreen,
        PieceScreen, PitsScreen, Pitside, PlanScreen, PlanTyped, ProbesScreen, ReadingsOf,
        ReadingsScreen, RunSheetScreen, Settings, StartScreen, TempLogScreen, ThermometersScreen,
        Timeline, TroubleScreen, WatchScreen, WriteScreen,
    },
    words::Viewer,
};

#[uniffi::export]
impl Slowbend {
    /// The first screen; `past_before` is the cursor of a page of past cooks.
    pub fn start(
        &self,
        viewer: &Viewer,
        past_before: Option<i64>,
        moment: &Moment,
    ) -> Result<StartScreen, Trouble> {
        self.door().start(viewer, past_before, moment)
    }

    /// The screen of the propped phone.
    pub fn pitside(
        &self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<Pitside, Trouble> {
        self.door().pitside(viewer, cook, moment)
    }

    /// The screen of one meat.
    pub fn piece(
        &self,
        viewer: &Viewer,
        piece: PieceId,
        moment: &Moment,
    ) -> Result<PieceScreen, Trouble> {
        self.door().piece(viewer, piece, moment)
    }

    /// The screen for trying one meat.
    pub fn check(
        &self,
        viewer: &Viewer,
        piece: PieceId,
        moment: &Moment,
    ) -> Result<CheckScreen, Trouble> {
        self.door().check(viewer, piece, moment)
    }

    /// All cuts, or those that `sought` can mean.
    pub fn cuts(&self, viewer: &Viewer, sought: &str, moment: &Moment) -> CutsScreen {
        self.door().cuts(viewer, sought, moment)
    }

    /// What is known of one cut.
    pub fn cut(&self, viewer: &Viewer, cut: Cut, moment: &Moment) -> CutScreen {
        self.door().cut(viewer, cut, moment)
    }

    /// The run sheet of a cook.
    pub fn run_sheet(
        &self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<RunSheetScreen, Trouble> {
        self.door().run_sheet(viewer, cook, moment)
    }

    /// Planning a cook: what is typed for it, and the plans that come of it.
    pub fn plan(
        &self,
        viewer: &Viewer,
        cook: CookId,
        typed: &PlanTyped,
        moment: &Moment,
    ) -> Result<PlanScreen, Trouble> {
        self.door().plan(viewer, cook, typed, moment)
    }

    /// A sheet for each student that `list` names, a line each: "Ana, 12:30 PM".
    pub fn hand_out(
        &self,
        viewer: &Viewer,
        cook: CookId,
        list: &str,
        moment: &Moment,
    ) -> Result<HandOutScreen, Trouble> {
        self.door().hand_out(viewer, cook, list, moment)
    }

    /// What happened in a cook; `before` is the cursor of a page.
    pub fn timeline(
        &self,
        viewer: &Viewer,
        cook: CookId,
        before: Option<i64>,
        moment: &Moment,
    ) -> Result<Timeline, Trouble> {
        self.door().timeline(viewer, cook, before, moment)
    }

    /// Readings with their chart, all or those of the last `hours` (1, 3, 6 or 12); `before` is the cursor of a page of
    /// the table.
    pub fn readings_of(
        &self,
        viewer: &Viewer,
        of: ReadingsOf,
        hours: Option<u32>,
        before: Option<i64>,
        moment: &Moment,
    ) -> Result<ReadingsScreen, Trouble> {
        self.door().readings_of(viewer, of, hours, before, moment)
    }

    /// Checking thermometers.
    pub fn thermometers(
        &self,
        viewer: &Viewer,
        moment: &Moment,
    ) -> Result<ThermometersScreen, Trouble> {
        self.door().thermometers(viewer, moment)
    }

    /// What can be written down during a cook.
    pub fn write_down(
        &self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<WriteScreen, Trouble> {
        self.door().write_down(viewer, cook, moment)
    }

    /// Before you sleep: what the core knows of the night ahead.
    pub fn night(&self, viewer: &Viewer, moment: &Moment) -> Result<NightScreen, Trouble> {
        self.door().night(viewer, moment)
    }

    /// Probes, from what the shell knows of its radio.
    pub fn probes(
        &self,
        viewer: &Viewer,
        hearing: &Hearing,
        moment: &Moment,
    ) -> Result<ProbesScreen, Trouble> {
        self.door().probes(viewer, hearing, moment)
    }

    /// Pits, thermometers and habits.
    pub fn settings(&self, viewer: &Viewer, moment: &Moment) -> Result<Settings, Trouble> {
        self.door().settings(viewer, moment)
    }

    /// The card of a cook, under way or past; without `ask` it carries the plan alone.
    pub fn card(
        &self,
        viewer: &Viewer,
        cook: CookId,
        ask: Option<CardAsk>,
        moment: &Moment,
    ) -> Result<CardScreen, Trouble> {
        self.door()
            .card(viewer, cook, &ask.unwrap_or_default(), moment)
    }

    /// The form that begins a cook as an earlier one was.
    pub fn again(
        &self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<BeginScreen, Trouble> {
        self.door().again(viewer, cook, moment)
    }

    /// The form that begins a cook from the text of a card.
    pub fn read_card(
        &self,
        viewer: &Viewer,
        text: &str,
        moment: &Moment,
    ) -> Result<BeginScreen, Trouble> {
        self.door().read_card(viewer, text, moment)
    }

    /// One opening of a pit: every meat on it.
    pub fn opening(
        &self,
        viewer: &Viewer,
        cook: CookId,
        pit: PitId,
        moment: &Moment,
    ) -> Result<OpeningScreen, Trouble> {
        self.door().opening(viewer, cook, pit, moment)
    }

    /// What sits where on each pit.
    pub fn pits(
        &self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<PitsScreen, Trouble> {
        self.door().pits(viewer, cook, moment)
    }

    /// What is not meat.
    pub fn dishes(
        &self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<DishesScreen, Trouble> {
        self.door().dishes(viewer, cook, moment)
    }

    /// What is mixed, shared out and bought.
    pub fn kitchen(
        &self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<KitchenScreen, Trouble> {
        self.door().kitchen(viewer, cook, moment)
    }

    /// The same on one sheet of paper.
    pub fn kitchen_sheet(
        &self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<KitchenSheet, Trouble> {
        self.door().kitchen_sheet(viewer, cook, moment)
    }

    /// Who has the watch, and the line with which it is handed over.
    pub fn watch(
        &self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<WatchScreen, Trouble> {
        self.door().watch(viewer, cook, moment)
    }

    /// The fire of a pit.
    pub fn fire(
        &self,
        viewer: &Viewer,
        cook: CookId,
        pit: PitId,
        moment: &Moment,
    ) -> Result<FireScreen, Trouble> {
        self.door().fire(viewer, cook, pit, moment)
    }

    /// What to do with the food of a pit whose fire went out: see [`Slowbend::fire_out`](slowbend_core::door::Slowbend::fire_out).
    pub fn fire_out(
        &self,
        viewer: &Viewer,
        cook: CookId,
        pit: PitId,
        moment: &Moment,
    ) -> Result<FireOutScreen, Trouble> {
        self.door().fire_out(viewer, cook, pit, moment)
    }

    /// The temperature log of a cook: see [`Slowbend::temp_log`](slowbend_core::door::Slowbend::temp_log).
    pub fn temp_log(
        &self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<TempLogScreen, Trouble> {
        self.door().temp_log(viewer, cook, moment)
    }

    /// What to try when the fire of a pit is not as it should be.
    pub fn trouble(
        &self,
        viewer: &Viewer,
        cook: CookId,
        pit: PitId,
        moment: &Moment,
    ) -> Result<TroubleScreen, Trouble> {
        self.door().trouble(viewer, cook, pit, moment)
    }
}
