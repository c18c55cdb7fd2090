using Headroom.Domain.Quantities;

namespace Headroom.Domain.Shown;

/// <summary>How the numbers of one unit are shown. Differences, such as what is left or a reserve, have their own symbol: what lies between two °C is K.</summary>
/// <param name="Symbol">The symbol of its values.</param>
/// <param name="Between">The symbol of what lies between two values.</param>
/// <param name="From">The unit in which it was worked out.</param>
/// <param name="To">The unit shown.</param>
public sealed record ShownUnit(string Symbol, string Between, Unit From, Unit To)
{
    /// <summary>A value in the unit shown.</summary>
    /// <param name="value">The value as worked out; null when not known.</param>
    public double? Value(double? value) => value is { } number ? To.FromBase(From.ToBase(number)) : null;

    /// <summary>A difference of two values in the unit shown.</summary>
    /// <param name="value">The difference as worked out; null when not known.</param>
    public double? Difference(double? value) => value * From.Factor / To.Factor;
}
