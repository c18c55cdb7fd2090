using Headroom.Domain.Jobs;
using Headroom.Planning.Packing;

namespace Headroom.Planning.Jobs;

/// <summary>Says in words why nothing goes into some boxes: ports, or else what the study says of the best that goes in with its limits lifted.</summary>
internal sealed class FitReason(JobPacking packing, (PackProblem Problem, Job Job) of, FamilyTable table, Gate gate, PlanRequest request)
{
    /// <summary>The reason.</summary>
    /// <param name="set">What is bought.</param>
    /// <param name="global">The same with the numbers of the whole job.</param>
    public string Of(BoughtSet set, BoughtSet global)
    {
        var asked = of.Problem.Kinds.Sum(kind => kind.Count) + 2 * set.Count - 1;
        var ports = set.Boxes.Sum(at => at.Value * table.Boxes[at.Key.Family].Groups.Sum());
        if (ports < asked)
            return $"it has {ports} ports and {asked} are needed, links and growth included";
        var lifted = of.Problem with { Boxes = [.. of.Problem.Boxes.Select((box, number) => packing.Boxes[number].Purchase.Midspans is not null ? box : box with { Limits = [.. box.Limits.Select(_ => long.MaxValue / 4096)] })] };
        var packed = ExactPacking.Of(lifted, table, set, [], [], request.Effort);
        if (packed.Cost is null)
            return "it has too few ports of the kinds that are needed";
        var ledger = gate.Study(DesignMaker.Make(packing, packed, global, "lifted"), of.Job);
        return gate.NotKept(ledger) is [var worst, ..] ? PlanWords.Of(worst) : "its watts do not suffice once what is to be added is there";
    }
}
