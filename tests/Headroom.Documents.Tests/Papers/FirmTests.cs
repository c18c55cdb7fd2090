using Headroom.Documents.Layout;
using Headroom.Documents.Papers;
using Headroom.Domain.Firms;
using Headroom.Domain.Shown;
using Headroom.JobFiles;
using UglyToad.PdfPig;

namespace Headroom.Documents.Tests.Papers;

public sealed class FirmTests
{
    private static readonly Firm Firm = FirmFile.Read(Path.Combine(Repository.Root, "examples", "firm.yaml")).Value!;
    // With a plan by hand, since one paper is of a plan alone.
    private static readonly PaperInput Plain = Drawings.PlannedDrawings.Of(Studied.Example("barn-vets"));

    public static TheoryData<string> Papers => [.. PaperList.All.Where(kind => kind.Id != "labels" && kind.AsFile is null).Select(kind => kind.Id)];

    [Theory, MemberData(nameof(Papers))]
    public void The_firm_stands_at_the_head_and_at_the_foot_of_every_sheet_and_nowhere_without_its_file(string id)
    {
        var (with, without) = (Pages(Plain with { Firm = Firm }, id), Pages(Plain, id));
        Assert.All(with, page => Assert.Contains("Reed&DaughtersNetworks·Cobnut", page, StringComparison.Ordinal));
        Assert.True(with[0].Split("Reed&DaughtersNetworks").Length >= 3);
        Assert.All(without, page => Assert.DoesNotContain("Reed", page, StringComparison.Ordinal));
    }

    [Fact]
    public void A_long_name_of_a_firm_leaves_the_foot_room_for_job_and_paper()
    {
        var page = Pages(Plain with { Firm = Firm with { Name = string.Concat(Enumerable.Repeat("Reed and Sons ", 21)) } }, "limits")[0];
        Assert.Contains("…·CobnutBarnAnimalDoctors·designas-offered", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_quotation_has_number_days_terms_and_numbers_of_tax()
    {
        var text = string.Concat(Pages(Plain with { Firm = Firm, QuoteCount = "17" }, "quotation"));
        foreach (var part in new[] { "Q-2026-17", "25Dec2026", "40%withtheorder", "wedamagewemakegood", "VATIE0000000X", "+353209100001" })
            Assert.Contains(part, text, StringComparison.Ordinal);
        Assert.Contains("Q-2026-____", string.Concat(Pages(Plain with { Firm = Firm }, "quotation")), StringComparison.Ordinal);
    }

    // Signs of the culture: common practice, no source.
    [Theory]
    [InlineData("de-DE", "25.11.2026", "8.939,23", "254,4W")]
    [InlineData("en-US", "Nov25,2026", "8,939.23", "254.4W")]
    [InlineData("sv-SE", "2026-11-25", "8939,23", "254,4W")]
    public void Numbers_and_days_are_written_as_in_the_country(string tag, string day, string money, string watts)
    {
        var manner = NumberManner.All.Single(one => one.Tag == tag);
        using var studied = manner.Use();
        var text = string.Concat(Pages(Studied.Example("barn-vets") with { Firm = Firm with { Manner = manner } }, "quotation"));
        Assert.All(new[] { day, money, watts }, part => Assert.Contains(part, text, StringComparison.Ordinal));
    }

    [Fact]
    public void Amounts_are_parted_by_thousands_from_the_point()
    {
        var german = NumberManner.All.Single(one => one.Tag == "de-DE");
        Assert.Equal(["1.234.567,80", "-1.234,5", "999", "-999", "0,05"], new[] { "1234567.80", "-1234.5", "999", "-999", "0.05" }.Select(german.Amount));
    }

    [Fact]
    public void The_manner_ends_with_the_papers()
    {
        _ = PaperPack.Write(Plain with { Firm = Firm with { Manner = NumberManner.All.Single(one => one.Tag == "de-DE") } }, [PaperList.Find("limits")!], SheetSize.A4);
        Assert.Equal("1.5", Numbers.Show(1.5));
    }

    [Fact]
    public void Feet_stand_where_the_firm_wants_feet()
    {
        var text = string.Concat(Pages(Plain with { Units = new(imperial: true) }, "cabling-schedule"));
        Assert.Contains("length[ft]", text, StringComparison.Ordinal);
        Assert.Contains("167.3", text, StringComparison.Ordinal);   // 51 m / 0.3048 = 167.32 ft
    }

    [Fact]
    public void A_damaged_picture_is_told_before_anything_is_written()
    {
        byte[] damaged = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, .. new byte[40]];
        Assert.NotNull(FirmOnPapers.Complaint(Firm with { Logo = new Artwork(20, 20) { Png = damaged } }));
        Assert.Null(FirmOnPapers.Complaint(Firm));
    }

    private static List<string> Pages(PaperInput input, string id)
    {
        var paper = PaperPack.Write(input, [PaperList.Find(id)!], SheetSize.A4).Papers[0];
        using var read = PdfDocument.Open(paper.Bytes.ToArray());
        return [.. read.GetPages().Select(page => string.Concat(page.Letters.Select(letter => letter.Value).Where(letter => !string.IsNullOrWhiteSpace(letter) && letter != "\u00A0")))];
    }
}
