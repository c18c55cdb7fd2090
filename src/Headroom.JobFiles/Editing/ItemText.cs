using System.Globalization;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Editing;

/// <summary>Readings and overrulings as one line of a job file.</summary>
internal static class ItemText
{
    /// <summary>The keys of a reading with what is to be written behind them; what is not known is left out.</summary>
    public static string Of(Reading reading) => Line(
        ("what", YamlWriter.Text(reading.What)),
        ("at", YamlWriter.Text(reading.Where)),
        ("value", YamlWriter.Word(reading.Written)),
        ("with", Text(reading.Instrument)),
        ("calibrated", YesNo(reading.Calibrated)),
        ("at most", reading.UpperBound ? "yes" : null),
        ("on", Day(reading.On)),
        ("while", Text(reading.While)),
        ("background", Value<SoundPressure>(reading.Background)),
        ("distance", Value<Metres>(reading.Distance)),
        ("method", Text(reading.Method)),
        ("direction", Text(reading.Direction)),
        ("pair", Text(reading.Pair)));

    /// <summary>The keys of an overruling with what is to be written behind them.</summary>
    public static string Of(Overruling overruling) => Line(
        ("entry", YamlWriter.Text(overruling.Entry)),
        ("because", YamlWriter.Text(overruling.Because)),
        ("by", YamlWriter.Text(overruling.By)),
        ("on", Day(overruling.On)));

    private static string Line(params ReadOnlySpan<(string Key, string? Written)> fields)
    {
        var parts = new List<string>();
        foreach (var (key, written) in fields)
        {
            if (written is not null)
                parts.Add($"{key}: {written}");
        }

        return "{" + string.Join(", ", parts) + "}";
    }

    private static string? Text(string? text) => text is null ? null : YamlWriter.Text(text);

    private static string? YesNo(bool? value) => value switch { true => "yes", false => "no", null => null };

    private static string? Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    // All digits: the text is read again, and must come to the same number.
    private static string? Value<T>(double? value)
        where T : struct, IQuantity<T> =>
        value is { } number ? $"{number.ToString("0.################", CultureInfo.InvariantCulture)} {T.Units.Shown.Symbol}" : null;
}
