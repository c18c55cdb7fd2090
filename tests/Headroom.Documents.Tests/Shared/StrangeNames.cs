using System.Text.RegularExpressions;
using Headroom.Documents.Papers;
using Headroom.Engineering;
using Headroom.JobFiles;

namespace Headroom.Documents.Tests;

/// <summary>The example of the barn with names that are as long as names may be, or written from right to left, or in signs of which no font of ours has one.</summary>
internal static class StrangeNames
{
    /// <summary>The name of the job and of its client: 300 characters.</summary>
    public static readonly string Long = string.Concat(Enumerable.Repeat("Tierarztpraxis am langen Anger und ", 10))[..299] + "h";

    /// <summary>The longest name a thing may have: 64 characters.</summary>
    public static readonly string LongId = "w" + new string('W', 62) + "w";

    /// <summary>From right to left.</summary>
    public const string Hebrew = "שלום-1";

    /// <summary>Of signs that our fonts lack.</summary>
    public const string Chinese = "漢字戸棚";

    private static readonly Lazy<PaperInput> Made = new(Make);

    public static PaperInput Input => Made.Value;

    private static PaperInput Make()
    {
        var catalogue = CatalogueFiles.ReadShipped().Value!;
        var text = File.ReadAllText(Path.Combine(Repository.Root, "examples", "barn-vets", "job.yaml"));
        text = text.Replace("Cobnut Barn Animal Doctors", Long, StringComparison.Ordinal).Replace("sw-1", Hebrew, StringComparison.Ordinal).Replace("ups-1", LongId, StringComparison.Ordinal)
            .Replace("phone-", "電話-", StringComparison.Ordinal).Replace("consult-1", "Sprechzimmer-" + new string('m', 50), StringComparison.Ordinal);
        text = Word("cupboard").Replace(text, Chinese);
        text = Word("desk").Replace(text, "استقبال");
        var read = JobFile.Parse(text, "job.yaml", catalogue);
        Assert.True(read.Ok, string.Join("; ", read.Findings.Select(finding => finding.ToString())));
        var request = new StudyRequest(null, new DateOnly(2026, 11, 25), [], null);
        return new PaperInput(read.Value!, Study.Results(read.Value!, catalogue, request), Study.Run(read.Value!, catalogue, request));
    }

    // Where it is a name, and not the kind of a room or a thing.
    private static Regex Word(string word) => new($@"(?<!kind: |[\w-]){word}(?![\w-])");
}
