using Headroom.Documents.Drawings;
using Headroom.Documents.Papers;
using Headroom.Planning;
using Headroom.Planning.Packing;

namespace Headroom.Cli.Commands;

/// <summary>Adds what the planner finds to what drawings and papers are made from, where one of them shows it.</summary>
internal static class PlannedInputs
{
    /// <summary>The input with it; null when it cannot be planned, which has then been said.</summary>
    /// <param name="input">The studied design.</param>
    /// <param name="needs">What is to be shown of the planner; empty for nothing, and then nothing is planned.</param>
    /// <param name="of">What was asked, and the seconds after which planning stops; null to let it end by itself.</param>
    /// <param name="desk">Where it is told.</param>
    public static PaperInput? Add(PaperInput input, IReadOnlyCollection<PlannedFor> needs, (AskedStudy Asked, double? Seconds) of, Desk desk)
    {
        if (needs.Count == 0)
            return input;
        var asked = of.Asked;
        using var stop = new PlanStop();
        if (of.Seconds is { } most)
            stop.After(most);
        var request = new PlanRequest(asked.Request.On)
        {
            Today = asked.Request.Design,
            FirmReadings = asked.Request.FirmReadings,
            Effort = new PackEffort(PackEffort.Usual.Work) { Stop = stop.Token, Told = desk.SomebodyLooksOn ? new PlanProgress(desk).Tell : null },
        };
        List<string> complaints = [];
        if (needs.Contains(PlannedFor.Designs))
        {
            var plan = Planner.Propose(asked.Job, asked.Models, request);
            complaints.AddRange(plan.Complaints);
            input = input with { Plan = plan };
        }

        if (complaints.Count == 0 && needs.Contains(PlannedFor.Turns))
        {
            var (points, found) = Planner.Turn(asked.Job, asked.Models, request, []);
            complaints.AddRange(found);
            input = input with { Turns = points };
        }

        if (desk.SomebodyLooksOn)
            desk.Err.WriteLine();
        foreach (var complaint in complaints)
            desk.Err.WriteLine($"headroom: {complaint}");
        return complaints.Count > 0 ? null : input;
    }
}
