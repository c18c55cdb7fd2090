namespace Headroom.References.Tests;

/// <summary>One table of the reference: its heading, its file of printed figures, and what works each of them out.</summary>
internal sealed record PrintedTable(string Heading, string File, Func<Printed, Figure> Work)
{
    /// <summary>The file of the reference that it stands in.</summary>
    internal string Reference { get; init; } = "power-and-cabling";

    /// <summary>False for figures that are drawn from the habit of the trade: they are checked, and printed on no page.</summary>
    internal bool Shown { get; init; } = true;

    internal IReadOnlyList<Printed> Rows => field ??= [.. Csv.Read(File).Select(fields => Printed.From(fields) with { Reference = Reference })];
}
