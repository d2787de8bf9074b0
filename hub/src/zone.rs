//! The zone that this machine stands in.

use std::{env, fs, path::Path};

/// The machine's IANA zone: `TZ`, else what `/etc/localtime` points to, else `/etc/timezone`, else UTC.
pub fn of_machine() -> String {
    let named = env::var("TZ")
        .ok()
        .map(|tz| tz.trim_start_matches(':').to_owned());
    let linked = || {
        let link = fs::read_link("/etc/localtime").ok()?;
        in_path(&link)
    };
    let written = || Some(fs::read_to_string("/etc/timezone").ok()?.trim().to_owned());
    named
        .filter(|zone| is_known(zone))
        .or_else(|| linked().filter(|zone| is_known(zone)))
        .or_else(|| written().filter(|zone| is_known(zone)))
        .unwrap_or_else(|| "UTC".into())
}

/// Whether core can tell the time there.
pub fn is_known(zone: &str) -> bool {
    zone.parse::<chrono_tz::Tz>().is_ok()
}

fn in_path(link: &Path) -> Option<String> {
    let text = link.to_str()?;
    let (_, zone) = text.split_once("zoneinfo/")?;
    Some(zone.into())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_zone_is_what_the_link_names() {
        let link = Path::new("../usr/share/zoneinfo/America/Chicago");
        assert_eq!(in_path(link).as_deref(), Some("America/Chicago"));
        assert_eq!(in_path(Path::new("/etc/elsewhere")), None);
        assert!(is_known("America/Mexico_City") && !is_known("Mars/Olympus") && !is_known(""));
    }
}
