using Headroom.Domain.Ledgers;
using Headroom.Engineering.Sums;

namespace Headroom.Cli.Text;

/// <summary>A sum that was worked out.</summary>
/// <param name="Sum">The sum.</param>
/// <param name="Answer">What it came to.</param>
/// <param name="Working">How.</param>
internal sealed record AnsweredSum(Sum Sum, SumAnswer Answer, Working Working)
{
    /// <summary>A sentence with its figures in the units shown.</summary>
    public static string Tell(FormattableString sentence, ShownUnits units) => Told.In(sentence, told =>
    {
        var unit = units.Of(told.Unit);
        return Numbers.Show(unit.Value(told.Value)!.Value, unit.Symbol);
    });
}
