using Headroom.Domain.Ledgers;

namespace Headroom.Engineering;

/// <summary>All cautions there are: code, text, trigger, who may do the work.</summary>
public static class CautionTable
{
    /// <summary>Voltage is always on the pins.</summary>
    public static Caution AlwaysOn { get; } = new(
        "ALWAYS-ON",
        "Passive voltage is on the pins whatever is plugged in: it can destroy equipment not meant for it. Mark the port, the panel port and both cord ends.",
        "something hangs on a port or injector with passive voltage",
        "whoever patches; nobody else should move these cords");

    /// <summary>More volts than the device stands.</summary>
    public static Caution TooManyVolts { get; } = new(
        "OVER-VOLTS",
        "The voltage at this port is above what the device stands: unplug it before power is switched on; it may be destroyed or catch fire.",
        "the voltage at a port is above the most the device takes",
        "a person who knows the equipment's rating plate");

    /// <summary>Passive and standard drops on one panel.</summary>
    public static Caution MixedPanel { get; } = new(
        "MIXED-PANEL",
        "Drops with passive voltage lie on the same panel as ordinary ones: a cord in the wrong hole destroys a port. Keep them apart or cap and mark them.",
        "a space holds drops with passive voltage and drops without",
        "whoever patches");

    /// <summary>Copper-clad conductors.</summary>
    public static Caution CopperClad { get; } = new(
        "COPPER-CLAD",
        "Copper-clad conductors are not allowed by the cabling standards and grow warmer under load: do not feed devices over them; replace the run.",
        "a run or cord has copper-clad conductors",
        "whoever installs the cabling, under the local code");

    /// <summary>Fitting another supply.</summary>
    public static Caution Mains { get; } = new(
        "MAINS",
        "Mains voltage inside: a supply that is not made to be changed from outside is changed by the maker's service only; opening the case can kill and voids the warranty.",
        "another supply is advised",
        "the maker's service or a licensed person under the local code");

    /// <summary>Direct-current input.</summary>
    public static Caution DirectCurrent { get; } = new(
        "DC-INPUT",
        "Direct-current input: check polarity and the rating of the cable, fit the fuse the maker names, and do not break the circuit under load.",
        "a supply has a direct-current input",
        "a person trained for it, under the local code");

    /// <summary>Mains beside data cables.</summary>
    public static Caution MainsBeside { get; } = new(
        "MAINS-BESIDE",
        "Mains lies beside these cables: the local code comes before any distance given here, and mains wiring is neither moved nor opened to make room.",
        "a pathway has mains circuits beside it",
        "a licensed person under the local code, for anything that touches the mains");

    /// <summary>A pull that is too long or has too many bends.</summary>
    public static Caution HardPull { get; } = new(
        "HARD-PULL",
        "More than 30 m or two right-angle bends between pull points: the pull may pass the 110 N that a cable stands. Put in a pull box, or pull from the middle.",
        "a pathway's longest pull is above 30 m, or it has more than two bends between pull points",
        "whoever pulls the cable, two people, never by a machine without a gauge");

    /// <summary>A bend that is too tight.</summary>
    public static Caution TightBend { get; } = new(
        "TIGHT-BEND",
        "The tightest bend is below what the conduit or the cables in it need: pairs are pushed apart there and the run may fail its test.",
        "a pathway's bend radius is below that of the conduit or of a cable in it",
        "whoever installs the pathway");

    /// <summary>Light in a fibre.</summary>
    public static Caution Laser { get; } = new(
        "LASER",
        "Light that cannot be seen leaves the ends of these fibres and modules: never look into them, cap what is not plugged.",
        "an uplink runs on fibre",
        "a person instructed under IEC 60825-2");

    /// <summary>A cabinet that keeps sound keeps heat as well.</summary>
    public static Caution WarmCabinet { get; } = new(
        "WARM-CABINET",
        "A cabinet that keeps sound in keeps heat in: warmer air makes the fans faster, and at 1.3 times the speed they are 5.7 dB louder, more than a glazed door keeps. Read the air at the inlet after a day.",
        "a cabinet is advised against sound",
        "whoever fits it, with a thermometer");

    /// <summary>Work on a mast, roof or ladder.</summary>
    public static Caution Height { get; } = new(
        "HEIGHT",
        "Aiming or exchanging a radio is work at height: two people, a secured ladder or platform, none in wind or thunder, and power off before a hand comes before the aerial.",
        "a link through the air is short or tight, so that its radio is to be aimed again or exchanged",
        "people trained for work at height, under the local code");

    /// <summary>Fanless boxes on each other.</summary>
    public static Caution HotStack { get; } = new(
        "HOT-STACK",
        "Two boxes without fans lie on each other: each warms the other far beyond any rating, and their cases can burn a hand. Keep a rack unit free between them.",
        "two units without fans touch",
        "whoever fits them; let them cool before moving them");

    /// <summary>Cutting vents.</summary>
    public static Caution CutVents { get; } = new(
        "CUT-VENTS",
        "Before a vent is cut or a cupboard opened: it may be part of a wall that keeps fire or smoke back, cables may lie behind it, and what leaves it is heard in the room.",
        "air in a cupboard is too warm, so that vents or a fan are advised",
        "whoever answers for the building, under the local fire code; mains wiring only by a licensed person");

    /// <summary>Opening a case to change a fan.</summary>
    public static Caution OpenCase { get; } = new(
        "OPEN-CASE",
        "Mains voltage inside the case, and capacitors that hold some 325 V after it is unplugged. Opening it ends its safety approval and mostly its warranty; guards and every earth screw go back, and whoever changed it answers for it.",
        "a fan of a switch was changed, or is to be",
        "the maker's service or a person trained for it, under the local rules for repaired equipment");

    /// <summary>Batteries to be changed or added.</summary>
    public static Caution Battery { get; } = new(
        "BATTERY",
        "A battery cannot be switched off: across its poles it gives hundreds of amperes. Rings and watches off, tools insulated, only the blocks the maker names; blocks over 18 kg are lifted by two. Old ones go to recycling.",
        "a battery is past its life, or more minutes on battery are wanted",
        "a person instructed by the maker's manual, under the local code");

    /// <summary>A rack on a wall.</summary>
    public static Caution WallLoad { get; } = new(
        "WALL-LOAD",
        "What hangs on a wall can come down on somebody: board and hollow block hold a fraction of what brick holds. Know the wall, use the fixing made for it, and pull before you load.",
        "a rack is fixed to a wall",
        "a person who knows the wall and its fixing, under the local code");

    /// <summary>A heavy unit.</summary>
    public static Caution HeavyLift { get; } = new(
        "HEAVY-LIFT",
        "A unit here is too heavy for one person to lift onto rails: two people, or take its batteries out first, and mount it lowest.",
        "a unit in a rack weighs more than 18 kg",
        "two people");

    /// <summary>A rack that is fixed to nothing.</summary>
    public static Caution TipOver { get; } = new(
        "TIP-OVER",
        "This rack is fixed to nothing: it can tip when something heavy is pulled out. Fill it from the bottom and fix it before anything is hung high.",
        "a rack is fixed to nothing",
        "whoever fills it, not alone");

    /// <summary>Too few outlets, or too much current.</summary>
    public static Caution OutletStrip { get; } = new(
        "OUTLET-STRIP",
        "One strip plugged into another, or loaded beyond its rating, can catch fire. Use one strip with enough places on one outlet; outlets and circuits are added by a licensed person.",
        "more plugs than outlets, or more current than a strip of outlets may carry",
        "a licensed person under the local code, for anything behind the outlet");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Caution> All { get; } =
        [
            AlwaysOn, TooManyVolts, MixedPanel, CopperClad, Mains, DirectCurrent, MainsBeside, HardPull, TightBend, Laser, WarmCabinet, HotStack, CutVents, OpenCase, Battery,
            WallLoad, HeavyLift, TipOver, OutletStrip, Height,
        ];
}
