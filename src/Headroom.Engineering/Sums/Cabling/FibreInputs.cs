using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Sums.Cabling;

/// <summary>The inputs that the sums about fibre share.</summary>
internal static class FibreInputs
{
    /// <summary>The length.</summary>
    public static QuantityInput Length { get; } = new("length", "length of the link", Metres.Units, new(0.5, 100_000, "m"));

    /// <summary>The fibre.</summary>
    public static WordInput Fibre { get; } = new("fibre", "its category", "OM1", "OM2", "OM3", "OM4", "OM5", "OS1a", "OS2");

    /// <summary>Connections along the way.</summary>
    public static NumberInput Connections { get; } = new("connections", "mated pairs along the way", new Bounds(0, 50)) { Default = "2", DefaultWhy = "one panel at either end" };

    /// <summary>Splices along the way.</summary>
    public static NumberInput Splices { get; } = new("splices", "along the way", new Bounds(0, 100)) { Default = "0", DefaultWhy = "no splice" };
}
