namespace Headroom.Engineering.Money;

/// <summary>How many places behind the point an amount of a currency has.</summary>
public static class MinorUnits
{
    /// <summary>The day on which the table was written down.</summary>
    public static DateOnly AsOf { get; } = new(2026, 11, 25);

    private const string None = " BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF ";
    private const string Three = " BHD IQD JOD KWD LYD OMR TND ";
    private const string Four = " CLF UYW ";

    /// <summary>The places of a currency. Source: ISO 4217; UGX, CLF and UYW from memory.</summary>
    /// <param name="currency">Its three letters.</param>
    /// <returns>0, 2, 3 or 4; 2 for a currency the table does not name.</returns>
    public static int Of(string currency) =>
        None.Contains($" {currency} ", StringComparison.Ordinal) ? 0
        : Three.Contains($" {currency} ", StringComparison.Ordinal) ? 3
        : Four.Contains($" {currency} ", StringComparison.Ordinal) ? 4
        : 2;
}
