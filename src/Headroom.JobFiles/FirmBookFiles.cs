using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.Domain.Records;
using Headroom.JobFiles.Record;

namespace Headroom.JobFiles;

/// <summary>Reads the sheets of a firm's record from a folder. Nothing is changed or kept.</summary>
public static class FirmBookFiles
{
    /// <summary>The names of the sheets.</summary>
    public static IReadOnlyList<string> Names => [.. RecordSheets.All.Select(sheet => sheet.File)];

    /// <summary>Reads the folder.</summary>
    /// <param name="folder">The folder, as the person named it.</param>
    /// <param name="plan">How its sheets are to be read.</param>
    /// <returns>What it holds, a file that is not there being null; or findings that say why not, of all sheets in one go.</returns>
    public static Loaded<FirmBook> Read(string folder, RecordPlan plan)
    {
        var findings = new List<Finding>(Strange(folder));
        T? Of<T>(RecordSheet sheet, Func<RecordReader, T> read)
            where T : class
        {
            var path = PathOf(folder, sheet.File);
            if (!File.Exists(path))
                return null;
            var reader = new RecordReader(sheet, path, plan);
            var rows = read(reader);
            findings.AddRange(reader.Slips.Findings);
            return rows;
        }

        var fleet = Of(RecordSheets.Fleet, FleetRows.Read);
        var book = new FirmBook(
            fleet,
            Of(RecordSheets.Failures, reader => new FailureRows(reader, fleet, plan.HotCelsius).Read()),
            Of(RecordSheets.Shelf, ShelfRows.Read),
            Of(RecordSheets.Readings, reader => new MeasurementRows(reader).Read()),
            Of(RecordSheets.Hours, JobRows.Read));
        if (book is { Fleet: null, Failures: null, Shelf: null, Readings: null, Jobs: null })
            findings.Add(new(Severity.Error, RecordCodes.NoFiles.Code, new Place(folder, 0, 0), Directory.Exists(folder) ? "the folder holds no sheet of a firm's record" : "there is no such folder", Words.Or([.. Names]), "see docs/record.md for their columns; one of them is enough"));
        findings.AddRange(Asked(book, plan.Catalogue));
        return new(findings.Exists(finding => finding.Severity == Severity.Error) ? null : book, findings);
    }

    private static string PathOf(string folder, string file) => Path.Combine(folder, file).Replace('\\', '/');

    // A sheet with a name of its own is not read, and that must not go unsaid: it may be a slip of the pen.
    private static IEnumerable<Finding> Strange(string folder)
    {
        if (!Directory.Exists(folder))
            yield break;
        foreach (var file in Directory.EnumerateFiles(folder, "*.csv").Select(path => Path.GetFileName(path)).Where(name => !Names.Contains(name)).Order(StringComparer.Ordinal))
        {
            var near = Spelling.Nearest(file, Names);
            yield return new(Severity.Question, RecordCodes.OtherFile.Code, new Place(PathOf(folder, file), 0, 0), $"the sheet {Words.Short(file)} is not read", Words.Or([.. Names]), near is null ? "move it elsewhere, if it belongs to nothing here" : $"did you mean {near}? then rename it");
        }
    }

    private static IEnumerable<Finding> Asked(FirmBook book, Catalogue catalogue)
    {
        var models = (book.Fleet ?? []).Select(batch => (batch.Model, batch.At)).Concat((book.Shelf ?? []).Select(row => (row.Model, row.At))).Concat((book.Readings ?? []).Where(reading => reading.Model is not null).Select(reading => (Model: reading.Model!, reading.At)));
        foreach (var (model, at) in models.DistinctBy(one => one.Model))
        {
            if (!Knows(catalogue, model))
                yield return new(Severity.Question, RecordCodes.UnknownModel.Code, at, $"the model {Words.Short(model)} is not in the catalogue", "a model of the shipped catalogue or of the firm's own", $"{(Spelling.Nearest(model, All(catalogue)) is { } near ? $"did you mean {near}? " : "")}give the firm's own with --catalogue; without it nothing of its maker is believed, and it is compared with no other");
        }

        var unknown = (book.Fleet ?? []).Where(batch => batch.CupboardCelsius is null).ToList();
        if (unknown.Count > 0 && book.Fleet!.Any(batch => batch.CupboardCelsius is not null))
            yield return new(Severity.Question, RecordCodes.NoAir.Code, unknown[0].At, $"{unknown.Count} of {book.Fleet!.Count} batches do not say how warm they stand", "the air around them, like 38 °C", "measure it in an ordinary week; until then they are counted neither hot nor cool");
    }

    private static bool Knows(Catalogue all, string model) => All(all).Contains(model);

    private static IEnumerable<string> All(Catalogue all) =>
        all.Switches.Keys.Concat(all.Injectors.Keys).Concat(all.Endpoints.Keys).Concat(all.Standby.Keys).Concat(all.Modules.Keys).Concat(all.Fans.Keys).Concat(all.Cables.Keys).Concat(all.Fibres.Keys).Concat(all.Batteries.Keys).Concat(all.Cabinets.Keys);
}
