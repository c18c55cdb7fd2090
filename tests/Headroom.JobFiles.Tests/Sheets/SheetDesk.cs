using System.Text;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Sheets;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Tests.Sheets;

/// <summary>Reads sheets that are texts, beside a small invented job.</summary>
internal static class SheetDesk
{
    public const string Job = """
        headroom: 1
        job: x
        survey:
          spaces: {hall: {}, desk: {}, cupboard: {kind: cupboard}}
          drops: {01..09: {from: cupboard, to: hall}}
        designs: {d: {switches: {sw-1: {model: alder}}}}
        """;

    public static SheetPlan Plan(string kind) => new($"{kind}.csv", kind, new Place("job.yaml", 9, 5)) { Otherwise = kind == "drops" ? [new("from", "cupboard")] : [] };

    public static SheetRead Read(string kind, string text) => Read(Plan(kind), text);

    public static SheetRead Read(SheetPlan plan, string text) => Read(plan, Encoding.UTF8.GetBytes(text));

    public static SheetRead Read(SheetPlan plan, byte[] bytes) => SheetReader.Parse(plan, Site, bytes);

    public static YamlMap Root { get; } = (YamlMap)YamlText.Parse(Job, "job.yaml").Value!;

    public static SheetSite Site => new(Root);

    /// <summary>The drops of a sheet, read by the same fields as those of a job file.</summary>
    public static IReadOnlyList<Drop> Drops(SheetRead sheet)
    {
        Assert.Equal("", string.Join('\n', sheet.Findings.Where(finding => finding.Severity == Severity.Error)));
        var root = YamlText.Parse("headroom: 1\njob: x\n", "job.yaml").Value!;
        var job = JobFile.Build(sheet.Entries.Count == 0 ? root : TreeGraft.Put(root, sheet.Kind.Section, sheet.Entries, false)!, [], () => null, null);
        Assert.Equal("", string.Join('\n', job.Findings.Where(finding => finding.Severity == Severity.Error)));
        return job.Value!.Survey.Drops;
    }

    /// <summary>The one finding of a code; others may be there too.</summary>
    public static Finding Finding(SheetRead sheet, string code)
    {
        var found = sheet.Findings.Where(finding => finding.Code == code).ToList();
        Assert.True(found.Count == 1, $"wanted one {code}, found:\n{string.Join('\n', sheet.Findings)}");
        return found[0];
    }
}
