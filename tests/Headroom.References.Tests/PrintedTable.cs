namespace Headroom.References.Tests;

/// <summary>One table of the reference: its heading, its file of printed figures, and what works each of them out.</summary>
internal sealed record PrintedTable(string Heading, string File, Func<Printed, Figure> Work)
{
    internal IReadOnlyList<Printed> Rows { get; } = [.. Csv.Read(File).Select(Printed.From)];
}
