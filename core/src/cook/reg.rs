//! One field of a thing: the later setting wins, and who was overruled is kept until it is dismissed.

use super::fold::By;
use crate::{ids::DeviceId, log::Stamp};
use serde::{Deserialize, Serialize};

/// A value with who set it.
///
/// Law: it holds what the last setting in the order of entries said. Where that setting had not seen the value it
/// replaced, and another device had set that value, the replaced value is kept as overruled.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Reg<T> {
    /// The value.
    pub value: T,
    /// The stamp of the setting, to be passed back as `saw`.
    pub stamp: Stamp,
    /// Who set it.
    pub device: DeviceId,
    /// The value that lost, and whose it was, where two set it without knowing of each other.
    pub overruled: Option<(T, DeviceId)>,
}

impl<T: PartialEq> Reg<T> {
    /// A first value.
    pub fn new(value: T, by: By) -> Self {
        Self {
            value,
            stamp: by.stamp,
            device: by.device,
            overruled: None,
        }
    }

    /// Sets it anew; `saw` is the stamp of the value that the setter saw.
    pub fn set(&mut self, value: T, by: By, saw: Option<Stamp>) {
        let blind = by.device != self.device && saw != Some(self.stamp) && value != self.value;
        let old = std::mem::replace(&mut self.value, value);
        self.overruled = blind.then_some((old, self.device));
        (self.stamp, self.device) = (by.stamp, by.device);
    }
}
