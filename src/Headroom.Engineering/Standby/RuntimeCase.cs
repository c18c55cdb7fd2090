namespace Headroom.Engineering.Standby;

/// <summary>How long a supply holds in one case of age and cold.</summary>
/// <param name="Name">The case in words: <c>aged and cold</c>.</param>
/// <param name="Derating">What the load is multiplied by [1]; null when it is not known.</param>
/// <param name="ByShareUsed">By the share used [s]; null when not known or the load is heavier than the table goes.</param>
/// <param name="BySections">By sections [s]; null likewise.</param>
public sealed record RuntimeCase(string Name, double? Derating, double? ByShareUsed, double? BySections)
{
    /// <summary>The smaller of both [s]; null when there is none.</summary>
    public double? Seconds => ByShareUsed is { } used && BySections is { } sections ? Math.Min(used, sections) : null;
}
