using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Tests.Sheets;

/// <summary>A small invented job in a folder of its own, with the sheets that it names.</summary>
internal sealed class SheetFolder : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("sheets").FullName;

    public SheetFolder(params (string Kind, string Text)[] sheets)
        : this(SheetDesk.Job + "\nsheets:\n" + string.Concat(sheets.Select(sheet => $"  - {{file: {sheet.Kind}.csv, as: {sheet.Kind}{(sheet.Kind == "drops" ? ", otherwise: {from: cupboard}" : "")}}}\n")))
    {
        foreach (var (kind, text) in sheets)
            Put(kind + ".csv", text);
    }

    public SheetFolder(string job) => Put("job.yaml", job);

    public string Job => PathOf("job.yaml");

    public string PathOf(string name) => Path.Combine(_folder, name);

    public void Put(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(PathOf(name))!);
        File.WriteAllText(PathOf(name), text);
    }

    public Loaded<Job> Read() => JobFile.Read(Job, CatalogueFiles.ReadShipped().Value);

    /// <summary>All findings, one a line, without the folder.</summary>
    public string Findings() => Plain(string.Concat(Read().Findings.Select(finding => finding + "\n")));

    public string Plain(string text) => text.Replace(_folder + Path.DirectorySeparatorChar, "", StringComparison.Ordinal);

    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
