using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Documents.Letters;
using Headroom.Documents.Pdf;
using UglyToad.PdfPig;

namespace Headroom.Documents.Tests.Layout;

public sealed class PdfTests
{
    private const string Signs = "Ω ° ² ³ ä ö ü ß é ñ £ € ≤ − × · ½ µ";

    [Fact]
    public void The_same_papers_are_the_same_bytes()
    {
        var first = Written();
        Thread.Sleep(1100);
        Assert.Equal(first, Written());
    }

    // An independent reader, PdfPig, finds every sign as it was written.
    [Fact]
    public void Signs_of_the_trade_can_be_selected_and_copied()
    {
        using var read = PdfDocument.Open(Written());
        var text = string.Concat(read.GetPages().SelectMany(page => page.Letters).Select(letter => letter.Value));
        foreach (var sign in Signs.Split(' '))
            Assert.Contains(sign.Replace('Ω', '\u03A9'), text.Replace('\u2126', '\u03A9'), StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_in_letters_that_the_font_lacks_is_told_by_their_codes()
    {
        Assert.Equal("[U+6F22][U+5B57] bar", Typeface.Of(Face.Plain).Written("漢字 bar"));
        Assert.Equal("[U+1F600]", Typeface.Of(Face.Plain).Written("😀"));
        Assert.Equal("ab", Typeface.Of(Face.Plain).Written("a\u200Fb"));
    }

    [Fact]
    public void Every_font_is_embedded_as_a_subset()
    {
        using var read = PdfDocument.Open(Written());
        Assert.All(read.GetPage(1).Letters.Select(letter => letter.FontName).Distinct(), name => Assert.Matches("^[A-Z]{6}\\+", name!));
        Assert.True(Written().Length < 120_000);
    }

    [Fact]
    public void Widths_of_the_layout_are_those_of_the_library_that_draws()
    {
        using var document = new PdfSharp.Pdf.PdfDocument();
        using var graphics = PdfSharp.Drawing.XGraphics.FromPdfPage(document.AddPage());
        foreach (var face in Enum.GetValues<Face>())
        {
            const string Text = "What is left of 37 limits, 12.95 W each: Quäker & Sons (2nd)";
            var theirs = graphics.MeasureString(Text, FontShelf.Of(face, 10)).Width;
            Assert.Equal(theirs, Typeface.Width(Text, new Lettering(face, 10)), 0.05);
        }
    }

    private static byte[] Written()
    {
        var paper = new Paper("p", "Signs " + Signs, [new Words(Signs), new Words(Signs, new Lettering(Face.Mono, 9)), new Table([new("a"), new("b")], [Row.Of(Signs, "1")])]);
        return PdfWriter.Write(new PdfAbout("Signs", "", new DateOnly(2026, 11, 25)), Layouter.Lay(paper, SheetSize.A4));
    }
}
