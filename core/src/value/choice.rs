//! Choices among named alternatives, which cross into C and NumPy as small whole numbers and into Python as words.

/// Declares an enumeration whose alternatives have a stable code and a word.
///
/// The bindings are generated from these declarations too: an alternative is `Variant = code: "word"`.
macro_rules! choice {
    ($(#[$doc:meta])* $name:ident { $($(#[$variant_doc:meta])* $variant:ident = $code:literal: $word:literal,)+ }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub enum $name { $($(#[$variant_doc])* $variant,)+ }

        impl $name {
            /// Every alternative, in the order of the declaration.
            pub const ALL: &'static [Self] = &[$(Self::$variant,)+];

            /// What may be chosen, in words.
            pub const ALLOWED: &'static str = concat!($(" ", $code, " (", $word, ")",)+);

            /// The alternative as a word, as Python takes and gives it.
            pub const fn word(self) -> &'static str {
                match self { $(Self::$variant => $word,)+ }
            }

            /// The alternative as a stable number, as C and NumPy take and give it.
            pub const fn code(self) -> i32 {
                match self { $(Self::$variant => $code,)+ }
            }

            /// The alternative of a code, under the name its caller gave the parameter.
            ///
            /// # Errors
            /// [`crate::Error::UnknownChoice`] for a number that is no code.
            #[allow(dead_code, reason = "one macro serves every choice; some are results only")]
            pub fn from_code(parameter: &'static str, code: f64) -> Result<Self, crate::Error> {
                Self::ALL.iter().copied().find(|known| f64::from(known.code()) == code).ok_or(
                    crate::Error::UnknownChoice { parameter, code, allowed: Self::ALLOWED },
                )
            }
        }
    };
}
pub(crate) use choice;
