using System.Diagnostics;
using Headroom.Documents.Layout;
using Headroom.Documents.Papers;

namespace Headroom.Documents.Tests.Papers;

/// <summary>Pages of the example, rendered by an independent program and compared with pictures that were looked at.</summary>
public sealed class PictureTests
{
    // Small pictures: what is compared is where things stand and how dark they are, not the shape of letters.
    private const string Dpi = "32";

    // Of 255, of the worst square of eight points: rendering of one and the same page differs from one version of the program to the next by a few.
    private const double Tolerance = 12;

    private static readonly PaperInput Barn = Studied.Example("barn-vets");

    [Theory]
    [InlineData("limits", 1)]
    [InlineData("quotation", 1)]
    [InlineData("door-sheet", 1)]
    [InlineData("handover-pack", 1)]
    [InlineData("commissioning-record", 1)]
    [InlineData("bill-of-materials", 1)]
    [InlineData("air-sheet", 1)]
    [InlineData("rack-elevations", 1)]
    public void Pages_look_as_they_were_accepted(string id, int page)
    {
        var png = Rendered(PaperPack.Write(Barn, [PaperList.Find(id)!], SheetSize.A4).Papers[0].Bytes.ToArray(), page);
        var file = Path.Combine(Repository.Root, "tests", "Headroom.Documents.Tests", "Papers", "Accepted", $"{id}-{page}.png");
        if (Environment.GetEnvironmentVariable("HEADROOM_ACCEPT") == "1")
            File.WriteAllBytes(file, png);
        Assert.True(File.Exists(file), $"{file} is missing: HEADROOM_ACCEPT=1 writes it; look at it before it is kept.");
        var apart = GrayPicture.Read(File.ReadAllBytes(file)).Apart(GrayPicture.Read(png));
        Assert.True(apart <= Tolerance, $"{id}, page {page}: {apart:0} of 255 apart at the worst spot; HEADROOM_ACCEPT=1 renews {file}; look at it before it is kept.");
    }

    [Fact]
    public void A_line_that_is_not_there_is_seen()
    {
        var whole = new Paper("p", "A paper", [new Words(string.Join(' ', Enumerable.Repeat("word", 60)))]);
        byte[] Of(Paper paper) => Rendered(Headroom.Documents.Pdf.PdfWriter.Write(new("p", "", new DateOnly(2026, 11, 25)), Layouter.Lay(paper, SheetSize.A4)), 1);
        var picture = GrayPicture.Read(Of(whole));
        Assert.Equal(0, picture.Apart(GrayPicture.Read(Of(whole))));
        Assert.True(picture.Apart(GrayPicture.Read(Of(whole with { Blocks = [new Words(string.Join(' ', Enumerable.Repeat("word", 40)))] }))) > Tolerance);
    }

    private static byte[] Rendered(byte[] pdf, int page)
    {
        var folder = Directory.CreateTempSubdirectory("headroom-pages").FullName;
        try
        {
            File.WriteAllBytes(Path.Combine(folder, "paper.pdf"), pdf);
            var number = page.ToString(System.Globalization.CultureInfo.InvariantCulture);
            using var process = Start("-r", Dpi, "-png", "-singlefile", "-f", number, "-l", number, Path.Combine(folder, "paper.pdf"), Path.Combine(folder, "page"));
            process.WaitForExit();
            Assert.Equal(0, process.ExitCode);
            return File.ReadAllBytes(Path.Combine(folder, "page.png"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Process Start(params string[] arguments)
    {
        try
        {
            return Process.Start(new ProcessStartInfo("pdftoppm", arguments) { RedirectStandardError = true })!;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            Assert.Skip("pdftoppm (poppler-utils), which renders the pages, is not installed.");
            throw;
        }
    }
}
