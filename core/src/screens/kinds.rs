//! The kinds of entries in a few words.

use crate::words::key;

/// What a kind of entry is called; of one that this version does not know, "something newer".
pub(super) fn kind_name(kind: &str) -> &'static str {
    match kind {
        "crew_joined" => key("kind-crew-joined"),
        "device_named" => key("kind-device-named"),
        "pit_added" => key("kind-pit-added"),
        "thermometer_added" => key("kind-thermometer-added"),
        "thermometer_checked" => key("kind-thermometer-checked"),
        "field_set" => key("kind-field-set"),
        "dismissed" => key("kind-dismissed"),
        "slept" => key("kind-slept"),
        "woke" => key("kind-woke"),
        "watch_taken" => key("kind-watch-taken"),
        "cook_started" => key("kind-cook-started"),
        "cook_finished" => key("kind-cook-finished"),
        "piece_added" => key("kind-piece-added"),
        "piece_meant" => key("kind-piece-meant"),
        "piece_split" => key("kind-piece-split"),
        "pieces_joined" => key("kind-pieces-joined"),
        "stage_set" => key("kind-stage-set"),
        "piece_moved" => key("kind-piece-moved"),
        "rub_answered" => key("kind-rub-answered"),
        "opened" => key("kind-opened"),
        "checked" => key("kind-checked"),
        "read" => key("kind-read"),
        "probe_bound" => key("kind-probe-bound"),
        "series_saved" => key("kind-series-saved"),
        "fed" => key("kind-fed"),
        "vent_changed" => key("kind-vent-changed"),
        "fire_seen" => key("kind-fire-seen"),
        "weather_said" => key("kind-weather-said"),
        "wood_said" => key("kind-wood-said"),
        "wood_tamed" => key("kind-wood-tamed"),
        "fire_found_out" => key("kind-fire-found-out"),
        "smoke_watched" => key("kind-smoke-watched"),
        "feed_planned" => key("kind-feed-planned"),
        "unit_weighed" => key("kind-unit-weighed"),
        "skipped" => key("kind-skipped"),
        "put_off" => key("kind-put-off"),
        "answered" => key("kind-answered"),
        "went_past" => key("kind-went-past"),
        "noted" => key("kind-noted"),
        "dish_added" => key("kind-dish-added"),
        "dish_ready" => key("kind-dish-ready"),
        "batch_planned" => key("kind-batch-planned"),
        "trimmings_kept" => key("kind-trimmings-kept"),
        "salt_weighed" => key("kind-salt-weighed"),
        "plan_accepted" => key("kind-plan-accepted"),
        "plan_dropped" => key("kind-plan-dropped"),
        "courses_planned" => key("kind-courses-planned"),
        "sheet_kept" => key("kind-sheet-kept"),
        "voided" => key("kind-voided"),
        "erased" => key("kind-erased"),
        _ => key("kind-unknown"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::log::Payload;

    #[test]
    fn no_kind_of_this_version_is_called_something_newer() {
        for (kind, _) in Payload::KINDS {
            assert_ne!(kind_name(kind), key("kind-unknown"), "{kind}");
        }
    }
}
