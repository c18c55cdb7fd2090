namespace Headroom.Documents.Tests.Labels;

/// <summary>Programs from outside the project that look at what was written.</summary>
internal static class Outside
{
    /// <summary>Whether a program is installed.</summary>
    public static bool Has(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program)));

    /// <summary>The codes that a reader finds on all sheets of a PDF, each as <c>SYMBOLOGY:text</c>.</summary>
    public static List<string> Codes(byte[] pdf)
    {
        var folder = Directory.CreateTempSubdirectory("headroom-labels-");
        try
        {
            var file = Path.Combine(folder.FullName, "labels.pdf");
            File.WriteAllBytes(file, pdf);
            Assert.Equal(0, Run.Process(new ProcessStart("pdftoppm", ["-r", "300", "-gray", file, Path.Combine(folder.FullName, "sheet")])).ExitCode);
            return [.. Directory.GetFiles(folder.FullName, "*.pgm").Order(StringComparer.Ordinal).SelectMany(sheet => Run.Process(new ProcessStart("zbarimg", ["-q", sheet])).Out.Split('\n', StringSplitOptions.RemoveEmptyEntries))];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
