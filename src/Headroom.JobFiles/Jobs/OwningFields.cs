using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What is to be known about the cost of owning an installation.</summary>
internal static class OwningFields
{
    private static readonly Field<int> Years = new("years", new CountShape(1, 40), "Over how many years.", "5") { IsRequired = true };
    private static readonly Field<Given<Share>> Interest = new("interest", () => Sensible.Tax, "What money costs in a year; none without it.", "4 %");
    private static readonly Field<Given<Money>> Energy = new("energy", new MoneyShape(), "What a kilowatt-hour costs.", "0.29 EUR");
    private static readonly Field<Given<Money>> BatteryVisit = new("battery visit", new MoneyShape(), "What changing the batteries of one standby supply costs besides the blocks.", "70 EUR");

    /// <summary>The keys.</summary>
    public static ObjectShape<OwningTerms> Shape { get; } = new(
        "cost of owning",
        [Years, Interest, Energy, BatteryVisit],
        values => new OwningTerms(values.Must(Years), values.Get(Interest), values.Get(Energy), values.Get(BatteryVisit)));
}
