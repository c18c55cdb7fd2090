using System.Globalization;
using Headroom.Domain.Plans;

namespace Headroom.Cli.Json;

/// <summary>Turning points as JSON, each with all values that were worked out, for a drawing.</summary>
internal static class TurnJson
{
    /// <summary>The name of the shape.</summary>
    public const string Format = "headroom-turn/1";

    /// <summary>Writes it.</summary>
    public static string Write(string job, DateOnly on, IReadOnlyList<TurningPoint> points) => JsonText.Of(json =>
    {
        json.WriteString("format", Format);
        json.WriteString("job", job);
        json.WriteString("on", on.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.Each("points", points, point =>
        {
            json.WriteString("turned", point.On);
            json.WriteString("what", point.What);
            json.WriteString("unit", point.Unit);
            json.Number("now", point.Now);
            json.WriteBoolean("up", point.Up);
            json.Number("at", point.At);
            json.Number("looked", point.Looked);
            json.WriteString("bought", point.Bought);
            json.WriteNumber("total", point.Total);
            json.WriteString("then", point.Then);
            json.Amount("thenTotal", point.ThenTotal);
            json.WriteBoolean("proved", point.Proved);
            json.Each("values", point.Points, value =>
            {
                json.Number("value", value.Value);
                json.WriteString("bought", value.Bought);
                json.Amount("total", value.Total);
            });
        });
    });
}
