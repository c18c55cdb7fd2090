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

    private static (int, int, int) Of(CodeModules modules) => (modules.Wide, modules.High, modules.Quiet);

    private sealed class Near : IEqualityComparer<(double, double)>
    {
        public bool Equals((double, double) x, (double, double) y) => Math.Abs(x.Item1 - y.Item1) < 0.01 && Math.Abs(x.Item2 - y.Item2) < 0.01;

        public int GetHashCode((double, double) obj) => 0;
    }
}
