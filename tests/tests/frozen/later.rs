//! What was shipped later under the first schema, in the order in which it was: a fixture each, on top of the first.

use super::id;
use slowbend_core::{
    batch::*,
    checks::cuts::Degrees,
    fire::{Ambient, FireDid, FuelUnit, Rain, SmokeSeen, SmokeWood, Vent, WeatherTap},
    ids::{CookId, DeviceId, LogId, PieceId, PitId},
    log::*,
    moment::{HOUR, MINUTE},
    units::Mk,
};
use slowbend_tests::kit;

/// One version's new kinds of entries.
pub struct Later {
    /// The end of the fixture's name.
    pub name: &'static str,
    /// What stands at its head.
    pub about: &'static str,
    /// The fixture.
    pub sql: &'static str,
    /// One entry of each kind.
    pub payloads: fn() -> Vec<Payload>,
}

macro_rules! later {
    ($($name:literal $about:literal $payloads:path,)*) => {
        [$(Later {
            name: $name,
            about: $about,
            sql: include_str!(concat!("../fixtures/schema-0001-", $name, ".sql")),
            payloads: $payloads,
        }),*]
    };
}

pub const LATER: [Later; 7] = later![
    "meant" "What a later version recorded under the first schema." later,
    "past" "What a later version recorded under the first schema." past,
    "kitchen" "The kitchen of a cook, under the first schema." kitchen,
    "plan" "An accepted plan, under the first schema." planned,
    "fire" "What hands do at a fire, under the first schema." fire,
    "out" "A fire found out, and strong wood burnt down first, under the first schema." out,
    "courses" "What is served when, and a sheet that is kept, under the first schema." courses,
];

/// All of it, in order.
pub fn all() -> Vec<Payload> {
    LATER.iter().flat_map(|later| (later.payloads)()).collect()
}

/// What was recorded in the same cook by a later version.
fn later() -> Vec<Payload> {
    let held = Degrees {
        low: Mk::from_f(225),
        high: Mk::from_f(275),
    };
    let meant = Meant {
        wrap: Some(Wrap::Paper),
        rest_min: Some(20),
        pit: Some(held),
    };
    vec![
        PieceMeant {
            piece: PieceId(id(6, 1)),
            meant,
        }
        .into(),
    ]
}

/// What was shipped after [`later`].
fn past() -> Vec<Payload> {
    vec![
        WentPast {
            piece: PieceId(id(6, 2)),
            caveat: Caveat::CoolPit,
        }
        .into(),
    ]
}

/// What was recorded of its kitchen: each section, trimmings, and a cup of the crew's salt.
fn kitchen() -> Vec<Payload> {
    let ribs = PieceId(id(6, 1));
    let named = |name: &str| name.to_owned();
    let part = |name, kind, cup_g| RubPart {
        name: named(name),
        parts: 1,
        kind,
        cup_g,
    };
    let salts = vec![
        AlsoSalt::LabelSolution {
            percent: 8,
            salt_permille: 35,
        },
        AlsoSalt::LabelSodium { mg_per_100g: 61 },
        AlsoSalt::Brine {
            g: Grams(120),
            salt_permille: 60,
        },
        AlsoSalt::Injection {
            g: Grams(200),
            salt_permille: 20,
        },
        AlsoSalt::Mop {
            g: Grams(300),
            salt_permille: 10,
        },
    ];
    let rub = RubPlan {
        pieces: vec![ribs],
        g_per_kg: 15,
        basis: Basis::Volume,
        parts: vec![
            part("Salt", SaltKind::OtherSalt, None),
            part("Table salt", SaltKind::TableSalt, None),
            part("Pepper", SaltKind::Unsalted, Some(Grams(105))),
            part(
                "Garlic salt",
                SaltKind::Salted { salt_permille: 725 },
                Some(Grams(200)),
            ),
        ],
        also: salts,
    };
    let brine = BrinePlan {
        pieces: vec![],
        water_g: Grams(3_785),
        way: BrineWay::InTheMeat,
        permille: 15,
    };
    let mop = MopPlan {
        parts: vec![MopPart {
            name: named("Cider vinegar"),
            parts: 2,
        }],
        spare_percent: 20,
        wet_min: Some(255),
    };
    let portions = PortionsPlan {
        adults: 10,
        children: 4,
        appetite: Appetite::Hearty,
        meats: vec![PortionShare {
            piece: ribs,
            share: 2,
            trim_percent: Some(4),
        }],
    };
    let shopping = ShoppingPlan {
        extras: vec![Extra {
            name: named("Charcoal"),
            amount: 2,
            unit: CountedIn::Each,
        }],
        at_home: vec![AtHome {
            name: named("Vinegar"),
            amount: 500,
            unit: CountedIn::Ml,
        }],
        prices: vec![Price {
            name: named("Ribs"),
            cents: Cents(499),
            per: 454,
            unit: CountedIn::G,
        }],
    };
    let sections = [
        Batch::Rub(rub),
        Batch::Brine(brine),
        Batch::Mop(mop),
        Batch::Portions(portions),
        Batch::Shopping(shopping),
    ];
    let planned = sections
        .into_iter()
        .map(|batch| BatchPlanned { batch }.into());
    planned
        .chain([
            TrimmingsKept {
                piece: Some(ribs),
                g: 320,
                what: named("for stock"),
            }
            .into(),
            SaltWeighed { cup_g: Some(140) }.into(),
        ])
        .collect()
}

/// What was recorded by the version after that.
fn planned() -> Vec<Payload> {
    let (pit, butt) = (PitId(id(4, 1)), PieceId(id(6, 2)));
    let why = PlannedWhy {
        key: "plan-why-cooks-for".into(),
        args: vec![WhyArg {
            name: "minutes".into(),
            value: WhyValue::Minutes(600),
        }],
    };
    let job = |does, on, hours| PlannedJob {
        job: OnSheet { does, on, nth: 0 },
        at: kit::SIX + hours * HOUR,
        until: kit::SIX + hours * HOUR + 10 * MINUTE,
        hands: 1,
        wakes: false,
        pit: Some(pit),
        temp: Some(Mk::from_f(250)),
        wrap: Some(Wrap::Foil),
        what: "low".into(),
        why: Some(why.clone()),
    };
    let plan = AcceptedPlan {
        serve: Serve {
            at: kit::SIX + 9 * HOUR,
            zone: "America/Chicago".into(),
        },
        jobs: vec![
            job(Does::Light, Subject::Pit(pit), -3),
            job(Does::PutOn, Subject::Piece(butt), -2),
            job(Does::Serve, Subject::Cook(CookId(id(3, 1))), 9),
        ],
        chance_permille: Some(930),
        asked: PlanAsked {
            hands: 1,
            sleep_from_min: Some(22 * 60),
            sleep_to_min: Some(5 * 60),
            watched: true,
            not_before: Some(kit::SIX - 4 * HOUR),
            late_min: Some(30),
            cooler: true,
            oven: false,
        },
    };
    vec![
        PlanAccepted { plan: plan.clone() }.into(),
        PlanDropped {}.into(),
        PlanAccepted { plan }.into(),
    ]
}

/// What hands do at a fire.
fn fire() -> Vec<Payload> {
    let pit = PitId(id(4, 1));
    let (unit, what, how) = (FuelUnit::Basket, String::new(), String::new());
    let due = kit::SIX + 600 * MINUTE;
    let grams = 3_900;
    vec![
        FedUnits {
            pit,
            unit,
            quarters: 6,
            what,
        }
        .into(),
        VentSet {
            pit,
            vent: Vent::Lower,
            quarters: 1,
            how,
        }
        .into(),
        FireTended {
            pit,
            did: FireDid::Ash,
        }
        .into(),
        WeatherSaid {
            said: WeatherTap::Air(Ambient::Cold),
        }
        .into(),
        WeatherSaid {
            said: WeatherTap::Falls(Rain::Wet),
        }
        .into(),
        WoodSaid {
            pit,
            wood: SmokeWood::Mesquite,
        }
        .into(),
        SmokeWatched {
            pit,
            seen: SmokeSeen::Stings,
        }
        .into(),
        FeedPlanned { pit, due }.into(),
        UnitWeighed { pit, unit, grams }.into(),
    ]
}

/// Strong wood, burnt to coals before it goes on; a fire that was out.
fn out() -> Vec<Payload> {
    let (pit, wood) = (PitId(id(4, 1)), SmokeWood::Mesquite);
    let burned_until = kit::SIX + 30 * MINUTE;
    vec![
        WoodTamed { pit, wood }.into(),
        FireFoundOut { pit, burned_until }.into(),
    ]
}

/// What is served when, and a sheet that was kept against two things.
fn courses() -> Vec<Payload> {
    let (butt, cook) = (PieceId(id(6, 2)), CookId(id(3, 1)));
    let serve = |hours| Serve {
        at: kit::SIX + hours * HOUR,
        zone: "America/Chicago".into(),
    };
    let course = |nr, name: &str, of| Course {
        nr,
        name: name.into(),
        serve: serve(6 + nr),
        latest: (nr == 1).then_some(kit::SIX + 8 * HOUR),
        window_min: (nr == 2).then_some(5),
        of,
    };
    let strain = |does, on, by_min| Strain {
        job: OnSheet { does, on, nth: 0 },
        by_min,
    };
    let kept = SheetKept {
        sheet: EntryKey {
            log: LogId(id(9, 1)),
            device: DeviceId(id(9, 2)),
            n: 7,
        },
        against: vec![
            strain(Does::TakeOff, Subject::Piece(butt), 45),
            strain(Does::Serve, Subject::Cook(cook), -60),
        ],
    };
    let courses = vec![
        course(1, "Pork", vec![Subject::Piece(butt)]),
        course(2, "Turn-in", vec![]),
    ];
    vec![CoursesPlanned { courses }.into(), kept.into()]
}
