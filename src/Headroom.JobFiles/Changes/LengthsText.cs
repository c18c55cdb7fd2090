using Headroom.Domain.Quantities;

namespace Headroom.JobFiles.Changes;

/// <summary>Lengths with an x between them as somebody wrote them, so that one is changed and the others stay as they are: <c>6.2 x 5.1 x 2.8 m</c>.</summary>
/// <param name="Sides">The lengths; a number alone is in the common unit.</param>
/// <param name="Unit">The common unit.</param>
/// <param name="Origin">The word behind them that says where they come from; empty for none.</param>
public sealed record LengthsText(IReadOnlyList<string> Sides, Unit Unit, string Origin)
{
    private const int Sided = 3;

    /// <summary>Three lengths of which nothing is written.</summary>
    public static LengthsText Nothing { get; } = new(["", "", ""], Metres.Units.Shown, "");

    /// <summary>Reads what is written.</summary>
    /// <param name="written">The text; null for nothing.</param>
    /// <returns>The lengths, <see cref="Nothing"/> where nothing is written; null when it is something else.</returns>
    public static LengthsText? Read(string? written)
    {
        if (string.IsNullOrWhiteSpace(written))
            return Nothing;
        var rest = written.AsSpan().Trim();
        var whole = rest.Length;
        QuantityText.TakeOrigin(ref rest);
        var origin = rest.Length < whole ? written.Trim()[rest.Length..].Trim() : "";
        var parts = rest.ToString().Split(['x', '×'], StringSplitOptions.TrimEntries);
        if (parts.Length != Sided || Metres.Units.Find(UnitOf(parts[^1])) is not { } unit)
            return null;
        return new([.. parts.Select(part => Metres.Units.Find(UnitOf(part)) == unit ? part[..^UnitOf(part).Length].TrimEnd() : part)], unit, origin);
    }

    /// <summary>The same with other lengths, as a file has it. A length that was typed with a unit of its own keeps it.</summary>
    /// <param name="sides">The lengths as typed.</param>
    /// <returns>The text; null when none of them says anything.</returns>
    public string? Write(IReadOnlyList<string> sides)
    {
        var typed = sides.Select(side => side.Trim()).ToList();
        if (typed.TrueForAll(side => side.Length == 0))
            return null;
        // Without a unit of their own lengths take that of the last, so each gets one as soon as one has.
        var mixed = typed.Exists(side => UnitOf(side).Length > 0);
        var text = string.Join(" x ", typed.Select(side => mixed && UnitOf(side).Length == 0 ? $"{side} {Unit.Symbol}" : side)) + (mixed ? "" : $" {Unit.Symbol}");
        return Origin.Length == 0 ? text : $"{text} {Origin}";
    }

    private static string UnitOf(string side) => side.TrimStart(['-', '+', '.', '\u2212', ' ', .. "0123456789"]);
}
