//! What an act records: a pure function of what is known, or a refusal that says what to do instead.
//!
//! Start at [`decide`]. Each file beside this one turns one family of acts into drafts: `setup` and `fields` what the
//! crew owns, `people` who is there, `cooks`, `planned`, `plan`, `courses`, `pieces`, `parts`, `moves`, `checking`, `opening`, `do_opening`,
//! `pits`, `dishes`, `kitchen` and `jobs` one cook, `undo` taking back. `find` looks things up, `times`, `ranges` and `texts` say what
//! is taken: whatever a form, a shell or a script hands
//! in is checked here again, because this is the only way into the log.
//!
//! Laws: a refused act drafts nothing; the same context and act give the same decision; every instant drafted is one
//! that `times` takes, and every text one that `texts` has cleaned.

mod boil;
mod checking;
mod cooks;
mod courses;
mod dishes;
mod do_opening;
mod fields;
mod find;
mod fires;
mod jobs;
mod kitchen;
mod moves;
mod naming;
mod new_meat;
mod opening;
mod parts;
mod people;
mod pieces;
mod pits;
mod plan;
mod planned;
mod ranges;
mod said;
mod setup;
mod share;
mod texts;
mod times;
mod undo;

#[cfg(test)]
mod laws;
#[cfg(test)]
mod stories;
#[cfg(test)]
pub(crate) mod testing;

pub use boil::{BOILS, expected_in};
pub(crate) use ranges::{PEOPLE_RANGE, pit_heat, pull_at, rest_minutes};
pub(crate) use texts::{LINE_CHARS_MAX, note_text};

use super::Act;
use crate::{
    cook::Known,
    error::Refused,
    ids::{CookId, Names},
    log::{Draft, EntryKey, Payload, Subject},
    moment::Moment,
    words::Viewer,
};

/// What an act is decided on.
pub struct Context<'a> {
    /// What is known.
    pub known: Known<'a>,
    /// Whose language refusals are in.
    pub viewer: &'a Viewer,
    /// When it is.
    pub moment: &'a Moment,
    /// Which cook an entry belongs to and what kind of thing it says; none where it is not here.
    pub owner: &'a dyn Fn(&EntryKey) -> Option<Owner>,
    /// Where new ids come from.
    pub names: &'a mut Names,
}

/// Whose an entry is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Owner {
    /// Its cook, if it belongs to one.
    pub cook: Option<CookId>,
    /// What kind of thing it says; empty where it was erased.
    pub kind: String,
}

/// What is to be recorded, and what to answer once it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Decision {
    /// The entries to be written, in order, all or nothing.
    pub drafts: Vec<Draft>,
    /// What was made.
    pub made: Vec<Subject>,
    /// What was done, in a few words, for the screen and the speaker.
    pub said: String,
    /// Whether the answer offers to take it back (the door fills in the entries).
    pub undoable: bool,
}

impl Decision {
    /// One entry or several, with what was done in a few words; nothing made, and it can be taken back.
    fn of(drafts: Vec<Draft>, said: String) -> Self {
        Self {
            drafts,
            made: vec![],
            said,
            undoable: true,
        }
    }

    /// The same, of one entry at `at`.
    fn one(cook: Option<CookId>, at: i64, payload: impl Into<Payload>, said: String) -> Self {
        let payload = payload.into();
        Self::of(vec![Draft { cook, at, payload }], said)
    }

    /// The same, having made `made`.
    fn making(self, made: Vec<Subject>) -> Self {
        Self { made, ..self }
    }

    /// The same, never to be taken back.
    fn for_good(self) -> Self {
        Self {
            undoable: false,
            ..self
        }
    }
}

/// Decides `act`. One table on purpose: an act without its arm does not compile.
///
/// # Errors
/// A sentence in the viewer's language that says what to do instead.
pub fn decide(context: &mut Context<'_>, act: &Act) -> Result<Decision, Refused> {
    context.sound_clock()?;
    match act {
        Act::AddPit {
            name,
            kind,
            grate_cm2,
            alone_minutes,
        } => setup::add_pit(context, name, *kind, *grate_cm2, *alone_minutes),
        Act::AddThermometer { name } => setup::add_thermometer(context, name),
        Act::CheckThermometer {
            thermometer,
            against,
            read,
        } => setup::check_thermometer(context, *thermometer, *against, *read),
        Act::SetField { of, to, saw } => fields::set(context, *of, to, *saw),
        Act::NameDevice { name } => people::name_device(context, name),
        Act::Dismiss { notice } => people::dismiss(context, notice),
        Act::Sleep { until } => people::sleep(context, *until),
        Act::WakeUp => people::wake_up(context),
        Act::TakeWatch { note } => people::take_watch(context, note),
        Act::StartCook {
            name,
            serve,
            people,
            meats,
            demo,
        } => cooks::start(context, name, serve.as_ref(), *people, meats, *demo),
        Act::StartPlanned {
            name,
            serve,
            people,
            meats,
            dishes,
            notes,
        } => {
            let occasion = planned::Occasion {
                name,
                serve: serve.as_ref(),
                people: *people,
            };
            planned::start(context, &occasion, meats, dishes, notes)
        }
        Act::FinishCook { cook } => cooks::finish(context, *cook),
        Act::AddMeat { cook, meat } => cooks::add_meat(context, *cook, meat),
        Act::Note { cook, about, text } => cooks::note(context, *cook, *about, text),
        Act::AddDish { cook, name, hot } => dishes::add(context, *cook, name, *hot),
        Act::ReadyDish { cook, dish, ready } => dishes::ready(context, *cook, *dish, *ready),
        Act::PlanBatch { cook, batch } => kitchen::plan(context, *cook, batch),
        Act::KeepTrimmings {
            cook,
            piece,
            g,
            what,
        } => kitchen::trimmings(context, *cook, *piece, *g, what),
        Act::WeighSalt { cup_g } => kitchen::weigh_salt(context, *cup_g),
        Act::AcceptPlan { cook, plan } => plan::accept(context, *cook, plan),
        Act::AcceptAgain { cook, entry } => plan::again(context, *cook, entry),
        Act::DropPlan { cook } => plan::drop_it(context, *cook),
        Act::PlanCourses { cook, courses } => courses::plan(context, *cook, courses),
        Act::KeepSheet {
            cook,
            sheet,
            against,
        } => courses::keep_sheet(context, *cook, sheet, against),
        Act::Skip { cook, jobs } => jobs::skip(context, *cook, jobs),
        Act::Later {
            cook,
            jobs,
            minutes,
        } => jobs::later(context, *cook, jobs, *minutes),
        Act::Answer { cook, job } => jobs::answer(context, *cook, *job),
        Act::Undo { targets } => undo::undo(context, targets),
        Act::Erase { targets } => undo::erase(context, targets),
        Act::Open {
            pit,
            wetted,
            turned,
            glazed,
            at,
        } => opening::open(context, *pit, [wetted, turned, glazed], *at),
        Act::DoOpening { pit, meats, at } => do_opening::all(context, *pit, meats, *at),
        Act::MoveMeats { moves, at } => moves::several(context, moves, *at),
        Act::Split { piece, names } => parts::split(context, *piece, names),
        Act::Join { pieces, name } => parts::join(context, pieces, name),
        Act::PutOnAnyway { piece, pit, at } => pieces::put_on_anyway(context, *piece, *pit, *at),
        Act::GoPast { piece, caveat } => pieces::go_past(context, *piece, *caveat),
        Act::SetStage { piece, stage, at } => pieces::set_stage(context, *piece, *stage, *at),
        Act::Move {
            piece,
            pit,
            spot,
            at,
        } => pieces::go(context, *piece, *pit, spot, *at),
        Act::AnswerRub { piece, set, at } => pieces::answer_rub(context, *piece, *set, *at),
        Act::AnswerRubs { pieces, set, at } => pieces::answer_rubs(context, pieces, *set, *at),
        Act::Check { piece, results, at } => checking::check(context, *piece, results, *at),
        Act::Read {
            cook,
            place,
            thermometer,
            temp,
            at,
        } => pits::read(context, *cook, place, *thermometer, *temp, *at),
        Act::BindProbe {
            cook,
            source,
            sensor,
            place,
            thermometer,
        } => pits::bind(context, *cook, [source, sensor], place, *thermometer),
        Act::Feed {
            cook,
            pit,
            what,
            at,
        } => pits::feed(context, *cook, *pit, what, *at),
        Act::ChangeVent { cook, pit, how, at } => pits::vent(context, *cook, *pit, how, *at),
        Act::SeeFire { cook, pit, at } => pits::see_fire(context, *cook, *pit, *at),
        Act::FeedUnits {
            cook,
            pit,
            unit,
            quarters,
            at,
        } => fires::feed(context, (*cook, *pit), *unit, *quarters, *at),
        Act::SetVent {
            cook,
            pit,
            vent,
            quarters,
            at,
        } => fires::set_vent(context, (*cook, *pit), *vent, *quarters, *at),
        Act::TendFire { cook, pit, did, at } => fires::tend(context, (*cook, *pit), *did, *at),
        Act::SayWeather { cook, said } => fires::say_weather(context, *cook, *said),
        Act::FindFireOut {
            cook,
            pit,
            burned_until,
            at,
        } => fires::find_out(context, (*cook, *pit), *burned_until, *at),
        Act::TameWood { cook, pit, wood } => fires::tame_wood(context, (*cook, *pit), *wood),
        Act::SayWood { cook, pit, wood } => fires::say_wood(context, (*cook, *pit), *wood),
        Act::WatchSmoke {
            cook,
            pit,
            seen,
            at,
        } => fires::watch_smoke(context, (*cook, *pit), *seen, *at),
        Act::PlanFeed { cook, pit, due } => fires::plan_feed(context, (*cook, *pit), *due),
        Act::WeighUnit { pit, unit, grams } => fires::weigh(context, *pit, *unit, *grams),
    }
}
