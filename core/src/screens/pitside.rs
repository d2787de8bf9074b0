//! Now: the screen of a propped phone.

use super::{Line, Link, Pitside, Place, ReadingsOf, glance::Glance, meat_line::MEATS_SHOWN};
use crate::{
    acts::{Act, Undo},
    alarms::{self, Due},
    cook::{Cook, Known},
    ids::{CookId, PitId},
    log::Job,
    moment::{Moment, SECOND},
    words::{Arg, Viewer, key},
};

/// How long the last act is offered huge to be taken back, in milliseconds: 30 s. Common practice, no source.
pub const UNDO_SHOWN_MS: i64 = 30 * SECOND;
/// So many things that come next are shown.
const NEXT_SHOWN: usize = 4;

/// The screen of a propped phone; none where the cook is not known here.
pub fn pitside(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    moment: &Moment,
) -> Option<Pitside> {
    let dues = alarms::due_in(known, cook, moment.utc_ms);
    pitside_of(known, viewer, cook, moment, &dues)
}

/// The same, of what is due.
pub(super) fn pitside_of(
    known: &Known<'_>,
    viewer: &Viewer,
    cook: CookId,
    moment: &Moment,
    dues: &[Due],
) -> Option<Pitside> {
    let glance = Glance::of(known, viewer, moment);
    let cook = known.cooks.get(&cook)?;
    let until = glance.until(dues);
    let dues = &to_do(dues, moment.utc_ms);
    let (mut meats, mut briefs) = glance.meat_lines(cook, dues);
    let counts = (1..meats.len()).filter_map(|left| glance.counted(left));
    let counts = counts.collect();
    let others = meats.split_off(meats.len().min(MEATS_SHOWN));
    briefs.truncate(meats.len());
    let pits = glance.pits_of(cook);
    let undo = glance.undo(cook);
    let shown_until = undo.iter().map(|undo| undo.until);
    let open = cook.is_open();
    Some(Pitside {
        cook: cook.id,
        title: cook.name.value.clone(),
        clock: glance.say.clock(moment.utc_ms),
        serve: glance.serve(cook),
        now: glance.headline(cook.id, dues),
        next: glance.next_lines(dues),
        meats,
        briefs,
        rest: glance.counted(others.len()),
        counts,
        others,
        pits: pits
            .iter()
            .map(|pit| glance.pit_line_to(cook, *pit))
            .collect(),
        watch: glance.watch_lines(),
        more: match open {
            true => glance.always(cook.id, &pits),
            false => vec![],
        },
        links: glance.links(cook, &pits),
        notices: glance.cook_notices(cook),
        until: shown_until.fold(until, i64::min),
        undo,
    })
}

/// What a person can do something about: that a probe would fall silent, or a meat stay unread for too long, is laid in
/// advance, and is no job until it has.
pub(super) fn to_do(dues: &[Due], now: i64) -> Vec<Due> {
    let laid = |job| {
        matches!(
            job,
            Job::Silent(_) | Job::Outside(_) | Job::ComeUp(_) | Job::KeepHot(_)
        )
    };
    let ahead = |due: &&Due| due.at > now && laid(due.job);
    dues.iter().filter(|due| !ahead(due)).cloned().collect()
}

impl Glance<'_> {
    fn counted(&self, more: usize) -> Option<String> {
        let count = i64::try_from(more).ok().filter(|count| *count > 0)?;
        Some(
            self.say
                .with("screen-more-meats", &[("count", Arg::Number(count))]),
        )
    }

    /// "On the table at 2:00 PM, in 3 h".
    pub fn serve(&self, cook: &Cook) -> String {
        if let Some(finished) = cook.finished {
            let when = self.say.clock_day(finished.at, self.now);
            return self.say.with("screen-over", &[("when", Arg::Text(&when))]);
        }
        let Some(serve) = &cook.serve.value else {
            return self.say.text("screen-no-serve");
        };
        let (time, when) = (self.say.clock_day(serve.at, self.now), self.due(serve.at));
        let args = [("time", Arg::Text(&time)), ("when", Arg::Text(&when))];
        self.say.with("screen-serve", &args)
    }

    /// What comes after the first and what is done with it.
    fn next_lines(&self, dues: &[Due]) -> Vec<Line> {
        let first = self.first(dues);
        let now = first.map_or_else(Vec::new, |first| self.together(first, dues));
        let others = dues.iter().filter(|due| !now.contains(due));
        others
            .take(NEXT_SHOWN)
            .map(|due| self.due_line(due))
            .collect()
    }

    pub fn due_line(&self, due: &Due) -> Line {
        let (verb, what) = (self.verb(due.job), self.object(due.job));
        let link = due.job.piece().map(|piece| Place::Piece { piece });
        Line {
            name: self.line_job(&verb, &what),
            state: self.due(self.time_of(due)),
            detail: self.say.clock(self.time_of(due)),
            weight: self.weight(due),
            link,
        }
    }

    /// The openings of its pits, then what is kept on screens of its own.
    fn links(&self, cook: &Cook, pits: &[PitId]) -> Vec<Link> {
        let held = |pit: &&PitId| cook.is_open() && self.holds_meat(cook.id, **pit);
        let openings = pits.iter().filter(held);
        let mut all: Vec<Link> = openings
            .map(|pit| self.opening_link(cook.id, *pit))
            .collect();
        if self.fits(cook).is_some() {
            all.insert(0, self.fits_link(cook));
        }
        let cook = cook.id;
        all.extend(self.links_to(&[
            (key("link-sheet"), Place::RunSheet { cook }),
            (key("link-write"), Place::Write { cook }),
            (key("link-pits"), Place::Pits { cook }),
            (key("link-dishes"), Place::Dishes { cook }),
            (key("link-kitchen"), Place::Kitchen { cook }),
            (key("link-watch"), Place::Watch { cook }),
            (
                key("link-readings"),
                Place::Readings {
                    of: ReadingsOf::Cook { cook },
                },
            ),
            (key("link-timeline"), Place::Timeline { cook }),
            (key("link-settings"), Place::Settings),
            (key("link-start"), Place::Start),
        ]));
        all
    }

    /// The last act of the viewer's device, while it is fresh.
    pub(super) fn undo(&self, cook: &Cook) -> Option<Undo> {
        let last = cook.last_acts.get(&self.viewer.device)?;
        let until = last.recorded.saturating_add(UNDO_SHOWN_MS);
        let fresh =
            (last.recorded..until).contains(&self.now) && !NEVER_UNDONE.contains(&&*last.kind);
        let what = self.done_last(cook, last);
        fresh.then(|| Undo {
            label: self
                .say
                .with("button-undo-what", &[("what", Arg::Text(&what))]),
            act: Act::Undo {
                targets: last.entries.clone(),
            },
            until,
        })
    }
}

/// What cannot be taken back.
pub(super) const NEVER_UNDONE: [&str; 4] =
    ["crew_joined", "erased", "series_saved", "cook_started"];
