//! What the first page costs a slow line, and what a browser is told when it puts Slowbend among its programs.

use super::{get, home};
use crate::assets::ASSETS;
use axum::http::StatusCode;
use serde_json::Value;

/// The most that the first page may weigh with all it may ever ask for, bytes, as it goes over the wire: our own bound.
const FIRST_PAGE_MAX: usize = 100_000;

#[tokio::test]
async fn the_first_page_with_all_its_files_is_light() {
    let (_folder, home) = home();
    let page = get(&home, "/").await.body;
    assert!(
        !page.contains("paper.css"),
        "only what is printed asks for it"
    );
    let page = page.len();
    let kept = get(&home, "/away").await.body.len() + get(&home, "/away.js").await.body.len();
    let asked = ASSETS.iter().filter(|asset| asset.name != "paper.css");
    let files: usize = asked.map(|asset| asset.bytes.len()).sum();
    let all = page + kept + files;
    assert!(
        all < FIRST_PAGE_MAX,
        "{all} bytes: page {page}, kept for when the home post is away {kept}, files {files}"
    );
}

#[tokio::test]
async fn the_manifest_names_icons_that_are_there_in_the_size_it_says() {
    let (_folder, home) = home();
    let manifest = get(&home, "/assets/manifest.webmanifest").await;
    assert_eq!(manifest.status, StatusCode::OK);
    let manifest: Value = serde_json::from_str(&manifest.body).unwrap();
    assert_eq!(manifest["start_url"], "/");
    let icons = manifest["icons"].as_array().unwrap();
    assert!(icons.len() >= 4);
    for icon in icons {
        let name = icon["src"].as_str().unwrap();
        let file = name.strip_prefix("/assets/").unwrap();
        let found = ASSETS.iter().find(|asset| asset.name == file);
        let bytes = found.unwrap_or_else(|| panic!("no {name}")).bytes;
        if let Some((side, _)) = icon["sizes"].as_str().unwrap().split_once('x') {
            assert_eq!(png_width(bytes), side.parse::<u32>().unwrap(), "{name}");
        }
    }
}

/// The width in a PNG's header: four bytes from the 16th (W3C, PNG, "IHDR", from memory).
fn png_width(bytes: &[u8]) -> u32 {
    assert!(bytes.starts_with(b"\x89PNG"));
    u32::from_be_bytes(bytes[16..20].try_into().unwrap())
}

#[tokio::test]
async fn what_is_shown_while_the_home_post_is_away_says_what_to_do_in_the_readers_language() {
    let (_folder, home) = home();
    let page = super::get_in(&home, "/away", "es-MX").await;
    assert_eq!(page.status, StatusCode::OK);
    assert!(
        page.body.contains("lang=\"es-US\"") && !page.body.contains('⟨'),
        "{}",
        page.body
    );
    let script = get(&home, "/away.js").await.body;
    assert!(script.contains(&crate::assets::path("slowbend.css")));
}
