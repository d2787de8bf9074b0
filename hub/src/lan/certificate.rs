//! The certificate of our own, which no authority signed: a browser asks once whether to trust it, and shows the fingerprint
//! that this machine shows too. Start at [`own`].

use crate::data::{self, Folders};
use axum_server::tls_rustls::RustlsConfig;
use rcgen::{CertificateParams, DistinguishedName, DnType, KeyPair, SanType, date_time_ymd};
use rustls::{
    ServerConfig,
    pki_types::{CertificateDer, PrivateKeyDer, PrivatePkcs8KeyDer},
};
use serde::{Deserialize, Serialize};
use std::{net::IpAddr, path::Path, sync::Arc};

/// How long one is valid, days: the most that some phones take, from memory.
const VALID_DAYS: i64 = 825;
/// How long before its end a new one is made, days. Common practice, no source.
const RENEWED_DAYS: i64 = 30;
const DAY_MS: i64 = 24 * 3600 * 1000;

/// A certificate with its key, as kept.
#[derive(Deserialize, Serialize)]
pub struct Own {
    address: IpAddr,
    until_ms: i64,
    certificate: Vec<u8>,
    key: Vec<u8>,
}

/// The certificate for `address`: the kept one while it holds, else a new one.
///
/// # Errors
/// A sentence, where it can be neither read nor written.
pub fn own(folders: &Folders, address: IpAddr, utc_ms: i64) -> Result<Own, String> {
    let file = folders.own_file("lan.certificate");
    let kept = data::read_private(&file)?;
    let kept = kept.and_then(|bytes| serde_json::from_slice::<Own>(&bytes).ok());
    let holds = |own: &Own| own.address == address && own.until_ms - utc_ms > RENEWED_DAYS * DAY_MS;
    match kept.filter(holds) {
        Some(own) => Ok(own),
        None => fresh(&file, address, utc_ms),
    }
}

fn fresh(file: &Path, address: IpAddr, utc_ms: i64) -> Result<Own, String> {
    let told = |error: rcgen::Error| {
        format!(
            "The certificate could not be made ({error}). Start again; if it stays so, leave --lan away."
        )
    };
    let until_ms = utc_ms + VALID_DAYS * DAY_MS;
    let key = KeyPair::generate().map_err(told)?;
    let mut params = CertificateParams::default();
    params.distinguished_name = DistinguishedName::new();
    params
        .distinguished_name
        .push(DnType::CommonName, "Slowbend at home");
    params.subject_alt_names = vec![SanType::IpAddress(address)];
    // A day of grace, for a phone whose clock is behind.
    params.not_before = day(utc_ms - DAY_MS);
    params.not_after = day(until_ms);
    let certificate = params.self_signed(&key).map_err(told)?;
    let own = Own {
        address,
        until_ms,
        certificate: certificate.der().to_vec(),
        key: key.serialize_der(),
    };
    let json = serde_json::to_vec(&own).expect("bytes and numbers are JSON");
    data::write_private(file, &json)?;
    Ok(own)
}

/// The beginning of the day of `utc_ms`.
fn day(utc_ms: i64) -> time::OffsetDateTime {
    let found = time::OffsetDateTime::from_unix_timestamp(utc_ms / 1000);
    found.map_or_else(
        |_| date_time_ymd(2100, 1, 1),
        |at| at.replace_time(time::Time::MIDNIGHT),
    )
}

impl Own {
    /// SHA-256 in pairs of hexadecimal digits.
    pub fn fingerprint(&self) -> String {
        let digest = ring::digest::digest(&ring::digest::SHA256, &self.certificate);
        let pairs: Vec<_> = digest
            .as_ref()
            .iter()
            .map(|byte| format!("{byte:02X}"))
            .collect();
        pairs.join(":")
    }

    /// The certificate itself.
    #[cfg(test)]
    pub fn certificate(&self) -> CertificateDer<'static> {
        CertificateDer::from(self.certificate.clone())
    }

    /// What a server encrypts with: TLS 1.2 and 1.3 as rustls deems safe.
    ///
    /// # Errors
    /// A sentence, where the kept key is not one.
    pub fn tls(&self) -> Result<RustlsConfig, String> {
        let told = |error: rustls::Error| {
            format!(
                "The certificate cannot be used ({error}). Delete lan.certificate from the folder of the installation and start again."
            )
        };
        let key = PrivateKeyDer::Pkcs8(PrivatePkcs8KeyDer::from(self.key.clone()));
        let provider = Arc::new(rustls::crypto::ring::default_provider());
        let mut config = ServerConfig::builder_with_provider(provider)
            .with_safe_default_protocol_versions()
            .map_err(told)?
            .with_no_client_auth()
            .with_single_cert(vec![CertificateDer::from(self.certificate.clone())], key)
            .map_err(told)?;
        config.alpn_protocols = vec![b"http/1.1".to_vec()];
        Ok(RustlsConfig::from_config(Arc::new(config)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const NOW: i64 = crate::tests::NOW;

    #[test]
    fn it_is_kept_while_it_holds_and_made_anew_before_its_end_or_for_another_address() {
        let temp = tempfile::tempdir().unwrap();
        let folders = data::folders_in(temp.path());
        let at = |address: &str, utc_ms| {
            own(&folders, address.parse().unwrap(), utc_ms)
                .unwrap()
                .fingerprint()
        };
        let first = at("192.168.1.20", NOW);
        assert_eq!(first.len(), 32 * 3 - 1);
        assert_eq!(first, at("192.168.1.20", NOW + 700 * DAY_MS));
        let renewed = at("192.168.1.20", NOW + 800 * DAY_MS);
        assert_ne!(first, renewed);
        assert_ne!(renewed, at("192.168.1.21", NOW + 800 * DAY_MS));
    }

    #[test]
    fn a_file_that_is_no_certificate_is_replaced() {
        let temp = tempfile::tempdir().unwrap();
        let folders = data::folders_in(temp.path());
        data::write_private(&folders.own_file("lan.certificate"), b"nonsense").unwrap();
        let own = own(&folders, "10.0.0.2".parse().unwrap(), NOW).unwrap();
        assert!(own.tls().is_ok());
    }
}
