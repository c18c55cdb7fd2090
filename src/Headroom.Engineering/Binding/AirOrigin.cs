using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Binding;

/// <summary>Where a temperature of the air comes from.</summary>
/// <param name="Written">The value as written; null when it was assumed.</param>
/// <param name="Of">What it was written of, such as <c>along loft</c>; null when of the piece itself.</param>
public readonly record struct AirOrigin(Given<Celsius>? Written, string? Of)
{
    /// <summary>The origin in words.</summary>
    public string InWords => Written is null ? "assumed, no temperature written" : Of is null ? Origins.Of(Written) : $"{Of}, {Origins.Of(Written)}";
}
