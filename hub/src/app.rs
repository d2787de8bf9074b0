//! All addresses. Start at [`app_behind`]: tests call it in-process.

use crate::{
    assets, demo, forms,
    guard::{self, Gate},
    home::Home,
    lan::join,
    live, pages, size,
};
use axum::{
    Router,
    extract::DefaultBodyLimit,
    middleware,
    routing::{any, get, post},
};
use std::sync::Arc;

/// The largest form taken, bytes: far above any act.
pub const FORM_BYTES_MAX: usize = 256 * 1024;

/// The whole server for this machine alone.
#[cfg(test)]
pub fn app(home: Arc<Home>) -> Router {
    let gate = Gate::Here(home.port);
    app_behind(home, gate)
}

/// The whole server: the real pages, the demo's under `/demo`, and who is let in.
pub fn app_behind(home: Arc<Home>, gate: Gate) -> Router {
    let demo = Router::new()
        .route("/demo", post(demo::post))
        .route("/demo/", any(demo::front))
        .route("/demo/{*rest}", any(demo::front))
        .with_state(Arc::clone(&home));
    routes(Arc::clone(&home))
        .merge(demo)
        .merge(join::routes(Arc::clone(&home)))
        .layer(middleware::from_fn_with_state(
            Arc::clone(&home),
            size::bound,
        ))
        .layer(middleware::from_fn_with_state((home, gate), guard::guard))
}

/// The pages of one home, and what they send.
pub fn routes(home: Arc<Home>) -> Router {
    Router::new()
        .route("/assets/{file}", get(assets::serve))
        .route("/away", get(pages::away))
        .route("/away.js", get(assets::away_script))
        .route("/live", get(live::events))
        .route("/rings", get(live::rings))
        .route("/found", get(pages::found))
        .route("/rang", post(forms::rang::post))
        .route("/act", post(forms::act::post))
        .route("/cook", post(forms::cook::post))
        .route("/card", get(pages::show).post(forms::card::take))
        .route("/card/start", post(forms::card::begin))
        .route("/cook/{cook}/card.json", get(forms::card::file))
        .route("/cook/{cook}/log.csv", get(forms::temp_log::file))
        .route("/cook/{cook}/sheet.ics", get(forms::sheet::calendar))
        .route(
            "/cook/{cook}/file",
            post(forms::file::post).layer(DefaultBodyLimit::max(forms::file::FILE_BYTES_MAX)),
        )
        .route("/cook/{cook}/taking/{number}/stop", post(forms::file::stop))
        .route(
            "/cook/{cook}/{form}",
            get(pages::show).post(forms::write::post),
        )
        .route(
            "/cook/{cook}/pit/{pit}/{form}",
            get(pages::show).post(forms::opening::post),
        )
        .route(
            "/meat/{piece}/check",
            get(pages::show).post(forms::check::post),
        )
        .route(
            "/meat/{piece}/{form}",
            get(pages::show).post(forms::meat::post),
        )
        .route(
            "/settings/{form}",
            get(pages::show).post(forms::settings::post),
        )
        .fallback(get(pages::show))
        .layer(DefaultBodyLimit::max(FORM_BYTES_MAX))
        .with_state(home)
}
