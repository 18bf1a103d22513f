//! What a station is called by.

use std::fmt;

use crate::Error;

/// The most bytes an ident has.
const MOST_BYTES: usize = 16;

/// The ident of a station: the few letters it sends in Morse code and that charts print; none for a station without one.
///
/// It is a name and enters no computation.
///
/// # Example
/// ```
/// use lubberline::station::Ident;
/// assert_eq!(Ident::new("KVA")?.as_str(), "KVA");
/// assert_eq!(Ident::default(), Ident::NONE);
/// let refused = Ident::new("far too long to be sent").unwrap_err();
/// assert_eq!(refused.to_string(), "the ident has 23 bytes; allowed: at most 16");
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default)]
pub struct Ident {
    bytes: [u8; MOST_BYTES],
}

impl Ident {
    /// No ident.
    pub const NONE: Self = Self { bytes: [0; MOST_BYTES] };

    /// Accepts any text of at most 16 bytes in UTF-8.
    ///
    /// # Errors
    /// [`Error::IdentTooLong`] for a longer one.
    pub fn new(text: &str) -> Result<Self, Error> {
        let mut bytes = [0; MOST_BYTES];
        let place = bytes.get_mut(..text.len()).ok_or(Error::IdentTooLong { bytes: text.len() })?;
        place.copy_from_slice(text.as_bytes());
        Ok(Self { bytes })
    }

    /// The ident as text, empty for none.
    pub fn as_str(&self) -> &str {
        str::from_utf8(&self.bytes).unwrap_or_default().trim_end_matches('\0')
    }
}

impl fmt::Display for Ident {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.pad(self.as_str())
    }
}

impl fmt::Debug for Ident {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(formatter, "{:?}", self.as_str())
    }
}
