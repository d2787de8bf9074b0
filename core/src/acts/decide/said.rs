//! What a stage is called once a meat has come to it, in a sentence with the meat's name.

use crate::{
    log::{Stage, Wrap},
    words::key,
};

/// The key of the sentence. All have the variable `name`; `act-stage-on-pit` also `pit`.
pub(super) const fn stage_key(stage: Stage) -> &'static str {
    match stage {
        Stage::Trimmed => key("act-stage-trimmed"),
        Stage::Brined => key("act-stage-brined"),
        Stage::Rubbed => key("act-stage-rubbed"),
        Stage::Resting => key("act-stage-resting"),
        Stage::OnPit { .. } => key("act-stage-on-pit"),
        Stage::Wrapped { wrap } => wrap_key(wrap),
        Stage::Unwrapped => key("act-stage-unwrapped"),
        Stage::Off => key("act-stage-off"),
        Stage::Held => key("act-stage-held"),
        Stage::CutUp => key("act-stage-cut-up"),
        Stage::Served => key("act-stage-served"),
        Stage::PutAway => key("act-stage-put-away"),
        Stage::Reheated => key("act-stage-reheated"),
        Stage::ThrownAway => key("act-stage-thrown-away"),
    }
}

const fn wrap_key(wrap: Wrap) -> &'static str {
    match wrap {
        Wrap::Paper => key("act-stage-wrapped-paper"),
        Wrap::Foil => key("act-stage-wrapped-foil"),
        Wrap::Boat => key("act-stage-wrapped-boat"),
        Wrap::Pan => key("act-stage-wrapped-pan"),
    }
}
