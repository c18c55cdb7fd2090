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
        var text = Plain(ReadOf(written[0]));
        var money = Input.Results.Money!;
        var prices = money.Lines.Select(line => line.Net).OfType<decimal>().Select(Text).ToHashSet();
        foreach (var cost in money.Lines.Select(line => line.Cost).OfType<decimal>().Append(money.Cost).Select(Text).Where(cost => cost.Length > 5 && !prices.Contains(cost)))
            Assert.DoesNotContain(cost, text, StringComparison.Ordinal);
        Assert.All(Input.Ledger.Entries.Where(entry => entry.Inside), entry => Assert.DoesNotContain(Plain(entry.Id), text, StringComparison.Ordinal));
        Assert.DoesNotContain("hourcost", text, StringComparison.Ordinal);
        Assert.DoesNotContain("call-backs", text, StringComparison.Ordinal);
    }

    // The guard guards: what is for the firm alone does hold costs, in the same letters.
    [Theory]
    [InlineData("bill-of-materials")]
    [InlineData("orders")]
    [InlineData("monthly-review")]
    public void Papers_for_the_firm_alone_hold_costs_and_say_so_on_every_sheet(string id)
    {
        var kind = PaperList.Find(id)!;
        Assert.Equal("inside", kind.For);
        var written = PaperPack.Write(Input, [kind], SheetSize.A4).Papers[0];
        Assert.Equal($"inside-{id}.pdf", written.Name);
        var money = Input.Results.Money!;
        Assert.Contains(money.Lines.Where(line => line is { IsLabour: false, Cost: not null }).Select(line => Text(line.Cost!.Value)).Append(Text(money.Cost)), cost => Plain(ReadOf(written)).Contains(cost, StringComparison.Ordinal));
        using var read = PdfDocument.Open(written.Bytes.ToArray());
        Assert.All(read.GetPages(), page => Assert.Contains("inside,notfortheclient", Plain(string.Concat(page.Letters.Select(letter => letter.Value))), StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_for_the_firm_alone_is_in_the_pack_that_the_client_keeps()
    {
        var pack = PaperPack.Write(Input, [PaperList.Find("handover-pack")!], SheetSize.A4).Papers[0];
        Assert.DoesNotContain("inside,notfortheclient", Plain(ReadOf(pack)), StringComparison.Ordinal);
    }

    private static string ReadOf(WrittenPaper written)
    {
        if (written.Sheets == 0)
            return System.Text.Encoding.UTF8.GetString(written.Bytes.Span);
        using var read = PdfDocument.Open(written.Bytes.ToArray());
        return string.Concat(read.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value)) + read.Information.Title + read.Information.Author + read.Information.Subject + read.Information.Keywords;
    }

    private static string Text(decimal amount) => amount.ToString("F2", CultureInfo.InvariantCulture);

    private static string Plain(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter))).ToLowerInvariant();
}
