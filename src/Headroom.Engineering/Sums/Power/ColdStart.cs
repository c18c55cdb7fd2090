using Headroom.Domain.Ledgers;
using Headroom.Engineering.Power;
using static Headroom.Engineering.Sums.Power.BudgetInputs;

namespace Headroom.Engineering.Sums.Power;

/// <summary>Who comes up when power returns after an outage.</summary>
internal static class ColdStart
{
    private static readonly WordInput AtStart = new("at-start", "what is set aside for a port that comes up", "class", "draw")
    {
        Default = "class",
        DefaultWhy = "the class, as nothing is negotiated or measured yet",
    };

    private static readonly WordInput Retries = new("retries", "whether a refused port is tried again when others have settled", "no", "yes")
    {
        Default = "no",
        DefaultWhy = "a port that is refused once is taken to stay dark",
    };

    private static readonly SumOutput Asked = new("asked-at-once", "W", "asked when all come up together");
    private static readonly SumOutput Up = new("up-at-once", "", "devices that come up at once");
    private static readonly SumOutput Later = new("up-later", "", "devices that come up when others have settled");
    private static readonly SumOutput Dark = new("dark", "", "devices that stay dark");
    private static readonly SumOutput Running = new("running", "W", "drawn when all run");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "cold-start",
        Discipline = PowerSums.Discipline,
        Answers = "does everything come up again after a power cut?",
        Inputs = [Budget, Devices, PortType, AtStart, Retries],
        Outputs = [Asked, Up, Later, Dark, Running],
        Formula = "ports are served in the order given while Σ set aside is within the budget; one that has settled keeps its draw",
        Source = "IEEE Std 802.3, clauses 33 and 145: class watts, from memory; the ways in which switches count were seen described in a public kernel's change notes",
        Example = "budget 50 W devices 8 x 5 W retries yes",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        if (Beyond(given, Sum) is { } refused)
            return refused;
        var (budget, draws, type) = (given[Budget], given.All(Devices), TypeOf(given));
        var asks = draws.Select(watts => given.Word(AtStart) == "class" ? PoeClasses.SourceWatts(ClassOf(watts)!.Number, type) : watts).ToArray();
        var steps = new List<WorkingStep> { new("all at once", given.Word(AtStart) == "class" ? "the watts of their classes" : "what they draw", asks.Sum(), "W") };
        var up = PortBudget.Fill(budget, asks, AtRefusal.Skip).Granted;
        var first = up.Count(on => on);
        steps.Add(new("come up at once", $"as many as fit into {Words.Of(budget)} W", first, ""));
        for (var before = -1; given.Word(Retries) == "yes" && before != up.Count(on => on);)
        {
            before = up.Count(on => on);
            Round(up, (draws, asks), budget);
            if (up.Count(on => on) > before)
                steps.Add(new("and then", $"{Words.Of(budget)} W less what those draw", up.Count(on => on) - before, ""));
        }

        var dark = up.Count(on => !on);
        return new SumAnswer(
            Say(draws.Count, first, dark),
            [Asked.Is(asks.Sum()), Up.Is(first), Later.Is(draws.Count - dark - first), Dark.Is(dark), Running.Is(draws.Sum())],
            steps) { Holds = dark == 0 };
    }

    // Those that have settled keep what they draw; the others ask again, in order, for what is left.
    private static void Round(bool[] up, (IReadOnlyList<double> Draws, double[] Asks) of, double budget)
    {
        var waiting = Enumerable.Range(0, up.Length).Where(i => !up[i]).ToArray();
        var left = budget - of.Draws.Where((_, i) => up[i]).Sum();
        if (left <= 0 || waiting.Length == 0)
            return;
        var granted = PortBudget.Fill(left, Array.ConvertAll(waiting, i => of.Asks[i]), AtRefusal.Skip).Granted;
        for (var i = 0; i < waiting.Length; i++)
            up[waiting[i]] = granted[i];
    }

    private static FormattableString Say(int all, int first, int dark) => dark > 0
        ? $"{all - dark} of {all} come up and {dark} stay dark."
        : (FormattableString)(first == all ? (FormattableString)$"All {all} come up at once." : $"All {all} come up: {first} at once, the others when those have settled.");
}
