//! The rules by name.

use std::fmt;

macro_rules! rules {
    ($($(#[$doc:meta])* $name:ident = $text:literal),+ $(,)?) => {
        /// Names a rule. Its sentence stands in the message files under `reason-` and this name.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Rule {
            $($(#[$doc])* $name),+
        }

        impl Rule {
            /// All of them.
            pub const ALL: &[Self] = &[$(Self::$name),+];

            /// Its name as it is recorded.
            pub fn name(self) -> &'static str {
                match self {
                    $(Self::$name => $text),+
                }
            }
        }
    };
}

rules! {
    // --- why a repair is not enough
    /// The covering is done.
    CoveringDone = "covering-done",
    /// The covering is done and lies over another.
    CoveringDoneOverLayers = "covering-done-over-layers",
    /// The deck is wet or soft beyond a spot.
    DeckWetBroad = "deck-wet-broad",
    /// Sections at different heights trap or step water.
    RebuiltStep = "rebuilt-step",
    /// The slope is too low for shingles.
    TooLow = "too-low",
    /// The shingles break when they are lifted.
    Brittle = "brittle",
    /// Nothing to be had matches.
    Unmatchable = "unmatchable",
    /// Too many separate places on one slope.
    ManyPlaces = "many-places",
    /// One cause was patched as often as the firm will.
    PatchedOften = "patched-often",
    /// So many layers that the firm repairs no more.
    LayersNoRepair = "layers-no-repair",
    /// The field is wearing out and the owner needs it to last.
    MustLast = "must-last",
    /// A new covering alone cures it.
    OnlyACovering = "only-a-covering",
    /// Only some slopes are done.
    SomeSlopesOnly = "some-slopes-only",
    /// The deck is judged when it is bare.
    DeckJudgedBare = "deck-judged-bare",

    // --- a re-cover
    /// A local amendment bars any second layer.
    RecoverNoSecondLayer = "recover-no-second-layer",
    /// Two layers lie there.
    RecoverTwoLayers = "recover-two-layers",
    /// As many layers lie there as the locality allows.
    RecoverLayersHere = "recover-layers-here",
    /// The base is wet or soft.
    RecoverWetBase = "recover-wet-base",
    /// Slate, tile, asbestos-cement or shake lies there.
    RecoverBarredBase = "recover-barred-base",
    /// Hail exposure.
    RecoverHail = "recover-hail",
    /// The slope is too low for shingles, old or new.
    RecoverTooLow = "recover-too-low",
    /// It does not lie flat.
    RecoverNotFlat = "recover-not-flat",
    /// Some flashing or edge cannot be renewed.
    RecoverFlashingStays = "recover-flashing-stays",
    /// The frame may not carry it.
    RecoverFrameWeak = "recover-frame-weak",
    /// The maker does not accept it.
    RecoverMakerRefuses = "recover-maker-refuses",
    /// Sections at different heights would show through.
    RecoverRebuiltStep = "recover-rebuilt-step",
    /// The firm does not sell it.
    RecoverNotSold = "recover-not-sold",
    /// Conditions that nobody has looked at.
    RecoverNotKnown = "recover-not-known",
    /// What speaks against it even where code allows it.
    RecoverAdvisedAgainst = "recover-advised-against",
    /// Code allows it and all its conditions hold.
    RecoverAllowed = "recover-allowed",
    /// A second light layer needs no re-check of the structure.
    RecoverFrameExcepted = "recover-frame-excepted",
    /// Complete systems that carry their own load, metal over shake, and coatings are another matter.
    RecoverOtherWays = "recover-other-ways",
    /// An edition whose text was not to be had.
    CheckAdoptedText = "check-adopted-text",

    // --- flashings
    /// Spoilt flashings are not reused.
    FlashingReuse = "flashing-reuse",
    /// Old flashings are not reused under a new covering.
    FlashingRenewed = "flashing-renewed",
    /// The metal is too thin.
    FlashingThin = "flashing-thin",
    /// The valley lining is too narrow.
    ValleyNarrow = "valley-narrow",
    /// Sidewalls take step flashing only.
    SidewallStep = "sidewall-step",
    /// Sidewalls take step or continuous flashing.
    SidewallFlashing = "sidewall-flashing",
    /// A kick-out where an eave dies into a wall.
    KickOut = "kick-out",
    /// Drip edge at eaves and rakes.
    DripEdge = "drip-edge",
    /// Drip edge, before code asked for it.
    DripEdgePractice = "drip-edge-practice",
    /// Nails: how many and where.
    Nails = "nails",

    // --- what a new covering needs
    /// All layers come off.
    AllLayersOff = "all-layers-off",
    /// Doubled underlayment.
    UnderlaymentDoubled = "underlayment-doubled",
    /// Ice barrier, this far up.
    IceBarrier = "ice-barrier",
    /// Ice barrier, pitch or overhang not measured.
    IceBarrierUnmeasured = "ice-barrier-unmeasured",
    /// Ice barrier is called for here.
    IceBarrierMissing = "ice-barrier-missing",
    /// Underlayment on a low slope.
    UnderlaymentLow = "underlayment-low",
    /// Whether ice barrier is called for here is not set.
    IceBarrierUnknown = "ice-barrier-unknown",
    /// A cricket, this high.
    Cricket = "cricket",
    /// A cricket behind a wide chimney.
    CricketWanted = "cricket-wanted",
    /// A cricket, pitch not measured.
    CricketUnmeasured = "cricket-unmeasured",

    // --- chimneys, vents, air
    /// The chimney does not stand high enough.
    ChimneyLow = "chimney-low",
    /// The gas vent does not stand high enough.
    GasVentLow = "gas-vent-low",
    /// The gas vent does, by older codes only.
    GasVentOlderCodes = "gas-vent-older-codes",
    /// The table does not settle the gas vent.
    GasVentNotInTable = "gas-vent-not-in-table",
    /// How high a chimney stands.
    ChimneyHeight = "chimney-height",
    /// Attic air.
    AtticAir = "attic-air",
    /// Air over the insulation.
    AirSpace = "air-space",

    // --- why each step
    /// A defect on a part.
    Fault = "fault",
    /// A part in a bad way, no defect named.
    FaultUnnamed = "fault-unnamed",
    /// Water comes in.
    WaterComesIn = "water-comes-in",
    /// Open to the next rain.
    OpenToRain = "open-to-rain",
    /// Something may fall.
    MayFall = "may-fall",
    /// Something is urgent.
    Urgent = "urgent",
    /// The deck is wet at a spot.
    DeckWet = "deck-wet",
    /// The faults are local and the field is good.
    RepairLocal = "repair-local",
    /// A patch before now did not hold.
    PatchedBefore = "patched-before",
    /// Our own work came back.
    OurCallback = "our-callback",
    /// Another's work came back.
    TheirCallback = "their-callback",
    /// Two layers may be repaired.
    TwoLayersRepair = "two-layers-repair",
    /// Sound.
    Sound = "sound",
    /// Sound but ageing.
    SoundAgeing = "sound-ageing",
    /// The installer answers for it.
    InstallerAnswers = "installer-answers",
    /// We laid it ourselves.
    WeLaidIt = "we-laid-it",
    /// Our work waits for another trade.
    WaitsForTrade = "waits-for-trade",
    /// The frame is for an engineer.
    FrameWeak = "frame-weak",

    // --- look first
    /// Nothing was seen.
    LookNothingSeen = "look-nothing-seen",
    /// Seen only from afar.
    LookSeenFromAfar = "look-seen-from-afar",
    /// Water comes in and nothing found explains it.
    LookWaterUnexplained = "look-water-unexplained",
    /// The covering was not seen closely.
    LookCoveringNotSeen = "look-covering-not-seen",

    // --- refused in part
    /// Sealant alone.
    SealantAlone = "sealant-alone",
    /// What was asked for does not cure it.
    AskedDoesNotCure = "asked-does-not-cure",
    /// What was asked for makes it worse.
    AskedMakesWorse = "asked-makes-worse",

    // --- how far it reaches
    /// Nothing of it was seen.
    LimitNothingSeen = "limit-nothing-seen",
    /// It was seen only from afar.
    LimitSeenFromAfar = "limit-seen-from-afar",
    /// Only the request was looked at.
    LimitRequestOnly = "limit-request-only",
    /// A quick look.
    LimitQuickLook = "limit-quick-look",
    /// Parts that stand on an earlier look.
    LimitEarlierLook = "limit-earlier-look",
    /// The attic was not seen.
    LimitAtticNotSeen = "limit-attic-not-seen",
    /// The layers were not counted.
    LimitLayersNotCounted = "limit-layers-not-counted",
    /// The layers differ from place to place.
    LimitLayersDiffer = "limit-layers-differ",
    /// The next covering means a tear-off.
    LimitNextIsTearOff = "limit-next-is-tear-off",
    /// Some slopes were not seen closely.
    LimitSlopesNotSeen = "limit-slopes-not-seen",
    /// Where the water gets in is likely, not proved.
    LimitWaterNotProved = "limit-water-not-proved",
    /// Water in dry cold is likely not rain.
    LimitDryCold = "limit-dry-cold",
    /// A maker's warranty is not ours to judge.
    LimitWarranty = "limit-warranty",
    /// A sale, and under two years left.
    SaleUnderTwoYears = "sale-under-two-years",
    /// A sale, and the roof could not be seen.
    SaleNotSeen = "sale-not-seen",

    // --- safety
    /// Suspect asbestos.
    Asbestos = "asbestos",
    /// Suspect vermiculite.
    Vermiculite = "vermiculite",
    /// Fuel vents.
    FuelVents = "fuel-vents",
    /// Paint that may hold lead.
    LeadPaint = "lead-paint",
    /// Tie off.
    TieOff = "tie-off",
    /// A soft deck underfoot.
    SoftUnderfoot = "soft-underfoot",
    /// Something may fall on people below.
    KeepClear = "keep-clear",
    /// Tabs that may crack are not lifted.
    TabsNotLifted = "tabs-not-lifted",
    /// A power line near.
    PowerLine = "power-line",
    /// The ladder does not stand right.
    StopLadder = "stop-ladder",
    /// A live line is near.
    StopLines = "stop-lines",
    /// Thunder.
    StopThunder = "stop-thunder",
    /// Wind.
    StopWind = "stop-wind",
    /// Weather of another kind.
    StopWeather = "stop-weather",
    /// Frost, snow or ice.
    StopFrozen = "stop-frozen",
    /// Wet.
    StopWet = "stop-wet",
    /// Too steep for the gear.
    StopSteep = "stop-steep",
    /// The deck may not bear.
    StopDeck = "stop-deck",
    /// Suspect fibres in the way.
    StopFibres = "stop-fibres",
}

impl Rule {
    /// The key of its sentence in the message files.
    pub fn key(self) -> String {
        format!("reason-{self}")
    }
}

impl fmt::Display for Rule {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}
