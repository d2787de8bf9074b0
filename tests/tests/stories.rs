//! Every story file, lived through the core's own door. A new file is named here, and the last test sees to it.

use slowbend_tests::stories;

macro_rules! stories {
    ($($name:ident,)*) => {
        $(#[test]
        fn $name() {
            stories::live(stringify!($name)).unwrap_or_else(|wrong| panic!("{wrong}"));
        })*

        #[test]
        fn every_story_file_is_lived() {
            assert_eq!(stories::names(), [$(stringify!($name)),*]);
        }
    };
}

stories! {
    card_to_cook,
    courses_and_a_sheet_that_no_longer_fits,
    dead_probe_rings,
    fire_by_taps,
    fire_out,
    half_a_bird_by_any_name,
    hours_ahead,
    kitchen,
    one_opening,
    overruled_between_two_phones,
    plan_accepted_and_done,
    posted_twice,
    probe_falls_silent_in_a_meat,
    readings_over_night,
    refused_and_told,
    rub_not_yet,
    rub_to_table,
    spanish_viewer,
    turkey_three_spots,
    undo_and_restore,
}
