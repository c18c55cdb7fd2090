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

    private static readonly string Accepted = Path.Combine(Repository.Root, "tests", "Headroom.Documents.Tests", "Papers", "Accepted");

    private static readonly PaperInput Barn = Studied.Example("barn-vets");

    // Every page of what a client gets or hangs up, and of a sheet of labels; the first one of others.
    private static readonly string[] Whole = ["quotation", "handover-pack", "door-sheet", "labels"];

    [Theory]
    [InlineData("limits")]
    [InlineData("quotation")]
    [InlineData("door-sheet")]
    [InlineData("labels")]
    [InlineData("handover-pack")]
    [InlineData("commissioning-record")]
    [InlineData("bill-of-materials")]
    [InlineData("air-sheet")]
    [InlineData("rack-elevations")]
    public void Pages_look_as_they_were_accepted(string id)
    {
        var pages = Rendered(PaperPack.Write(Barn, [PaperList.Find(id)!], SheetSize.A4).Papers[0].Bytes.ToArray());
        var accepts = Environment.GetEnvironmentVariable("HEADROOM_ACCEPT") == "1";
        var wrong = new List<string>();
        var known = Directory.GetFiles(Accepted, $"{id}-*.png").Length;
        var looked = Whole.Contains(id) ? pages.Count : 1;
        for (var page = 1; page <= looked; page++)
        {
            var file = Path.Combine(Accepted, $"{id}-{page}.png");
            if (accepts)
                File.WriteAllBytes(file, pages[page - 1]);
            if (!File.Exists(file))
                wrong.Add($"page {page} is new");
            else if (GrayPicture.Read(File.ReadAllBytes(file)).Apart(GrayPicture.Read(pages[page - 1])) is var apart && apart > Tolerance)
                wrong.Add($"page {page} is {apart:0} of 255 apart at the worst spot");
        }

        if (!accepts && known > looked)
            wrong.Add($"{known} pages were accepted, {looked} are there");
        Assert.True(wrong.Count == 0, $"{id}: {string.Join("; ", wrong)}; HEADROOM_ACCEPT=1 renews the pictures in {Accepted}; look at them before they are kept.");
    }

    [Fact]
    public void A_line_that_is_not_there_is_seen()
    {
        var whole = new Paper("p", "A paper", [new Words(string.Join(' ', Enumerable.Repeat("word", 60)))]);
        byte[] Of(Paper paper) => Rendered(Headroom.Documents.Pdf.PdfWriter.Write(new("p", "", new DateOnly(2026, 11, 25)), Layouter.Lay(paper, SheetSize.A4)))[0];
        var picture = GrayPicture.Read(Of(whole));
        Assert.Equal(0, picture.Apart(GrayPicture.Read(Of(whole))));
        Assert.True(picture.Apart(GrayPicture.Read(Of(whole with { Blocks = [new Words(string.Join(' ', Enumerable.Repeat("word", 40)))] }))) > Tolerance);
    }

    private static List<byte[]> Rendered(byte[] pdf)
    {
        var folder = Directory.CreateTempSubdirectory("headroom-pages").FullName;
        try
        {
            File.WriteAllBytes(Path.Combine(folder, "paper.pdf"), pdf);
            using var process = Start("-r", Dpi, "-png", Path.Combine(folder, "paper.pdf"), Path.Combine(folder, "page"));
            process.WaitForExit();
            Assert.Equal(0, process.ExitCode);
            return [.. Directory.GetFiles(folder, "page-*.png").Order(StringComparer.Ordinal).Select(File.ReadAllBytes)];
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
