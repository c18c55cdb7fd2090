using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Failure;

/// <summary>Tells how long in a year an endpoint is without power or line.</summary>
internal sealed class LostStory(FailureResult result, BoundEndpoint endpoint, Reserve reserve) : PlainStory(reserve)
{
    /// <inheritdoc/>
    public override Working Work(LedgerEntry entry)
    {
        var outage = result.Bound.Job.Policy.Failures;
        var inputs = new List<WorkingInput>
        {
            new("until somebody is there with the part", result.Ways.RepairHours, "h", outage?.Repair is { } repair ? Origins.Of(repair) : "not written: common practice, no source"),
            new("strike both of two alike", 100 * result.Ways.Common, "%", outage?.Common is { } common ? Origins.Of(common) : "not written: IEC 61508-6, annex D, from memory"),
        };
        var steps = new List<WorkingStep>();
        foreach (var part in result.Ways.Tell(endpoint))
        {
            if (part.HoursBetween is { } hours)
                inputs.Add(new($"{part.Name}, mean time between failures", hours, "h", part.Origin));
            else
                inputs.Add(new($"{part.Name}, share of the time that it works", 100 * part.Share, "%", part.Origin));
            steps.Add(new($"lost by {part.Name}", "8760 · (1 − A)", part.Share is { } share ? Availability.HoursLost(share) : null, "h"));
        }

        inputs.Add(ReserveInput(entry));
        steps.Add(new("lost in a year", "8760 · (1 − product of all A)", entry.Demand, "h"));
        steps.Add(new("not counted", "its own faults, its cable, outages of the mains", null, ""));
        return new Working("A = MTBF / (MTBF + repair); in a row Π A; two alike side by side 1 − (((1 − β) U)² + β U)", inputs, steps, "availability: textbooks; β: IEC 61508-6, annex D, from memory; makers' times between failures are optimistic");
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Holds> Holds(LedgerEntry entry)
    {
        if (entry is not { Limit: { } limit, Demand: { } demand } || entry.Parts is not null)
            return [];
        // What a contract says of the line does not change with the time to mend the rest.
        var line = result.Ways.Tell(endpoint).Where(part => part.HoursBetween is null && part.Share is not null).Sum(part => Availability.HoursLost(part.Share!.Value));
        var (repair, own) = (result.Ways.RepairHours, demand - line);
        double? At(double most) => own > 0 && most > line ? repair * (most - line) / own : null;
        return [new("time until it is mended, nearly", "h", repair, At(limit), At(Kept(limit)))];
    }

    /// <inheritdoc/>
    protected override string Sentence(LedgerEntry entry) =>
        $"{entry.Subject} is without power or line {Words.Of(entry.Demand ?? 0)} h in a year on average; {Words.Of(entry.Limit ?? 0)} h may be.";
}
