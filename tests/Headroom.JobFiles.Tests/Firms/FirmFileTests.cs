using Headroom.Domain.Firms;
using Headroom.JobFiles.Firms;
using Headroom.JobFiles.Tests.Sheets;

namespace Headroom.JobFiles.Tests.Firms;

public sealed class FirmFileTests
{
    [Fact]
    public void The_example_and_that_of_the_manual_are_sound()
    {
        var firm = FirmFile.Read(Path.Combine(Repository.Root, "examples", "firm.yaml"));
        Assert.Empty(firm.Findings);
        Assert.Equal(("Reed & Daughters Networks", "EUR", "en-IE", false), (firm.Value!.Name, firm.Value.Currency!.Value.Letters, firm.Value.Manner.Tag, firm.Value.Imperial));
        var page = Manual.Firm();
        var start = page.IndexOf("```yaml\n", StringComparison.Ordinal) + 8;
        Assert.Empty(Read(page[start..page.IndexOf("```", start, StringComparison.Ordinal)]).Findings);
    }

    [Fact]
    public void All_that_is_wrong_is_said_in_one_go_each_with_line_and_column()
    {
        var read = Read("firm: 1\nname: x\nlogo: none.png\ncolour: '#dddd00'\nculture: de-XX\nunits: furlongs\nquote number: 'Q-{yaer}'\n");
        Assert.False(read.Ok);
        Assert.Equal(
            ["3:7 FRM050", "4:9 FRM053", "5:10 FRM011", "6:8 FRM011", "7:15 FRM054"],
            read.Findings.Select(finding => $"{finding.At.Line}:{finding.At.Column} {finding.Code}"));
    }

    // A file that is too large is not read at all: this one takes no room on the disk either.
    [Fact]
    public void A_picture_of_50_MB_is_refused_without_being_read()
    {
        using var folder = new SheetFolder("");
        using (var large = File.Create(folder.PathOf("large.png")))
            large.SetLength(50_000_000);
        folder.Put("firm.yaml", "firm: 1\nname: x\nlogo: large.png\n");
        var before = GC.GetAllocatedBytesForCurrentThread();
        var finding = Assert.Single(FirmFile.Read(folder.PathOf("firm.yaml")).Findings);
        Assert.Equal("FRM051", finding.Code);
        Assert.Contains("47.7 MiB", finding.Given, StringComparison.Ordinal);
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 5_000_000);
    }

    [Theory]
    [InlineData("../logo.png")]
    [InlineData("/logo.png")]
    [InlineData("c:logo.png")]
    public void A_picture_elsewhere_on_the_machine_is_refused(string name) =>
        Assert.Equal("FRM050", Assert.Single(Read($"firm: 1\nname: x\nlogo: '{name}'\n").Findings).Code);

    // Grey at the edge of WCAG 2.x, 1.4.3: #767676 on white has 4.54 to 1, #777777 has 4.48 to 1 (values widely printed, from memory).
    [Theory]
    [InlineData("#767676", 4.54)]
    [InlineData("#777777", 4.48)]
    [InlineData("#000000", 21)]
    [InlineData("#ffffff", 1)]
    public void Contrast_is_that_of_the_guidelines(string colour, double contrast) => Assert.Equal(contrast, ColourShape.OnWhite(colour), 0.005);

    // The area within the outline: by the formula of the shape, within what straight pieces take off a curve.
    [Theory]
    [InlineData("<circle cx='5' cy='5' r='3'/>", 28.274)]
    [InlineData("<path d='M2,5a3,3 0 1,0 6,0a3,3 0 1,0 -6,0z'/>", 28.274)]
    [InlineData("<path d='M2 5A3 3 0 01 8 5z'/>", 14.137)]
    [InlineData("<rect x='1' y='1' width='4' height='2' transform='translate(1 1) scale(2)'/>", 32)]
    [InlineData("<g transform='rotate(30)'><polygon points='0,0 4,0 4,3'/></g>", 6)]
    [InlineData("<path d='M0 0h4v3H0z'/>", 12)]
    [InlineData("<path d='M0 0Q2 4 4 0z'/>", 5.333)]
    [InlineData("<path d='M0 0C0 4 4 4 4 0z'/>", 9.6)]
    public void A_shape_has_the_area_that_it_must(string shape, double area)
    {
        var line = Assert.Single(Assert.Single(Svg(shape).Art!.Shapes).Lines);
        var corners = line.Corners;
        var twice = Enumerable.Range(0, corners.Count).Sum(i => corners[i].X * corners[(i + 1) % corners.Count].Y - corners[(i + 1) % corners.Count].X * corners[i].Y);
        Assert.Equal(area, Math.Abs(twice) / 2, area * 0.005);
    }

    [Theory]
    [InlineData("<text>x</text>", "<text>")]
    [InlineData("<image href='http://x'/>", "<image>")]
    [InlineData("<script>x</script>", "<script>")]
    [InlineData("<path d='M0 0L1'/>", "path")]
    [InlineData("<path class='a' d='M0 0h1v1z'/>", "class")]
    [InlineData("<path fill='url(#a)' d='M0 0h1v1z'/>", "fill")]
    [InlineData("<path opacity='.5' d='M0 0h1v1z'/>", "opacity")]
    [InlineData("", "nothing")]
    public void What_cannot_be_drawn_is_told_and_not_left_out(string inside, string told)
    {
        var (art, problem) = Svg(inside);
        Assert.Null(art);
        Assert.Contains(told, problem, StringComparison.Ordinal);
    }

    private static (Artwork? Art, string? Problem) Svg(string inside) =>
        SvgArt.Read(System.Text.Encoding.UTF8.GetBytes($"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 10 10'>{inside}</svg>"));

    private static Loaded<Firm> Read(string text)
    {
        using var folder = new SheetFolder("");
        folder.Put("firm.yaml", text);
        return FirmFile.Read(folder.PathOf("firm.yaml"));
    }
}
