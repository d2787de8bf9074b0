//! x
#![allow(dead_code, unused)]
mod baselines; mod invent; mod measure; mod moments; mod ours; mod physics; mod rng;
use baselines::all::{Baselines, NAMES};
use invent::{cook::invent, family::Family};
use measure::{score, table::Column};
fn main() {
    let args: Vec<u64> = std::env::args().skip(1).map(|a| a.parse().unwrap()).collect();
    let (cooks, members, fam) = (args[0], args[1] as usize, if args[2] == 0 { Family::Tuning } else { Family::Reporting });
    let b = Baselines::taught(11, 1000);
    let mut cols: Vec<Column> = ["ours"].iter().chain(&NAMES).map(|n| Column { name: n, rows: vec![] }).collect();
    let mut el = std::time::Duration::ZERO;
    for n in 0..cooks {
        let c = invent(fam, 99, n);
        let mut ours = ours::Ours::of(&c, n, Default::default(), members);
        for (now, tenth) in moments::moments(&c, n as usize) {
            let t = std::time::Instant::now();
            let mine = ours.points(now);
            el += t.elapsed();
            cols[0].rows.push(score(n as usize, tenth, &mine, c.finished - now as f64));
            let p = b.points(&moments::known(&c, now));
            for i in 0..3 { cols[i+1].rows.push(score(n as usize, tenth, &p[i], c.finished - now as f64)); }
            if args.len() > 3 { println!("{n} {:?} w {:?} at {now} left {:.0}: {:.0} {:.0} {:.0} ; n {:.0}", c.meat.cut, c.done.wrap, c.finished - now as f64, mine[4], measure::quantile(&mine, 0.5), mine[35], measure::quantile(&p[1], 0.5)); }
        }
    }
    println!("ours took {el:?}");
    measure::table::print(&cols);
}
