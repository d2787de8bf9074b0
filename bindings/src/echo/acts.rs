//! What goes in: acts, viewers, moments, readings; and what an act answers.

use super::echo;
use slowbend_core::{
    acts::{Act, Outcome},
    door::{SensorReading, WordTaken},
    error::Trouble,
    moment::Moment,
    probes::HeardWord,
    words::Viewer,
};

echo!(Act, act_from_json, act_json, act_canon);
echo!(Outcome, outcome_from_json, outcome_json, outcome_canon);
echo!(
    SensorReading,
    reading_from_json,
    reading_json,
    reading_canon
);
echo!(Moment, moment_from_json, moment_json, moment_canon);
echo!(Viewer, viewer_from_json, viewer_json, viewer_canon);
echo!(HeardWord, word_from_json, word_json, word_canon);
echo!(WordTaken, taken_from_json, taken_json, taken_canon);
