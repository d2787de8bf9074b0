//! Which address of this machine is served on: one of a private network, never one that the open internet reaches.

use crate::cli::End;
use std::net::{IpAddr, Ipv4Addr};

/// The address to serve on: the one that was asked for, else the machine's only private one.
///
/// # Errors
/// Where it is not private, not this machine's, or where there is none or a choice of several.
pub fn choose(asked: Option<IpAddr>) -> Result<IpAddr, End> {
    let found = if_addrs::get_if_addrs().map_err(|error| {
        End::refused(format!(
            "The addresses of this machine could not be read ({error}). Name the one to serve on: slowbend --lan=ADDRESS"
        ))
    })?;
    let own: Vec<IpAddr> = found.iter().map(if_addrs::Interface::ip).collect();
    pick(asked, &own)
}

fn pick(asked: Option<IpAddr>, own: &[IpAddr]) -> Result<IpAddr, End> {
    if let Some(address) = asked {
        return fits(address, own);
    }
    let mut private = own
        .iter()
        .copied()
        .filter(|ip| ip.is_ipv4() && is_private(*ip) && !ip.is_loopback());
    match (private.next(), private.next()) {
        (Some(only), None) => Ok(only),
        (None, _) => Err(End::refused(
            "This machine is on no home network (no private IPv4 address was found). Join one, or leave --lan away to serve on this machine alone.",
        )),
        (Some(first), Some(second)) => Err(End::refused(format!(
            "This machine is on several networks. Name the one to serve on: slowbend --lan={first} or slowbend --lan={second}"
        ))),
    }
}

fn fits(address: IpAddr, own: &[IpAddr]) -> Result<IpAddr, End> {
    if !is_private(address) {
        return Err(End::refused(format!(
            "{address} is no address of a home network. Slowbend is not made for the open internet: name a private address, such as 192.168.1.20."
        )));
    }
    if !own.contains(&address) && !address.is_loopback() {
        return Err(End::refused(format!(
            "{address} is not an address of this machine. Its own are: {}.",
            own.iter()
                .map(ToString::to_string)
                .collect::<Vec<_>>()
                .join(", ")
        )));
    }
    Ok(address)
}

/// Private (RFC 1918), link-local (RFC 3927, RFC 4291), unique local (RFC 4193), shared by carriers (RFC 6598) or this
/// machine itself; the ranges from memory, the first and the last two as the standard library has them.
fn is_private(address: IpAddr) -> bool {
    match address {
        IpAddr::V4(v4) => {
            v4.is_private() || v4.is_link_local() || v4.is_loopback() || is_shared(v4)
        }
        IpAddr::V6(v6) => v6.is_unique_local() || v6.is_unicast_link_local() || v6.is_loopback(),
    }
}

const fn is_shared(address: Ipv4Addr) -> bool {
    let [first, second, ..] = address.octets();
    first == 100 && second & 0b1100_0000 == 64
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ip(text: &str) -> IpAddr {
        text.parse().unwrap()
    }

    #[test]
    fn the_only_private_address_is_taken_and_several_are_asked_about() {
        let own = [
            ip("127.0.0.1"),
            ip("::1"),
            ip("8.8.4.4"),
            ip("192.168.1.20"),
        ];
        assert_eq!(pick(None, &own), Ok(ip("192.168.1.20")));
        let several = pick(None, &[ip("10.0.0.2"), ip("192.168.1.20")]).unwrap_err();
        assert!(
            several.reason().contains("--lan=192.168.1.20"),
            "{}",
            several.reason()
        );
        let none = pick(None, &[ip("127.0.0.1"), ip("8.8.4.4")]).unwrap_err();
        assert!(
            none.reason().contains("no home network"),
            "{}",
            none.reason()
        );
    }

    #[test]
    fn an_address_of_the_open_internet_is_never_served_on() {
        for public in [
            "8.8.4.4",
            "0.0.0.0",
            "172.32.0.1",
            "100.128.0.1",
            "::",
            "2001:db8::1",
        ] {
            let refused = pick(Some(ip(public)), &[ip(public)]).unwrap_err();
            assert!(refused.reason().contains("open internet"), "{public}");
        }
        for private in [
            "10.1.2.3",
            "172.31.0.1",
            "169.254.3.4",
            "100.64.0.1",
            "fd00::1",
        ] {
            assert_eq!(pick(Some(ip(private)), &[ip(private)]), Ok(ip(private)));
        }
    }

    #[test]
    fn an_address_of_another_machine_is_refused_with_our_own() {
        let refused = pick(Some(ip("192.168.1.9")), &[ip("192.168.1.20")]).unwrap_err();
        assert!(
            refused.reason().contains("192.168.1.20"),
            "{}",
            refused.reason()
        );
    }
}
