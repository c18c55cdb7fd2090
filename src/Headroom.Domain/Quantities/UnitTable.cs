namespace Headroom.Domain.Quantities;

/// <summary>The units of one quantity; check, message, schema and manual all read this table.</summary>
/// <param name="What">What the quantity is in a sentence, with its article: <c>a length</c>.</param>
/// <param name="Units">The units understood; the first is the one in which a value is shown.</param>
public sealed record UnitTable(string What, IReadOnlyList<Unit> Units)
{
    /// <summary>The unit in which a value is shown unless another is asked for.</summary>
    public Unit Shown => Units[0];

    /// <summary>The symbols for a message: <c>m, mm, cm, ft or in</c>.</summary>
    public string Symbols => Units.Count == 1
        ? Units[0].Symbol
        : string.Join(", ", Units.SkipLast(1).Select(unit => unit.Symbol)) + " or " + Units[^1].Symbol;

    /// <summary>Finds a unit by symbol or other spelling.</summary>
    /// <param name="text">The text after the number.</param>
    /// <returns>The unit, or null when the table has none of that name.</returns>
    public Unit? Find(ReadOnlySpan<char> text)
    {
        foreach (var unit in Units)
        {
            if (unit.Is(text))
                return unit;
        }

        return null;
    }
}
