//! One meat followed for twelve hours, against SciPy's BDF (rtol 1e-3) over the same equations and cells.
//!
//! The peer is `heat_peer.py`, which solves `tests/oracles/heat_model.py`: the equations of `docs/heat.md` written a second
//! time with NumPy. Fair because both have twelve cells, the same pit and the same member, and each may take steps as long as
//! keep its error of the time to 90 °C within a minute; what is exact is BDF at rtol 1e-7. Starting Python and its imports do
//! not count. Ours is a block of eight members in f32; a member's share is an eighth of it, and the whole block is told beside
//! it. Python is the oracles' own where it is there, else `python3`; without SciPy there is no peer, and the first rows are
//! left out.

use crate::harness::{Pair, Result, Row, alone, median, time};
use serde::Deserialize;
use serde_json::json;
use slowbend_core::{
    checks::cuts::Cut,
    heat::{
        PIT_VAPOR,
        kernel::{Boundary, LANES, Member, Members, NODES},
        typical,
    },
};
use std::{
    hint::black_box,
    io::Write,
    path::Path,
    process::{Command, Stdio},
    time::{Duration, Instant},
};

const PIT_C: f64 = 121.0;
const UNTIL_C: f64 = 90.0;
const HOURS_12: f64 = 12.0 * 3600.0;
/// Our step, s: what keeps the error within a minute.
const STEP: f64 = 30.0;
/// The step of an ensemble, s.
const COARSE: f64 = 120.0;
const TURNS: usize = 11;

/// What the peer says.
#[derive(Deserialize)]
struct Peer {
    ns: Vec<u64>,
    hit_s: f64,
    exact_s: f64,
}

/// The rows of the table.
pub fn rows() -> Result<Vec<Row>> {
    let member = typical(Cut::PorkButt, 4_000);
    let block = alone(TURNS, || Ok(twelve_hours(&member, STEP, 1)))?;
    let mut rows = match peer(&member)? {
        Some(peer) => against(&peer, &member, block),
        None => {
            eprintln!(
                "heat: the peer is not there: no Python with SciPy (tests/run oracles brings one)"
            );
            vec![]
        }
    };
    let blocks = 1_000_usize.div_ceil(LANES);
    let many = alone(TURNS, || Ok(twelve_hours(&member, COARSE, blocks)))?;
    let name = "1,000 members from raw through 12 h";
    rows.push(Row::within(name, many, Duration::from_millis(60)));
    Ok(rows)
}

fn against(peer: &Peer, member: &Member, block: Duration) -> Vec<Row> {
    let peer_time = median(peer.ns.iter().copied().map(Duration::from_nanos).collect());
    let apart = |hit: f64| Duration::from_secs_f64((hit - peer.exact_s).abs());
    let pair = Pair {
        ours: block / LANES as u32,
        peer: peer_time,
    };
    let minute = Duration::from_secs(60);
    vec![
        Row::of("12 h of one member, of 8 in a block", pair, 0.01),
        Row::told(
            "12 h of a block, as if for one",
            time(block),
            time(peer_time),
        ),
        Row::within(
            "error of the time to 194 °F, ours",
            apart(hit(member)),
            minute,
        ),
        Row::within(
            "error of the time to 194 °F, the peer's",
            apart(peer.hit_s),
            minute,
        ),
    ]
}

/// So many blocks of eight members that differ, from raw through twelve hours.
fn twelve_hours(member: &Member, step: f64, blocks: usize) -> Duration {
    let began = Instant::now();
    for i in 0..blocks {
        let members = std::array::from_fn(|lane| Member {
            wetness: 0.15 + 0.01 * lane as f64,
            pit_bias: i as f64 * 0.05,
            ..*member
        });
        let mut block = Members::raw(&members);
        let around = Boundary::pit(PIT_C, PIT_VAPOR);
        (0..(HOURS_12 / step) as usize).for_each(|_| {
            block.step(&around, step);
        });
        black_box(block.state.core());
    }
    began.elapsed()
}

/// When the center is at 90 °C, s, straight between two steps.
fn hit(member: &Member) -> f64 {
    let mut block = Members::raw(&[*member; LANES]);
    let (mut at_s, mut before) = (0.0, f64::from(block.state.core().0[0]));
    loop {
        block.step(&Boundary::pit(PIT_C, PIT_VAPOR), STEP);
        let core = f64::from(block.state.core().0[0]);
        if core >= UNTIL_C {
            return at_s + STEP * (UNTIL_C - before) / (core - before);
        }
        (at_s, before) = (at_s + STEP, core);
    }
}

fn peer(member: &Member) -> Result<Option<Peer>> {
    let peers = Path::new(env!("CARGO_MANIFEST_DIR"));
    let own = peers.join("../.tools/oracles/bin/python");
    let python = if own.exists() { own } else { "python3".into() };
    let mut child = match Command::new(python)
        .arg(peers.join("heat_peer.py"))
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
    {
        Ok(child) => child,
        Err(_) => return Ok(None),
    };
    let asked = json!({
        "member": {
            "half_thickness": member.half_thickness, "shape": member.shape,
            "dry_heat": member.dry_heat, "water": member.water,
            "dry_conducts": member.dry_conducts, "water_conducts": member.water_conducts,
            "convection": member.convection, "emissivity": member.emissivity,
            "wetness": member.wetness, "seep": member.seep, "lets_go": member.lets_go,
            "start_c": member.start_c,
        },
        "cells": NODES, "pit_c": PIT_C, "vapor": PIT_VAPOR, "until": UNTIL_C,
        "seconds": HOURS_12, "turns": TURNS,
    });
    let mut input = child.stdin.take().ok_or("the peer takes no input")?;
    // A peer that ended before it read says why by how it ended.
    let _ = input.write_all(asked.to_string().as_bytes());
    drop(input);
    let output = child.wait_with_output()?;
    match output.status.code() {
        Some(0) => Ok(Some(serde_json::from_slice(&output.stdout)?)),
        Some(3) => Ok(None),
        _ => Err("the peer of heat failed: see above".into()),
    }
}
