//! What is left of a cut when it is cooked, and what of it is bone. Start at [`cut_yield`].

use crate::checks::Cut;
use serde::{Deserialize, Serialize};

/// What a figure stands on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Grounds {
    /// Published for this cut.
    Published,
    /// Published for the nearest cut or way of cooking there is, or reckoned from that.
    Nearest,
    /// Common practice, no source.
    CommonPractice,
}

/// Shares of a cut, in thousandths: of its trimmed raw weight, bone included, what is left when it is cooked; and of that,
/// what nobody eats. Law: `low ≤ expected ≤ high`, and less than half of what is cooked is refuse.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct CutYield {
    /// The least that it weighs hot from the fire.
    pub low: i64,
    /// What is expected.
    pub expected: i64,
    /// The most.
    pub high: i64,
    /// What these stand on: USDA Table of Cooking Yields for Meat and Poultry, Release 2, where published.
    pub weighs: Grounds,
    /// What nobody eats of what is cooked: bone and connective tissue.
    pub refuse: i64,
    /// What that stands on: USDA SR26 where published for the cooked cut.
    pub refused: Grounds,
    /// What is trimmed off before, thousandths of the weight as bought: common practice, no source.
    pub trim: i64,
}

use Grounds::{CommonPractice, Nearest, Published};

/// What is left of a cut.
///
/// USDA has no row for meat smoked until it is tender, and its braised 69 and 74 % promise too much. Briskets are those of
/// Kerth, Wall and Grayson-Holter (Meat and Muscle Biology, article 18269, abstract read): 59.3 % at 85 °C as the most,
/// 56.0 % at 90 °C as expected, each held for 3 h; 50 % as the least, for those taken further (common practice, no
/// source). Pork shoulder is USDA's braised picnic less as much in proportion as brisket is of USDA's braised flat. Other
/// rows are of meat roasted in an oven, of beef ribs braised; they are in `tests/published/cooking_yields.csv`.
///
/// Bone cooks away in part too: USDA SR26 gives what is refuse of the *cooked* cut, which beside the raw share of the same cut
/// is about the same share of a smaller whole. So refuse is taken of what is cooked (`refuse.csv`); of spare ribs, butt and
/// short ribs as braised, which is nearest to smoked until tender. Of a rack of spare ribs that comes to 47.1 % of the raw
/// weight; Natick Laboratories measured 46.6 %.
pub fn cut_yield(cut: Cut) -> CutYield {
    match cut {
        Cut::SpareRibs => of([680, 760, 790], Published, (380, Published), 50),
        Cut::SpareRibsTrimmed => of([680, 760, 790], Published, (380, Nearest), 0),
        Cut::BabyBackRibs => of([740, 820, 900], Published, (430, Published), 20),
        Cut::PorkButt => of([536, 600, 635], Nearest, (260, Published), 30),
        Cut::PorkPicnic => of([536, 600, 635], Nearest, (270, Published), 50),
        Cut::PorkBelly => of([550, 650, 760], CommonPractice, (70, Nearest), 0),
        Cut::PorkLoin => of([680, 750, 880], Nearest, (250, CommonPractice), 0),
        Cut::Brisket => of([500, 560, 593], Published, (10, Published), 150),
        Cut::BrisketFlat => of([500, 560, 593], Nearest, (0, Published), 50),
        Cut::BrisketPoint => of([500, 560, 593], Nearest, (10, Published), 50),
        Cut::PlateRibs => of([652, 753, 822], Nearest, (290, Nearest), 50),
        Cut::BeefBackRibs => of([652, 753, 822], Published, (450, CommonPractice), 0),
        Cut::TriTip => of([770, 840, 890], Published, (10, CommonPractice), 20),
        Cut::ChickenWhole => of([680, 780, 840], Published, (330, Published), 0),
        Cut::ChickenHalf => of([680, 780, 840], Published, (330, Published), 0),
        Cut::ChickenThighs => of([580, 690, 790], Published, (330, Published), 0),
        Cut::TurkeyBreast => of([610, 720, 820], Nearest, (80, Published), 0),
        Cut::LambShoulder => of([530, 740, 880], Nearest, (250, CommonPractice), 0),
        Cut::Sausages | Cut::PoultrySausages => {
            of([700, 800, 880], CommonPractice, (0, CommonPractice), 0)
        }
    }
}

const fn of(
    [low, expected, high]: [i64; 3],
    weighs: Grounds,
    (refuse, refused): (i64, Grounds),
    trim: i64,
) -> CutYield {
    CutYield {
        low,
        expected,
        high,
        weighs,
        refuse,
        refused,
        trim,
    }
}
