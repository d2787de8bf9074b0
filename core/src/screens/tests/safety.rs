//! What is shown of safety: the rule, the clocks, cautions that are read once, a fire that went out, the log.

use super::regatta::{minute, moment, stage, told_until, viewer};
use crate::{
    acts::Act,
    cadence::Cadence,
    checks::{Cut, Spot, Temperature, TestResult},
    cook::story::{Story, cook, piece, pit},
    fire::FireDid,
    forms::FieldFilled,
    log::*,
    safety::{CautionKind, Form},
    screens::{self, Button, FireOutMeat, FireOutScreen, Line, PieceScreen, Tone, Weight},
    units::Mk,
    words::Locale,
};

fn meat(story: &Story, of: u128, at: i64) -> PieceScreen {
    let told = story.told();
    let viewer = viewer(Locale::EnUs);
    screens::piece(&told.known(1), &viewer, piece(of), &moment(at)).unwrap()
}

fn line<'s>(screen: &'s PieceScreen, name: &str) -> &'s Line {
    let found = screen.safety.iter().find(|line| line.name == name);
    found.unwrap_or_else(|| panic!("{name} in {:#?}", screen.safety))
}

fn fire_out(story: &Story, of: u128, at: i64) -> FireOutScreen {
    let told = story.told();
    let viewer = viewer(Locale::EnUs);
    screens::fire_out_screen(&told.known(1), &viewer, cook(1), pit(of), &moment(at)).unwrap()
}

fn read(story: &mut Story, of: u128, at: i64, f: i64) {
    let heat = TestResult::Heat(Temperature {
        mk: Mk::from_f(f),
        spot: Spot::Center,
        thermometer: None,
        instant_read: true,
    });
    let (piece, results) = (piece(of), vec![heat]);
    story.say(1, minute(at), Some(cook(1)), Checked { piece, results });
}

fn sausages(story: &mut Story) {
    let added = PieceAdded {
        piece: piece(9),
        name: "Sausages".into(),
        cut: Cut::Sausages,
        form: Form::Ground,
        weight_g: None,
        cadence: Cadence::None,
    };
    story.say(1, minute(1), Some(cook(1)), added);
}

#[test]
fn the_rule_stands_first_and_is_never_called_safe_on_what_is_tough_there() {
    let story = told_until(205);
    let slab = meat(&story, 1, 205);
    let rule = line(&slab, "Published minimum");
    assert_eq!(slab.safety[0], *rule);
    assert!(rule.state.contains("145 °F, then 3 min"), "{rule:?}");
    assert!(rule.detail.contains("tough there"), "{rule:?}");
    assert!(rule.detail.contains("USDA FSIS"), "{rule:?}");
    for of in [1, 2, 3, 4] {
        for line in meat(&story, of, 205).safety {
            let said = format!("{} {} {}", line.name, line.state, line.detail);
            // One source bears the word in its title.
            let said = said.replace("Safe Minimum Internal Temperature Chart", "chart");
            let mut words = said.split(|c: char| !c.is_alphabetic());
            assert!(
                !words.any(|word| word.eq_ignore_ascii_case("safe")),
                "{said}"
            );
        }
    }
    assert!(slab.cautions.last().unwrap().text.contains("Local rules"));
}

#[test]
fn what_a_probe_adds_up_to_is_for_information_and_says_what_it_lacks() {
    let story = told_until(205);
    let butt = meat(&story, 3, 205);
    let told = line(&butt, "At the probe, for information");
    assert!(told.state.ends_with("% of the published time"), "{told:?}");
    for lack in ["changes nothing", "moist air", "presume", "Appendix A"] {
        assert!(told.detail.contains(lack), "{lack}: {told:?}");
    }
    let slab = meat(&story, 1, 205);
    assert!(slab.safety.iter().all(|line| line.name != told.name));
}

#[test]
fn a_turkey_that_nobody_read_counts_its_time_on_the_pit_and_asks_to_be_read() {
    let mut story = told_until(420);
    let early = meat(&story, 4, 420);
    let up = line(&early, "Coming up");
    assert_eq!(up.state, "1 h 31 min of 4 h");
    assert!(up.detail.contains("not read"), "{up:?}");
    assert!(up.detail.contains("our own caution"), "{up:?}");
    read(&mut story, 4, 425, 120);
    let asked = meat(&story, 4, 545);
    let due = asked
        .next
        .iter()
        .find(|line| line.name.starts_with("Read it: still cold?"));
    assert_eq!(due.unwrap().weight, Weight::Wake);
    let told = story.told();
    let viewer = viewer(Locale::EnUs);
    let now = screens::pitside(&told.known(1), &viewer, cook(1), &moment(545)).unwrap();
    let turkey = now
        .meats
        .iter()
        .find(|line| line.name == "Turkey breast")
        .unwrap();
    assert_eq!(turkey.weight, Weight::Wake);
    let grave = |does: &dyn Fn(&Act) -> bool| {
        let found = asked
            .buttons
            .iter()
            .find(|button| does(&button.act))
            .unwrap();
        assert!(
            found.tone == Tone::Grave && found.confirm.is_some(),
            "{found:?}"
        );
    };
    grave(&|act| matches!(act, Act::GoPast { .. }));
    let gone = Stage::ThrownAway;
    grave(&|act| matches!(act, Act::SetStage { stage, .. } if *stage == gone));
}

fn to_pit(screen: &PieceScreen, of: u128) -> &Button {
    let goes = |act: &Act| match act {
        Act::SetStage {
            stage: Stage::OnPit { pit: to },
            ..
        }
        | Act::PutOnAnyway { pit: to, .. } => *to == pit(of),
        _ => false,
    };
    screen
        .buttons
        .iter()
        .find(|button| goes(&button.act))
        .unwrap()
}

#[test]
fn a_cool_pit_is_asked_about_before_it_takes_ground_meat_and_what_was_gone_past_stays() {
    let mut story = told_until(20);
    sausages(&mut story);
    story.tails.take("box", "1", minute(21), Mk::from_f(190));
    let screen = meat(&story, 9, 21);
    let asked = to_pit(&screen, 1);
    assert_eq!(asked.tone, Tone::Grave);
    let question = asked.confirm.as_deref().unwrap();
    for said in [
        "Drum is at 190 °F",
        "225 °F or above",
        "USDA and FDA",
        "Sausages",
    ] {
        assert!(question.contains(said), "{said}: {question}");
    }
    assert_eq!(to_pit(&screen, 2).tone, Tone::Main);
    assert_eq!(to_pit(&meat(&story, 2, 21), 1).tone, Tone::Main);
    stage(&mut story, 9, 22, Stage::OnPit { pit: pit(1) });
    let (piece, caveat) = (piece(9), Caveat::CoolPit);
    story.say(1, minute(22), Some(cook(1)), WentPast { piece, caveat });
    let past = meat(&story, 9, 200);
    let told = line(&past, "Gone past a caution");
    assert_eq!(told.weight, Weight::Soon);
    assert!(told.detail.contains("Ana"), "{told:?}");
}

#[test]
fn a_caution_that_was_read_is_not_told_again_and_the_others_are() {
    let mut story = told_until(420);
    let texts = |story: &Story| {
        let all = meat(story, 4, 420).cautions;
        all.into_iter().map(|one| one.text).collect::<Vec<_>>()
    };
    let first = texts(&story);
    let notice = CautionKind::WashThermometer.notice();
    story.say(1, minute(419), None, Dismissed { notice });
    let then = texts(&story);
    assert_eq!(then.len() + 1, first.len());
    assert!(then.last().unwrap().contains("Local rules"));
    assert!(then.iter().any(|text| text.contains("three places")));
}

#[test]
fn charcoal_is_told_once_where_a_cook_on_coals_is_begun_and_put_away_for_good() {
    let mut story = told_until(20);
    let told = |story: &Story| {
        let told = story.told();
        let viewer = viewer(Locale::EnUs);
        let now = screens::pitside(&told.known(1), &viewer, cook(1), &moment(21)).unwrap();
        let mut notices = now.notices.into_iter();
        notices.find(|notice| notice.text.contains("carbon monoxide"))
    };
    let once = told(&story).unwrap();
    for said in ["CPSC", "extinguisher", "Local rules"] {
        assert!(once.text.contains(said), "{said}: {}", once.text);
    }
    let Some(Act::Dismiss { notice }) = once.dismiss.map(|button| button.act) else {
        panic!("it can be put away")
    };
    story.say(1, minute(20), None, Dismissed { notice });
    assert_eq!(told(&story), None);
}

#[test]
fn who_sleeps_beside_coals_is_asked_first_unless_somebody_else_has_the_watch() {
    let mut story = told_until(100);
    let sleeps = |story: &Story| {
        let told = story.told();
        let viewer = viewer(Locale::EnUs);
        let now = screens::pitside(&told.known(1), &viewer, cook(1), &moment(101)).unwrap();
        let mut buttons = now.more.into_iter();
        buttons
            .find(|button| matches!(button.act, Act::Sleep { .. }))
            .unwrap()
    };
    assert_eq!(sleeps(&story).confirm, None, "Ben has the watch");
    let note = String::new();
    story.say(1, minute(100), None, WatchTaken { note });
    let asked = sleeps(&story).confirm.unwrap();
    for said in ["Drum may not be left alone", "carbon monoxide", "CPSC"] {
        assert!(asked.contains(said), "{said}: {asked}");
    }
    let to = Field::AloneMinutes(Some(240));
    let of = Subject::Pit(pit(1));
    story.say(1, minute(100), None, FieldSet { of, to, saw: None });
    assert_eq!(sleeps(&story).confirm, None);
}

#[test]
fn raw_poultry_that_shares_a_pit_never_sits_above() {
    let mut story = told_until(340);
    let told = |story: &Story| {
        let told = story.told();
        let viewer = viewer(Locale::EnUs);
        let screen = screens::pits(&told.known(1), &viewer, cook(1), &moment(350)).unwrap();
        screen
            .cautions
            .iter()
            .any(|one| one.text.contains("never sits over"))
    };
    assert!(!told(&story));
    stage(&mut story, 4, 341, Stage::OnPit { pit: pit(1) });
    assert!(told(&story));
}

#[test]
fn a_fire_that_went_out_is_answered_meat_by_meat_from_the_last_sign_of_it() {
    // The drum's probe fell after 205: at 206 it read 120 °F, and nobody noticed until 290.
    let mut story = told_until(205);
    for at in 206..=290 {
        story.tails.take("box", "1", minute(at), Mk::from_f(120));
    }
    let unread = fire_out(&story, 1, 290);
    assert_eq!(unread.meats.len(), 3);
    assert!(unread.lead[0].contains("9:25 AM"), "{:?}", unread.lead);
    for meat in &unread.meats {
        if meat.name.starts_with("Slab") {
            assert!(meat.answer.starts_with("Read it now"), "{meat:?}");
        }
        assert!(
            meat.why.contains("USDA") || meat.why.contains("FSIS"),
            "{meat:?}"
        );
        assert!(!meat.answer.contains("Carry on"), "{meat:?}");
    }
    read(&mut story, 1, 291, 150);
    read(&mut story, 2, 291, 118);
    let answers = fire_out(&story, 1, 292);
    let of = |name: &str| answers.meats.iter().find(|meat| meat.name == name).unwrap();
    assert_eq!(of("Slab 1").answer, "Carry on");
    assert!(
        of("Slab 2").answer.starts_with("Get it above"),
        "{:?}",
        of("Slab 2")
    );
    assert!(
        answers
            .rule
            .iter()
            .any(|rule| rule.contains("sets no clock back"))
    );
    let late = fire_out(&story, 1, 480);
    let gone = late
        .meats
        .iter()
        .find(|meat| meat.name == "Slab 2")
        .unwrap();
    assert_eq!(gone.answer, "Throw it away", "{gone:?}");
    assert_eq!(gone.buttons.len(), 2);
}

/// Whoever finds a cold pit lights it before anything else: that must not make the hours before it unseen.
#[test]
fn a_fire_that_was_lit_again_leaves_what_it_was_out_for_counted() {
    let mut story = told_until(205);
    for at in 206..=270 {
        story.tails.take("box", "1", minute(at), Mk::from_f(120));
    }
    let pit = pit(1);
    let did = FireDid::Lit;
    story.say(1, minute(250), Some(cook(1)), FireTended { pit, did });
    (271..=330).for_each(|at| story.tails.take("box", "1", minute(at), Mk::from_f(250)));
    read(&mut story, 1, 251, 150);
    read(&mut story, 1, 272, 145);
    read(&mut story, 2, 330, 155);
    let lit = fire_out(&story, 1, 330);
    let was = "It was out at some time between 9:25 AM and 10:10 AM";
    assert!(
        lit.lead.iter().any(|line| line.starts_with(was)),
        "{:?}",
        lit.lead
    );
    let of = |name: &str| lit.meats.iter().find(|meat| meat.name == name).unwrap();
    assert_eq!(of("Slab 1").answer, "Carry on", "{:?}", of("Slab 1"));
    assert!(
        of("Slab 1").why.starts_with("46 min of 2 h"),
        "{:?}",
        of("Slab 1")
    );
    assert_eq!(of("Slab 2").answer, "Throw it away", "{:?}", of("Slab 2"));
}

/// No probe saw it, nobody tapped anything: the cook says until when it burned for certain.
#[test]
fn a_person_says_since_when_a_fire_was_out() {
    let mut story = told_until(205);
    let before = fire_out(&story, 1, 205);
    assert!(
        before.lead[0].starts_with("Last sign of a fire"),
        "{:?}",
        before.lead
    );
    let calm = |meat: &&FireOutMeat| meat.weight != Weight::Wake;
    assert_eq!(before.meats.iter().find(|meat| !calm(meat)), None);
    assert_eq!(before.slips[0].slip, "found-out");
    let options = &before.slips[0].fields[0].options;
    let three = options.iter().find(|one| one.label == "3 h ago").unwrap();
    let filled = vec![FieldFilled {
        field: "until".into(),
        text: three.value.clone(),
    }];
    let viewer = viewer(Locale::EnUs);
    let act = crate::forms::cook_slip(&viewer, cook(1), "found-out", &filled, &moment(205));
    let Ok(Act::FindFireOut {
        pit, burned_until, ..
    }) = act
    else {
        panic!("{act:?}");
    };
    assert_eq!(burned_until, minute(25));
    let found = FireFoundOut { pit, burned_until };
    story.say(1, minute(205), Some(cook(1)), found);
    let after = fire_out(&story, 1, 206);
    let slab = after
        .meats
        .iter()
        .find(|meat| meat.name == "Slab 2")
        .unwrap();
    // It went on at 8:00: all of its time on the pit is silence now.
    assert!(
        slab.answer
            .starts_with("Read it now; thrown away at 10:00 AM"),
        "{slab:?}"
    );
    assert!(slab.why.starts_with("1 h 27 min of 2 h"), "{slab:?}");
    assert_eq!(slab.weight, Weight::Wake);
}

#[test]
fn the_log_holds_what_was_read_and_what_was_done_about_it() {
    let mut story = told_until(470);
    let caveat = Caveat::PastClock;
    let past = WentPast {
        piece: piece(4),
        caveat,
    };
    story.say(2, minute(471), Some(cook(1)), past);
    let told = story.told();
    let viewer = viewer(Locale::EnUs);
    let log = screens::temp_log(&told.known(1), &viewer, cook(1), &[], 0, &moment(480)).unwrap();
    let unread = screens::temp_log(&told.known(1), &viewer, cook(1), &[], 2, &moment(480)).unwrap();
    assert_eq!(unread.about.len(), log.about.len() + 1);
    assert!(unread.about[4].contains("are left out"), "{unread:?}");
    let turkey: Vec<_> = log
        .rows
        .iter()
        .filter(|row| row.item.starts_with("Turkey"))
        .collect();
    assert_eq!(
        turkey
            .iter()
            .filter(|row| row.temperature == "167 °F")
            .count(),
        3
    );
    assert!(turkey.iter().any(|row| row.thermometer == "Pen, checked"));
    let action = turkey
        .iter()
        .find(|row| row.action.contains("past the published time"))
        .unwrap();
    assert_eq!(action.who, "Ben");
    assert!(log.rows.windows(2).all(|pair| pair[0].at <= pair[1].at));
    assert_eq!(log.csv.lines().count(), log.rows.len() + 1);
    assert!(log.csv.starts_with("\"Time\",\"Item\",\"Temperature\""));
    assert_eq!(log.file_name, "temperature-log-regatta-lunch.csv");
}
