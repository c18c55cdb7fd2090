using Headroom.Domain.Quantities;

namespace Headroom.Cli.Text;

/// <summary>How the numbers of one unit are shown. Differences, such as what is left or a reserve, have their own symbol: what lies between two °C is K.</summary>
internal sealed record ShownUnit(string Symbol, string Between, Unit From, Unit To)
{
    /// <summary>A value in the unit shown.</summary>
    public double? Value(double? value) => value is { } number ? To.FromBase(From.ToBase(number)) : null;

    /// <summary>A difference of two values in the unit shown.</summary>
    public double? Difference(double? value) => value * From.Factor / To.Factor;
}
