using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Acceptance;

/// <summary>Sets the records of a cable tester beside the schedule of drops. Labels are compared character for character.</summary>
public static class AcceptanceStudy
{
    /// <summary>Sets them side by side.</summary>
    /// <param name="job">The job.</param>
    /// <param name="catalogue">The catalogue it names its models from.</param>
    /// <param name="records">The records, in the order of the file; one at least.</param>
    /// <param name="limit">The limit agreed with the client; null to take the commonest of the file, which is then told.</param>
    /// <returns>How every drop stands.</returns>
    public static AcceptanceResult Of(Job job, Catalogue catalogue, IReadOnlyList<TesterResult> records, string? limit)
    {
        var agreed = limit ?? records.GroupBy(record => record.Limit).OrderByDescending(group => group.Count()).First().Key;
        var (kept, twice) = Once(records);
        var byLabel = kept.GroupBy(record => record.Label).ToDictionary(group => group.Key, InOrder);
        var known = job.Survey.Drops.Select(drop => drop.Id).ToHashSet();
        List<StrangeLabel> strange = [.. kept.Where(record => !known.Contains(record.Label)).Select(record => new StrangeLabel(record, Near(record.Label, job)))];
        var last = known.Where(byLabel.ContainsKey).ToDictionary(id => id, id => byLabel[id][^1]);
        var pairs = PairStudy.Of(job, catalogue, last);
        var drops = job.Survey.Drops.Select(drop => Drop(drop.Id, byLabel.GetValueOrDefault(drop.Id) ?? [], (agreed, last, strange)) with { Pairs = pairs.GetValueOrDefault(drop.Id) ?? [] });
        return new(job, agreed, limit is null, [.. drops], strange, twice);
    }

    private static DropAcceptance Drop(string id, List<TesterResult> records, (string Limit, Dictionary<string, TesterResult> Last, List<StrangeLabel> Strange) beside)
    {
        if (records.Count == 0)
        {
            var near = beside.Strange.Where(strange => strange.Near == id).Select(strange => strange.Record.Label).ToList();
            var asked = near.Count == 0 ? "" : $"; is '{near[0]}' meant? type the label anew in the tester and save its record again";
            return new(id, DropStanding.Open, OpenReason.Missing, $"no record under this label{asked}", records);
        }

        var last = records[^1];
        var (reason, told) = Why(id, last, beside);
        var standing = reason != OpenReason.None ? DropStanding.Open : last.Verdict == TesterVerdict.Marginal ? DropStanding.Marginal : DropStanding.Accepted;
        return new(id, standing, reason, standing == DropStanding.Marginal ? "passed by less than the tester can tell: test it again, or agree on it in writing" : told, records);
    }

    private static (OpenReason Reason, string Told) Why(string id, TesterResult last, (string Limit, Dictionary<string, TesterResult> Last, List<StrangeLabel> Strange) beside)
    {
        if (last.Verdict == TesterVerdict.Fail)
            return (OpenReason.Failed, "failed: mend it and test it again");
        if (!LinkKind.Same(last.Limit, beside.Limit))
        {
            return LinkKind.IsPermanentLink(beside.Limit) && LinkKind.IsChannel(last.Limit)
                ? (OpenReason.ChannelForLink, $"a permanent link tested as a channel ('{last.Limit}'), whose limit is wider: test it again with the link adapters")
                : (OpenReason.WrongLimit, $"tested against '{last.Limit}', not the limit agreed: test it again");
        }

        var most = LinkKind.IsChannel(beside.Limit) ? ChannelLimits.ChannelMetres : ChannelLimits.LinkMetres;
        if (last.Metres > most)
            return (OpenReason.TooLong, $"passed, but is {Words.Of(last.Metres.Value)} m long and may be {Words.Of(most)} m: agree on it in writing, or shorten it");
        var twin = beside.Last.FirstOrDefault(other => other.Key != id && other.Value.SameFigures(last)).Key;
        return twin is null ? (OpenReason.None, "") : (OpenReason.Twin, $"same length and margin as {twin}: was one cable tested under both labels? test both again");
    }

    private static (List<TesterResult> Kept, List<TesterResult> Twice) Once(IReadOnlyList<TesterResult> records)
    {
        var (kept, twice) = (new List<TesterResult>(), new List<TesterResult>());
        foreach (var record in records)
            (kept.Any(record.SaysTheSameAs) ? twice : kept).Add(record);
        return (kept, twice);
    }

    // By day where every record tells it, else as the file has them.
    private static List<TesterResult> InOrder(IEnumerable<TesterResult> records)
    {
        var all = records.ToList();
        return all.TrueForAll(record => record.Day is not null) ? [.. all.OrderBy(record => record.Day, StringComparer.Ordinal)] : all;
    }

    private static string? Near(string label, Job job) => job.Survey.Drops.Select(drop => drop.Id).FirstOrDefault(id => Bare(id) == Bare(label));

    // Without signs and leading zeros, letters small, the letter O for a zero: for a question, never for a match.
    private static string Bare(string label)
    {
        var parts = label.ToLowerInvariant().Replace('o', '0').Split([' ', '-', '_', '.', '/', ':'], StringSplitOptions.RemoveEmptyEntries);
        var joined = string.Concat(parts.Select(part => part.TrimStart('0')));
        var digit = joined.AsSpan().IndexOfAnyInRange('0', '9');
        return digit < 0 ? joined : joined[..digit] + joined[digit..].TrimStart('0');
    }
}
