//! The home's network: who is let in, and each way of not being let in.

use super::{entries, home, token};
use crate::{
    app::app_behind,
    data,
    guard::Gate,
    home::Home,
    lan::{COOKIE, Lan},
    serve::on_network,
};
use axum::{
    body::{Body, to_bytes},
    http::{Request, StatusCode, header, request::Builder},
};
use axum_server::Handle;
use rustls::{ClientConfig, RootCertStore, pki_types::ServerName};
use std::{net::TcpListener, sync::Arc};
use tokio::{
    io::{AsyncReadExt, AsyncWriteExt},
    net::TcpStream,
};
use tower::ServiceExt;

const HOST: &str = "127.0.0.2:7410";

/// A home that is served on the network too.
fn open_home() -> (tempfile::TempDir, Arc<Home>, Arc<Lan>) {
    let (folder, home) = home();
    let lan = lan(folder.path(), 7410);
    assert!(home.lan.set(lan.clone()).is_ok());
    (folder, home, lan)
}

fn lan(place: &std::path::Path, port: u16) -> Arc<Lan> {
    let folders = data::folders_in(place);
    let address = "127.0.0.2".parse().unwrap();
    Arc::new(Lan::ready(&folders, address, port, super::NOW).unwrap())
}

struct Answer {
    status: StatusCode,
    set: Option<String>,
    body: String,
}

async fn ask(home: &Arc<Home>, gate: Gate, request: Request<Body>) -> Answer {
    let answer = app_behind(home.clone(), gate)
        .oneshot(request)
        .await
        .unwrap();
    let set = answer.headers().get(header::SET_COOKIE);
    let set = set.map(|value| value.to_str().unwrap().to_owned());
    assert!(
        answer
            .headers()
            .contains_key(header::CONTENT_SECURITY_POLICY)
    );
    let status = answer.status();
    let body = to_bytes(answer.into_body(), 1 << 20).await.unwrap();
    let body = String::from_utf8(body.to_vec()).unwrap();
    Answer { status, set, body }
}

/// Asks from the network, with this cookie.
async fn from_afar(
    home: &Arc<Home>,
    lan: &Arc<Lan>,
    request: Builder,
    cookie: Option<&str>,
) -> Answer {
    let mut request = request.header(header::HOST, HOST);
    if let Some(cookie) = cookie {
        request = request.header(
            header::COOKIE,
            format!("slowbend-viewer=locale:es-US; {COOKIE}={cookie}"),
        );
    }
    let form = format!("token={}&form=start&back=/&name=Lunch", token());
    let body = match request.method_ref() {
        Some(&axum::http::Method::POST) => Body::from(form),
        _ => Body::empty(),
    };
    ask(home, Gate::Lan(lan.clone()), request.body(body).unwrap()).await
}

fn path_of(lan: &Lan) -> String {
    lan.invitation().split_once(HOST).unwrap().1.to_owned()
}

/// Lets a phone in; the value of its cookie.
async fn let_in(home: &Arc<Home>, lan: &Arc<Lan>) -> String {
    let joined = from_afar(home, lan, Request::get(path_of(lan)), None).await;
    assert_eq!(joined.status, StatusCode::SEE_OTHER, "{}", joined.body);
    let set = joined.set.unwrap();
    assert!(set.contains("SameSite=Strict; HttpOnly; Secure"), "{set}");
    set.split(';')
        .next()
        .unwrap()
        .split_once('=')
        .unwrap()
        .1
        .to_owned()
}

#[tokio::test]
async fn a_phone_that_scanned_the_code_sees_the_pages_and_records() {
    let (_folder, home, lan) = open_home();
    let cookie = let_in(&home, &lan).await;
    let page = from_afar(&home, &lan, Request::get("/"), Some(&cookie)).await;
    assert_eq!(page.status, StatusCode::OK, "{}", page.body);
    assert!(
        page.body.contains("lang=\"es-US\""),
        "its own choices hold too"
    );
    let before = entries(&home);
    let form = Request::post("/cook")
        .header(header::ORIGIN, format!("https://{HOST}"))
        .header(header::CONTENT_TYPE, "application/x-www-form-urlencoded");
    let started = from_afar(&home, &lan, form, Some(&cookie)).await;
    assert_eq!(started.status, StatusCode::SEE_OTHER, "{}", started.body);
    assert!(entries(&home) > before);
}

#[tokio::test]
async fn whoever_was_not_let_in_is_told_where_the_code_is() {
    let (_folder, home, lan) = open_home();
    let forged = format!("{}.{}", token(), "0".repeat(64));
    for cookie in [None, Some("nonsense"), Some(forged.as_str())] {
        for path in [
            "/",
            "/settings",
            "/live",
            "/rings",
            "/phones",
            "/demo/",
            "/nowhere",
        ] {
            let refused = from_afar(&home, &lan, Request::get(path), cookie).await;
            assert_eq!(refused.status, StatusCode::FORBIDDEN, "{path} {cookie:?}");
            let told =
                refused.body.contains("Other phones") || refused.body.contains("Otros teléfonos");
            assert!(told, "{}", refused.body);
        }
    }
    let style = from_afar(&home, &lan, Request::get("/assets/slowbend.css"), None).await;
    assert_eq!(
        style.status,
        StatusCode::OK,
        "what is refused is readable too"
    );
}

#[tokio::test]
async fn a_wrong_code_and_one_that_was_replaced_let_nobody_in() {
    let (_folder, home, lan) = open_home();
    let shown = path_of(&lan);
    lan.keys.invite_anew();
    for path in [shown.as_str(), "/join/x", "/join/0"] {
        let refused = from_afar(&home, &lan, Request::get(path), None).await;
        assert_eq!(
            (refused.status, refused.set),
            (StatusCode::FORBIDDEN, None),
            "{path}"
        );
    }
}

#[tokio::test]
async fn a_guest_neither_sees_the_code_nor_sends_anybody_away() {
    let (_folder, home, lan) = open_home();
    let cookie = let_in(&home, &lan).await;
    let shown = lan.invitation();
    let origin = format!("https://{HOST}");
    for request in [
        Request::get("/phones"),
        Request::post("/phones/new-code").header(header::ORIGIN, &origin),
        Request::post("/phones/send-away").header(header::ORIGIN, &origin),
    ] {
        let refused = from_afar(&home, &lan, request, Some(&cookie)).await;
        assert_eq!(refused.status, StatusCode::FORBIDDEN);
        assert!(!refused.body.contains("/join/"), "{}", refused.body);
    }
    assert_eq!(lan.invitation(), shown);
    assert!(lan.keys.knows(&cookie));
}

#[tokio::test]
async fn who_was_sent_away_is_a_stranger_again() {
    let (_folder, home, lan) = open_home();
    let cookie = let_in(&home, &lan).await;
    let request = Request::post("/phones/send-away")
        .header(header::HOST, "127.0.0.1:7410")
        .header(header::ORIGIN, "http://127.0.0.1:7410");
    let sent = ask(
        &home,
        Gate::Here(7410),
        request.body(Body::empty()).unwrap(),
    )
    .await;
    assert_eq!(sent.status, StatusCode::SEE_OTHER, "{}", sent.body);
    let refused = from_afar(&home, &lan, Request::get("/"), Some(&cookie)).await;
    assert_eq!(refused.status, StatusCode::FORBIDDEN);
}

#[tokio::test]
async fn a_form_of_a_guest_must_come_from_our_own_page() {
    let (_folder, home, lan) = open_home();
    let cookie = let_in(&home, &lan).await;
    let before = entries(&home);
    for origin in [
        "http://127.0.0.2:7410",
        "https://127.0.0.2",
        "https://127.0.0.2:7411",
        "https://127.0.0.1:7410",
        "https://evil.example",
        "null",
    ] {
        let form = Request::post("/cook").header(header::ORIGIN, origin);
        let refused = from_afar(&home, &lan, form, Some(&cookie)).await;
        assert_eq!(refused.status, StatusCode::FORBIDDEN, "{origin}");
    }
    for site in ["cross-site", "same-site", "none"] {
        let form = Request::post("/cook").header("sec-fetch-site", site);
        let refused = from_afar(&home, &lan, form, Some(&cookie)).await;
        assert_eq!(refused.status, StatusCode::FORBIDDEN, "{site}");
    }
    let bare = from_afar(&home, &lan, Request::post("/cook"), Some(&cookie)).await;
    assert_eq!(bare.status, StatusCode::FORBIDDEN);
    assert_eq!(entries(&home), before);
}

#[tokio::test]
async fn another_name_for_this_machine_is_refused_on_the_network_too() {
    let (_folder, home, lan) = open_home();
    let cookie = let_in(&home, &lan).await;
    for host in [
        "evil.example:7410",
        "127.0.0.1:7410",
        "127.0.0.2",
        "127.0.0.2:80",
        "",
    ] {
        let request = Request::get("/")
            .header(header::HOST, host)
            .header(header::COOKIE, format!("{COOKIE}={cookie}"));
        let refused = ask(
            &home,
            Gate::Lan(lan.clone()),
            request.body(Body::empty()).unwrap(),
        )
        .await;
        assert_eq!(refused.status, StatusCode::MISDIRECTED_REQUEST, "{host}");
    }
}

#[tokio::test]
async fn this_machine_shows_the_code_and_without_lan_how_to_get_one() {
    let (_folder, plain) = home();
    let off = super::get(&plain, "/phones").await;
    assert!(
        off.status == StatusCode::OK && off.body.contains("slowbend --lan"),
        "{}",
        off.body
    );
    assert!(!off.body.contains("/join/"));
    let (_folder, home, lan) = open_home();
    let on = super::get_in(&home, "/phones", "es").await;
    assert!(on.body.contains(&lan.invitation()) && on.body.contains(&lan.fingerprint));
    assert!(on.body.contains("<svg class=\"code\"") && !on.body.contains('⟨'));
    let joined = super::get(&plain, "/join/anything").await;
    assert_eq!(joined.status, StatusCode::FORBIDDEN);
}

#[tokio::test]
async fn the_network_hears_only_what_is_encrypted_with_our_certificate() {
    let (folder, home) = home();
    let listener = TcpListener::bind("127.0.0.2:0").unwrap();
    listener.set_nonblocking(true).unwrap();
    let at = listener.local_addr().unwrap();
    let lan = lan(folder.path(), at.port());
    let handle = Handle::new();
    let serving = tokio::spawn({
        let (home, lan, handle) = (home.clone(), lan.clone(), handle.clone());
        async move { on_network(&home, lan, listener, handle).await }
    });
    handle.listening().await.unwrap();

    let stranger =
        "GET / HTTP/1.1\r\nHost: HOST\r\nConnection: close\r\n\r\n".replace("HOST", &lan.host());
    let mut roots = RootCertStore::empty();
    roots.add(lan.certificate()).unwrap();
    let answer = encrypted(at, roots, &stranger).await.unwrap();
    assert!(answer.starts_with("HTTP/1.1 403"), "{answer}");
    assert!(
        encrypted(at, RootCertStore::empty(), &stranger)
            .await
            .is_err(),
        "no authority vouches for it"
    );

    let mut bare = TcpStream::connect(at).await.unwrap();
    bare.write_all(stranger.as_bytes()).await.unwrap();
    let mut answer = Vec::new();
    let _ = bare.read_to_end(&mut answer).await;
    assert!(!answer.starts_with(b"HTTP"), "nothing is said in the clear");

    handle.shutdown();
    serving.await.unwrap().unwrap();
}

async fn encrypted(
    at: std::net::SocketAddr,
    roots: RootCertStore,
    said: &str,
) -> std::io::Result<String> {
    let provider = Arc::new(rustls::crypto::ring::default_provider());
    let config = ClientConfig::builder_with_provider(provider)
        .with_safe_default_protocol_versions()
        .unwrap()
        .with_root_certificates(roots)
        .with_no_client_auth();
    let connector = tokio_rustls::TlsConnector::from(Arc::new(config));
    let tcp = TcpStream::connect(at).await?;
    let mut line = connector
        .connect(ServerName::IpAddress(at.ip().into()), tcp)
        .await?;
    line.write_all(said.as_bytes()).await?;
    let mut answer = Vec::new();
    line.read_to_end(&mut answer).await?;
    Ok(String::from_utf8_lossy(&answer).into_owned())
}
