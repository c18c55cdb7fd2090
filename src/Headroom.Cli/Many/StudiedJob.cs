using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Many;

/// <summary>What the study of one job of many came to; the ledger itself is not kept.</summary>
/// <param name="File">The file, as it can be named again.</param>
/// <param name="Name">What a person would call it: its folder or file.</param>
internal sealed record StudiedJob(string File, string Name)
{
    /// <summary>The name in the job; null when it could not be read.</summary>
    public string? Job { get; init; }

    /// <summary>The design; null when it was not worked out.</summary>
    public string? Design { get; init; }

    /// <summary>Why it was not worked out; null when it was.</summary>
    public string? NotWorked { get; init; }

    /// <summary>How many findings there are, errors and questions.</summary>
    public int Findings { get; init; }

    /// <summary>How many entries there are by verdict, in the order of <see cref="Verdict"/>.</summary>
    public IReadOnlyList<int> Counts { get; init; } = [0, 0, 0, 0];

    /// <summary>The worst verdict of all entries.</summary>
    public Verdict Verdict { get; init; } = Verdict.Unknown;

    /// <summary>The worst entry; null when there is none.</summary>
    public WorstEntry? Worst { get; init; }

    /// <summary>How many entries have a verdict.</summary>
    public int Count(Verdict verdict) => Counts[(int)verdict];
}
