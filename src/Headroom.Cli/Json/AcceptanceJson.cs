using System.Text.Json;
using Headroom.Cli.Text;
using Headroom.Domain.Jobs;
using Headroom.Engineering.Acceptance;

namespace Headroom.Cli.Json;

/// <summary>The tester's file beside the schedule, for programs.</summary>
internal static class AcceptanceJson
{
    /// <summary>Writes it.</summary>
    public static string Write(AcceptanceResult result) => JsonText.Of(json =>
    {
        json.WriteString("format", "headroom-acceptance/1");
        json.WriteString("job", result.Job.Name);
        json.WriteString("limit", result.Limit);
        json.WriteBoolean("limitAssumed", result.LimitAssumed);
        json.WriteStartObject("counts");
        json.WriteNumber("drops", result.Drops.Count);
        json.WriteNumber("accepted", result.Count(DropStanding.Accepted));
        json.WriteNumber("marginal", result.Count(DropStanding.Marginal));
        json.WriteNumber("open", result.Count(DropStanding.Open));
        json.WriteEndObject();
        json.Each("drops", result.Drops, drop => WriteDrop(json, drop));
        json.Each("strange", result.Strange, strange =>
        {
            WriteRecord(json, strange.Record);
            json.WriteString("near", strange.Near);
        });
        json.Each("savedTwice", result.SavedTwice, record => WriteRecord(json, record));
    });

    private static void WriteDrop(Utf8JsonWriter json, DropAcceptance drop)
    {
        json.WriteString("id", drop.Id);
        json.WriteString("standing", AcceptanceWords.Of(drop.Standing));
        json.WriteString("reason", drop.Reason == OpenReason.None ? null : AcceptanceWords.Of(drop.Reason));
        json.WriteString("told", drop.Told);
        json.WriteBoolean("retested", drop.Retested);
        json.Each("records", drop.Records, record => WriteRecord(json, record));
        json.Strings("pairs", drop.Pairs);
    }

    private static void WriteRecord(Utf8JsonWriter json, TesterResult record)
    {
        json.WriteString("label", record.Label);
        json.WriteString("result", record.Verdict switch { TesterVerdict.Pass => "pass", TesterVerdict.Marginal => "pass*", _ => "fail" });
        json.WriteString("limit", record.Limit);
        json.Number("metres", record.Metres);
        json.Number("marginDecibels", record.MarginDecibels);
        json.WriteString("day", record.Day);
        json.WriteNumber("line", record.At.Line);
    }
}
