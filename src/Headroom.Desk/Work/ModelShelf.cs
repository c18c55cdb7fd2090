using Headroom.Documents.Papers;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Firms;
using Headroom.JobFiles;

namespace Headroom.Desk.Work;

/// <summary>The models and rates that jobs are worked with: those shipped, and over them the firm's own from the data folder.</summary>
internal sealed class ModelShelf(DeskSettings settings)
{
    /// <summary>The firm's own models, in the data folder.</summary>
    public const string OwnModels = "catalogue.yaml";

    /// <summary>The firm's own rates, in the data folder.</summary>
    public const string OwnRates = "rates.yaml";

    /// <summary>The firm itself, for the head of papers, in the data folder.</summary>
    public const string OwnFirm = "firm.yaml";

    private readonly Lock _door = new();
    private ModelsAtHand? _read;
    private (DateTime, DateTime, DateTime) _seen;

    /// <summary>What is at hand now; read again when a file of the firm's was changed.</summary>
    public ModelsAtHand Now
    {
        get
        {
            lock (_door)
            {
                var seen = (TimeOf(OwnModels), TimeOf(OwnRates), TimeOf(OwnFirm));
                if (_read is null || seen != _seen)
                    (_read, _seen) = (Read(), seen);
                return _read;
            }
        }
    }

    private ModelsAtHand Read()
    {
        var shipped = CatalogueFiles.ReadShipped();
        var findings = shipped.Findings.Where(IsError).ToList();
        var (models, text) = (shipped.Value ?? Catalogue.Empty, TextOf(Directory.Exists(CatalogueFiles.ShippedFolder) ? Directory.GetFiles(CatalogueFiles.ShippedFolder, "*.yaml").Order(StringComparer.Ordinal) : []));
        var own = PathOf(OwnModels);
        if (File.Exists(own))
        {
            var read = CatalogueFiles.Read([own], models);
            findings.AddRange(read.Findings.Where(IsError).Select(finding => finding with { At = finding.At with { File = OwnModels } }));
            (models, text) = (read.Ok ? read.Value! : models, text + TextOf([own]));
        }

        FirmRates? rates = null;
        if (File.Exists(PathOf(OwnRates)))
        {
            var read = FirmRatesFile.Read(PathOf(OwnRates));
            findings.AddRange(read.Findings.Where(IsError).Select(finding => finding with { At = finding.At with { File = OwnRates } }));
            rates = read.Value;
        }

        return new(models, rates, text, File.Exists(PathOf(OwnRates)) ? TextOf([PathOf(OwnRates)]) : "", findings) { Firm = FirmOf(findings) };
    }

    private Firm? FirmOf(List<Finding> findings)
    {
        if (!File.Exists(PathOf(OwnFirm)))
            return null;
        var read = FirmFile.Read(PathOf(OwnFirm));
        findings.AddRange(read.Findings.Where(IsError).Select(finding => finding with { At = finding.At with { File = OwnFirm } }));
        if (!read.Ok)
            return null;
        if (FirmOnPapers.Complaint(read.Value!) is not { } complaint)
            return read.Value;
        findings.Add(FirmFile.NotDrawn(OwnFirm, complaint));
        return null;
    }

    private string PathOf(string name) => Path.Combine(settings.Place.Folder, name);

    private DateTime TimeOf(string name) => File.Exists(PathOf(name)) ? File.GetLastWriteTimeUtc(PathOf(name)) : default;

    private static string TextOf(IEnumerable<string> files) => string.Concat(files.Select(file => $"# {Path.GetFileName(file)}\n{File.ReadAllText(file)}\n"));

    private static bool IsError(Finding finding) => finding.Severity == Severity.Error;
}
