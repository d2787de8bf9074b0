//! Food where bacteria grow: what rings of recorded facts and published limits, and what ends it.

use super::*;
use crate::{
    checks::{Spot, Temperature, TestResult},
    safety::clocks::Rules,
};

const BIRD: u128 = 7;

fn with_form(form: Form, cut: Cut) -> Night {
    let mut night = Night::begun();
    night.say(
        0,
        PieceAdded {
            piece: piece(BIRD),
            name: "Bird".into(),
            cut,
            form,
            weight_g: Some(1_500),
            cadence: Cadence::None,
        },
    );
    stage(&mut night, 0, Stage::OnPit { pit: pit(1) });
    night
}

fn stage(night: &mut Night, at: i64, stage: Stage) {
    let piece = piece(BIRD);
    night.say(at, StageSet { piece, stage });
}

fn read(night: &mut Night, at: i64, f: i64) {
    let piece = piece(BIRD);
    let heat = TestResult::Heat(Temperature {
        mk: Mk::from_f(f),
        spot: Spot::Center,
        thermometer: None,
        instant_read: true,
    });
    let results = vec![heat];
    night.say(at, Checked { piece, results });
}

fn come_up(night: &Night, at: i64) -> Option<i64> {
    let due = night.job(at, Job::ComeUp(piece(BIRD)))?;
    assert_eq!(due.urgency, Urgency::Wake);
    Some((due.at - SIX) / MINUTE)
}

fn keep_hot(night: &Night, at: i64) -> Option<(i64, Urgency)> {
    let due = night.job(at, Job::KeepHot(piece(BIRD)))?;
    Some(((due.at - SIX) / MINUTE, due.urgency))
}

#[test]
fn what_is_not_whole_muscle_is_read_half_an_hour_before_four_hours_and_whole_muscle_never_rings() {
    for (form, cut, rings) in [
        (Form::Intact, Cut::PorkButt, false),
        (Form::Injected, Cut::PorkButt, true),
        (Form::Tenderised, Cut::Brisket, true),
        (Form::Rolled, Cut::PorkButt, true),
        (Form::Stuffed, Cut::PorkLoin, true),
        (Form::Unknown, Cut::PorkButt, true),
        (Form::Intact, Cut::Sausages, true),
        (Form::Intact, Cut::ChickenHalf, true),
    ] {
        let night = with_form(form, cut);
        assert_eq!(come_up(&night, 5), rings.then_some(210), "{form:?} {cut:?}");
    }
}

#[test]
fn a_reading_that_is_hot_ends_it_and_one_that_is_not_rings_again_at_the_limit() {
    let mut night = with_form(Form::Injected, Cut::PorkButt);
    read(&mut night, 120, 110);
    assert_eq!(come_up(&night, 121), Some(210));
    read(&mut night, 212, 131);
    assert_eq!(come_up(&night, 213), Some(242));
    read(&mut night, 241, 139);
    assert_eq!(come_up(&night, 242), Some(271));
    read(&mut night, 255, 141);
    assert_eq!(come_up(&night, 256), None);
}

#[test]
fn who_goes_past_it_says_so_and_nothing_rings_of_it_again() {
    let mut night = with_form(Form::Unknown, Cut::PorkButt);
    let (piece, caveat) = (piece(BIRD), Caveat::PastClock);
    night.say(215, WentPast { piece, caveat });
    assert_eq!(come_up(&night, 216), None);
    read(&mut night, 300, 120);
    assert_eq!(come_up(&night, 301), None);
    let told = night.story.told();
    let known = told.known(1);
    let (_, bird) = known.piece(piece).unwrap();
    assert_eq!(bird.went_past.len(), 1);
}

#[test]
fn saying_what_was_done_to_it_ends_it_too() {
    let mut night = with_form(Form::Unknown, Cut::PorkButt);
    let to = Field::Form(Form::Intact);
    let of = Subject::Piece(piece(BIRD));
    night.say(100, FieldSet { of, to, saw: None });
    assert_eq!(come_up(&night, 230), None);
}

#[test]
fn what_came_off_is_read_a_quarter_of_an_hour_before_two_hours_and_each_hot_reading_begins_anew() {
    let mut night = with_form(Form::Intact, Cut::PorkButt);
    read(&mut night, 398, 203);
    stage(&mut night, 400, Stage::Off);
    stage(&mut night, 402, Stage::Held);
    assert_eq!(keep_hot(&night, 403), Some((505, Urgency::Call)));
    read(&mut night, 500, 158);
    assert_eq!(keep_hot(&night, 501), Some((605, Urgency::Call)));
    stage(&mut night, 520, Stage::Served);
    assert_eq!(keep_hot(&night, 521), None);
}

#[test]
fn held_under_140_wakes_at_once_until_somebody_answers() {
    let mut night = with_form(Form::Intact, Cut::PorkButt);
    read(&mut night, 398, 203);
    stage(&mut night, 400, Stage::Held);
    read(&mut night, 440, 133);
    assert_eq!(keep_hot(&night, 441), Some((440, Urgency::Wake)));
    let job = Job::KeepHot(piece(BIRD));
    night.say(442, Answered { job });
    assert_eq!(keep_hot(&night, 443), None);
    // A reading before it was served that was under the limit shortens what is left on the table.
    read(&mut night, 448, 131);
    stage(&mut night, 450, Stage::Served);
    let due = night.job(451, Job::PutAway(piece(BIRD))).unwrap();
    assert!((due.at - SIX) / MINUTE < 450 + 105, "{due:?}");
}

#[test]
fn cooking_for_the_public_and_hot_air_move_the_limits() {
    let served = |night: &mut Night| {
        stage(night, 400, Stage::Served);
        let due = night.job(401, Job::PutAway(piece(BIRD))).unwrap();
        (due.at - SIX) / MINUTE - 400
    };
    let set = |night: &mut Night, of: Subject, to: Field| {
        let set = FieldSet { of, to, saw: None };
        match of {
            Subject::Crew => night.crew(1, set),
            _ => night.say(1, set),
        };
    };
    let mut home = with_form(Form::Intact, Cut::PorkButt);
    assert_eq!(served(&mut home), 105);
    let mut hot = with_form(Form::Intact, Cut::PorkButt);
    set(&mut hot, Subject::Cook(cook(1)), Field::HotAir(true));
    assert_eq!(served(&mut hot), 45);
    let mut public = with_form(Form::Intact, Cut::PorkButt);
    set(&mut public, Subject::Crew, Field::ForPublic(true));
    assert_eq!(served(&mut public), 225);
    let told = public.story.told();
    let known = told.known(1);
    let (of, bird) = known.piece(piece(BIRD)).unwrap();
    let kept = crate::cook::safety_facts::kept(&known, of, bird);
    assert_eq!(kept.rules, Rules::FoodCode);
    assert_eq!(kept.danger(), (Mk::from_f(41), Mk::from_f(135)));
}
