//! What coverings weigh and how much room their debris takes: starting points with their sources, each of which the roofer may set.

use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use trade::stack::Covering;
use trade::takeoff::Spread;

/// Weights and volumes that a tear-off and a load are reckoned with.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Weights {
    /// Pounds a square of one layer as it is torn off.
    pub a_square: BTreeMap<Covering, Spread>,
    /// Pounds a square foot of one layer as a roof carries it.
    pub carried: BTreeMap<Covering, Spread>,
    /// Pounds a square foot of sheathing, for each inch of thickness.
    pub sheathing_an_inch: f64,
    /// Pounds that a cubic yard of debris weighs on the trailer.
    pub a_cubic_yard: Spread,
}

const fn spread(least: f64, likely: f64, most: f64) -> Spread {
    Spread {
        least,
        likely,
        most,
    }
}

impl Default for Weights {
    /// Pounds a square: asphalt strip shingles 180 to 350 by type (textbook; municipal minimums of 210 and 235), the rest a hundred times
    /// what the roof carries.
    ///
    /// Pounds a square foot: asphalt 2 (ASCE 7 Table C3.1), 3 in HUD's guide; slate 7.25 at 3/16 in (Kidder, Building Construction), 10 at
    /// 1/4 in; wood shingles 2.5 (Kidder) to 3; tile 8 to 19 (Kidder); standing-seam steel 1 (Kidder); asbestos-cement 4; sheathing 3 an inch.
    /// Shakes, lapped metal, roll, built-up, modified and single-ply roofing are from memory.
    ///
    /// Debris: 731 lb a cubic yard of shingles (EPA 2016, from memory).
    fn default() -> Self {
        let carried = [
            (Covering::AsphaltStrip, spread(2.0, 2.0, 3.0)),
            (Covering::AsphaltLaminated, spread(2.0, 2.0, 3.0)),
            (Covering::AsphaltRoll, spread(1.0, 1.0, 1.5)),
            (Covering::WoodShingle, spread(2.5, 3.0, 3.0)),
            (Covering::WoodShake, spread(3.0, 3.0, 4.5)),
            (Covering::Slate, spread(7.25, 10.0, 10.0)),
            (Covering::ClayTile, spread(8.0, 12.0, 19.0)),
            (Covering::CementTile, spread(8.0, 12.0, 19.0)),
            (Covering::AsbestosCement, spread(4.0, 4.0, 4.0)),
            (Covering::MetalSeam, spread(1.0, 1.0, 1.0)),
            (Covering::MetalLapped, spread(1.0, 1.0, 1.5)),
            (Covering::BuiltUp, spread(2.5, 5.5, 6.5)),
            (Covering::ModifiedBitumen, spread(1.0, 1.5, 2.0)),
            (Covering::SinglePly, spread(0.5, 0.7, 1.0)),
        ];
        let mut a_square: BTreeMap<Covering, Spread> = carried
            .iter()
            .map(|(covering, load)| (*covering, load.scaled(100.0)))
            .collect();
        a_square.insert(Covering::AsphaltStrip, spread(180.0, 235.0, 350.0));
        a_square.insert(Covering::AsphaltLaminated, spread(180.0, 235.0, 350.0));
        Self {
            a_square,
            carried: carried.into(),
            sheathing_an_inch: 3.0,
            a_cubic_yard: Spread::exactly(731.0),
        }
    }
}
