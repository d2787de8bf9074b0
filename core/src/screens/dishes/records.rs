//! The records of the dishes.

use crate::{
    ids::{CookId, DishId},
    screens::{Button, Caution, Line, Link, Weight, records::records},
};
use serde::{Deserialize, Serialize};

records! {
    /// What is not meat.
    DishesScreen {
        /** Of which cook. */ cook: CookId,
        /** Heading. */ title: String,
        /** How long until it is on the table. */ serve: String,
        /** The dishes, what asks most for an eye first. */ dishes: Vec<DishCard>,
        /** What to say where there is none. */ none: String,
        /** The labels of the forms. */ labels: DishLabels,
        /** Where else to go. */ links: Vec<Link>,
        /** Cautions. */ cautions: Vec<Caution>,
        /** Until when this is true. */ until: i64,
    }
    /// One dish.
    DishCard {
        /** Which one. */ dish: DishId,
        /** What it is called. */ name: String,
        /** Ready since when, or not yet. */ state: String,
        /** How it is held, and what to read. */ detail: String,
        /** How much it asks for an eye. */ weight: Weight,
        /** Ready, or not after all. */ buttons: Vec<Button>,
        /** What was written down about it, latest first. */ notes: Vec<Line>,
    }
    /// The labels of the forms on the screen of the dishes.
    DishLabels {
        /** Heading of the form that adds one. */ add: String,
        /** Label of its name. */ name: String,
        /** Label of how it is held. */ held: String,
        /** Held hot. */ hot: String,
        /** Held cold. */ cold: String,
        /** Label of a note. */ note: String,
        /** The button that writes a note down. */ write: String,
    }
}
