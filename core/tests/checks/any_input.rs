//! Inputs of every kind for the laws: strays at the edges of the minimums, and now and then a whole pass.

use crate::cases::NOW;
use proptest::prelude::*;
use slowbend_core::{checks::*, moment::MINUTE, safety::*, units::Mk};

fn any_of<T: Copy + std::fmt::Debug + 'static>(all: &'static [T]) -> impl Strategy<Value = T> {
    proptest::sample::select(all)
}

fn standing() -> impl Strategy<Value = Standing> {
    prop_oneof![
        Just(Standing::Unchecked),
        (-4_000i64..4_000, 0i64..40).prop_map(|(off_mk, days)| Standing::Checked {
            off_mk,
            at: NOW - days * 86_400_000
        }),
        Just(Standing::Checked { off_mk: 0, at: NOW }),
    ]
}

fn heat() -> impl Strategy<Value = (TestResult, Option<Standing>)> {
    let edges = prop_oneof![
        proptest::sample::select(vec![145i64, 155, 158, 160, 165]).prop_map(|f| Mk::from_f(f).0),
        Mk::from_f(140).0..Mk::from_f(215).0,
    ];
    let mk = (edges, -1i64..=1).prop_map(|(mk, nudge)| Mk(mk + nudge));
    (
        mk,
        any_of(Spot::ALL),
        proptest::bool::weighted(0.8),
        standing(),
    )
        .prop_map(|(mk, spot, instant_read, standing)| {
            (
                TestResult::Heat(Temperature {
                    mk,
                    spot,
                    thermometer: None,
                    instant_read,
                }),
                Some(standing),
            )
        })
}

fn feel() -> impl Strategy<Value = (TestResult, Option<Standing>)> {
    prop_oneof![
        any_of(Bend::ALL).prop_map(TestResult::Lifted),
        any_of(ProbeFeel::ALL).prop_map(TestResult::Probed),
        any_of(BoneShowing::ALL).prop_map(TestResult::Bone),
        any_of(BarkSet::ALL).prop_map(TestResult::Bark),
        any_of(WrapCall::ALL).prop_map(TestResult::Color),
        any_of(Joint::ALL).prop_map(TestResult::Twisted),
    ]
    .prop_map(|result| (result, None))
}

/// One reading by hand in each place of the cut, around its minimum or where it is done, and now and then tender by all
/// feels: what it takes to be done.
fn one_pass(cut: Cut, form: Form) -> impl Strategy<Value = Vec<DatedResult>> {
    let usual = cut_facts(cut).done_range;
    let from = usual.low.f_tenths() / 10;
    let heat = move || prop_oneof![158i64..190, from - 2..from + 25];
    let reading = move |spot: Spot| {
        (heat(), -1i64..=1, 0i64..8 * MINUTE).prop_map(move |(f, nudge, ago)| DatedResult {
            result: TestResult::Heat(Temperature {
                mk: Mk(Mk::from_f(f).0 + nudge),
                spot,
                thermometer: None,
                instant_read: true,
            }),
            standing: Some(Standing::Checked { off_mk: 0, at: NOW }),
            at: NOW - ago,
        })
    };
    let readings: Vec<_> = cut.spots(form).into_iter().map(reading).collect();
    (readings, proptest::bool::ANY).prop_map(|(mut pass, tender)| {
        let feels = [
            TestResult::Lifted(Bend::Cracks),
            TestResult::Probed(ProbeFeel::Slides),
        ];
        let felt = feels.map(|result| DatedResult {
            result,
            standing: None,
            at: NOW,
        });
        pass.extend(felt.into_iter().filter(|_| tender));
        pass
    })
}

/// Any sound input at [`NOW`], about a third of them with a pass that may show the minimum.
pub fn any_input() -> impl Strategy<Value = VerdictInput> {
    (any_of(Cut::ALL), any_of(Form::ALL)).prop_flat_map(|(cut, form)| {
        let dated = (prop_oneof![4 => heat(), 3 => feel()], 0i64..45 * MINUTE).prop_map(
            |((result, standing), ago)| DatedResult {
                result,
                standing,
                at: NOW - ago,
            },
        );
        let stray = proptest::collection::vec(dated, 0..14);
        let pass = prop_oneof![2 => Just(vec![]), 1 => one_pass(cut, form)];
        let rest = proptest::option::of((0i64..6 * MINUTE).prop_map(|ago| NOW - ago));
        (stray, pass, rest, proptest::bool::weighted(0.05)).prop_map(
            move |(stray, pass, resting_since, unknown_must_understand)| VerdictInput {
                cut,
                form,
                checks: [stray, pass].concat(),
                now: NOW,
                resting_since,
                unknown_must_understand,
            },
        )
    })
}
