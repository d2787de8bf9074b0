//! A cook's night for tests: acts are decided, become entries, and are folded, so that a test reads as what was done.

use super::{Context, Decision, Owner, decide};
use crate::{
    acts::{Act, NewMeat},
    checks::Cut,
    cook::{Cook, Crew, Known, Piece, fold},
    error::Refused,
    ids::{CookId, DeviceId, LogId, Names, PieceId, PitId},
    log::{Body, Draft, Entry, EntryKey, PitKind, Stage, Stamp, Subject},
    moment::Moment,
    readings::Tails,
    safety::Form,
    words::Viewer,
};
use std::collections::BTreeMap;
use uuid::Uuid;

/// 2026-06-12 22:00 in Chicago (UTC−5), a Friday: the night before the regatta. Invented, as all in here.
pub const NIGHT: i64 = 1_781_319_600_000;

/// What is known on the devices of one crew that always agree, and the hands that act there.
pub struct Night {
    /// When it is.
    pub moment: Moment,
    /// Who acts, in which language.
    pub viewer: Viewer,
    entries: Vec<Entry>,
    crew: Crew,
    cooks: BTreeMap<CookId, Cook>,
    names: Names,
    stamp: Stamp,
}

/// One decided act and the entries it became.
#[derive(Debug)]
pub struct Done {
    /// The decision.
    pub decision: Decision,
    /// Its entries.
    pub keys: Vec<EntryKey>,
}

impl Night {
    /// Nothing recorded yet; an English-speaking device 1.
    pub fn new() -> Self {
        Self {
            moment: Moment::at(NIGHT, "America/Chicago"),
            viewer: Viewer {
                zone: "America/Chicago".into(),
                ..Viewer::default_for(device(1))
            },
            entries: vec![],
            crew: Crew::default(),
            cooks: BTreeMap::new(),
            names: Names::new([3; 32]),
            stamp: Stamp::default(),
        }
    }

    /// A drum and a kettle, and a cook with two slabs, a butt and a turkey breast meant for them.
    pub fn regatta() -> (Self, Regatta) {
        let mut night = Self::new();
        let (drum, kettle) = (
            night.pit("Drum", PitKind::Drum),
            night.pit("Kettle", PitKind::Kettle),
        );
        let meats = vec![
            meat(Cut::SpareRibs, "Ribs", Some(drum)),
            meat(Cut::SpareRibs, "Ribs", Some(drum)),
            meat(Cut::PorkButt, "Butt", Some(drum)),
            meat(Cut::TurkeyBreast, "Turkey", Some(kettle)),
        ];
        let started = night.does(start("Regatta", meats));
        let cook = match started.decision.made[0] {
            Subject::Cook(id) => id,
            other => panic!("a cook was made, not {other:?}"),
        };
        let ids: Vec<PieceId> = started.decision.made[1..].iter().map(piece_id).collect();
        let regatta = Regatta {
            cook,
            drum,
            kettle,
            ribs: [ids[0], ids[1]],
            butt: ids[2],
            turkey: ids[3],
            started: started.keys,
        };
        (night, regatta)
    }

    /// The same an hour later with all meats on their pits since then.
    pub fn on_the_pits() -> (Self, Regatta) {
        let (mut night, r) = Self::regatta();
        for (piece, pit) in [
            (r.ribs[0], r.drum),
            (r.ribs[1], r.drum),
            (r.butt, r.drum),
            (r.turkey, r.kettle),
        ] {
            night.does(stage(piece, Stage::OnPit { pit }));
        }
        night.pass(crate::moment::HOUR);
        (night, r)
    }

    /// A new pit.
    pub fn pit(&mut self, name: &str, kind: PitKind) -> PitId {
        let act = Act::AddPit {
            name: name.into(),
            kind,
            grate_cm2: None,
            alone_minutes: None,
        };
        match self.does(act).decision.made[0] {
            Subject::Pit(id) => id,
            other => panic!("a pit was made, not {other:?}"),
        }
    }

    /// Time goes by.
    pub fn pass(&mut self, ms: i64) {
        self.moment = self.moment.plus(ms);
    }

    /// The next acts are this device's.
    pub fn hand_to(&mut self, n: u128) {
        self.viewer.device = device(n);
    }

    /// Decides, and records nothing.
    pub fn decide(&mut self, act: &Act) -> Result<Decision, Refused> {
        let tails = Tails::default();
        let entries = &self.entries;
        let owner = |key: &EntryKey| owner(entries, key);
        let mut context = Context {
            known: Known {
                crew: &self.crew,
                cooks: &self.cooks,
                tails: &tails,
                ahead: &crate::ahead::NOTHING,
                lessons: &crate::ahead::UNTAUGHT,
                device: self.viewer.device,
                warnings: &[],
            },
            viewer: &self.viewer,
            moment: &self.moment,
            names: &mut self.names,
            owner: &owner,
        };
        decide(&mut context, act)
    }

    /// Decides, records and folds.
    pub fn does(&mut self, act: Act) -> Done {
        let decision = self
            .decide(&act)
            .unwrap_or_else(|no| panic!("{act:?}: {no}"));
        let keys = decision
            .drafts
            .iter()
            .map(|draft| self.record(draft))
            .collect();
        self.fold();
        Done { decision, keys }
    }

    /// Why the act is refused.
    pub fn refuses(&mut self, act: &Act) -> String {
        match self.decide(act) {
            Ok(decision) => panic!("{act:?} was taken: {decision:?}"),
            Err(refused) => refused.reason,
        }
    }

    /// The cook as it stands.
    pub fn cook(&self, id: CookId) -> &Cook {
        &self.cooks[&id]
    }

    /// Whether the cook is known.
    pub fn knows(&self, id: CookId) -> bool {
        self.cooks.contains_key(&id)
    }

    /// The meat as it stands.
    pub fn piece(&self, id: PieceId) -> &Piece {
        let found = self.cooks.values().find_map(|cook| cook.pieces.get(&id));
        found.expect("the meat is there")
    }

    /// The crew as it stands.
    pub fn crew(&self) -> &Crew {
        &self.crew
    }

    fn record(&mut self, draft: &Draft) -> EntryKey {
        let device = self.viewer.device;
        let n = 1 + self
            .entries
            .iter()
            .filter(|e| e.key.device == device)
            .count() as i64;
        let key = EntryKey {
            log: LogId(Uuid::from_u128(9)),
            device,
            n,
        };
        self.stamp = self.stamp.tick(self.moment.utc_ms);
        self.entries.push(Entry {
            key,
            stamp: self.stamp,
            body: Body::Raw(draft.raw()),
        });
        key
    }

    fn fold(&mut self) {
        let mut crew = vec![];
        let mut cooks: BTreeMap<CookId, Vec<fold::Known>> = BTreeMap::new();
        for entry in &self.entries {
            let known = fold::Known::of(entry);
            match owner(&self.entries, &entry.key)
                .expect("its own entry")
                .cook
            {
                Some(cook) => cooks.entry(cook).or_default().push(known),
                None => crew.push(known),
            }
        }
        self.crew = fold::crew(&mut crew);
        self.cooks = cooks
            .into_iter()
            .filter_map(|(id, mut entries)| Some((id, fold::cook(id, &mut entries)?)))
            .collect();
    }
}

/// What the regatta's night begins with.
pub struct Regatta {
    pub cook: CookId,
    pub drum: PitId,
    pub kettle: PitId,
    pub ribs: [PieceId; 2],
    pub butt: PieceId,
    pub turkey: PieceId,
    pub started: Vec<EntryKey>,
}

fn owner(entries: &[Entry], key: &EntryKey) -> Option<Owner> {
    let entry = entries.iter().find(|entry| entry.key == *key)?;
    let Body::Raw(raw) = &entry.body else {
        return None;
    };
    let head = Entry::head(raw).expect("our own bytes");
    Some(Owner {
        cook: head.cook,
        kind: head.kind.into_owned(),
    })
}

fn piece_id(subject: &Subject) -> PieceId {
    match subject {
        Subject::Piece(id) => *id,
        other => panic!("a meat was made, not {other:?}"),
    }
}

/// The n-th device.
pub fn device(n: u128) -> DeviceId {
    DeviceId(Uuid::from_u128(n))
}

/// An id that nothing here has.
pub fn nobody() -> Uuid {
    Uuid::from_u128(404)
}

/// A meat with nothing said but this.
pub fn meat(cut: Cut, name: &str, pit: Option<PitId>) -> NewMeat {
    NewMeat {
        name: name.into(),
        cut,
        form: Form::Intact,
        weight_g: None,
        cadence: None,
        pit,
    }
}

/// A cook with nothing said but this.
pub fn start(name: &str, meats: Vec<NewMeat>) -> Act {
    Act::StartCook {
        name: name.into(),
        serve: None,
        people: None,
        meats,
        demo: false,
    }
}

/// A stage reached now.
pub fn stage(piece: PieceId, stage: Stage) -> Act {
    Act::SetStage {
        piece,
        stage,
        at: None,
    }
}

/// A wetting now.
pub fn mop(wetted: &[PieceId]) -> Act {
    Act::Open {
        pit: None,
        wetted: wetted.to_vec(),
        turned: vec![],
        glazed: vec![],
        at: None,
    }
}

/// A taking-back.
pub fn undo(targets: &[EntryKey]) -> Act {
    Act::Undo {
        targets: targets.to_vec(),
    }
}
