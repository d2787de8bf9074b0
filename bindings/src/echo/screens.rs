//! What comes out: screens and alarms.

use super::{echo, write};
use crate::Slowbend;
use slowbend_core::{
    alarms::AlarmList,
    card::CardAsk,
    error::{Refused, Trouble},
    ids::{CookId, PieceId, PitId},
    moment::Moment,
    probes::Hearing,
    screens::{
        BeginScreen, CardScreen, CheckScreen, CutScreen, CutsScreen, DishesScreen, FireOutScreen,
        FireScreen, HandOutScreen, KitchenScreen, KitchenSheet, OpeningScreen, PieceScreen,
        PitsScreen, Pitside, PlanScreen, PlanTyped, ProbesScreen, ReadingsOf, ReadingsScreen,
        RunSheetScreen, Settings, StartScreen, TempLogScreen, ThermometersScreen, Timeline,
        TroubleScreen, WatchScreen, WriteScreen,
    },
    words::Viewer,
};

echo!(StartScreen, start_from_json, start_json, start_canon);
echo!(Pitside, pitside_from_json, pitside_json, pitside_canon);
echo!(PieceScreen, piece_from_json, piece_json, piece_canon);
echo!(CheckScreen, check_from_json, check_json, check_canon);
echo!(CutsScreen, cuts_from_json, cuts_json, cuts_canon);
echo!(CutScreen, cut_from_json, cut_json, cut_canon);
echo!(Timeline, timeline_from_json, timeline_json, timeline_canon);
echo!(Hearing, hearing_from_json, hearing_json, hearing_canon);
echo!(ProbesScreen, probes_from_json, probes_json, probes_canon);
echo!(Settings, settings_from_json, settings_json, settings_canon);
echo!(CardScreen, card_from_json, card_json, card_canon);
echo!(BeginScreen, again_from_json, again_json, again_canon);
echo!(
    ReadingsScreen,
    readings_of_from_json,
    readings_of_json,
    readings_of_canon
);
echo!(
    ThermometersScreen,
    thermometers_from_json,
    thermometers_json,
    thermometers_canon
);
echo!(
    OpeningScreen,
    opening_from_json,
    opening_json,
    opening_canon
);
echo!(PitsScreen, pits_from_json, pits_json, pits_canon);
echo!(DishesScreen, dishes_from_json, dishes_json, dishes_canon);
echo!(PlanScreen, plan_from_json, plan_json, plan_canon);
echo!(
    KitchenScreen,
    kitchen_from_json,
    kitchen_json,
    kitchen_canon
);
echo!(
    KitchenSheet,
    kitchen_sheet_from_json,
    kitchen_sheet_json,
    kitchen_sheet_canon
);
echo!(FireScreen, fire_from_json, fire_json, fire_canon);
echo!(
    RunSheetScreen,
    run_sheet_from_json,
    run_sheet_json,
    run_sheet_canon
);
echo!(
    HandOutScreen,
    hand_out_from_json,
    hand_out_json,
    hand_out_canon
);
echo!(WatchScreen, watch_from_json, watch_json, watch_canon);
echo!(
    TroubleScreen,
    trouble_from_json,
    trouble_json,
    trouble_canon
);
echo!(
    FireOutScreen,
    fire_out_from_json,
    fire_out_json,
    fire_out_canon
);
echo!(
    TempLogScreen,
    temp_log_from_json,
    temp_log_json,
    temp_log_canon
);
echo!(
    WriteScreen,
    write_down_from_json,
    write_down_json,
    write_down_canon
);
echo!(AlarmList, alarms_from_json, alarms_json, alarms_canon);

/// Which screen.
#[derive(Clone, Debug, uniffi::Enum)]
pub enum Screen {
    /// The first one.
    Start,
    /// The propped phone's.
    Pitside {
        /// Of which cook.
        cook: CookId,
    },
    /// One meat.
    Piece {
        /// Which one.
        piece: PieceId,
    },
    /// Trying one meat.
    Check {
        /// Which one.
        piece: PieceId,
    },
    /// The cuts.
    Cuts {
        /// What is sought.
        sought: String,
    },
    /// One cut.
    Cut {
        /// Its name in the log.
        name: String,
    },
    /// What happened.
    Timeline {
        /// In which cook.
        cook: CookId,
    },
    /// The card of one, nothing asked for beside the plan.
    Card {
        /// Of which cook.
        cook: CookId,
    },
    /// Beginning one once more.
    Again {
        /// Which cook.
        cook: CookId,
    },
    /// Pits, thermometers and habits.
    Settings,
    /// Readings with their chart.
    ReadingsOf {
        /// Of which cook.
        cook: CookId,
    },
    /// Checking thermometers.
    Thermometers,
    /// One opening.
    Opening {
        /// In which cook.
        cook: CookId,
        /// Of which pit.
        pit: PitId,
    },
    /// What sits where.
    Pits {
        /// In which cook.
        cook: CookId,
    },
    /// What is not meat.
    Dishes {
        /// Of which cook.
        cook: CookId,
    },
    /// What is mixed, shared out and bought.
    Kitchen {
        /// In which cook.
        cook: CookId,
    },
    /// The same on one sheet of paper.
    KitchenSheet {
        /// Of which cook.
        cook: CookId,
    },
    /// Who has the watch.
    Watch {
        /// In which cook.
        cook: CookId,
    },
    /// The fire of a pit.
    Fire {
        /// In which cook.
        cook: CookId,
        /// Of which pit.
        pit: PitId,
    },
    /// The run sheet.
    RunSheet {
        /// Of which cook.
        cook: CookId,
    },
    /// Planning a cook, asked for with nothing said.
    Plan {
        /// Of which cook.
        cook: CookId,
    },
    /// The run sheet for each student of a class.
    HandOut {
        /// Of which cook.
        cook: CookId,
        /// The class.
        list: String,
    },
    /// What to try at a pit.
    Trouble {
        /// In which cook.
        cook: CookId,
        /// Of which pit.
        pit: PitId,
    },
    /// What to do with the food of a pit whose fire went out.
    FireOut {
        /// In which cook.
        cook: CookId,
        /// Of which pit.
        pit: PitId,
    },
    /// The temperature log.
    TempLog {
        /// Of which cook.
        cook: CookId,
    },
    /// What can be written down.
    WriteDown {
        /// In which cook.
        cook: CookId,
    },
    /// Probes, as a radio that keeps none shows them.
    Probes,
    /// What must ring, at most 60.
    Alarms,
}

/// The JSON of a screen as Rust writes it, no record having crossed the border.
#[uniffi::export]
pub fn screen_text(
    of: &Slowbend,
    viewer: &Viewer,
    screen: Screen,
    moment: &Moment,
) -> Result<String, Trouble> {
    let mut door = of.door();
    Ok(match screen {
        Screen::Start => write(&door.start(viewer, None, moment)?),
        Screen::Pitside { cook } => write(&door.pitside(viewer, cook, moment)?),
        Screen::Piece { piece } => write(&door.piece(viewer, piece, moment)?),
        Screen::Check { piece } => write(&door.check(viewer, piece, moment)?),
        Screen::Cuts { sought } => write(&door.cuts(viewer, &sought, moment)),
        Screen::Cut { name } => {
            let cut = serde_json::from_value(name.into());
            let cut = cut.map_err(|error| Refused::new(error.to_string()))?;
            write(&door.cut(viewer, cut, moment))
        }
        Screen::Timeline { cook } => write(&door.timeline(viewer, cook, None, moment)?),
        Screen::Card { cook } => write(&door.card(viewer, cook, &CardAsk::default(), moment)?),
        Screen::Again { cook } => write(&door.again(viewer, cook, moment)?),
        Screen::Settings => write(&door.settings(viewer, moment)?),
        Screen::ReadingsOf { cook } => {
            let of = ReadingsOf::Cook { cook };
            write(&door.readings_of(viewer, of, None, None, moment)?)
        }
        Screen::Thermometers => write(&door.thermometers(viewer, moment)?),
        Screen::Opening { cook, pit } => write(&door.opening(viewer, cook, pit, moment)?),
        Screen::Pits { cook } => write(&door.pits(viewer, cook, moment)?),
        Screen::Dishes { cook } => write(&door.dishes(viewer, cook, moment)?),
        Screen::Kitchen { cook } => write(&door.kitchen(viewer, cook, moment)?),
        Screen::KitchenSheet { cook } => write(&door.kitchen_sheet(viewer, cook, moment)?),
        Screen::Watch { cook } => write(&door.watch(viewer, cook, moment)?),
        Screen::Fire { cook, pit } => write(&door.fire(viewer, cook, pit, moment)?),
        Screen::RunSheet { cook } => write(&door.run_sheet(viewer, cook, moment)?),
        Screen::Plan { cook } => {
            let asked = PlanTyped {
                go: true,
                ..PlanTyped::default()
            };
            write(&door.plan(viewer, cook, &asked, moment)?)
        }
        Screen::HandOut { cook, list } => write(&door.hand_out(viewer, cook, &list, moment)?),
        Screen::Trouble { cook, pit } => write(&door.trouble(viewer, cook, pit, moment)?),
        Screen::FireOut { cook, pit } => write(&door.fire_out(viewer, cook, pit, moment)?),
        Screen::TempLog { cook } => write(&door.temp_log(viewer, cook, moment)?),
        Screen::WriteDown { cook } => write(&door.write_down(viewer, cook, moment)?),
        Screen::Probes => write(&door.probes(viewer, &Hearing::default(), moment)?),
        Screen::Alarms => write(&door.alarms(viewer, moment, 60)?),
    })
}
