using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Sheets;

/// <summary>What the cells of a column come to, and which of them are empty.</summary>
internal sealed class SheetTally(SheetColumn column)
{
    private const int MostNamed = 6;

    private double _sum;
    private int _unknown;

    /// <summary>The column.</summary>
    public SheetColumn Column => column;

    /// <summary>The rows in which nothing stands there.</summary>
    public List<(int Number, Place At)> Missing { get; } = [];

    /// <summary>How many things there are, known or not.</summary>
    public int Things { get; private set; }

    /// <summary>Counts a row.</summary>
    /// <param name="row">The row.</param>
    /// <param name="text">What its cell says; null when nothing.</param>
    /// <param name="things">How many things the row stands for.</param>
    public void Count(SheetRow row, string? text, int things)
    {
        Things += things;
        if (text is null)
        {
            Missing.Add((row.Number, row.Cell(column.Index)?.At ?? row.At));
            _unknown += things;
        }
        else if (column.Field!.Units is { } units && QuantityText.Measure(text, units, out _) is { } measured)
        {
            _sum += measured.Value * things;
        }
    }

    /// <summary>What the column comes to: <c>at least 412.5 m, 2 of 24 unknown</c>; null when that means nothing.</summary>
    public string? Sum()
    {
        if (column.Field is not { AddsUp: true, Units: { } units })
            return null;
        var shown = $"{QuantityText.Show(units.Shown.FromBase(_sum))} {units.Shown.Symbol}";
        return _unknown == 0 ? $"{shown} in all" : $"at least {shown}, {_unknown} of {Things} unknown";
    }

    /// <summary>The question about the empty cells.</summary>
    public (string Given, string Allowed, string Advice) Question(SheetKind kind)
    {
        var rows = string.Join(", ", Missing.Take(MostNamed).Select(row => row.Number)) + (Missing.Count > MostNamed ? $" and {Missing.Count - MostNamed} more" : "");
        var sum = Sum() is { } known ? $": {known}" : "";
        return ($"{column.Field!.Name} is not known in {(Missing.Count == 1 ? "row" : "rows")} {rows}{sum}", $"{column.Called} has one for each {kind.Noun}", "ask on site and fill it in; until then it is unknown, never nothing");
    }
}
