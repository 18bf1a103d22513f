//! The volumes in which a station's service is published, by the class of the station.

use super::{HorizonRule, radio_horizon};
use crate::value::units::{Length, foot, metres, nautical_miles};
use crate::value::{GroundDistance, HeightAboveStation, SurfaceHeight, choice};

choice! {
    /// The class of a station's service volume: FAA Aeronautical Information Manual (AIM) 1-1-8, TBL 1-1-1 and 1-1-2.
    ///
    /// The editions disagree on what the heights of T, L and H are counted from: the transmitter (ATH) in the editions of 2023, with the
    /// volumes VL to DH, which charts show since 7 October 2021; the ground at the station (AGL) in those of 19 February 2004 and 26 May
    /// 2016. The older ones are classes of their own here.
    ServiceClass {
        /// T, AIM of 2023: 25 NM from 1 000 to 12 000 ft above the transmitter.
        Terminal = 0: "terminal",
        /// L, AIM of 2023: 40 NM from 1 000 to 18 000 ft above the transmitter.
        Low = 1: "low",
        /// H, AIM of 2023: 40 NM from 1 000 ft, 100 NM from 14 500 to 60 000 ft, 130 NM from 18 000 to 45 000 ft above the transmitter.
        High = 2: "high",
        /// VL, AIM of 2023: 40 NM from 1 000 ft, 70 NM from 5 000 to below 18 000 ft.
        VorLow = 3: "vor_low",
        /// VH, AIM of 2023: 40 NM from 1 000 ft, 70 NM from 5 000 ft, then as H from 14 500 ft.
        VorHigh = 4: "vor_high",
        /// DL, AIM of 2023, figures from memory: to the radio horizon below 12 900 ft, 130 NM to below 18 000 ft.
        DmeLow = 5: "dme_low",
        /// DH, AIM of 2023, figures from memory: to the radio horizon below 12 900 ft, 130 NM to 45 000 ft, 100 NM to 60 000 ft.
        DmeHigh = 6: "dme_high",
        /// T, AIM of 2004 to 2016: the same figures above the ground.
        TerminalAboveGround = 7: "terminal_above_ground",
        /// L, AIM of 2004 to 2016: the same figures above the ground.
        LowAboveGround = 8: "low_above_ground",
        /// H, AIM of 2004 to 2016: the same figures above the ground.
        HighAboveGround = 9: "high_above_ground",
        /// NDB that is a compass locator, AIM of 2004 to 2023: 15 NM at all heights.
        CompassLocator = 10: "compass_locator",
        /// NDB of class MH, the same: 25 NM at all heights.
        NdbMediumHigh = 11: "ndb_mh",
        /// NDB of class H, the same: 50 NM at all heights; that of a single station may be less.
        NdbHigh = 12: "ndb_h",
        /// NDB of class HH, the same: 75 NM at all heights.
        NdbVeryHigh = 13: "ndb_hh",
    }
}

/// How far one layer of a volume reaches.
enum Reach {
    Miles(f64),
    RadioHorizon,
}

/// A layer of a service volume in feet: from its floor on, up to its ceiling.
struct Layer {
    floor_ft: f64,
    ceiling_ft: f64,
    /// Whether the ceiling belongs to it: "up to and including", or "up to but not including".
    with_ceiling: bool,
    reach: Reach,
}

impl Layer {
    const fn up_to_and_including(floor_ft: f64, ceiling_ft: f64, miles: f64) -> Self {
        Self { floor_ft, ceiling_ft, with_ceiling: true, reach: Reach::Miles(miles) }
    }

    const fn up_to(floor_ft: f64, ceiling_ft: f64, miles: f64) -> Self {
        Self { floor_ft, ceiling_ft, with_ceiling: false, reach: Reach::Miles(miles) }
    }

    fn holds(&self, height_ft: f64) -> bool {
        height_ft >= self.floor_ft
            && (height_ft < self.ceiling_ft || self.with_ceiling && height_ft == self.ceiling_ft)
    }
}

const TERMINAL: &[Layer] = &[Layer::up_to_and_including(1_000.0, 12_000.0, 25.0)];
const LOW: &[Layer] = &[Layer::up_to_and_including(1_000.0, 18_000.0, 40.0)];
const HIGH: &[Layer] = &[
    Layer::up_to_and_including(1_000.0, 14_500.0, 40.0),
    Layer::up_to_and_including(14_500.0, 60_000.0, 100.0),
    Layer::up_to_and_including(18_000.0, 45_000.0, 130.0),
];
const VOR_LOW: &[Layer] = &[Layer::up_to(1_000.0, 5_000.0, 40.0), Layer::up_to(5_000.0, 18_000.0, 70.0)];
const VOR_HIGH: &[Layer] = &[
    Layer::up_to(1_000.0, 5_000.0, 40.0),
    Layer::up_to(5_000.0, 14_500.0, 70.0),
    Layer::up_to_and_including(14_500.0, 60_000.0, 100.0),
    Layer::up_to_and_including(18_000.0, 45_000.0, 130.0),
];
// "For altitudes up to 12,900 feet" meets "from 12,900 feet": the height itself is taken for the fixed range.
const DME_BELOW: Layer = Layer {
    floor_ft: f64::NEG_INFINITY,
    ceiling_ft: 12_900.0,
    with_ceiling: false,
    reach: Reach::RadioHorizon,
};
const DME_LOW: &[Layer] = &[DME_BELOW, Layer::up_to(12_900.0, 18_000.0, 130.0)];
const DME_HIGH: &[Layer] = &[
    DME_BELOW,
    Layer::up_to_and_including(12_900.0, 60_000.0, 100.0),
    Layer::up_to_and_including(12_900.0, 45_000.0, 130.0),
];

const fn at_all_heights(miles: f64) -> Layer {
    Layer::up_to_and_including(f64::NEG_INFINITY, f64::INFINITY, miles)
}
const COMPASS_LOCATOR: &[Layer] = &[at_all_heights(15.0)];
const NDB_MEDIUM_HIGH: &[Layer] = &[at_all_heights(25.0)];
const NDB_HIGH: &[Layer] = &[at_all_heights(50.0)];
const NDB_VERY_HIGH: &[Layer] = &[at_all_heights(75.0)];

impl ServiceClass {
    const fn layers(self) -> &'static [Layer] {
        match self {
            Self::Terminal | Self::TerminalAboveGround => TERMINAL,
            Self::Low | Self::LowAboveGround => LOW,
            Self::High | Self::HighAboveGround => HIGH,
            Self::VorLow => VOR_LOW,
            Self::VorHigh => VOR_HIGH,
            Self::DmeLow => DME_LOW,
            Self::DmeHigh => DME_HIGH,
            Self::CompassLocator => COMPASS_LOCATOR,
            Self::NdbMediumHigh => NDB_MEDIUM_HIGH,
            Self::NdbHigh => NDB_HIGH,
            Self::NdbVeryHigh => NDB_VERY_HIGH,
        }
    }

    const fn counts_from_the_ground(self) -> bool {
        matches!(self, Self::TerminalAboveGround | Self::LowAboveGround | Self::HighAboveGround)
    }

    /// How far the service reaches at a height: the farthest of the published layers that hold the height, zero in none.
    ///
    /// `antenna` is the antenna's height above the ground; classes counted from the ground add it to the height above the
    /// antenna, and the radio horizon of DL and DH (4/3 of the earth's radius, smooth earth) is seen from it.
    ///
    /// # Accuracy
    /// As published: a floor belongs to its layer, a ceiling where the text says "including".
    ///
    /// # Degenerate cases
    /// Below 1 000 ft (VOR and TACAN) and above the volume the reach is zero, and so is a radio horizon from below the ground. The curves that some editions print for lower edges below
    /// 1 000 ft are not in it. The cone above the station is not either: see [`super::cone_radius`].
    ///
    /// # Source
    /// FAA Aeronautical Information Manual 1-1-8, TBL 1-1-1 and 1-1-2, read in a transcription of 2023 that breaks off before the figures of DL
    /// and DH, which are from memory; the editions of 19 February 2004 and 26 May 2016 for heights above the ground.
    pub fn reach(self, height: HeightAboveStation, antenna: SurfaceHeight) -> GroundDistance {
        let above_ground: Length = height.value() + antenna.value();
        let counted = if self.counts_from_the_ground() { above_ground } else { height.value() };
        // A published bound stays on its side when feet have gone through metres.
        let height_ft = (counted.get::<foot>() * 1e6).round() / 1e6;
        let miles = |layer: &Layer| match layer.reach {
            Reach::Miles(miles) => nautical_miles(miles),
            Reach::RadioHorizon if above_ground < metres(0.0) => nautical_miles(0.0),
            Reach::RadioHorizon => {
                radio_horizon(SurfaceHeight::derived(above_ground), antenna, HorizonRule::FourThirds).value()
            }
        };
        let held = self.layers().iter().filter(|layer| layer.holds(height_ft)).map(miles);
        GroundDistance::derived(held.fold(nautical_miles(0.0), Length::max))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::value::units::{feet, nautical_mile};

    fn reach_nm(class: ServiceClass, height_ft: f64, antenna_ft: f64) -> f64 {
        let height = HeightAboveStation::new(feet(height_ft)).unwrap();
        class.reach(height, SurfaceHeight::new(feet(antenna_ft)).unwrap()).value().get::<nautical_mile>()
    }

    /// FAA AIM of 2023, 1-1-8, TBL 1-1-1: class, height above the transmitter in feet, radial distance in nautical miles.
    #[test]
    fn every_bound_is_on_the_side_it_is_published_on() {
        use ServiceClass::{DmeHigh, High, Low, Terminal, VorHigh, VorLow};
        for (class, height_ft, miles) in [
            (Terminal, 999.9, 0.0),
            (Terminal, 1_000.0, 25.0),
            (Terminal, 12_000.0, 25.0),
            (Terminal, 12_000.1, 0.0),
            (Low, 18_000.0, 40.0),
            (Low, 18_000.1, 0.0),
            (High, 14_499.9, 40.0),
            (High, 14_500.0, 100.0),
            (High, 17_999.9, 100.0),
            (High, 18_000.0, 130.0),
            (High, 45_000.0, 130.0),
            (High, 45_000.1, 100.0),
            (High, 60_000.0, 100.0),
            (High, 60_000.1, 0.0),
            (VorLow, 4_999.9, 40.0),
            (VorLow, 5_000.0, 70.0),
            (VorLow, 17_999.9, 70.0),
            (VorLow, 18_000.0, 0.0),
            (VorHigh, 14_499.9, 70.0),
            (VorHigh, 14_500.0, 100.0),
            (VorHigh, 18_000.0, 130.0),
            (DmeHigh, 12_900.0, 130.0),
            (DmeHigh, 45_000.0, 130.0),
            (DmeHigh, 45_000.1, 100.0),
            (DmeHigh, 60_000.1, 0.0),
        ] {
            assert!((reach_nm(class, height_ft, 0.0) - miles).abs() < 1e-9, "{class:?} at {height_ft}");
        }
    }

    #[test]
    fn feet_that_went_through_metres_keep_their_side() {
        for bound_ft in [1_000.0, 5_000.0, 12_000.0, 12_900.0, 14_500.0, 18_000.0, 45_000.0, 60_000.0] {
            for class in ServiceClass::ALL {
                let at = reach_nm(*class, bound_ft, 0.0);
                let neighbours = [-1e-9, 1e-9].map(|step| reach_nm(*class, bound_ft + step, 0.0));
                assert!(neighbours.iter().all(|near| (near - at).abs() < 1e-3), "{class:?} at {bound_ft}");
            }
        }
    }

    #[test]
    fn older_editions_count_from_the_ground() {
        assert_eq!(reach_nm(ServiceClass::TerminalAboveGround, 960.0, 40.0), 25.0);
        assert_eq!(reach_nm(ServiceClass::Terminal, 960.0, 40.0), 0.0);
        assert_eq!(reach_nm(ServiceClass::LowAboveGround, 17_980.0, 40.0), 0.0);
    }

    #[test]
    fn dme_below_12_900_ft_is_seen_to_the_horizon() {
        let horizon_nm = reach_nm(ServiceClass::DmeLow, 12_899.0, 0.0);
        assert!((horizon_nm - 139.5).abs() < 0.1, "{horizon_nm}");
        assert_eq!(reach_nm(ServiceClass::DmeHigh, -10.0, 0.0), 0.0);
        assert!(reach_nm(ServiceClass::DmeHigh, -10.0, 10.0) > 3.0);
    }
}
