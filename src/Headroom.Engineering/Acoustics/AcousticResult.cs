using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Acoustics;

/// <summary>Everything the study of sound worked out.</summary>
/// <param name="Bound">The design it was worked out for.</param>
/// <param name="Listeners">Every listener of the survey.</param>
/// <param name="Sources">Everything that is heard.</param>
/// <param name="UnitReadings">Readings close to a source, and what became of them.</param>
public sealed record AcousticResult(
    BoundDesign Bound, IReadOnlyList<ListenerSound> Listeners, IReadOnlyList<SoundSource> Sources, IReadOnlyList<UnitReading> UnitReadings)
{
    /// <summary>The air at the inlets, as it was handed on.</summary>
    public InletAir Inlets { get; init; } = InletAir.NotKnown;
}
