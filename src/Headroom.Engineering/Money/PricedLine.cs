namespace Headroom.Engineering.Money;

/// <summary>One line of an offer.</summary>
/// <param name="What">What it is, as the client reads it.</param>
/// <param name="Count">How many.</param>
/// <param name="CountUnit">What is counted: nothing for pieces, <c>m</c>, <c>h</c>.</param>
/// <param name="Cost">What all of it costs the firm; null when not known.</param>
/// <param name="Net">What all of it is charged, rounded, without tax; null when not known.</param>
/// <param name="Tax">The group of its tax; null for the usual one.</param>
/// <param name="Option">The option it belongs to; null for the offer itself.</param>
public sealed record PricedLine(string What, decimal Count, string CountUnit, decimal? Cost, decimal? Net, string? Tax, string? Option)
{
    /// <summary>What is to be found out before it can be priced; null when nothing.</summary>
    public string? Question { get; init; }

    /// <summary>Where its figures come from, in words.</summary>
    public string Origin { get; init; } = "";

    /// <summary>True when it is work and not goods.</summary>
    public bool IsLabour { get; init; }
}
