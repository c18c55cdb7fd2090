using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What a design changes at a line out of the house, such as a larger contract.</summary>
/// <param name="Id">The line.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record LineChange(string Id, Place At)
{
    /// <summary>What it gives towards the house [bit/s]; null for the same.</summary>
    public Given<BitsPerSecond>? Down { get; init; }

    /// <summary>What it takes from the house [bit/s]; null for the same.</summary>
    public Given<BitsPerSecond>? Up { get; init; }

    /// <summary>This change, completed by another where it does not say.</summary>
    /// <param name="other">The change to fall back on.</param>
    /// <returns>The completed change.</returns>
    public LineChange Over(LineChange other) => this with { Down = Down ?? other.Down, Up = Up ?? other.Up };

    /// <summary>The line with the change.</summary>
    /// <param name="line">The line as surveyed.</param>
    /// <returns>The line as it is then.</returns>
    public Line In(Line line) => line with { Down = Down ?? line.Down, Up = Up ?? line.Up };
}
