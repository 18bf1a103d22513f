//! Dates as the magnetic model takes them.

use crate::Error;
use crate::value::Quantity;

/// A date as a year and its elapsed fraction, such as 2026.5 for the middle of 2026.
///
/// # Example
/// ```
/// use lubberline::north::DecimalYear;
/// // 2 July is the 183rd day, and its noon the middle, of a year of 365 days; its beginning is day 182 of 365.
/// let july = DecimalYear::of_day(2026, 183)?;
/// assert!(july < DecimalYear::new(2026.5)? && july > DecimalYear::new(2026.498)?);
/// # Ok::<(), lubberline::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct DecimalYear(f64);

impl DecimalYear {
    /// Accepts 2020 to 2035: the years of the models, and five more.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside, and for what is not a number.
    pub fn new(year: f64) -> Result<Self, Error> {
        Self::named("decimal year", year)
    }

    /// The beginning of a day of a year of the Gregorian calendar, the first of January being day 1.
    ///
    /// # Degenerate cases
    /// A day beyond the year's last is one of the next year, as far as the fraction of this one goes.
    ///
    /// # Errors
    /// As [`DecimalYear::new`].
    pub fn of_day(year: u16, day_of_year: u16) -> Result<Self, Error> {
        let leap = year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
        let days = if leap { 366.0 } else { 365.0 };
        Self::new(f64::from(year) + (f64::from(day_of_year) - 1.0) / days)
    }

    pub(crate) fn named(parameter: &'static str, year: f64) -> Result<Self, Error> {
        Ok(Self(Quantity::DecimalYear.check(parameter, year)?))
    }

    pub(super) fn years(self) -> f64 {
        self.0
    }
}
