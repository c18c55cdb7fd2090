using System.Globalization;
using Headroom.Domain.Findings;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Sums;

/// <summary>A plain number, such as a count of pairs.</summary>
/// <param name="name">The name in plain words with hyphens.</param>
/// <param name="meaning">What it is, in a few words.</param>
/// <param name="range">The range in which it makes sense.</param>
public sealed class NumberInput(string name, string meaning, Bounds range) : SumInput(name, meaning)
{
    private static readonly Unit None = new("", 1);

    /// <summary>The range in which it makes sense.</summary>
    public Bounds Bounds => range;

    /// <summary>Whether only whole numbers are allowed.</summary>
    public bool IsWhole { get; init; } = true;

    /// <summary>The numbers allowed, where not every one in the range is; empty otherwise.</summary>
    public IReadOnlyList<int> OneOf { get; init; } = [];

    /// <inheritdoc/>
    public override string Allowed => OneOf.Count > 0
        ? string.Join(" or ", OneOf)
        : $"a {(IsWhole ? "whole " : "")}number {range.InWords(None).TrimEnd()}, without a unit";

    /// <inheritdoc/>
    public override SumValue? Read(string text, out QuantityProblem? problem)
    {
        var read = double.TryParse(text.Trim(), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number);
        var fits = read && range.Contains(number) && (!IsWhole || double.IsInteger(number)) && (OneOf.Count == 0 || OneOf.Contains((int)number));
        problem = fits ? null : new(QuantitySlip.NotANumber, Allowed, read ? "correct it" : "write the number and nothing else");
        return fits ? new SumValue(text.Trim(), [number]) : null;
    }

    /// <inheritdoc/>
    public override IReadOnlyList<WorkingInput> Rows(SumValue value) => [new(Name, value.Numbers[0], "", Origin(value))];

    /// <inheritdoc/>
    public override bool Knows(string word) => false;
}
