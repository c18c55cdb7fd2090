using System.Text.RegularExpressions;
using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Shown;
using Headroom.Engineering;

namespace Headroom.Documents.Papers;

/// <summary>What is to be done when, in order of days, and what has no day yet with the question for it.</summary>
internal static partial class MaintenanceSchedule
{
    private const int Years = 10;

    /// <summary>What stands on it.</summary>
    public static IReadOnlyList<Block> Blocks(PaperInput input)
    {
        var due = Study.Due(input.Job, input.Results.Bound.Catalogue, input.Request, Years);
        var dated = due.Where(one => one.On is not null).ToList();
        var open = due.Where(one => one.On is null).ToList();
        var blocks = new List<Block>();
        if (dated.Count > 0)
        {
            blocks.Add(new Heading("With a day"));
            blocks.Add(new Table(
                [new("next"), new("what"), new("where"), new("every [years]", Anchor.End), new("how the day follows") { Grows = true }, new("who") { Least = 54 }, new("done, initials") { Least = 70 }],
                [.. dated.Select(one => Written.ToFill(Written.Day(one.On!.Value), one.What, one.Subject, one.EveryYears is { } years ? Numbers.Show(Math.Round(years, 1)) : "", Plain(one.Origin)))]));
        }

        blocks.Add(new Heading("By hand"));
        blocks.Add(new Table(
            [new("what"), new("what to look for") { Grows = true }, new("every") { Least = 54 }, new("last") { Least = 60 }, new("next") { Least = 60 }, new("who") { Least = 54 }],
            [.. ByHand(input).Select(row => Written.ToFill(row.What, row.Look))]));
        if (open.Count > 0)
        {
            blocks.Add(new Heading("Without a day yet"));
            blocks.Add(new Table([new("what"), new("where"), new("what is to be found out first") { Grows = true }, new("answer") { Least = 130 }], [.. open.Select(one => Written.ToFill(one.What, one.Subject, Written.Asked(one.Question ?? "")))]));
        }

        return blocks;
    }

    private static IEnumerable<(string What, string Look)> ByHand(PaperInput input)
    {
        yield return ("firmware", "what the maker mended since, and whether it concerns this site");
        yield return ("settings", "a copy of each unit, newer than its last change, and one restored to see that it works");
        yield return ("dust and fans", "grilles free, fans turn without noise, air at the inlet as on the acceptance record");
        yield return ("spares", "still on the shelf, and still the right ones");
        if (input.Results.Standby.Supplies.Count > 0)
            yield return ("minutes on battery", "mains off with everything connected, against the acceptance record");
        if (input.Results.Bound.Endpoints.Any(endpoint => endpoint.Model.Kind == "camera"))
            yield return ("cameras", "lenses and hoods clean, picture by night, days kept on the recorder");
        if (input.Results.Bound.Endpoints.Any(endpoint => endpoint.Model.Kind == "radio"))
            yield return ("radio links", "fixing, aim and level against the day of acceptance; plants grown into the path");
        yield return ("passwords", "changed when somebody leaves who knew them");
    }

    // Which line of a file a figure stands in is for the desk; on paper stands what it is.
    private static string Plain(string origin) =>
        LedgerInWords.Sentence(Written.Days(InFile().Replace(origin, found => found.Groups[1].Success ? $" ({found.Groups[1].Value})" : "")).Replace("every 1 year ", "every year ", StringComparison.Ordinal));

    [GeneratedRegex(@"\s*\((?:([a-z]+), )?[^()]*:\d+:\d+\)")]
    private static partial Regex InFile();
}
