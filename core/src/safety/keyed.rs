//! One way to write an enum whose every variant stands for one message on a screen.

/// Declares a plain enum with all that crosses a border, its list `ALL`, and `key()`, the Fluent message id that the
/// words module turns into the viewer's language.
macro_rules! keyed {
    ($(#[$meta:meta])* $name:ident { $($(#[$vmeta:meta])* $variant:ident = $key:literal,)+ }) => {
        $(#[$meta])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, serde::Serialize, serde::Deserialize)]
        #[serde(rename_all = "snake_case")]
        #[cfg_attr(feature = "ffi", derive(uniffi::Enum))]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        pub enum $name { $($(#[$vmeta])* $variant,)+ }

        impl $name {
            /// All of them, in the order in which they are shown.
            pub const ALL: &'static [Self] = &[$(Self::$variant,)+];

            /// The Fluent message id of its text.
            pub const fn key(self) -> &'static str {
                match self { $(Self::$variant => $key,)+ }
            }
        }
    };
}

pub(crate) use keyed;
