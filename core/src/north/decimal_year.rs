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
        Self::new(f64::from(year) + (f64::from(day_of_year) - 1.0) / days_of_year(year))
    }

    /// A date of the Gregorian calendar: the year, the month from 1, and the day from 1 with its elapsed fraction, so that 2.5 is noon
    /// of the second.
    ///
    /// # Errors
    /// [`Error::NoSuchDate`] for a month or a day that the year has not; as [`DecimalYear::new`].
    ///
    /// # Example
    /// ```
    /// use lubberline::north::DecimalYear;
    /// assert_eq!(DecimalYear::of_date(2026, 7, 2.5)?, DecimalYear::new(2026.5)?);
    /// assert!(DecimalYear::of_date(2026, 2, 29.0).is_err());
    /// # Ok::<(), lubberline::Error>(())
    /// ```
    pub fn of_date(year: u16, month: u8, day: f64) -> Result<Self, Error> {
        let none = Error::NoSuchDate { year: f64::from(year), month: f64::from(month), day };
        let before = usize::from(month).checked_sub(1).ok_or(none)?;
        let days = days_of_months(year);
        let last = f64::from(*days.get(before).ok_or(none)?);
        if !(1.0..last + 1.0).contains(&day) {
            return Err(none);
        }
        let elapsed: f64 = days.iter().take(before).copied().map(f64::from).sum();
        Self::named("year", f64::from(year) + (elapsed + day - 1.0) / days_of_year(year))
    }

    /// A date of plain numbers, of which year and month must be whole.
    pub(crate) fn of_numbers(year: f64, month: f64, day: f64) -> Result<Self, Error> {
        let year = Quantity::CalendarYear.check("year", year)?;
        let month = Quantity::Month.check("month", month)?;
        let day = Quantity::DayOfMonth.check("day", day)?;
        let none = Error::NoSuchDate { year, month, day };
        if year.fract() != 0.0 || month.fract() != 0.0 {
            return Err(none);
        }
        // Both are whole and in the range of the type.
        Self::of_date(year as u16, month as u8, day).map_err(|error| match error {
            Error::NoSuchDate { .. } => none,
            other => other,
        })
    }

    pub(crate) fn named(parameter: &'static str, year: f64) -> Result<Self, Error> {
        Ok(Self(Quantity::DecimalYear.check(parameter, year)?))
    }

    pub(crate) fn years(self) -> f64 {
        self.0
    }
}

fn days_of_months(year: u16) -> [u8; 12] {
    let leap = year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
    [31, if leap { 29 } else { 28 }, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
}

fn days_of_year(year: u16) -> f64 {
    days_of_months(year).map(f64::from).iter().sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The day of the year of each month's first, as any almanac prints it.
    #[test]
    fn the_first_of_each_month_is_its_day_of_the_year() {
        let common = [1, 32, 60, 91, 121, 152, 182, 213, 244, 274, 305, 335];
        for (month, day_of_year) in (1..).zip(common) {
            let leap_day = u16::from(month > 2);
            for (year, day_of_year) in [(2026, day_of_year), (2028, day_of_year + leap_day)] {
                let (date, day) =
                    (DecimalYear::of_date(year, month, 1.0), DecimalYear::of_day(year, day_of_year));
                assert!((date.unwrap().years() - day.unwrap().years()).abs() < 1e-12, "{year} {month}");
            }
        }
    }

    #[test]
    fn a_date_that_is_none_is_refused() {
        for (year, month, day) in [
            (2026.0, 2.0, 29.0),
            (2028.0, 2.0, 30.0),
            (2026.0, 4.0, 31.0),
            (2026.5, 4.0, 1.0),
            (2026.0, 4.5, 1.0),
        ] {
            let refused = DecimalYear::of_numbers(year, month, day);
            assert!(matches!(refused, Err(Error::NoSuchDate { .. })), "{year} {month} {day}: {refused:?}");
        }
        for (year, month, day, name) in [
            (2019.0, 12.0, 31.0, "year"),
            (f64::INFINITY, 4.0, 1.0, "year"),
            (2026.0, 0.0, 1.0, "month"),
            (2026.0, 257.0, 1.0, "month"),
            (2026.0, 4.0, 0.9, "day"),
            (2026.0, 1.0, 32.0, "day"),
        ] {
            let refused = DecimalYear::of_numbers(year, month, day);
            assert_eq!(refused.unwrap_err().parameter(), Some(name), "{year} {month} {day}");
        }
        let last = DecimalYear::of_numbers(2024.0, 12.0, 31.999).unwrap();
        assert!(last > DecimalYear::new(2024.999).unwrap() && last < DecimalYear::new(2025.0).unwrap());
    }
}
