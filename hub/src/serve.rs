//! Serving the pages on this machine, and no other.

use crate::{
    app::app,
    cli::{End, Opened},
    home::Home,
    watch,
};
use std::{
    io,
    net::{Ipv4Addr, SocketAddr},
};
use tokio::net::TcpListener;

/// Serves until Ctrl-C, then lets every page go and the readings reach the disk.
///
/// # Errors
/// Where the port is taken or the runtime cannot start.
pub fn serve(opened: Opened, port: u16) -> Result<(), End> {
    let runtime = tokio::runtime::Runtime::new().map_err(|error| {
        End::refused(format!(
            "The server could not start ({error}). Close other programs and try again."
        ))
    })?;
    runtime.block_on(run(opened, port))
}

async fn run(mut opened: Opened, port: u16) -> Result<(), End> {
    let address = SocketAddr::from((Ipv4Addr::LOCALHOST, port));
    let listener = TcpListener::bind(address)
        .await
        .map_err(|error| busy(port, &error))?;
    let port = listener.local_addr().map_or(port, |address| address.port());
    let device = opened.door.device()?;
    let home = Home::new(
        opened.door,
        device,
        opened.clock,
        opened.zone,
        opened.data,
        port,
    );
    println!(
        "Slowbend is at http://127.0.0.1:{port}/ for browsers on this machine. Press Ctrl-C to stop."
    );
    let watching = tokio::spawn(watch::watch(home.clone()));
    let stop = {
        let home = home.clone();
        async move {
            let _ = tokio::signal::ctrl_c().await;
            home.close();
        }
    };
    let served = axum::serve(listener, app(home.clone()))
        .with_graceful_shutdown(stop)
        .await;
    home.close();
    let _ = watching.await;
    home.ask(|door, _| door.suspend()).await?;
    served.map_err(|error| {
        End::refused(format!(
            "The server stopped ({error}). Start it again; all that was recorded is kept."
        ))
    })
}

fn busy(port: u16, error: &io::Error) -> End {
    End::refused(match error.kind() {
        io::ErrorKind::AddrInUse => format!(
            "Port {port} is taken by another program. Choose another one: slowbend --port {}",
            port.wrapping_add(1).max(1024)
        ),
        io::ErrorKind::PermissionDenied => {
            format!("Port {port} may not be used. Choose one above 1023: slowbend --port 7410")
        }
        _ => format!("Port {port} cannot be used ({error}). Choose another one with --port."),
    })
}
