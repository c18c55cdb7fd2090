using System.Globalization;
using System.Text.Json;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Json;

/// <summary>Readings as JSON, alone or beside what was expected.</summary>
internal static class ReadingJson
{
    /// <summary>Writes what was measured of an entry.</summary>
    public static void WriteMeasured(Utf8JsonWriter json, IReadOnlyList<Comparison> measured) =>
        json.Each("measured", measured, comparison =>
        {
            WriteReading(json, comparison.Reading);
            json.Number("predicted", comparison.Predicted);
            json.Number("difference", comparison.Difference);
            json.Number("joint", comparison.Joint);
            json.WriteBoolean("governs", comparison.Governs);
            json.WriteString("finding", comparison.Finding);
        });

    /// <summary>Writes the keys of a reading into the object at hand.</summary>
    public static void WriteReading(Utf8JsonWriter json, Reading reading)
    {
        json.WriteString("what", reading.What);
        json.WriteString("at", reading.Where);
        json.Number("value", reading.Value);
        json.WriteString("unit", reading.Unit);
        json.Number("plusMinus", reading.PlusMinus);
        json.WriteBoolean("atMost", reading.UpperBound);
        json.WriteString("with", reading.Instrument);
        json.WriteString("on", reading.On?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteString("while", reading.While);
        json.WriteString("pair", reading.Pair);
        json.WriteString("method", reading.Method);
        json.WriteString("direction", reading.Direction);
    }
}
