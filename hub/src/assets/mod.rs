//! What pages are dressed with, embedded. Each file's address carries the hash of all bytes, so a browser may keep it for
//! good and never shows an old one. Style and script are written in files by subject and sent as one file each.

use axum::{
    extract::Path,
    http::{StatusCode, header},
    response::{IntoResponse, Response},
};
use std::sync::OnceLock;

/// The style of all pages.
pub const CSS: &str = concat!(
    include_str!("css/inks.css"),
    include_str!("css/type.css"),
    include_str!("css/frame.css"),
    include_str!("css/parts.css"),
    include_str!("css/forms.css"),
    include_str!("css/now.css"),
    include_str!("css/propped.css"),
    include_str!("css/card.css"),
    include_str!("css/cuts.css"),
    include_str!("css/readings.css"),
    include_str!("css/ahead.css"),
    include_str!("css/opening.css"),
    include_str!("css/fire.css"),
    include_str!("css/media.css"),
);

/// The style of the pages that are printed, sent beside [`CSS`] with those only.
pub const PAPER: &str = concat!(
    include_str!("css/log.css"),
    include_str!("css/kitchen.css"),
    include_str!("css/run-sheet.css"),
);

/// The script of all pages; the last file begins it.
const JS: &str = concat!(
    include_str!("js/kit.js"),
    include_str!("js/morph.js"),
    include_str!("js/pages.js"),
    include_str!("js/narrow.js"),
    include_str!("js/live.js"),
    include_str!("js/ring.js"),
    include_str!("js/wall.js"),
    include_str!("js/kitchen.js"),
    include_str!("js/begin.js"),
);

/// One file.
pub struct Asset {
    /// Its name, below `/assets/`.
    pub name: &'static str,
    kind: &'static str,
    /// What is in it.
    pub bytes: &'static [u8],
}

/// All files. The pictures of the icon are made of `icon.svg` by `tests/browser/icons.mjs`.
pub const ASSETS: [Asset; 8] = [
    Asset {
        name: "slowbend.css",
        kind: "text/css; charset=utf-8",
        bytes: CSS.as_bytes(),
    },
    Asset {
        name: "paper.css",
        kind: "text/css; charset=utf-8",
        bytes: PAPER.as_bytes(),
    },
    Asset {
        name: "slowbend.js",
        kind: "text/javascript; charset=utf-8",
        bytes: JS.as_bytes(),
    },
    Asset {
        name: "icon.svg",
        kind: "image/svg+xml",
        bytes: include_bytes!("icon.svg"),
    },
    Asset {
        name: "icon-192.png",
        kind: "image/png",
        bytes: include_bytes!("icon-192.png"),
    },
    Asset {
        name: "icon-512.png",
        kind: "image/png",
        bytes: include_bytes!("icon-512.png"),
    },
    Asset {
        name: "icon-whole-512.png",
        kind: "image/png",
        bytes: include_bytes!("icon-whole-512.png"),
    },
    Asset {
        name: "manifest.webmanifest",
        kind: "application/manifest+json",
        bytes: include_bytes!("manifest.webmanifest"),
    },
];

/// The address of the file `name`.
pub fn path(name: &str) -> String {
    static HASH: OnceLock<String> = OnceLock::new();
    let hash = HASH.get_or_init(|| {
        let mut hasher = blake3::Hasher::new();
        for asset in &ASSETS {
            hasher.update(asset.bytes);
        }
        hasher.finalize().to_hex()[..12].to_owned()
    });
    format!("/assets/{name}?{hash}")
}

/// Gives a file.
pub async fn serve(Path(file): Path<String>) -> Response {
    match ASSETS.iter().find(|asset| asset.name == file) {
        Some(asset) => {
            let headers = [
                (header::CONTENT_TYPE, asset.kind),
                (header::CACHE_CONTROL, "public, max-age=31536000, immutable"),
            ];
            (headers, asset.bytes).into_response()
        }
        None => StatusCode::NOT_FOUND.into_response(),
    }
}

/// The script that shows `/away` while the home post cannot be reached. It stands at the root, because it answers for every
/// address below its own, and a browser asks for it anew each time.
pub async fn away_script() -> Response {
    let headers = [
        (header::CONTENT_TYPE, "text/javascript; charset=utf-8"),
        (header::CACHE_CONTROL, "no-cache"),
    ];
    let script = include_str!("away.js").replace("CSS", &path("slowbend.css"));
    (headers, script).into_response()
}
