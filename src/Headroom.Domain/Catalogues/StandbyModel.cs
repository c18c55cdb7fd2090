using Headroom.Domain.Quantities;

namespace Headroom.Domain.Catalogues;

/// <summary>A standby supply.</summary>
/// <param name="Body">Size, weight, ratings, price.</param>
/// <param name="Apparent">The most it can give in apparent power [VA]; null when not known.</param>
/// <param name="Real">The most it can give in real power [W]; null when not known.</param>
/// <param name="Efficiency">Output over battery, 0 to 1; null when not known.</param>
/// <param name="Battery">The battery block model; null when not known.</param>
/// <param name="Blocks">How many blocks; null when not known.</param>
/// <param name="Runtime">Declared minutes by load, as load and duration.</param>
public sealed record StandbyModel(
    Body Body,
    Given<VoltAmperes>? Apparent,
    Given<Watts>? Real,
    Given<Share>? Efficiency,
    string? Battery,
    int? Blocks,
    IReadOnlyList<RuntimePoint> Runtime)
{
    /// <summary>What its converter draws from the battery with nothing connected [W]; null when not known.</summary>
    public Given<Watts>? NoLoad { get; init; }

    /// <summary>What it takes from the mains to recharge [W]; null when not known.</summary>
    public Given<Watts>? Recharge { get; init; }

    /// <summary>True when it gives direct current, as a battery feed for midspans does.</summary>
    public bool GivesDc { get; init; }

    /// <summary>Outlets that its battery feeds; null when not known.</summary>
    public int? Outlets { get; init; }

    /// <summary>What is heard of it; null when not known.</summary>
    public SoundModel? Sound { get; init; }

    /// <summary>The invented name.</summary>
    public string Id => Body.Id;
}
