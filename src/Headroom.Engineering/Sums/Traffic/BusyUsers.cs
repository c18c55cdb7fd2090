using Headroom.Domain.Quantities;
using Headroom.Engineering.Traffic;

namespace Headroom.Engineering.Sums.Traffic;

/// <summary>How many of many users are active at once.</summary>
internal static class BusyUsers
{
    private static readonly NumberInput Users = new("users", "users", new(1, 100_000));
    private static readonly QuantityInput Active = new("active", "share of them active at a moment", Share.Units, new(0, 100, "%"));
    private static readonly QuantityInput Rate = new("rate", "what an active one takes", BitsPerSecond.Units, new(0.01, 10_000, "Mb/s")) { Default = "8 Mb/s", DefaultWhy = "a film in good quality; common practice, no source" };
    private static readonly QuantityInput Certainty = new("certainty", "share of moments in which it is enough", Share.Units, new(50, 99.999, "%")) { Default = "99.9 %", DefaultWhy = "common practice, no source" };

    private static readonly SumOutput AtOnce = new("at-once", "", "active at once, at most");
    private static readonly SumOutput Together = new("together", "Mb/s", "what those take");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "busy-users",
        Discipline = TrafficSums.Discipline,
        Answers = "how many users are active at once, and what do they take?",
        Inputs = [Users, Active, Rate, Certainty],
        Outputs = [AtOnce, Together],
        Formula = "smallest k with P(X ≤ k) ≥ certainty, X binomial",
        Source = "binomial distribution, textbooks",
        Example = "users 48 active 10 %",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var count = ActiveUsers.Quantile((int)given[Users], given[Active], given[Certainty]);
        var rate = count * given[Rate] / 1e6;
        return new SumAnswer(
            $"No more than {count} are active in {new Told(100 * given[Certainty], "%")} of moments; they take {new Told(rate, "Mb/s")}.",
            [AtOnce.Is(count), Together.Is(rate)],
            [
                new("on average", $"{Words.Of(given[Users])} · {Words.Of(given[Active])}", given[Users] * given[Active], ""),
                new("at most", "binomial quantile", count, ""),
                new("together", $"{count} · {Words.Of(given[Rate] / 1e6)}", rate, "Mb/s"),
            ])
        {
            Notes = [$"Users who do the same at the same time, such as a class that opens one film, are not told apart by chance: count them all."],
        };
    }
}
