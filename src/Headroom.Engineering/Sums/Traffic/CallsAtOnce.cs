using Headroom.Domain.Quantities;
using Headroom.Engineering.Traffic;

namespace Headroom.Engineering.Sums.Traffic;

/// <summary>How many calls go at once.</summary>
internal static class CallsAtOnce
{
    private static readonly NumberInput Phones = new("phones", "telephones", new(1, 5000));
    private static readonly QuantityInput Busy = new("busy", "share of the busy hour that one is on the telephone", Share.Units, new(0.1, 99, "%"));
    private static readonly QuantityInput Lost = new("lost", "share of calls that may find no way out", Share.Units, new(0.01, 50, "%")) { Default = "1 %", DefaultWhy = "common practice, no source" };

    private static readonly SumOutput Lines = new("calls", "", "calls at once");
    private static readonly SumOutput Congestion = new("lost-then", "%", "share of calls lost with so many");
    private static readonly SumOutput Erlangs = new("erlangs", "E", "offered together");
    private static readonly SumOutput ErlangB = new("lost-by-erlang", "%", "the same by Erlang B, as if there were very many telephones");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "calls-at-once",
        Discipline = TrafficSums.Discipline,
        Answers = "how many calls must a line carry at once?",
        Inputs = [Phones, Busy, Lost],
        Outputs = [Lines, Congestion, Erlangs, ErlangB],
        Formula = "the fewest lines with an Engset call congestion of no more than may be lost; α = a / (1 − a)",
        Source = "Engset and Erlang B; Iversen, Teletraffic Engineering Handbook, from memory",
        Example = "phones 20 busy 12 %",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var (phones, busy) = ((int)given[Phones], given[Busy]);
        var lines = Trunks.LinesFor(phones, busy, given[Lost]);
        var lost = 100 * Trunks.CallCongestion(phones, busy, lines);
        var erlang = 100 * Trunks.Blocking(phones * busy, lines);
        return new SumAnswer(
            $"{new Told(lines, lines == 1 ? "call" : "calls")} at once: then {new Told(lost, "%")} of calls find no way.",
            [Lines.Is(lines), Congestion.Is(lost), Erlangs.Is(phones * busy), ErlangB.Is(erlang)],
            [
                new("offered", $"{phones} · {Words.Of(busy)}", phones * busy, "E"),
                new("lost with that many", "Engset, call congestion", lost, "%"),
                new("lost by Erlang B", "for comparison", erlang, "%"),
            ]);
    }
}
