using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Fields;

/// <summary>The ranges in which values make sense in a small office and around it; outside there is a slip of the pen or of a unit.</summary>
internal static class Sensible
{
    /// <summary>A stretch of cable: from a stub to well beyond what copper carries, since fibre runs are longer.</summary>
    public static QuantityShape<Metres> Run => field ??= Of<Metres>(0.1, 2000, "m");

    /// <summary>A side of a room or yard.</summary>
    public static Bounds Side { get; } = new(0.1, 500);

    /// <summary>A coordinate in a room, or of a room in the plan; a cellar lies below zero.</summary>
    public static Bounds Coordinate { get; } = new(-1000, 1000);

    /// <summary>A side of a device or cabinet.</summary>
    public static QuantityShape<Metres> Part => field ??= Of<Metres>(0.005, 3, "mm");

    /// <summary>Cable bought beyond the measured lengths; all of it once more is a slip.</summary>
    public static QuantityShape<Share> Waste => field ??= Of<Share>(0, 1, "%");

    /// <summary>How much a network is to grow.</summary>
    public static QuantityShape<Share> Growth { get; } = Of<Share>(0, 10, "%");

    /// <summary>What remains of a price, or is taken off it; all of it is no price.</summary>
    public static QuantityShape<Share> Margin { get; } = Of<Share>(0, 0.9, "%");

    /// <summary>Tax on a price, or what money costs in a year.</summary>
    public static QuantityShape<Share> Tax { get; } = Of<Share>(0, 0.5, "%");

    /// <summary>How long a visitor stays, or an address is lent.</summary>
    public static QuantityShape<Seconds> Stay { get; } = Of<Seconds>(60, 31557600, "h");

    /// <summary>Hours that people work on one job.</summary>
    public static QuantityShape<Seconds> Worked { get; } = Of<Seconds>(0, 100_000 * 3600.0, "h");

    /// <summary>The mains voltage between two conductors of a building.</summary>
    public static QuantityShape<Volts> MainsVolts { get; } = Of<Volts>(90, 480, "V");

    /// <summary>A bend, or a gap between cables.</summary>
    public static QuantityShape<Metres> Gap => field ??= Of<Metres>(0, 10, "mm");

    /// <summary>A stretch between two points from which a cable can be pulled.</summary>
    public static QuantityShape<Metres> Pull => field ??= Of<Metres>(0.1, 500, "m");

    /// <summary>A mains circuit of a building.</summary>
    public static QuantityShape<Amperes> Mains => field ??= Of<Amperes>(1, 400, "A");

    /// <summary>A thickness: of a cable, or the inside of a conduit.</summary>
    public static QuantityShape<Metres> Thickness => field ??= Of<Metres>(0.0005, 0.5, "mm");

    /// <summary>How far from a source its sound was taken: from right at the outlet.</summary>
    public static QuantityShape<Metres> Distance => field ??= Of<Metres>(0.005, 100, "m");

    /// <summary>A wall or the door in it.</summary>
    public static QuantityShape<SquareMetres> Wall => field ??= Of<SquareMetres>(0.1, 2000, "m2");

    /// <summary>The level of one octave band.</summary>
    public static QuantityShape<BandLevel> BandLevel => field ??= Of<BandLevel>(-30, 120, "dB");

    /// <summary>How far a module reaches.</summary>
    public static QuantityShape<Metres> Reach => field ??= Of<Metres>(0.1, 200_000, "m");

    /// <summary>A height above the sea: from the Dead Sea's shore to where nobody lives.</summary>
    public static QuantityShape<Metres> Altitude => field ??= Of<Metres>(-450, 6000, "m");

    /// <summary>Free area of vents, or the inside of a tray.</summary>
    public static QuantityShape<SquareMetres> Opening => field ??= Of<SquareMetres>(0, 10, "cm2");

    /// <summary>A conductor of a pair cable: 30 to 16 AWG and a little beyond.</summary>
    public static QuantityShape<SquareMillimetres> Conductor => field ??= Of<SquareMillimetres>(0.03, 2.5, "mm2");

    /// <summary>Air around people, cables and devices.</summary>
    public static QuantityShape<Celsius> Air => field ??= Of<Celsius>(-50, 90, "°C");

    /// <summary>The two ends of the air a device is rated for.</summary>
    public static QuantityShape<Celsius> RatedAir => field ??= new(new(-60, 100), "°C") { IsRange = true };

    /// <summary>A level at an ear.</summary>
    public static QuantityShape<SoundPressure> Loudness => field ??= Of<SoundPressure>(0, 120, "dB(A)");

    /// <summary>A declared sound power level.</summary>
    public static QuantityShape<SoundPower> Sound => field ??= Of<SoundPower>(0, 120, "dB(A)");

    /// <summary>How long a room rings.</summary>
    public static QuantityShape<Seconds> Reverberation => field ??= Of<Seconds>(0.05, 20, "s");

    /// <summary>The age or life of a battery.</summary>
    public static QuantityShape<Seconds> Years => field ??= Of<Seconds>(0, 30 * 31557600.0, "years");

    /// <summary>The time between two of what is done again and again: a month to ten years.</summary>
    public static QuantityShape<Seconds> Repeated => field ??= Of<Seconds>(31557600 / 12.0, 10 * 31557600.0, "years");

    /// <summary>By how much something becomes dearer, or is lost, in a year.</summary>
    public static QuantityShape<Share> Yearly => field ??= Of<Share>(0, 0.5, "%");

    /// <summary>How long a battery lasts.</summary>
    public static QuantityShape<Seconds> Lasts => field ??= Of<Seconds>(1, 100 * 86400.0, "min");

    /// <summary>How long a device takes to start: from a plug to a box of a line that trains for half an hour.</summary>
    public static QuantityShape<Seconds> Boot { get; } = Of<Seconds>(0.1, 3600, "s");

    /// <summary>A moment after the mains failed.</summary>
    public static QuantityShape<Seconds> Moment { get; } = Of<Seconds>(0, 7 * 86400.0, "min");

    /// <summary>Real over apparent power of a supply.</summary>
    public static QuantityShape<Share> PowerFactor { get; } = Of<Share>(0.3, 1, "%");

    /// <summary>What one device draws.</summary>
    public static QuantityShape<Watts> Draw => field ??= Of<Watts>(0, 1000, "W");

    /// <summary>What one port may give; class 8 is 90 W (IEEE 802.3).</summary>
    public static QuantityShape<Watts> PortWatts => field ??= Of<Watts>(0, 100, "W");

    /// <summary>What a supply gives, or all ports together.</summary>
    public static QuantityShape<Watts> SupplyWatts => field ??= Of<Watts>(0, 20_000, "W");

    /// <summary>Apparent power of a standby supply.</summary>
    public static QuantityShape<VoltAmperes> Apparent => field ??= Of<VoltAmperes>(50, 100_000, "VA");

    /// <summary>A voltage on a data cable; 60 V is where safe voltage ends (IEC 62368-1, ES1).</summary>
    public static QuantityShape<Volts> CableVolts => field ??= Of<Volts>(3, 60, "V");

    /// <summary>The two ends of a voltage on a data cable.</summary>
    public static QuantityShape<Volts> CableVoltsRange => field ??= new(new(3, 60), "V") { IsRange = true };

    /// <summary>The two ends of a supply's input.</summary>
    public static QuantityShape<Volts> InputVolts => field ??= new(new(5, 480), "V") { IsRange = true };

    /// <summary>The voltage of a battery block or a fan.</summary>
    public static QuantityShape<Volts> LowVolts => field ??= Of<Volts>(1, 60, "V");

    /// <summary>A current on a data cable or of a fan.</summary>
    public static QuantityShape<Amperes> SmallCurrent => field ??= Of<Amperes>(0.001, 10, "A");

    /// <summary>The charge of a battery block.</summary>
    public static QuantityShape<AmpereHours> Charge => field ??= Of<AmpereHours>(0.1, 1000, "Ah");

    /// <summary>What the input of a device charges at the start.</summary>
    public static QuantityShape<Farads> Capacitance => field ??= Of<Farads>(0, 0.01, "µF");

    /// <summary>A mass that people carry, or that a cabinet bears.</summary>
    public static QuantityShape<Kilograms> Mass => field ??= Of<Kilograms>(0.001, 2000, "kg");

    /// <summary>Height in a rack.</summary>
    public static QuantityShape<RackUnits> Units => field ??= Of<RackUnits>(0.5, 60, "U");

    /// <summary>A share of a whole.</summary>
    public static QuantityShape<Share> Share => field ??= Of<Share>(0, 1, "%");

    /// <summary>Free area of a grille; a plate with less is no grille.</summary>
    public static QuantityShape<Share> FreeArea => field ??= Of<Share>(0.05, 1, "%");

    /// <summary>A gap in front of a fan.</summary>
    public static QuantityShape<Metres> OutletGap => field ??= Of<Metres>(0.001, 1, "mm");

    /// <summary>An efficiency; below it a supply would be a heater.</summary>
    public static QuantityShape<Share> Efficiency => field ??= Of<Share>(0.2, 1, "%");

    /// <summary>Conductivity against annealed copper: from steel to the best copper there is.</summary>
    public static QuantityShape<Share> Conductivity => field ??= Of<Share>(0.03, 1.05, "%");

    /// <summary>A loss of light or of sound.</summary>
    public static QuantityShape<Decibels> Loss => field ??= Of<Decibels>(0, 80, "dB");

    /// <summary>The wavelength of light in a fibre.</summary>
    public static QuantityShape<Nanometres> Wavelength => field ??= Of<Nanometres>(600, 1700, "nm");

    /// <summary>The data rate of a port.</summary>
    public static QuantityShape<BitsPerSecond> Rate => field ??= Of<BitsPerSecond>(1e6, 800e9, "Mb/s");

    /// <summary>The data rate of a whole switch.</summary>
    public static QuantityShape<BitsPerSecond> Switching => field ??= Of<BitsPerSecond>(1e6, 1e14, "Gb/s");

    /// <summary>Frames that a switch passes on.</summary>
    public static QuantityShape<PacketsPerSecond> Frames => field ??= Of<PacketsPerSecond>(1e3, 1e12, "Mframes/s");

    /// <summary>What one device, or a line, asks or gives.</summary>
    public static QuantityShape<BitsPerSecond> DataFlow { get; } = Of<BitsPerSecond>(1e3, 800e9, "Mb/s");

    /// <summary>What a disk holds.</summary>
    public static QuantityShape<Octets> Disk { get; } = Of<Octets>(1e9, 1e15, "TB");

    /// <summary>How long pictures are kept.</summary>
    public static QuantityShape<Seconds> Kept { get; } = Of<Seconds>(3600, 10 * 31_557_600.0, "d");

    /// <summary>A share that leaves something over.</summary>
    public static QuantityShape<Share> BelowWhole { get; } = Of<Share>(0, 0.99, "%");

    /// <summary>Share of the time that a line works.</summary>
    public static QuantityShape<Share> Works { get; } = Of<Share>(0.5, 1, "%");

    /// <summary>A probability that is wanted; at 100 % nothing would ever be enough.</summary>
    public static QuantityShape<Share> Certainty { get; } = Of<Share>(0.5, 0.9999, "%");

    /// <summary>Share of calls that may be lost.</summary>
    public static QuantityShape<Share> CallsLost { get; } = Of<Share>(0.0001, 0.5, "%");

    /// <summary>Time until something works again, or lost in a year.</summary>
    public static QuantityShape<Seconds> Lost { get; } = Of<Seconds>(60, 31_557_600, "h");

    /// <summary>Time until a supplier has sent something.</summary>
    public static QuantityShape<Seconds> Lead { get; } = Of<Seconds>(3600, 3 * 31_557_600.0, "d");

    /// <summary>Time in service of many units together.</summary>
    public static QuantityShape<Seconds> Service { get; } = Of<Seconds>(3600, 3.6e13, "h");

    /// <summary>Mean time between failures: from a bad week to what no maker ever declared.</summary>
    public static QuantityShape<Seconds> BetweenFailures { get; } = Of<Seconds>(3.6e5, 3.6e11, "h");

    /// <summary>Air moved by a small fan.</summary>
    public static QuantityShape<CubicMetresPerHour> Flow => field ??= Of<CubicMetresPerHour>(0, 2000, "m3/h");

    /// <summary>Pressure made by a small fan.</summary>
    public static QuantityShape<Pascals> Pressure => field ??= Of<Pascals>(0, 2000, "Pa");

    /// <summary>How fast a fan turns.</summary>
    public static QuantityShape<RevolutionsPerMinute> Speed => field ??= Of<RevolutionsPerMinute>(100, 40_000, "rpm");

    private static QuantityShape<T> Of<T>(double least, double most, string unit)
        where T : struct, IQuantity<T> => new(new Bounds(least, most), unit);
}
