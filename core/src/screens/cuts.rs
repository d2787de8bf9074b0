//! All cuts, or those that were searched for: where somebody goes who wants to know one.

use super::{CutChoice, CutsScreen, glance::Glance};
use crate::{
    catalogue::find,
    checks::Cut,
    cook::Known,
    error::Refused,
    moment::Moment,
    words::{Arg, Viewer, Words},
};

/// The cuts that `sought` can mean, the nearest first; all of them where nothing is sought.
pub fn cuts(known: &Known<'_>, viewer: &Viewer, sought: &str, moment: &Moment) -> CutsScreen {
    let glance = Glance::of(known, viewer, moment);
    let sought = sought.trim();
    let cuts: Vec<CutChoice> = find(sought)
        .into_iter()
        .map(|cut| glance.cut_choice(cut))
        .collect();
    let none = || {
        glance
            .say
            .with("cuts-none", &[("sought", Arg::Text(sought))])
    };
    CutsScreen {
        title: glance.say.text("cuts-title"),
        lead: glance.say.text("cuts-lead"),
        find: glance.say.text("cuts-find"),
        search: glance.say.text("cuts-search"),
        all: glance.say.text("cuts-all"),
        sought: sought.to_owned(),
        none: cuts.is_empty().then(none),
        cuts,
        until: i64::MAX,
    }
}

/// The one cut that `sought` means.
///
/// # Errors
/// What to do instead, where it means none or several.
pub fn the_cut(viewer: &Viewer, sought: &str) -> Result<Cut, Refused> {
    let say = Words::of(viewer);
    let sought = sought.trim();
    let found = find(sought);
    let names: Vec<String> = found.iter().map(|cut| say.text(cut.key())).collect();
    let cuts = say.list(&names);
    let typed = ("sought", Arg::Text(sought));
    Err(Refused::new(match found.as_slice() {
        [one] => return Ok(*one),
        [] => say.with("cuts-none", &[typed]),
        _ if sought.is_empty() => say.text("form-choose"),
        _ => {
            let args = [typed, ("cuts", Arg::Text(&cuts))];
            say.with("cuts-which", &args)
        }
    }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{ids::DeviceId, words::Locale};

    fn sought(locale: Locale, text: &str) -> Result<Cut, String> {
        let viewer = Viewer {
            locale,
            ..Viewer::default_for(DeviceId(uuid::Uuid::nil()))
        };
        the_cut(&viewer, text).map_err(|refused| refused.reason)
    }

    #[test]
    fn a_name_that_means_one_cut_is_that_cut_in_whichever_language() {
        for locale in Locale::ALL {
            assert_eq!(sought(locale, " boston butt "), Ok(Cut::PorkButt));
            assert_eq!(sought(locale, "medio pollo"), Ok(Cut::ChickenHalf));
        }
    }

    #[test]
    fn a_name_that_means_several_or_none_is_refused_with_what_to_do() {
        let several = sought(Locale::EnUs, "brisket").expect_err("there are three");
        for name in [
            "Brisket, whole",
            "Brisket flat",
            "Brisket point",
            "Choose one",
        ] {
            assert!(several.contains(name), "{several}");
        }
        let none = sought(Locale::EsUs, "unicornio").expect_err("there is none");
        assert!(
            none.contains("unicornio") && none.contains("Busca por el animal"),
            "{none}"
        );
        assert!(sought(Locale::EnUs, "  ").is_err());
    }
}
