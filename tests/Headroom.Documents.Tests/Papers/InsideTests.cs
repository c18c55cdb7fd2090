using System.Globalization;
using Headroom.Documents.Layout;
using Headroom.Documents.Papers;
using UglyToad.PdfPig;

namespace Headroom.Documents.Tests.Papers;

public sealed class InsideTests
{
    private static readonly PaperInput Input = Studied.Example("barn-vets");

    public static TheoryData<string> Outward => [.. PaperList.All.Where(kind => kind.For != "inside").Select(kind => kind.Id)];

    [Theory, MemberData(nameof(Outward))]
    public void No_cost_and_no_inside_entry_stands_on_a_paper_that_leaves_the_firm(string id)
    {
        var written = PaperPack.Write(Input, [PaperList.Find(id)!], SheetSize.A4).Papers;
        if (Environment.GetEnvironmentVariable("PAPERS_TO") is { } folder)
            File.WriteAllBytes(Path.Combine(folder, written[0].Name), written[0].Bytes.ToArray());
        using var read = PdfDocument.Open(written[0].Bytes.ToArray());
        var text = Plain(string.Concat(read.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value)) + read.Information.Title + read.Information.Author + read.Information.Subject + read.Information.Keywords);
        var money = Input.Results.Money!;
        var prices = money.Lines.Select(line => line.Net).OfType<decimal>().Select(Text).ToHashSet();
        foreach (var cost in money.Lines.Select(line => line.Cost).OfType<decimal>().Append(money.Cost).Select(Text).Where(cost => cost.Length > 5 && !prices.Contains(cost)))
            Assert.DoesNotContain(cost, text, StringComparison.Ordinal);
        Assert.All(Input.Ledger.Entries.Where(entry => entry.Inside), entry => Assert.DoesNotContain(Plain(entry.Id), text, StringComparison.Ordinal));
        Assert.DoesNotContain("hourcost", text, StringComparison.Ordinal);
        Assert.DoesNotContain("call-backs", text, StringComparison.Ordinal);
    }

    private static string Text(decimal amount) => amount.ToString("F2", CultureInfo.InvariantCulture);

    private static string Plain(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter))).ToLowerInvariant();
}
