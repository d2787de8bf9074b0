//! What pages are dressed with, embedded. Each file's address carries the hash of its bytes, so a browser may keep it for
//! good and never shows an old one.

use axum::{
    extract::Path,
    http::{StatusCode, header},
    response::{IntoResponse, Response},
};
use std::sync::OnceLock;

struct Asset {
    name: &'static str,
    kind: &'static str,
    bytes: &'static [u8],
}

const ASSETS: [Asset; 4] = [
    Asset {
        name: "slowbend.css",
        kind: "text/css; charset=utf-8",
        bytes: include_bytes!("slowbend.css"),
    },
    Asset {
        name: "slowbend.js",
        kind: "text/javascript; charset=utf-8",
        bytes: include_bytes!("slowbend.js"),
    },
    Asset {
        name: "icon.svg",
        kind: "image/svg+xml",
        bytes: include_bytes!("icon.svg"),
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
