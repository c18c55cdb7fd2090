using Headroom.Domain.Quantities;
using Headroom.Engineering.Standby;

namespace Headroom.Engineering.Sums.Standby;

/// <summary>How long a battery charges.</summary>
internal static class RechargeTime
{
    private static readonly QuantityInput Removed = new("removed", "charge that was taken out", AmpereHours.Units, new(0.01, 5000, "Ah"));
    private static readonly QuantityInput Current = new("current", "of the charger into the battery", Amperes.Units, new(0.01, 1000, "A"));
    private static readonly NumberInput Factor = new("factor", "what is put in for what was taken out", new(1, 2)) { IsWhole = false, Default = "1.15", DefaultWhy = "sealed lead, seen in a handbook" };

    private static readonly SumOutput Hours = new("hours", "h", "of the bulk of the charge");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "recharge-time",
        Discipline = StandbySums.Discipline,
        Answers = "how long does a battery take to recharge?",
        Inputs = [Removed, Current, Factor],
        Outputs = [Hours],
        Formula = "t = k Ah / I",
        Source = "balance of charge; k seen in a battery handbook",
        Example = "removed 5.2 Ah current 0.9 A",
        Work = given =>
        {
            var hours = Recharging.BulkHours(given[Removed], given[Current], given[Factor]);
            return new SumAnswer($"The bulk of it takes {new Told(hours, "h")}.", [Hours.Is(hours)],
                [new("t", $"{Words.Of(given[Factor])} · {Words.Of(given[Removed])} Ah / {Words.Of(given[Current])} A", hours, "h")])
            {
                Notes = [$"Sealed lead takes {new Told(Recharging.TaperHours.Least, "h")} to {new Told(Recharging.TaperHours.Most, "h")} more until it is full; a second outage before that finds it part empty."],
            };
        },
    };
}
