using Headroom.Documents.Canvas;
using Headroom.Documents.Labels;
using Headroom.Documents.Pdf;
using Headroom.Domain.Firms;

namespace Headroom.Documents.Tests.Labels;

public sealed class CodeTests
{
    private const double Millimetre = 72 / 25.4;

    private static readonly LabelText[] Units =
        [new("units", "sw-1", ["wren-b", "10.61.0.2"]), new("units", "AP-2F-07", []), new("units", "CAM-PARK-12", ["yard"]), new("closets", "cupboard", ["Cobnut Barn"])];

    // Widths of Code 128 by reference values 9.3 (computed there; read back with another decoder): 11 modules a character, 13 for the stop.
    [Theory]
    [InlineData("SW-01", 90)]
    [InlineData("AP-2F-07", 123)]
    [InlineData("CAM-PARK-12", 156)]
    [InlineData("00:00:5E:00:53:01", 222)]
    [InlineData("Label 1", 112)]
    [InlineData("0123456789", 90)]
    [InlineData("202612310001", 101)]
    public void Bars_are_as_long_as_the_standard_makes_them(string text, int modules) => Assert.Equal((modules, 1, 10), Of(CodeModules.Bars(text)));

    // ISO/IEC 18004: version v has 17 + 4v modules; bytes that versions 1 and 2 hold at level M, reference values 9.2.
    [Theory]
    [InlineData(14, 21)]
    [InlineData(15, 25)]
    [InlineData(26, 25)]
    [InlineData(27, 29)]
    public void Squares_have_the_side_of_the_standard(int letters, int modules) => Assert.Equal((modules, modules, 4), Of(CodeModules.Qr(new string('a', letters))));

    // zbarimg reads codes whose quiet zone is missing, and small ones: size and quiet zone are held against the rules here.
    [Theory]
    [InlineData(203)]
    [InlineData(300)]
    [InlineData(180)]
    [InlineData(600)]
    public void Codes_are_printed_in_whole_dots_and_no_smaller_than_readers_take(int dots)
    {
        foreach (var modules in new[] { CodeModules.Qr("sw-1"), CodeModules.Bars("sw-1"), CodeModules.Qr("CAM-PARK-12-EAST-SIDE"), CodeModules.Bars("CAM-PARK-12-EAST-SIDE") })
        {
            foreach (var room in new[] { 20.0, 40, 70, 120 }.Select(side => side * Millimetre))
            {
                if (PlacedCode.Fit(modules, (room, room), dots) is not { } code)
                    continue;
                var inDots = code.ModulePoints / 72 * dots;
                Assert.Equal(Math.Round(inDots), inDots, 1e-9);
                Assert.True(modules.IsBars ? code.ModulePoints >= 0.249 * Millimetre : inDots >= 4);
                Assert.True(code.Width <= room + 0.01 && code.Width >= (modules.Wide + 2 * modules.Quiet) * code.ModulePoints - 0.01);
                Assert.True(!modules.IsBars || code.Height >= Math.Max(6.35 * Millimetre, 0.15 * modules.Wide * code.ModulePoints) - 0.01);
            }
        }

        Assert.Null(PlacedCode.Fit(CodeModules.Qr("sw-1"), (5 * Millimetre, 5 * Millimetre), dots));
        Assert.Null(PlacedCode.Fit(CodeModules.Bars("sw-1"), (90 * Millimetre, 6 * Millimetre), dots));
    }

    [Fact]
    public void Nothing_is_drawn_in_the_quiet_zone()
    {
        foreach (var modules in new[] { CodeModules.Qr("sw-1"), CodeModules.Bars("sw-1") })
        {
            var code = PlacedCode.Fit(modules, (300, 300), 203)!;
            var recorder = new Drawings.Recorder();
            var placed = code.At(new Spot(10, 20));
            placed.Draw(recorder);
            var quiet = modules.Quiet * code.ModulePoints;
            var inside = modules.IsBars ? new Box(10 + quiet, 20, code.Width - 2 * quiet, code.Height) : placed.Box.Inset(quiet);
            Assert.All(recorder.Rects, dark => Assert.True(inside.Holds(dark)));
            Assert.Equal((inside.X, inside.Right), (recorder.Rects.Min(dark => dark.X), recorder.Rects.Max(dark => dark.Right)), new Near());
        }
    }

    [Fact]
    public void A_name_with_letters_beyond_ASCII_has_no_code_and_is_told() => Assert.Null(new LabelText("units", "Käfig-1", []).Code);

    // An independent decoder, zbarimg, reads what is printed from a picture of it at 300 dots an inch.
    [Theory]
    [InlineData("a4-3x8", "fit", "QR-Code")]
    [InlineData("a4-5x13", "fit", "QR-Code")]
    [InlineData("letter-3x10", "code-128", "CODE-128")]
    [InlineData("strip-24", "fit", "QR-Code")]
    [InlineData("strip-12", "fit", "CODE-128")]
    [InlineData("strip-9", "fit", "CODE-128")]
    public void Another_program_reads_the_codes_at_printed_size(string layout, string code, string symbology)
    {
        Assert.SkipUnless(Outside.Has("pdftoppm") && Outside.Has("zbarimg"), "pdftoppm or zbarimg is not installed (Debian packages poppler-utils, zbar-tools)");
        var plan = new LabelPlan(LabelStock.Common.Single(stock => stock.Name == layout)) { Code = code };
        var (sheets, misfits) = LabelSheets.Lay(Units, plan);
        Assert.Empty(misfits);
        var read = Outside.Codes(PdfWriter.Write(new PdfAbout("x", "", new DateOnly(2026, 11, 25)), sheets));
        Assert.Equal(Units.Select(unit => $"{symbology}:{unit.Id}").Order(StringComparer.Ordinal), read.Order(StringComparer.Ordinal));
    }

    // Both ends of a cable as a job has them. Laid around it, a label has bars once; a flag has its code on both sides. Small ones and tape laid around have none.
    [Theory]
    [InlineData("a4-3x8", "wrap", "fit", "CODE-128", 1)]
    [InlineData("a4-4x12", "wrap", "fit", "CODE-128", 1)]
    [InlineData("a4-5x13", "wrap", "code-128", "CODE-128", 1)]
    [InlineData("letter-3x10", "wrap", "fit", "CODE-128", 1)]
    [InlineData("letter-4x20", "wrap", "fit", "", 0)]
    [InlineData("strip-24", "wrap", "fit", "", 0)]
    [InlineData("a4-3x8", "flag", "fit", "QR-Code", 2)]
    [InlineData("a4-2x7", "flag", "code-128", "CODE-128", 2)]
    [InlineData("strip-24", "flag", "fit", "QR-Code", 2)]
    [InlineData("strip-12", "flag", "fit", "CODE-128", 2)]
    public void Another_program_reads_the_codes_at_both_ends_of_cables(string layout, string ends, string code, string symbology, int times)
    {
        Assert.SkipUnless(Outside.Has("pdftoppm") && Outside.Has("zbarimg"), "pdftoppm or zbarimg is not installed (Debian packages poppler-utils, zbar-tools)");
        var texts = LabelTexts.Of(Studied.Example("barn-vets"), ["cables"]).Take(8).ToList();
        var plan = new LabelPlan(LabelStock.Common.Single(stock => stock.Name == layout)) { Ends = ends, Code = code };
        Assert.Empty(LabelSheets.Lay(texts, plan).Misfits);
        // A label a sheet, since the reader tells once what it finds several times on a sheet.
        var sheets = texts.ConvertAll(text => LabelSheets.Lay([text], plan).Sheets[0]);
        Assert.All(sheets, sheet => Assert.Equal(times, sheet.Items.Count(item => item.Text.Length == 0 && item.Box.Width > 5)));
        Assert.Equal(
            times == 0 ? [] : texts.Select(text => $"{symbology}:{text.Id}").Distinct().Order(StringComparer.Ordinal),
            Outside.Codes(PdfWriter.Write(new PdfAbout("x", "", new DateOnly(2026, 11, 25)), sheets)).Distinct().Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("a4-3x8", "qr")]
    [InlineData("strip-24", "qr")]
    [InlineData("strip-24", "code-128")]
    public void A_code_that_could_not_be_read_around_a_cable_is_refused(string layout, string code) =>
        Assert.Equal(["K-1"], LabelSheets.Lay([new("cables", "K-1", [])], new LabelPlan(LabelStock.Common.Single(stock => stock.Name == layout)) { Code = code }).Misfits);

    // Half of what is around a cable of 6.4 mm is seen from one side.
    [Fact]
    public void Bars_around_a_cable_are_low_enough_to_be_seen_from_one_side_and_lie_outside()
    {
        foreach (var stock in LabelStock.Common.Where(stock => !stock.IsStrip))
        {
            var plan = new LabelPlan(stock);
            var bars = LabelSheets.Lay([new("cables", "K-1", ["to the desk"])], plan).Sheets[0].Items.Where(item => item.Text.Length == 0).ToList();
            Assert.Equal(stock.Height < 0.015, bars.Count == 0);
            Assert.All(bars, one => Assert.True(one.Box.Height <= 10.01 * Millimetre && one.Box.Bottom > LabelSheets.BoxOf(plan, 0).Bottom - 10 * Millimetre));
        }
    }

    private static (int, int, int) Of(CodeModules modules) => (modules.Wide, modules.High, modules.Quiet);

    private sealed class Near : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) x, (double, double) y) => Math.Abs(x.Item1 - y.Item1) < 0.01 && Math.Abs(x.Item2 - y.Item2) < 0.01;

        public int GetHashCode((double, double) obj) => 0;
    }
}
