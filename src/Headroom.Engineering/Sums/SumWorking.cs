using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Sums;

/// <summary>The working of a sum, in the form in which a ledger's workings are told.</summary>
public static class SumWorking
{
    /// <summary>Gathers it.</summary>
    /// <param name="sum">The sum.</param>
    /// <param name="given">What it was given.</param>
    /// <param name="answer">What it came to.</param>
    /// <returns>Formula, inputs with their origin, steps and source. What is no number stands as a remark before the steps.</returns>
    public static Working Of(Sum sum, SumGiven given, SumAnswer answer) => new(
        sum.Formula,
        [.. Values(sum, given).SelectMany(pair => pair.Input.Rows(pair.Value))],
        [.. Values(sum, given).Where(pair => pair.Input is WordInput).Select(Remark), .. answer.Steps],
        sum.Source);

    private static IEnumerable<(SumInput Input, SumValue Value)> Values(Sum sum, SumGiven given) =>
        from input in sum.Inputs
        let value = given.Find(input)
        where value is not null
        select (input, value);

    private static WorkingStep Remark((SumInput Input, SumValue Value) pair) =>
        new(pair.Input.Name, $"{pair.Value.Written} ({(pair.Value.IsDefault ? $"not given: {pair.Input.DefaultWhy}" : "given")})", null, "");
}
