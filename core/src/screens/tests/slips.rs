//! Every slip that a screen shows is read into an act when it is filled in.

use super::regatta::{moment, told_until, viewer};
use crate::{
    acts::Act,
    cook::story::{cook, piece},
    forms::{self, FieldFilled, SlipFilled},
    ids::PieceId,
    screens::{self, Slip, SlipField, SlipKind},
    words::Locale,
};

/// Filled in with what fits: the usual choice, else the first, else words that can be read.
fn filled(slip: &Slip, piece: Option<PieceId>) -> SlipFilled {
    let field = |field: &SlipField| FieldFilled {
        field: field.field.clone(),
        text: match field.kind {
            SlipKind::Words if field.field == "find" => "baby back ribs".into(),
            SlipKind::Words => "5:30 am".into(),
            SlipKind::Number => "14".into(),
            SlipKind::Time => "2 pm".into(),
            SlipKind::One => field.usual.clone(),
            SlipKind::Some => field.options[0].value.clone(),
        },
    };
    SlipFilled {
        cook: cook(1),
        piece,
        slip: slip.slip.clone(),
        fields: slip.fields.iter().map(field).collect(),
    }
}

fn read(slip: &Slip, piece: Option<PieceId>) -> Act {
    let act = forms::slip(&viewer(Locale::EnUs), &filled(slip, piece), &moment(205));
    act.unwrap_or_else(|refused| panic!("{}: {refused:?}", slip.slip))
}

#[test]
fn each_slip_of_a_cook_and_of_a_meat_is_read() {
    let told = told_until(205).told();
    let (known, viewer, now) = (told.known(1), viewer(Locale::EnUs), moment(205));
    let write = screens::write_down(&known, &viewer, cook(1), &now).unwrap();
    assert_eq!(write.slips.len(), 15);
    for slip in &write.slips {
        read(slip, None);
    }
    let meat = screens::piece(&known, &viewer, piece(1), &now).unwrap();
    assert_eq!(meat.slips.len(), 8);
    for slip in &meat.slips {
        read(slip, Some(piece(1)));
    }
}

#[test]
fn a_slip_that_is_none_or_does_not_fit_is_refused_in_the_viewers_language() {
    let told = told_until(205).told();
    let (viewer, now) = (viewer(Locale::EsUs), moment(205));
    let write = screens::write_down(&told.known(1), &viewer, cook(1), &now).unwrap();
    let reading = write
        .slips
        .iter()
        .find(|slip| slip.slip == "reading")
        .unwrap();
    let broken = |field: &str, text: &str| {
        let mut filled = filled(reading, None);
        let of = filled
            .fields
            .iter_mut()
            .find(|one| one.field == field)
            .unwrap();
        of.text = text.into();
        forms::slip(&viewer, &filled, &now).unwrap_err().reason
    };
    for (field, text) in [
        ("temp", "warm"),
        ("temp", ""),
        ("place", "pit:x"),
        ("place", ""),
    ] {
        assert!(!broken(field, text).is_empty());
    }
    let none = SlipFilled {
        slip: "sing".into(),
        ..filled(reading, None)
    };
    assert!(forms::slip(&viewer, &none, &now).is_err());
}
