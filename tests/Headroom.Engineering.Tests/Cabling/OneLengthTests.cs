using Headroom.Domain.Catalogues;
using Headroom.Domain.Ledgers;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Cabling;

/// <summary>One number of the survey is changed, and everything that hangs on it follows in the same run.</summary>
public sealed class OneLengthTests
{
    private const string Before = "{length: 9 m, ambient: 18 °C}";
    private const string After = "{length: 90 m, ambient: 18 °C}";

    private static readonly Catalogue Models = CatalogueFiles.ReadShipped().Value!;

    [Fact]
    public void A_longer_drop_changes_volts_lengths_boxes_and_price_together()
    {
        var (before, after) = (Study(Before), Study(After));

        // cam-4 hangs on K-19: less arrives at it.
        var (volts, less) = (Entry(before, "power/cam-4/volts").Limit!.Value, Entry(after, "power/cam-4/volts").Limit!.Value);
        Assert.InRange(volts - less, 0.5, 10);
        // Its run was 120 ft and 9 m; it grows by 81 m, and what is bought by 12 % more.
        Assert.Equal(81, Entry(after, "cabling/K-19/length").Demand!.Value - Entry(before, "cabling/K-19/length").Demand!.Value, 1e-9);
        var (metres, more) = (Figure(before, "cabling/yard-23/metres"), Figure(after, "cabling/yard-23/metres"));
        Assert.Equal(81 * 1.12, more - metres, 1e-9);
        Assert.Equal((1, 2), (Figure(before, "cabling/yard-23/boxes"), Figure(after, "cabling/yard-23/boxes")));
        // Cable is sold by whole metres: 311 in place of 220.
        var metre = (double)Models.Cables["yard-23"].Body.Price!.Value.Amount;
        Assert.Equal((311 - 220) * metre, Figure(after, "money/offer/cost") - Figure(before, "money/offer/cost"), 1e-6);
        Assert.True(Figure(after, "money/offer/gross") > Figure(before, "money/offer/gross"));
        // The other cameras have what they had.
        Assert.Equal(Entry(before, "power/cam-5/volts").Limit, Entry(after, "power/cam-5/volts").Limit);
    }

    private static Ledger Study(string piece)
    {
        var file = Repository.PathOf("examples/barn-vets/job.yaml");
        var text = File.ReadAllText(file);
        Assert.Equal(2, text.Split(Before).Length);
        var read = JobFile.Parse(text.Replace(Before, piece, StringComparison.Ordinal), file, Models);
        Assert.True(read.Ok, string.Join('\n', read.Findings));
        return Headroom.Engineering.Study.Run(read.Value!, Models, StudyRequest.Whole(new DateOnly(2026, 11, 25)));
    }

    private static LedgerEntry Entry(Ledger ledger, string id) => ledger.Entries.Single(entry => entry.Id == id);

    private static double Figure(Ledger ledger, string id) => ledger.Figures.Single(figure => figure.Id == id).Value!.Value;
}
