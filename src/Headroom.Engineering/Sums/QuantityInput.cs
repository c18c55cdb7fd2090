using Headroom.Domain.Findings;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Sums;

/// <summary>A value with its unit, or a list of such.</summary>
/// <param name="name">The name in plain words with hyphens.</param>
/// <param name="meaning">What it is, in a few words.</param>
/// <param name="units">The units it may be written in.</param>
/// <param name="range">The range in which it makes sense.</param>
public sealed class QuantityInput(string name, string meaning, UnitTable units, SumRange range) : SumInput(name, meaning)
{
    /// <summary>The units it may be written in.</summary>
    public UnitTable Units => units;

    /// <summary>The range in which it makes sense, in the base unit.</summary>
    public Bounds Bounds { get; } = new(units.Find(range.Unit)!.ToBase(range.Least), units.Find(range.Unit)!.ToBase(range.Most));

    /// <summary>The unit in which it is told.</summary>
    public Unit Unit { get; } = units.Find(range.Unit)!;

    /// <summary>Whether several may be given: <c>7 x 6.4 W, 2 x 13 W</c>.</summary>
    public bool IsList { get; init; }

    /// <summary>How many a list must have and may have; null when any number from one.</summary>
    public (int Least, int Most)? Count { get; init; }

    /// <inheritdoc/>
    public override string Allowed => IsList
        ? $"{units.What} {Bounds.InWords(Unit)}, or several with commas{HowMany}: {ListExample}"
        : $"{units.What} {Bounds.InWords(Unit)}";

    /// <inheritdoc/>
    public override SumValue? Read(string text, out QuantityProblem? problem)
    {
        problem = null;
        var numbers = new List<double>();
        foreach (var part in IsList ? Split(text) : [text.Trim()])
        {
            var (times, rest) = IsList ? Times(part) : (1, part);
            if (times < 1 || numbers.Count + times > SumRange.MostOfAList)
                problem = new(QuantitySlip.NotANumber, Allowed, $"write '{part}' as a number of them, x, and the value: {ListExample}");
            else if (One(rest, out problem) is { } number)
                numbers.AddRange(Enumerable.Repeat(number, times));
            if (problem is not null)
                return null;
        }

        if (Count is { } count && (numbers.Count < count.Least || numbers.Count > count.Most))
            problem = new(QuantitySlip.NotANumber, Allowed, $"{numbers.Count} were given");
        return problem is null ? new SumValue(text.Trim(), numbers) : null;
    }

    /// <summary>What the values of a list are called, where each has its own name; null where they are alike.</summary>
    public IReadOnlyList<string>? Parts { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<WorkingInput> Rows(SumValue value)
    {
        var rows = Parts is { } parts
            ? value.Numbers.Select((number, at) => (Name: $"{Name}, {parts[at]}", Number: number))
            : value.Numbers.GroupBy(number => number).Select(group => (Name: group.Count() == 1 ? Name : $"{Name}, {group.Count()} of", Number: group.Key));
        return [.. rows.Select((row, at) => new WorkingInput(row.Name, Unit.FromBase(row.Number), Symbol, at == 0 ? OriginOf(value) : "likewise"))];
    }

    /// <inheritdoc/>
    public override bool Knows(string word) =>
        word is "x" || QuantityText.OriginWords.Contains(word)
        || units.Units.Any(unit => unit.Aliases.Prepend(unit.Symbol).Any(symbol => symbol == word || symbol.Split(' ').Contains(word)));

    // The same figure need not stand twice in its line; another unit, or a whole list, is what somebody wants to see again.
    private string OriginOf(SumValue value) =>
        !value.IsDefault && value.Numbers.Count == 1 && value.Written.EndsWith(" " + Unit.Symbol, StringComparison.Ordinal) ? "given"
        : IsUnweighted(value) ? $"{Origin(value)}, taken as A-weighted: a maker who leaves the A out mostly means it"
        : Origin(value);

    // A level of which nobody said by which curve it was weighted counts as one by the curve of the limits, and that is said.
    private bool IsUnweighted(SumValue value) => !value.IsDefault && Unit.Symbol == "dB(A)" && value.Written.EndsWith(" dB", StringComparison.OrdinalIgnoreCase);

    private string Symbol => Unit.Symbol.EndsWith("m2", StringComparison.Ordinal) ? Unit.Symbol.Replace('2', '²') : Unit.Symbol;

    private string HowMany => Count is not { } count ? "" : count.Least == count.Most ? $", {count.Least} of them" : $", {count.Least} to {count.Most} of them";

    /// <summary>How a list may be written.</summary>
    public string ListExample
    {
        get => field ?? $"7 x {Words.Of(Middle, Unit.Symbol)}, {Words.Of(Middle * 2, Unit.Symbol)}";
        init;
    }

    // Some value that is allowed, with few digits.
    private double Middle => Math.Max(Math.Ceiling(Unit.FromBase(Bounds.Least)), Math.Min(5, Math.Floor(Unit.FromBase(Bounds.Most) / 2)));

    private double? One(string text, out QuantityProblem? problem)
    {
        if (QuantityText.Measure(text, units, out problem) is not { } found)
            return null;
        if (found.PlusMinus is not null)
            problem = new(QuantitySlip.NotANumber, Allowed, "give one value; to see what an interval does, work it out twice");
        else if (!Bounds.Contains(found.Value))
            problem = new(QuantitySlip.NotANumber, Allowed, "correct it; a sum is worth nothing outside the range it was made for");
        return problem is null ? found.Value : null;
    }

    // "38, 40, 43 dB": a unit said once, at the end, is that of all.
    private static string[] Split(string text)
    {
        var parts = text.Split(',', StringSplitOptions.TrimEntries);
        // The unit begins behind the last number and not within it: m3/h has a digit of its own.
        var number = parts[^1].AsSpan().LastIndexOfAny("x×") + 1;
        while (number < parts[^1].Length && (char.IsAsciiDigit(parts[^1][number]) || parts[^1][number] is '.' or '-' or '+' or ' '))
            number++;
        var unit = parts[^1][..number].TrimEnd() is { Length: > 0 } head ? parts[^1][head.Length..] : "";
        return [.. parts.Select((part, at) => at < parts.Length - 1 && part.Length > 0 && char.IsAsciiDigit(part[^1]) ? part + unit : part)];
    }

    // "7 x 6.4 W" is seven of them; without the sign it is one.
    private static (int Times, string Value) Times(string part)
    {
        var sign = part.IndexOfAny(['x', '×']);
        var before = sign > 0 ? part[..sign].Trim() : "";
        return before.Length > 0 && before.All(char.IsAsciiDigit)
            ? (int.TryParse(before, out var times) ? times : 0, part[(sign + 1)..].Trim())
            : (1, part);
    }
}
