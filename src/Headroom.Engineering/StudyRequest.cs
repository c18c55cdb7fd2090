using Headroom.Domain.Jobs;

namespace Headroom.Engineering;

/// <summary>What is to be studied of a job.</summary>
/// <param name="Design">The design; null for the chosen one, else the first.</param>
/// <param name="On">The day for which it is worked out.</param>
/// <param name="Counts">Changes of what switches reserve by, for this study only.</param>
/// <param name="Only">The disciplines wanted; null for all.</param>
public sealed record StudyRequest(string? Design, DateOnly On, IReadOnlyList<CountAs> Counts, IReadOnlyList<string>? Only)
{
    /// <summary>Watts that the firm read at this and other sites; empty when none are at hand.</summary>
    public IReadOnlyList<FirmReading> FirmReadings { get; init; } = [];

    /// <summary>Keeps what readings of watts come to, where many changes of one job are studied; null to work it out each time.</summary>
    public MeasuredDraws.DrawMemory? DrawMemory { get; init; }

    /// <summary>A study of the chosen design with every discipline.</summary>
    /// <param name="on">The day for which it is worked out.</param>
    /// <returns>The request.</returns>
    public static StudyRequest Whole(DateOnly on) => new(null, on, [], null);
}
