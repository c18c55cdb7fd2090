using System.Globalization;
using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;

namespace Headroom.Cli.Models;

/// <summary>Gathers the rows of a model; what is not known leaves no row.</summary>
internal sealed class ModelRows
{
    private readonly List<(string Label, string Text)> _rows = [];

    /// <summary>A row with a value as it was written.</summary>
    public ModelRows Add<T>(string label, Given<T>? value)
        where T : struct => Add(label, value?.Written);

    /// <summary>A row with a text.</summary>
    public ModelRows Add(string label, string? text)
    {
        if (!string.IsNullOrEmpty(text))
            _rows.Add((label, text));
        return this;
    }

    /// <summary>A row with a count.</summary>
    public ModelRows Add(string label, int? count) => Add(label, count?.ToString(CultureInfo.InvariantCulture));

    /// <summary>A row with yes or no.</summary>
    public ModelRows Add(string label, bool? answer) => Add(label, answer switch { null => null, true => "yes", _ => "no" });

    /// <summary>A row with several values, one behind the other.</summary>
    public ModelRows Add(string label, IEnumerable<string> texts) => Add(label, string.Join(", ", texts));

    /// <summary>All rows with those that every kind has behind them, as a sheet.</summary>
    public ModelSheet Sheet(string kind, Body body)
    {
        Add("size", Size(body)).Add("rack", body.Units).Add("ears", body.Ears).Add("weight", body.Weight).Add("air", Air(body));
        Add("altitude", body.MostAltitude).Add("price", body.Price);
        return new(kind, body.Id, body.About ?? "", body.At.ToString(), _rows);
    }

    // Each part keeps what was written of it; where one text stands for all three it is said once.
    private static string? Size(Body body) => Joined(" x ", body.Width?.Written, body.Depth?.Written, body.Height?.Written);

    private static string? Air(Body body) => Joined(" to ", body.LeastAmbient?.Written, body.MostAmbient?.Written);

    private static string? Joined(string between, params string?[] parts) => string.Join(between, parts.OfType<string>().Distinct());
}
