//! Everything that is not taken, with the first words of what is said instead, in both languages.

mod clock;
mod meats;
mod missing;
mod numbers;
mod places;
mod takings_back;
mod texts;
mod thermometers;
mod times;

use super::super::testing::*;
use crate::{
    acts::{Act, NewMeat},
    cadence::Cadence,
    checks::{BoneShowing, Cut, Spot, Temperature, TestResult},
    ids::{CookId, DeviceId, DishId, LogId, PieceId, PitId, ThermometerId},
    log::{Band, Bath, EntryKey, Field, Job, PitKind, Serve, Stage, Subject, Where, Wrap},
    moment::{HOUR, MINUTE},
    units::Mk,
};

/// An act, and how its refusal begins in English and in Spanish.
type Row = (Act, &'static str, &'static str);

fn refuse_all(night: &mut Night, rows: Vec<Row>) {
    for (act, english, spanish) in rows {
        for (locale, begins) in [
            (crate::words::Locale::EnUs, english),
            (crate::words::Locale::EsUs, spanish),
        ] {
            night.viewer.locale = locale;
            let said = night.refuses(&act);
            assert!(
                said.starts_with(begins),
                "{act:?}\n said: {said}\n want: {begins}"
            );
            assert!(
                !said.contains("⟨error") && said.matches('.').count() >= 1,
                "{said}"
            );
        }
    }
}

fn set(of: Subject, to: Field) -> Act {
    Act::SetField { of, to, saw: None }
}

fn open(pit: Option<PitId>, wetted: &[PieceId], turned: &[PieceId], glazed: &[PieceId]) -> Act {
    Act::Open {
        pit,
        wetted: wetted.to_vec(),
        turned: turned.to_vec(),
        glazed: glazed.to_vec(),
        at: None,
    }
}

fn heat(mk: Mk, spot: Spot, thermometer: Option<ThermometerId>) -> TestResult {
    TestResult::Heat(Temperature {
        mk,
        spot,
        thermometer,
        instant_read: true,
    })
}
