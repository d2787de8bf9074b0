//! Serving the pages: on this machine always, on the home's network only when asked for. Start at [`serve`].

use crate::{
    app::app_behind,
    cli::{End, Opened},
    guard::Gate,
    home::Home,
    lan::Lan,
    watch,
};
use axum_server::Handle;
use std::{
    io,
    net::{IpAddr, Ipv4Addr, SocketAddr, TcpListener},
    sync::Arc,
    time::Duration,
};

/// How long open pages may take to go when the program ends. Common practice, no source.
const LAST_WORDS: Duration = Duration::from_secs(2);

/// Serves until Ctrl-C, then lets every page go and the readings reach the disk.
///
/// # Errors
/// Where the port is taken or the runtime cannot start.
pub fn serve(opened: Opened, port: u16, lan: Option<IpAddr>) -> Result<(), End> {
    let runtime = tokio::runtime::Runtime::new().map_err(|error| {
        End::refused(format!(
            "The server could not start ({error}). Close other programs and try again."
        ))
    })?;
    runtime.block_on(run(opened, port, lan))
}

async fn run(mut opened: Opened, port: u16, lan: Option<IpAddr>) -> Result<(), End> {
    let here = listen(SocketAddr::from((Ipv4Addr::LOCALHOST, port)))?;
    let port = here.local_addr().map_or(port, |address| address.port());
    let utc_ms = opened.moment().utc_ms;
    let lan = lan
        .map(|address| Lan::ready(&opened.folders, address, port, utc_ms))
        .transpose()?
        .map(Arc::new);
    let there = lan.as_ref().map(|lan| listen(lan.at)).transpose()?;
    let device = opened.door.device()?;
    let data = opened.folders.data;
    let home = Home::new(opened.door, device, opened.clock, opened.zone, data, port);
    greet(port, lan.as_deref());
    let handle = Handle::new();
    let watching = tokio::spawn(watch::watch(home.clone()));
    let stopping = tokio::spawn(stop(home.clone(), handle.clone()));
    let on_lan = async {
        match lan.zip(there) {
            Some((lan, listener)) => on_network(&home, lan, listener, handle.clone()).await,
            None => Ok(()),
        }
    };
    let served = tokio::try_join!(on_this_machine(&home, here, handle.clone()), on_lan);
    home.close();
    stopping.abort();
    let _ = watching.await;
    home.ask(|door, _| door.suspend()).await?;
    served.map(|_| ()).map_err(|error| {
        End::refused(format!(
            "The server stopped ({error}). Start it again; all that was recorded is kept."
        ))
    })
}

fn greet(port: u16, lan: Option<&Lan>) {
    println!(
        "Slowbend is at http://127.0.0.1:{port}/ for browsers on this machine. Press Ctrl-C to stop."
    );
    if let Some(lan) = lan {
        println!(
            "On the home's network it is at https://{}/. Let a phone in by the code at http://127.0.0.1:{port}/phones",
            lan.host()
        );
    }
}

async fn stop(home: Arc<Home>, handle: Handle<SocketAddr>) {
    let _ = tokio::signal::ctrl_c().await;
    home.close();
    handle.graceful_shutdown(Some(LAST_WORDS));
}

async fn on_this_machine(
    home: &Arc<Home>,
    listener: TcpListener,
    handle: Handle<SocketAddr>,
) -> io::Result<()> {
    let app = app_behind(home.clone(), Gate::Here(home.port));
    axum_server::from_tcp(listener)?
        .handle(handle)
        .serve(app.into_make_service())
        .await
}

/// Serves who was let in, encrypted.
///
/// # Errors
/// Where the network lets go of the listener.
pub async fn on_network(
    home: &Arc<Home>,
    lan: Arc<Lan>,
    listener: TcpListener,
    handle: Handle<SocketAddr>,
) -> io::Result<()> {
    let tls = lan.tls();
    let _ = home.lan.set(lan.clone());
    let app = app_behind(home.clone(), Gate::Lan(lan));
    axum_server::from_tcp_rustls(listener, tls)?
        .handle(handle)
        .serve(app.into_make_service())
        .await
}

fn listen(at: SocketAddr) -> Result<TcpListener, End> {
    let listener = TcpListener::bind(at).map_err(|error| busy(at, &error))?;
    listener
        .set_nonblocking(true)
        .map_err(|error| busy(at, &error))?;
    Ok(listener)
}

fn busy(at: SocketAddr, error: &io::Error) -> End {
    let port = at.port();
    End::refused(match error.kind() {
        io::ErrorKind::AddrInUse => format!(
            "Port {port} of {} is taken by another program. Choose another one: slowbend --port {}",
            at.ip(),
            port.wrapping_add(1).max(1024)
        ),
        io::ErrorKind::PermissionDenied => {
            format!("Port {port} may not be used. Choose one above 1023: slowbend --port 7410")
        }
        io::ErrorKind::AddrNotAvailable => format!(
            "{} is not an address of this machine at the moment. Join the network first, or leave --lan away.",
            at.ip()
        ),
        _ => format!("Port {port} cannot be used ({error}). Choose another one with --port."),
    })
}
