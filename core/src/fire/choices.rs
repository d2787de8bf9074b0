//! Enums of what can be chosen by one tap.

/// An enum of plain variants, in the order in which they are shown.
macro_rules! choices {
    ($($(#[$doc:meta])* $name:ident { $($(#[$variant_doc:meta])* $variant:ident),* $(,)? })*) => { $(
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, serde::Serialize, serde::Deserialize)]
        #[serde(rename_all = "snake_case")]
        #[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        pub enum $name { $($(#[$variant_doc])* $variant),* }

        impl $name {
            /// All of them.
            pub const ALL: &'static [Self] = &[$(Self::$variant),*];
        }
    )* };
}

pub(super) use choices;
