//! The pages on the home's own network, for who was let in. Never without `--lan`.
//!
//! What stands between a cook and the rest of the network:
//! - only one address of a private network is listened on ([`address`]), only encrypted, with a certificate of our own
//!   ([`certificate`]);
//! - the start of the way in is a secret that only this machine shows, as an address and a code to scan; it is exchanged
//!   for a cookie that no script reads and no other site sends ([`keys`], [`join`]);
//! - after that all that holds on this machine holds there: Host and Origin must be ours, nothing inline, no frame
//!   ([`guard`](crate::guard)).
//!
//! A guest sees and does what is seen and done on this machine, but cannot let others in or send them away.

pub mod address;
mod certificate;
pub mod join;
mod keys;

use crate::{cli::End, data::Folders};
use axum_server::tls_rustls::RustlsConfig;
pub use keys::{COOKIE, Keys};
use std::net::{IpAddr, SocketAddr};

/// What is served on the network.
#[derive(Debug)]
pub struct Lan {
    /// Where.
    pub at: SocketAddr,
    /// Who is let in.
    pub keys: Keys,
    /// SHA-256 of the certificate, in pairs of hexadecimal digits, as browsers show it.
    pub fingerprint: String,
    tls: RustlsConfig,
    #[cfg(test)]
    certificate: rustls::pki_types::CertificateDer<'static>,
}

impl Lan {
    /// Makes ready to serve on `address` and `port`: reads the keys and the certificate, or makes them.
    ///
    /// # Errors
    /// A sentence, where they can be neither read nor written.
    pub fn ready(folders: &Folders, address: IpAddr, port: u16, utc_ms: i64) -> Result<Self, End> {
        let own = certificate::own(folders, address, utc_ms).map_err(End::Refused)?;
        Ok(Self {
            at: SocketAddr::new(address, port),
            keys: Keys::kept(folders).map_err(End::Refused)?,
            fingerprint: own.fingerprint(),
            tls: own.tls().map_err(End::Refused)?,
            #[cfg(test)]
            certificate: own.certificate(),
        })
    }

    /// How it is encrypted.
    pub fn tls(&self) -> RustlsConfig {
        self.tls.clone()
    }

    /// The certificate, for a client that trusts it.
    #[cfg(test)]
    pub fn certificate(&self) -> rustls::pki_types::CertificateDer<'static> {
        self.certificate.clone()
    }

    /// Host and port as an address has them.
    pub fn host(&self) -> String {
        self.at.to_string()
    }

    /// The address that lets a phone in.
    pub fn invitation(&self) -> String {
        format!("https://{}/join/{}", self.host(), self.keys.invitation())
    }
}
