using Headroom.Documents.Layout;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Shown;
using Headroom.Engineering;
using Headroom.Engineering.Money;

namespace Headroom.Documents.Papers;

/// <summary>What the monthly review of many jobs says of one of them; the study itself is not kept.</summary>
/// <param name="Name">What a person would call the job.</param>
public sealed record ReviewedJob(string Name)
{
    /// <summary>Why it was not worked out; null when it was.</summary>
    public string? NotWorked { get; init; }

    /// <summary>Its row of the table of jobs.</summary>
    internal IReadOnlyList<string> Cells { get; init; } = [];

    /// <summary>What is due, in order of days.</summary>
    internal IReadOnlyList<(DateOnly On, string What, string Where)> Due { get; init; } = [];

    /// <summary>Rows for what was read and lies outside what was worked out.</summary>
    internal IReadOnlyList<Row> Apart { get; init; } = [];

    /// <summary>How many readings there are.</summary>
    internal int Read { get; init; }

    /// <summary>The models in the field that it tells.</summary>
    internal IReadOnlyList<Row> Models { get; init; } = [];

    /// <summary>The digest of a studied job.</summary>
    /// <param name="name">What a person would call it.</param>
    /// <param name="input">The studied design.</param>
    public static ReviewedJob Of(string name, PaperInput input)
    {
        using var manner = input.Firm?.Manner.Use();
        var until = input.Ledger.On.AddDays(MonthlyReview.DaysAhead);
        var read = input.Entries(inside: true).SelectMany(entry => entry.Measured.Select(comparison => (Entry: entry, Comparison: comparison))).DistinctBy(one => one.Comparison.Reading).ToList();
        return new(name)
        {
            Cells = [input.Ledger.Design, .. new[] { Verdict.Short, Verdict.Tight, Verdict.Unknown }.Select(verdict => Numbers.Show(input.Ledger.Count(verdict))), .. OfMoney(input)],
            Due = [.. Study.Due(input.Job, input.Results.Bound.Catalogue, input.Request, 1).Where(one => one.On is { } day && day <= until).Select(one => (one.On!.Value, one.What, one.Subject))],
            Apart = [.. read.Where(one => !MonthlyReview.Agrees(one.Comparison)).Select(one => ApartRow(name, input, one.Entry, one.Comparison))],
            Read = read.Count,
            Models = [.. input.Job.Fleet.Select(MonthlyReview.Model)],
        };
    }

    // Offered and in the end: price, margin, hours.
    private static string[] OfMoney(PaperInput input)
    {
        if (input.Results.Money is not { } money)
            return ["", "", "", "", "", ""];
        var after = AfterwardsSum.Of(money);
        string Amount(decimal? amount) => amount is { } known ? $"{QuotationLines.Amount(known, money.Offer.Terms)} {money.Currency}" : "";
        static string Share(decimal? share) => share is { } known ? Numbers.Show(Math.Round(100 * (double)known, 1), "%") : "";
        static string Hours(decimal? hours) => hours is { } known ? Numbers.Show(Math.Round((double)known, 1), "h") : "";
        var open = money.NotKnown.Count > 0;
        return [(open ? "at least " : "") + Amount(money.Offer.Net), Amount(after?.Revenue), open ? "?" : Share(money.Margin), Share(after?.Margin), Hours(money.Labour?.Hours), Hours(after?.Hours)];
    }

    private static Row ApartRow(string name, PaperInput input, LedgerEntry entry, Comparison comparison)
    {
        var unit = input.Units.Of(comparison.Reading.Unit);
        var figures = Numbers.Together([unit.Value(comparison.Predicted), unit.Value(comparison.Reading.Value), unit.Difference(comparison.Difference)]);
        return Row.Of([name, comparison.Reading.Where, entry.What, .. figures.Select(figure => figure.Length > 0 ? figure : "?"), unit.Symbol, LedgerInWords.Sentence(comparison.Finding)]);
    }
}
