using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Tests.Cabling;

/// <summary>Totals by cable; all figures are invented.</summary>
public sealed class CableFiguresTests
{
    private static Figure Of(Ledger ledger, string id) => ledger.Figures.Single(figure => figure.Id == $"cabling/{id}");

    [Fact]
    public void Lengths_are_added_by_cable_with_waste_and_without_what_lies_there_already()
    {
        var ledger = CableJob.Study(
            "K-1: {from: closet, to: room, length: 60 m, cable: plain, panel cord: 2 m of patch-24}\nK-2: {from: closet, to: room, length: 50 m, cable: plain, existing: yes}\n"
            + "K-3: {from: closet, to: room, pieces: [{length: 100 ft, cable: plain}, {length: 10 m, cable: foil}]}",
            policy: "{cable waste: 20 %}");
        Assert.Equal(1.2 * (60 + 30.48), Of(ledger, "plain/metres").Value!.Value, 1e-9);
        Assert.Equal(12, Of(ledger, "foil/metres").Value!.Value, 1e-9);
        Assert.DoesNotContain(ledger.Figures, figure => figure.Subject == "patch-24");
    }

    [Fact]
    public void Boxes_are_counted_without_joins()
    {
        var ledger = CableJob.Study("K-1..K-4: {from: closet, to: room, length: 80 m, cable: plain}");
        Assert.Equal(2, Of(ledger, "plain/boxes").Value);
        Assert.Equal(352, Of(ledger, "plain/metres").Value!.Value, 1e-9);
    }

    [Fact]
    public void A_length_not_known_makes_the_total_a_least_and_is_asked_for()
    {
        var figure = Of(CableJob.Study("K-1: {from: closet, to: room, length: 60 m, cable: plain}\nK-2: {from: closet, to: room, cable: plain}"), "plain/metres");
        Assert.StartsWith("at least", figure.What, StringComparison.Ordinal);
        Assert.Contains("K-2", figure.Question, StringComparison.Ordinal);
        Assert.Equal(66, figure.Value!.Value, 1e-9);
    }
}
