using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Power;
using static Headroom.Engineering.Sums.Power.BudgetInputs;

namespace Headroom.Engineering.Sums.Power;

/// <summary>What a list of devices asks of a budget, in each of the ways in which switches count.</summary>
internal static class PowerBudget
{
    private static readonly string[] Ways = ["class", "port-limit", "negotiated", "measured", "autoclass"];

    private static readonly WordInput By = new("by", "the way the switch counts", Ways) { Default = "class", DefaultWhy = "class, what counts before anything is negotiated or measured" };

    private static readonly QuantityInput Limit = new("port-limit", "the most one port may give, where it is set", Watts.Units, new(1, 100, "W")) { IsOptional = true };

    private static readonly SumOutput Asked = new("asked", "W", "asked, counted that way");
    private static readonly SumOutput Left = new("left", "W", "left of the budget");
    private static readonly SumOutput Served = new("served", "", "devices that get power, first come first served");
    private static readonly SumOutput[] Each = [.. Ways.Select(way => new SumOutput($"by-{way}", "W", $"asked by {way}"))];

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "power-budget",
        Discipline = PowerSums.Discipline,
        Answers = "are the watts of a switch enough for these devices?",
        Inputs = [Budget, Devices, By, PortType, Limit],
        Outputs = [Asked, Left, Served, .. Each],
        Formula = "asked = Σ what is set aside for each port; left = budget − asked",
        Source = "IEEE Std 802.3, clauses 33 and 145: class watts, and Equations (33-2) and (145-2) for what is negotiated, from memory; RFC 3621 leaves the order open",
        Example = "budget 130 W devices 7 x 6.4 W, 2 x 13 W by class",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (budget, type, draws) = (given[Budget], TypeOf(given), given.All(Devices));
        if (Beyond(given, Sum) is { } refused)
            return refused;
        var asks = Ways.Select(way => draws.Select(watts => Ask(way, watts, (type, given.Maybe(Limit)))).ToArray()).ToList();
        var sums = asks.ConvertAll(row => row.Sum());
        var chosen = Array.IndexOf(Ways, given.Word(By));
        var fill = PortBudget.Fill(budget, asks[chosen], AtRefusal.Skip);
        var served = fill.Granted.Count(granted => granted);
        return new SumAnswer(
            Say((given.Word(By), draws.Count, served), budget, sums[chosen]),
            [Asked.Is(sums[chosen]), Left.Is(budget - sums[chosen]), Served.Is(served), .. Each.Zip(sums, (way, sum) => way.Is(sum))],
            [.. Steps(draws, asks[chosen]), new("asked", "all together", sums[chosen], "W"), new("left", $"{Words.Of(budget)} − {Words.Of(sums[chosen])}", budget - sums[chosen], "W")])
        {
            Holds = served == draws.Count,
            Notes = [$"Of the ways of counting one is set on the switch; the others are what it would be with another setting."],
        };
    }

    private static double Ask(string way, double watts, (PoeType Type, double? Limit) port)
    {
        var cls = ClassOf(watts)!.Number;
        var ofClass = PoeClasses.SourceWatts(cls, port.Type);
        var asked = way switch
        {
            "port-limit" => port.Limit ?? PoeTypes.Of(port.Type).MostSourceWatts,
            "negotiated" => Reservation.ForClass(watts, cls, port.Type) ?? ofClass,
            "measured" => watts,
            "autoclass" when port.Type >= PoeType.Type3 => Autoclass.ReserveWatts(watts, PortReserve.AutoclassMarginWatts, cls, port.Type),
            _ => ofClass,
        };
        return way == "port-limit" ? asked : Math.Min(asked, port.Limit ?? asked);
    }

    private static IEnumerable<WorkingStep> Steps(IReadOnlyList<double> draws, double[] asks) =>
        draws.Zip(asks).GroupBy(pair => pair).Select(group => new WorkingStep(
            $"{group.Count()} of {Words.Of(group.Key.First)} W", $"class {ClassOf(group.Key.First)!.Number}: {group.Count()} x {Words.Of(group.Key.Second)} W", group.Count() * group.Key.Second, "W"));

    private static FormattableString Say((string Way, int Count, int Served) of, double budget, double asked) => asked <= budget || of.Served == of.Count
        ? $"Counted by {of.Way} they ask {new Told(asked, "W")} of {new Told(budget, "W")}: {new Told(Math.Max(0, budget - asked), "W")} are left."
        : (FormattableString)$"Counted by {of.Way} they ask {new Told(asked, "W")} and there are {new Told(budget, "W")}: {of.Served} of {of.Count} get power, the others stay dark.";
}
