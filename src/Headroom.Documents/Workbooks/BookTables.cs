using Headroom.Documents.Papers;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;
using Headroom.Domain.Tables;

namespace Headroom.Documents.Workbooks;

/// <summary>The schedules of a studied design as tables, and what the job says as tables that can be read back. Nothing inside stands in them.</summary>
public static class BookTables
{
    /// <summary>All tables, those without a row left out but for what can be read back.</summary>
    /// <param name="input">The studied design.</param>
    public static IReadOnlyList<BookTable> Of(PaperInput input) =>
    [
        .. new[]
        {
            CableTables.Cabling(input), PortTables.Ports(input), AddressTables.Subnets(input), AddressTables.Devices(input), PowerTables.States(input), PowerTables.Powered(input), OutageTables.Standby(input),
            OutageTables.Sound(input), GoodsTables.Pick(input), GoodsTables.Materials(input), Limits(input),
        }.Where(table => table.Rows.Count > 0),
        .. JobTables.All(input.Job, DesignLineage.Whole(input.Job, input.Ledger.Design), input.Units),
    ];

    private static BookTable Limits(PaperInput input) => new(
        "ledger",
        [
            new("entry"), new("what"), new("limit of"), new("unit"), new("asked", CellSort.Number), new("at its most", CellSort.Number), new("there is", CellSort.Number), new("left", CellSort.Number),
            new("reserve", CellSort.Number), new("verdict"), new("question"), new("cautions"),
        ],
        [.. input.Entries(inside: false).Select(entry => (IReadOnlyList<object?>)
        [
            entry.Id, entry.Subject, entry.What, input.Units.Of(entry.Unit).Symbol, Shown(input, entry, entry.Demand), Shown(input, entry, entry.Peak), Shown(input, entry, entry.Limit), Finite(input.Units.Of(entry.Unit).Difference(entry.Left)),
            Finite(input.Units.Of(entry.Unit).Difference(entry.Reserve)), LedgerInWords.Word(entry.Verdict), entry.Question, entry.Cautions.Count == 0 ? null : string.Join(", ", entry.Cautions.Select(caution => caution.Code)),
        ])]);

    private static double? Shown(PaperInput input, LedgerEntry entry, double? value) => Finite(input.Units.Of(entry.Unit).Value(value));

    /// <summary>A number that a cell can hold; null for none.</summary>
    internal static double? Finite(double? value) => value is { } number && double.IsFinite(number) ? Math.Round(number, 6) : null;
}
