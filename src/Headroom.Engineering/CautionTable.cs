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
        "a powered run has copper-clad conductors",
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

    /// <summary>A cabinet that keeps sound keeps heat as well.</summary>
    public static Caution WarmCabinet { get; } = new(
        "WARM-CABINET",
        "A cabinet that keeps sound in keeps heat in: warmer air makes the fans faster, and at 1.3 times the speed they are 5.7 dB louder, more than a glazed door keeps. Read the air at the inlet after a day.",
        "a cabinet is advised against sound",
        "whoever fits it, with a thermometer");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Caution> All { get; } = [AlwaysOn, TooManyVolts, MixedPanel, CopperClad, Mains, DirectCurrent, WarmCabinet];
}
