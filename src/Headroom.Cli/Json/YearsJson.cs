using System.Text.Json;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Years;

namespace Headroom.Cli.Json;

/// <summary>The years as data: numbers as worked out, each with its unit; what is not known is null.</summary>
internal static class YearsJson
{
    /// <summary>The name of the shape.</summary>
    public const string Format = "headroom-years/1";

    private static readonly (Change Change, string Word)[] Causes =
        [(Change.Devices, "devices"), (Change.Batteries, "batteries"), (Change.Dust, "dust"), (Change.Prices, "prices")];

    /// <summary>Writes it.</summary>
    public static string Write(YearsResult result) => JsonText.Of(json =>
    {
        json.WriteString("format", Format);
        json.WriteString("job", result.Job);
        json.WriteString("design", result.Design);
        json.WriteString("on", YearWords.Plain(result.On));
        First(json, "firstShort", result.FirstShort);
        First(json, "firstTight", result.FirstTight);
        json.Each("years", result.Years, year => WriteYear(json, year));
        json.Each("dues", result.Dues, due =>
        {
            Day(json, "on", due.On);
            json.WriteString("subject", due.Subject);
            json.WriteString("what", due.What);
            json.Number("everyYears", due.EveryYears);
            json.WriteString("origin", due.Origin);
            json.WriteString("question", due.Question);
        });
        json.Each("rates", result.Rates, rate =>
        {
            json.WriteString("what", rate.What);
            json.WriteString("yearly", rate.Yearly);
            json.WriteString("origin", rate.Origin);
            json.WriteBoolean("assumed", rate.IsAssumed);
            json.WriteString("question", rate.Question);
        });
        json.Strings("assumed", result.Assumed);
    });

    private static void WriteYear(Utf8JsonWriter json, YearState year)
    {
        json.WriteNumber("year", year.Year);
        json.WriteString("on", YearWords.Plain(year.On));
        json.WriteStartObject("counts");
        foreach (var verdict in new[] { Verdict.Short, Verdict.Unknown, Verdict.Tight, Verdict.Clear })
            json.WriteNumber(Words.Of(verdict), year.Count(verdict));
        json.WriteEndObject();
        json.Each("added", year.Added, added =>
        {
            json.WriteString("name", added.Name);
            json.WriteNumber("before", added.Before);
            json.WriteNumber("count", added.Count);
            json.WriteString("like", added.Like);
            json.WriteString("model", added.Model);
            json.WriteNumber("withoutPort", added.WithoutPort);
        });
        json.Each("turns", year.Turns, turn => WriteTurn(json, turn));
    }

    private static void First(Utf8JsonWriter json, string key, Turn? turn)
    {
        if (turn is null)
        {
            json.WriteNull(key);
            return;
        }

        json.WriteStartObject(key);
        WriteTurn(json, turn);
        json.WriteString("text", turn.Entry.Story.Say(turn.Entry));
        json.WriteEndObject();
    }

    private static void WriteTurn(Utf8JsonWriter json, Turn turn)
    {
        json.WriteString("on", YearWords.Plain(turn.On));
        json.WriteString("id", turn.Entry.Id);
        json.WriteString("what", turn.Entry.What);
        json.WriteString("before", turn.Before is { } before ? Words.Of(before) : null);
        json.WriteString("verdict", Words.Of(turn.Entry.Verdict));
        json.Number("leftBefore", turn.LeftBefore);
        json.Number("left", turn.Entry.Left);
        json.WriteString("unit", turn.Entry.Unit);
        json.Strings("enough", [.. Causes.Where(cause => turn.By.HasFlag(cause.Change)).Select(cause => cause.Word)]);
    }

    private static void Day(Utf8JsonWriter json, string key, DateOnly? day) => json.WriteString(key, day is { } known ? YearWords.Plain(known) : null);
}
