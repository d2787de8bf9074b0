//! Where a number or a caution was published, and where it was read. A number without one says so.

use super::keyed::keyed;

keyed! {
    /// A published source, or the plain statement that there is none.
    Source {
        /// USDA FSIS, Safe Minimum Internal Temperature Chart.
        UsdaChart = "source-usda-chart",
        /// FDA Food Code 2022, 3-401.11(A)(2): injected, mechanically tenderized and ground meat.
        FoodCodeRaised = "source-food-code-raised",
        /// FDA Food Code 2022, 3-401.11(A)(3): poultry and stuffed meat.
        FoodCodeStuffed = "source-food-code-stuffed",
        /// FDA Food Code 2022, 3-501.19(B): four hours by time alone.
        FoodCodeTime = "source-food-code-time",
        /// FDA Food Code 2022, 3-501.14(A): cooling in two stages.
        FoodCodeCooling = "source-food-code-cooling",
        /// USDA FSIS, Cooking Guideline for Meat and Poultry Products (Revised Appendix A), December 2021.
        FsisAppendixA = "source-fsis-appendix-a",
        /// USDA press releases on the danger zone and the two-hour rule.
        UsdaTwoHours = "source-usda-two-hours",
        /// USDA FSIS, Smoking Meat and Poultry.
        UsdaSmoking = "source-usda-smoking",
        /// USDA and FDA on smoking meat, May 2012: the air of a smoker.
        UsdaSmokerAir = "source-usda-smoker-air",
        /// Marinating advice that quotes USDA experts.
        UsdaMarinade = "source-usda-marinade",
        /// US Consumer Product Safety Commission, release 99-051, and 16 CFR 1500.14(b)(6).
        CpscCharcoal = "source-cpsc-charcoal",
        /// US Consumer Product Safety Commission, document #5012.
        Cpsc5012 = "source-cpsc-5012",
        /// USDA National Nutrient Database for Standard Reference, Release 26, 2013.
        UsdaSr26 = "source-usda-sr26",
        /// No published value: what cooks commonly do.
        CommonPractice = "source-common-practice",
        /// No published value: our own caution, on the safe side of the nearest published one.
        OwnCaution = "source-own-caution",
    }
}

impl Source {
    /// Where it was read, in the words of the collected check values; "official text not read" is said where so.
    pub const fn read_in(self) -> &'static str {
        match self {
            Self::UsdaChart => {
                "formsbank.com copy of the FSIS Safe Minimum Internal Temperature Chart"
            }
            Self::FoodCodeRaised => {
                "155 F for 17 s in dirtyfl.com violation 03C-06-5 quoting 3-401.11(A)(2); the other steps in a \
                 portal.laserfiche.com adoption sheet; official text not read"
            }
            Self::FoodCodeStuffed => {
                "lawinsider.com clause quoting 3-401.11(A)(3); official text not read"
            }
            Self::FoodCodeTime => {
                "Wyoming chapter 3 section 62 (justia) and others; official text not read"
            }
            Self::FoodCodeCooling => {
                "Delaware and Wisconsin 3-501.14 (casetext); official text not read"
            }
            Self::FsisAppendixA => "FSIS-GD-2021-14 PDF, Tables 2, 4 and 6 with footnotes 5 and 14",
            Self::UsdaTwoHours => "foodmate.com reprints of USDA releases (2016, 2017)",
            Self::UsdaSmoking => "docslib.org copy of FSIS \"Smoking Meat and Poultry\"",
            Self::UsdaSmokerAir => {
                "afbl.cn reprint (USDA/FDA, May 2012); aces.edu; newsbug.info (Extension)"
            }
            Self::UsdaMarinade => {
                "thecuttingboard.org (marinating safely) and napsnet.com PDF 79459; the FSIS wording itself from memory"
            }
            Self::CpscCharcoal => "cpsc.gov release 99-051; 61 FR 19818 in govinfo",
            Self::Cpsc5012 => "webarchive.library.unt.edu copy of CPSC Document #5012",
            Self::UsdaSr26 => "ABBREV.txt and FOOD_DES.txt in a public copy (MunkiPhD/ndb_data)",
            Self::CommonPractice => "common practice, no source",
            Self::OwnCaution => "no source: our own caution",
        }
    }

    /// Whether somebody with authority published it.
    pub const fn is_published(self) -> bool {
        !matches!(self, Self::CommonPractice | Self::OwnCaution)
    }
}
