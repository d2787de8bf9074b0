//! Wraps between the jobs of a sheet.

use super::*;

fn plan(story: &Story, ask: &Ask, now: i64) -> AcceptedPlan {
    let all = proposed(story, ask, now).expect("it can be planned");
    all.proposals[0].plan.clone()
}

fn stage(story: &mut Story, of: u128, at: i64, stage: Stage) {
    let piece = piece(of);
    story.say(1, at, Some(cook(1)), StageSet { piece, stage });
}

#[test]
fn what_is_usually_wrapped_is_wrapped_on_its_way_with_a_free_hand_and_wakes_nobody() {
    for night in [None, Some((23 * 60, 6 * 60))] {
        let plan = plan(&begun(Some(600)), &ask(8, night), EIGHT);
        for of in [1, 2] {
            let wrap = find(&plan, Does::Wrap, of).expect("it is wrapped");
            let (on, check) = (find(&plan, Does::PutOn, of), find(&plan, Does::Check, of));
            assert!(on.unwrap().at < wrap.at && wrap.until <= check.unwrap().at);
            assert_eq!(
                (wrap.wrap, wrap.hands, wrap.wakes),
                (Some(Wrap::Paper), 1, false)
            );
            let short = |job: &&PlannedJob| job.until - job.at <= 10 * MINUTE && job.hands > 0;
            let busy = plan
                .jobs
                .iter()
                .filter(short)
                .filter(|job| job.job != wrap.job);
            let crosses = |job: &PlannedJob| job.at < wrap.until && wrap.at < job.until;
            assert!(!busy.into_iter().any(crosses), "{wrap:?}");
            let asleep = night.is_some() && (SIX - 7 * HOUR..SIX).contains(&wrap.at);
            assert!(!asleep, "{wrap:?}");
        }
    }
}

#[test]
fn what_is_meant_goes_before_what_is_usual_and_a_wrapped_meat_is_not_wrapped_again() {
    let mut story = begun(Some(600));
    let wrap = Some(Wrap::Boat);
    let meant = Meant {
        wrap,
        ..Meant::default()
    };
    let meant = PieceMeant {
        piece: piece(2),
        meant,
    };
    story.say(1, EIGHT, Some(cook(1)), meant);
    let first = plan(&story, &ask(8, None), EIGHT);
    assert_eq!(
        find(&first, Does::Wrap, 2).expect("it is wrapped").wrap,
        wrap
    );
    let put_on = find(&first, Does::PutOn, 2).expect("it goes on").at;
    story.say(
        1,
        EIGHT + MINUTE,
        Some(cook(1)),
        PlanAccepted {
            plan: first.clone(),
        },
    );
    stage(&mut story, 2, put_on, Stage::OnPit { pit: pit(1) });
    let wrapped = put_on + 3 * HOUR;
    stage(&mut story, 2, wrapped, Stage::Wrapped { wrap: Wrap::Foil });
    let again = plan(&story, &ask(9, None), wrapped + MINUTE);
    // Done, it stays where the sheet before had it.
    assert_eq!(find(&again, Does::Wrap, 2), find(&first, Does::Wrap, 2));
    let told = story.told();
    let lunch = &told.known(1).cooks[&cook(1)];
    let job = find(&first, Does::Wrap, 2).expect("it is wrapped");
    assert_eq!(
        lunch.job_done(job, wrapped).map(|done| done.at),
        Some(wrapped)
    );
}
