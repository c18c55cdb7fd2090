using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Planning.Turning;

/// <summary>Something whose value is turned.</summary>
/// <param name="On">As asked for.</param>
/// <param name="What">What it is, in words.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Now">Its value today.</param>
/// <param name="Least">How far down it is turned.</param>
/// <param name="Most">How far up.</param>
/// <param name="Step">How finely.</param>
/// <param name="Set">The job and catalogue with another value.</param>
internal sealed record Knob(
    string On, string What, string Unit, double Now, double Least, double Most, double Step, Func<double, (Job Job, Catalogue Catalogue)> Set)
{
    /// <summary>True when units by themselves come to the same whatever its value.</summary>
    public bool KeepsUnits { get; init; }
}
