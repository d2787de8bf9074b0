//! Who may be wetted from one mop, brush or bowl. Start with [`may_share`].

/// What a mop would touch, told by the caller from the safety of the meat.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Touched {
    /// Chicken, turkey, duck or another bird.
    pub poultry: bool,
    /// Not yet at its published minimum; if that is not known, true.
    pub raw: bool,
}

/// Why two meats need a mop each.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Apart {
    /// Raw poultry never shares a mop, not even with raw poultry: each bird is done at its own time.
    RawPoultry,
    /// What touched raw meat does not touch meat that has reached its minimum.
    RawOnCooked,
}

impl Apart {
    /// The safety reason in English, its source named.
    pub const fn reason(self) -> &'static str {
        match self {
            Self::RawPoultry => {
                "Raw poultry gets a mop, brush and bowl of its own: what touched it must not touch other food. \
                 USDA FSIS; local rules come first."
            }
            Self::RawOnCooked => {
                "A brush that touched raw meat must not touch cooked food: take a clean one, and boil the sauce \
                 before it is used again. USDA FSIS; local rules come first."
            }
        }
    }
}

/// Whether one mop may serve both meats; if not, why. Symmetric.
///
/// Source: USDA FSIS on marinating and basting, never reuse the raw marinade or the basting brush on cooked food;
/// marinade may be reused only if boiled (read in thecuttingboard.org, "marinating safely"; the wording of FSIS itself
/// from memory). That raw poultry shares with nothing at all is our stricter rule on top of it.
pub const fn may_share(a: Touched, b: Touched) -> Result<(), Apart> {
    if (a.poultry && a.raw) || (b.poultry && b.raw) {
        Err(Apart::RawPoultry)
    } else if a.raw != b.raw {
        Err(Apart::RawOnCooked)
    } else {
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const ALL: [Touched; 4] = [
        Touched {
            poultry: true,
            raw: true,
        },
        Touched {
            poultry: true,
            raw: false,
        },
        Touched {
            poultry: false,
            raw: true,
        },
        Touched {
            poultry: false,
            raw: false,
        },
    ];

    #[test]
    fn raw_poultry_shares_a_mop_with_nothing() {
        for other in ALL {
            assert_eq!(
                may_share(ALL[0], other),
                Err(Apart::RawPoultry),
                "{other:?}"
            );
            assert_eq!(
                may_share(other, ALL[0]),
                Err(Apart::RawPoultry),
                "{other:?}"
            );
        }
    }

    #[test]
    fn a_brush_goes_from_raw_to_raw_and_from_cooked_to_cooked_only() {
        let [_, done_bird, raw_ribs, done_ribs] = ALL;
        assert_eq!(may_share(raw_ribs, raw_ribs), Ok(()));
        assert_eq!(may_share(done_bird, done_ribs), Ok(()));
        assert_eq!(may_share(raw_ribs, done_ribs), Err(Apart::RawOnCooked));
        assert_eq!(may_share(done_bird, raw_ribs), Err(Apart::RawOnCooked));
    }

    #[test]
    fn each_reason_names_its_source_and_defers_to_local_rules() {
        for apart in [Apart::RawPoultry, Apart::RawOnCooked] {
            assert!(
                apart.reason().contains("USDA FSIS") && apart.reason().contains("local rules"),
                "{apart:?}"
            );
        }
    }
}
