using System.Globalization;
using System.Text;
using Headroom.Domain.Ledgers;
using Headroom.JobFiles;

namespace Headroom.Engineering.Tests.Studies;

/// <summary>A site so large that all processors share in its study comes to what one comes to that is studied by one alone.</summary>
public sealed class LargeSiteTests
{
    private const int PerSwitch = 20;

    // Made up; lengths, warmth and devices go round in 78, 15 and 3, so that neighbours differ.
    private static readonly string[] Models = ["pipit", "bulrush", "sanderling"];

    [Fact]
    public void Every_entry_of_the_first_switches_is_the_same_in_both_and_in_the_same_order()
    {
        var small = Ledger(300);
        var large = Ledger(4_500);
        var shared = small.Entries.Where(entry => entry.Subject.StartsWith("e-", StringComparison.Ordinal) || entry.Subject.StartsWith("D-", StringComparison.Ordinal)).ToList();
        var subjects = shared.Select(entry => entry.Subject).ToHashSet();
        Assert.True(shared.Count > 1_500);
        Assert.Equal(shared.Select(Told), large.Entries.Where(entry => subjects.Contains(entry.Subject)).Select(Told));
        Assert.Equal(15, large.Entries.Count(entry => entry.Subject.StartsWith("e-", StringComparison.Ordinal)) / (double)small.Entries.Count(entry => entry.Subject.StartsWith("e-", StringComparison.Ordinal)));
    }

    [Fact]
    public void Worst_come_first_in_it_and_no_id_stands_twice()
    {
        var entries = Ledger(4_500).Entries;
        Assert.Equal(entries.Count, entries.Select(entry => entry.Id).Distinct().Count());
        for (var i = 1; i < entries.Count; i++)
        {
            var (before, after) = (entries[i - 1], entries[i]);
            Assert.True(Rank(before.Verdict) <= Rank(after.Verdict), after.Id);
            if (before.Verdict == after.Verdict && Share(before) is { } left && Share(after) is { } right)
                Assert.True(left < right || (left == right && string.CompareOrdinal(Name(before), Name(after)) < 0), $"{before.Id} before {after.Id}");
        }
    }

    private static string Told(LedgerEntry entry) =>
        string.Create(CultureInfo.InvariantCulture, $"{entry.Id} {entry.What} {entry.Demand:R} {entry.Limit:R} {entry.Reserve:R} {entry.PlusMinus:R} {entry.Verdict} {entry.Story.Say(entry)} {string.Join("; ", entry.Assumed)}");

    private static int Rank(Verdict verdict) => verdict switch { Verdict.Short => 0, Verdict.Tight => 1, Verdict.Unknown => 2, _ => 3 };

    private static double? Share(LedgerEntry entry) => entry.Demand is 0 && entry.Left >= 0 ? double.PositiveInfinity : entry.Left / Math.Max(1e-9, Math.Abs(entry.Limit ?? double.NaN));

    // Characters below any of a name stand between the parts, as the parts are compared one after the other.
    private static string Name(LedgerEntry entry) => $"{entry.Discipline}\u0001{entry.Subject}\u0001{entry.Quantity}";

    private static Ledger Ledger(int endpoints)
    {
        var catalogue = CatalogueFiles.ReadShipped().Value!;
        var job = JobFile.Parse(Yaml(endpoints), "large.yaml", catalogue).Value!;
        return Study.Run(job, catalogue, StudyRequest.Whole(new DateOnly(2026, 11, 25)));
    }

    private static string Yaml(int endpoints)
    {
        var text = new StringBuilder("headroom: 1\njob: Large\nsurvey:\n  spaces:\n    closet: {kind: cupboard}\n    hall: {kind: open office}\n  drops:\n");
        for (var i = 0; i < endpoints; i++)
            text.Append(CultureInfo.InvariantCulture, $"    D-{i:00000}: {{from: closet, to: hall, length: {10 + i * 37 % 78} m, cable: cat6-23, ambient: {20 + i % 15} °C}}\n");
        text.Append("  endpoints:\n");
        for (var i = 0; i < endpoints; i++)
            text.Append(CultureInfo.InvariantCulture, $"    e-{i:00000}: {{model: {Models[i % Models.Length]}, drop: D-{i:00000}}}\n");
        text.Append("designs:\n  only:\n    switches:\n");
        for (var s = 1; s <= endpoints / PerSwitch; s++)
            text.Append(CultureInfo.InvariantCulture, $"      sw-{s}: {{model: wren-b}}\n");
        text.Append("    patch:\n");
        for (var i = 0; i < endpoints; i++)
            text.Append(CultureInfo.InvariantCulture, $"      D-{i:00000}: sw-{i / PerSwitch + 1}/{i % PerSwitch + 1}\n");
        return text.ToString();
    }
}
