namespace Headroom.Engineering.Money;

/// <summary>What owning an installation costs over years, in money of today.</summary>
/// <param name="First">What is paid at the beginning.</param>
/// <param name="Yearly">What is paid at the end of each year.</param>
/// <param name="Dated">What is paid once, by the year at whose end it is.</param>
/// <param name="Interest">Interest a year, as a share; 0 or more.</param>
/// <param name="Years">Over how many years; 1 or more.</param>
public sealed record Owning(decimal First, decimal Yearly, IReadOnlyList<(int Year, decimal Amount)> Dated, decimal Interest, int Years)
{
    /// <summary>All of it in money of today. Source: NIST Handbook 135, from memory; end-of-year convention.</summary>
    public decimal WorthNow => First + Yearly * OverYears.Each(Interest, Years) + Dated.Where(one => one.Year <= Years).Sum(one => one.Amount * OverYears.Once(Interest, one.Year));

    /// <summary>The equal amount of each year that comes to the same. Source: NIST Handbook 135, from memory.</summary>
    public decimal EqualYearly => WorthNow * OverYears.Equal(Interest, Years);
}
