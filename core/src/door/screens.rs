//! One call a screen.

use super::Slowbend;
use crate::{
    checks::Cut,
    cook::Known,
    error::{Refused, Trouble},
    ids::{CookId, PieceId, PitId},
    moment::Moment,
    probes::Hearing,
    screens::{
        self, CheckScreen, CutScreen, CutsScreen, DishesScreen, FireOutScreen, FireScreen,
        HandOutScreen, KitchenScreen, KitchenSheet, NightScreen, OpeningScreen, PieceScreen,
        PitsScreen, Pitside, PlanScreen, PlanTyped, ProbesScreen, RunSheetScreen, Settings,
        StartInput, StartScreen, ThermometersScreen, Timeline, TroubleScreen, WatchScreen,
        WriteScreen,
    },
    store::Group,
    words::{Viewer, Words},
};

/// So many lines are on a page of past cooks, and of what happened.
const PAGE: usize = 50;

/// What is known, as the viewer's device knows it: sleep and the watch are looked at from there, so that one viewer is
/// shown the same wherever the screen is made.
pub(super) fn seen_by<'d>(door: &'d Slowbend, viewer: &Viewer) -> Known<'d> {
    Known {
        device: viewer.device,
        ..door.known()
    }
}

impl Slowbend {
    /// The first screen; `past_before` is the cursor of a page of past cooks.
    ///
    /// # Errors
    /// The disk's trouble.
    pub fn start(
        &mut self,
        viewer: &Viewer,
        past_before: Option<i64>,
        moment: &Moment,
    ) -> Result<StartScreen, Trouble> {
        self.notice_clock(moment);
        let store = self.store()?;
        let past = store.past_lines(past_before.unwrap_or(i64::MAX), PAGE as i64)?;
        let last = past.last().map(|line| line.started);
        let past_next = match last {
            Some(last) => (!store.past_lines(last, 1)?.is_empty()).then_some(last),
            None => None,
        };
        Ok(screens::start(
            &seen_by(self, viewer),
            viewer,
            &StartInput { past, past_next },
            moment,
        ))
    }

    /// Now: the screen of a propped device.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook, or the disk's trouble.
    pub fn pitside(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<Pitside, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        screens::pitside(&seen_by(self, viewer), viewer, cook, moment)
            .ok_or_else(|| no_cook(viewer))
    }

    /// One meat.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such meat, or the disk's trouble.
    pub fn piece(
        &mut self,
        viewer: &Viewer,
        piece: PieceId,
        moment: &Moment,
    ) -> Result<PieceScreen, Trouble> {
        self.notice_clock(moment);
        self.want_piece(piece)?;
        screens::piece(&seen_by(self, viewer), viewer, piece, moment).ok_or_else(|| no_meat(viewer))
    }

    /// Trying one meat.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such meat, or the disk's trouble.
    pub fn check(
        &mut self,
        viewer: &Viewer,
        piece: PieceId,
        moment: &Moment,
    ) -> Result<CheckScreen, Trouble> {
        self.notice_clock(moment);
        self.want_piece(piece)?;
        screens::check(&seen_by(self, viewer), viewer, piece, moment).ok_or_else(|| no_meat(viewer))
    }

    /// All cuts, or those that `sought` can mean.
    pub fn cuts(&self, viewer: &Viewer, sought: &str, moment: &Moment) -> CutsScreen {
        screens::cuts(&seen_by(self, viewer), viewer, sought, moment)
    }

    /// What is known of one cut.
    pub fn cut(&self, viewer: &Viewer, cut: Cut, moment: &Moment) -> CutScreen {
        screens::cut(&seen_by(self, viewer), viewer, cut, moment)
    }

    /// The run sheet of a cook.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook, or the disk's trouble.
    pub fn run_sheet(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<RunSheetScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        let screen = screens::run_sheet(&seen_by(self, viewer), viewer, cook, moment);
        screen.ok_or_else(|| no_cook(viewer))
    }

    /// Planning a cook: what is typed for it, and the plans that come of it.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook, or the disk's trouble.
    pub fn plan(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        typed: &PlanTyped,
        moment: &Moment,
    ) -> Result<PlanScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        let screen = screens::plan(&seen_by(self, viewer), viewer, cook, typed, moment);
        screen.ok_or_else(|| no_cook(viewer))
    }

    /// A sheet for each student that `list` names, a line each: "Ana, 12:30 PM".
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook, or the disk's trouble.
    pub fn hand_out(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        list: &str,
        moment: &Moment,
    ) -> Result<HandOutScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        let screen = screens::hand_out(&seen_by(self, viewer), viewer, cook, list, moment);
        screen.ok_or_else(|| no_cook(viewer))
    }

    /// What happened in a cook; `before` is the cursor of a page.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook, or the disk's trouble.
    pub fn timeline(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        before: Option<i64>,
        moment: &Moment,
    ) -> Result<Timeline, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        let (entries, _) = self.store()?.entries_of(Group::Cook(cook), 0)?;
        screens::timeline(
            &seen_by(self, viewer),
            viewer,
            cook,
            &entries,
            before,
            PAGE,
            moment,
        )
        .ok_or_else(|| no_cook(viewer))
    }

    /// What can be written down during a cook.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook, or the disk's trouble.
    pub fn write_down(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<WriteScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        screens::write_down(&seen_by(self, viewer), viewer, cook, moment)
            .ok_or_else(|| no_cook(viewer))
    }

    /// One opening of a pit.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook or pit, or the disk's trouble.
    pub fn opening(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        pit: PitId,
        moment: &Moment,
    ) -> Result<OpeningScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        screens::opening(&seen_by(self, viewer), viewer, cook, pit, moment)
            .ok_or_else(|| no_pit(viewer))
    }

    /// What sits where on each pit.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook, or the disk's trouble.
    pub fn pits(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<PitsScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        screens::pits(&seen_by(self, viewer), viewer, cook, moment).ok_or_else(|| no_cook(viewer))
    }

    /// What is not meat.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook, or the disk's trouble.
    pub fn dishes(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<DishesScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        screens::dishes(&seen_by(self, viewer), viewer, cook, moment).ok_or_else(|| no_cook(viewer))
    }

    /// What is mixed, shared out and bought; the same as last time is offered from earlier cooks.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook, or the disk's trouble.
    pub fn kitchen(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<KitchenScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        let last = self.last_kitchens(cook)?;
        screens::kitchen(&seen_by(self, viewer), viewer, cook, &last, moment)
            .ok_or_else(|| no_cook(viewer))
    }

    /// The same on one sheet of paper.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook, or the disk's trouble.
    pub fn kitchen_sheet(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<KitchenSheet, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        screens::kitchen_sheet(&seen_by(self, viewer), viewer, cook, moment)
            .ok_or_else(|| no_cook(viewer))
    }

    /// Who has the watch.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook, or the disk's trouble.
    pub fn watch(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        moment: &Moment,
    ) -> Result<WatchScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        screens::watch(&seen_by(self, viewer), viewer, cook, moment).ok_or_else(|| no_cook(viewer))
    }

    /// What to try when the fire of a pit is not as it should be.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook or pit, or the disk's trouble.
    pub fn trouble(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        pit: PitId,
        moment: &Moment,
    ) -> Result<TroubleScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        screens::trouble(&seen_by(self, viewer), viewer, cook, pit, moment)
            .ok_or_else(|| no_pit(viewer))
    }

    /// The fire of a pit. What past cooks taught of it is looked up too.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook or pit, or the disk's trouble.
    pub fn fire(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        pit: PitId,
        moment: &Moment,
    ) -> Result<FireScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        let began = self.known().cooks.get(&cook).map(|cook| cook.started_at);
        let began = began.unwrap_or(i64::MIN);
        let past = self
            .store()?
            .past_lines(began, screens::FIRES_PAST as i64)?;
        for line in past {
            self.want_cook(line.cook)?;
        }
        screens::fire(&seen_by(self, viewer), viewer, cook, pit, moment)
            .ok_or_else(|| no_pit(viewer))
    }

    /// What to do with the food of a pit whose fire went out.
    ///
    /// # Errors
    /// [`Trouble::Refused`] where there is no such cook or pit, or the disk's trouble.
    pub fn fire_out(
        &mut self,
        viewer: &Viewer,
        cook: CookId,
        pit: PitId,
        moment: &Moment,
    ) -> Result<FireOutScreen, Trouble> {
        self.notice_clock(moment);
        self.want_cook(cook)?;
        screens::fire_out_screen(&seen_by(self, viewer), viewer, cook, pit, moment)
            .ok_or_else(|| no_pit(viewer))
    }

    /// Before you sleep.
    ///
    /// # Errors
    /// The disk's trouble.
    pub fn night(&mut self, viewer: &Viewer, moment: &Moment) -> Result<NightScreen, Trouble> {
        self.notice_clock(moment);
        self.store()?;
        Ok(screens::night(&seen_by(self, viewer), viewer, moment))
    }

    /// Checking thermometers.
    ///
    /// # Errors
    /// The disk's trouble.
    pub fn thermometers(
        &mut self,
        viewer: &Viewer,
        moment: &Moment,
    ) -> Result<ThermometersScreen, Trouble> {
        self.notice_clock(moment);
        self.store()?;
        Ok(screens::thermometers(
            &seen_by(self, viewer),
            viewer,
            moment,
        ))
    }

    /// Probes, from what the shell knows of its radio.
    ///
    /// # Errors
    /// The disk's trouble.
    pub fn probes(
        &mut self,
        viewer: &Viewer,
        hearing: &Hearing,
        moment: &Moment,
    ) -> Result<ProbesScreen, Trouble> {
        self.notice_clock(moment);
        self.store()?;
        Ok(screens::probes(
            &seen_by(self, viewer),
            viewer,
            hearing,
            moment,
        ))
    }

    /// Pits, thermometers and habits.
    ///
    /// # Errors
    /// The disk's trouble.
    pub fn settings(&mut self, viewer: &Viewer, moment: &Moment) -> Result<Settings, Trouble> {
        self.notice_clock(moment);
        self.store()?;
        Ok(screens::settings(&seen_by(self, viewer), viewer, moment))
    }
}

pub(super) fn no_cook(viewer: &Viewer) -> Trouble {
    Refused::new(Words::of(viewer).text("door-no-cook")).into()
}

fn no_pit(viewer: &Viewer) -> Trouble {
    Refused::new(Words::of(viewer).text("error-pit-unknown")).into()
}

fn no_meat(viewer: &Viewer) -> Trouble {
    Refused::new(Words::of(viewer).text("door-no-meat")).into()
}
