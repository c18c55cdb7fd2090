namespace Headroom.Engineering.Sums;

/// <summary>What a sum was given, with what was taken where nothing was.</summary>
/// <param name="values">The values of all inputs that have one.</param>
public sealed class SumGiven(IReadOnlyDictionary<SumInput, SumValue> values)
{
    /// <summary>The value of an input that must be given or has a default, in its base unit.</summary>
    /// <param name="input">The input.</param>
    /// <returns>The number.</returns>
    public double this[SumInput input] => values[input].Numbers[0];

    /// <summary>The value of an input that may stay away, in its base unit.</summary>
    /// <param name="input">The input.</param>
    /// <returns>The number; null when it was not given.</returns>
    public double? Maybe(SumInput input) => values.TryGetValue(input, out var value) ? value.Numbers[0] : null;

    /// <summary>The numbers of a list, each in the base unit.</summary>
    /// <param name="input">The list.</param>
    /// <returns>The numbers, in the order written.</returns>
    public IReadOnlyList<double> All(SumInput input) => values.TryGetValue(input, out var value) ? value.Numbers : [];

    /// <summary>The word of an input.</summary>
    /// <param name="input">The input.</param>
    /// <returns>The word.</returns>
    public string Word(SumInput input) => values[input].Written;

    /// <summary>The value of an input as it was read.</summary>
    /// <param name="input">The input.</param>
    /// <returns>The value; null when it was not given.</returns>
    public SumValue? Find(SumInput input) => values.GetValueOrDefault(input);
}
