using Headroom.Domain.Findings;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Jobs;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles;

/// <summary>Reads a firm's file of rates: hours, margins, tax and what small things cost, for all of its jobs.</summary>
public static class FirmRatesFile
{
    private const string MoneyKey = "money";

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file, as the person named it.</param>
    /// <returns>The rates, with all findings; without a value where something stands in the way.</returns>
    public static Loaded<FirmRates> Read(string path)
    {
        var tree = YamlText.ReadFile(path);
        if (tree.Value is null)
            return new(null, tree.Findings);
        var reader = new FieldReader(JobFile.CodePrefix);
        _ = RatesFields.Shape.Read(tree.Value, reader, out _);
        IReadOnlyList<Finding> findings = [.. tree.Findings, .. reader.Findings];
        var stands = findings.Any(finding => finding.Severity == Severity.Error);
        return new(stands || tree.Value is not YamlMap map ? null : new FirmRates(Without(map, RatesFields.FormatKey)), findings);
    }

    /// <summary>The tree of a job with the rates below what it says of money itself.</summary>
    internal static YamlNode Under(YamlNode job, FirmRates rates)
    {
        if (job is not YamlMap root)
            return job;
        var own = root.Find(MoneyKey);
        // What is no map there is refused when the job is read.
        if (own is not null && own.Value is not YamlMap)
            return job;
        var money = own is null ? rates.Offer : MoneyFields.Shape.Complete(rates.Offer, own.Value);
        IReadOnlyList<YamlEntry> entries = own is null
            ? [.. root.Entries, new YamlEntry(new YamlScalar(MoneyKey, YamlStyle.Plain, rates.Offer.At, (0, 0)), money)]
            : [.. root.Entries.Select(entry => entry == own ? entry with { Value = money } : entry)];
        return new YamlMap(entries, root.IsFlow, root.At, (root.Start, root.End));
    }

    private static YamlMap Without(YamlMap map, string key) =>
        new([.. map.Entries.Where(entry => !YamlKey.Same(entry.Key.Text, key))], map.IsFlow, map.At, (map.Start, map.End));
}
