using Headroom.Domain.Shown;
using Headroom.Desk.Work;
using Headroom.Documents.Canvas;
using Headroom.Documents.Drawings.Choices;
using Headroom.Planning;
using Headroom.Planning.Packing;

namespace Headroom.Desk.Tasks;

/// <summary>Looks for the values at which the cheapest design changes.</summary>
internal sealed class TurnWork(JobShelf shelf) : IDeskWork
{
    public string Kind => "turn";

    public byte[] Do(OpenJob open, WorkAsked asked, WorkPlace at)
    {
        var job = open.Sound!;
        var looked = 0;
        at.Tell("the planner proves the cheapest design of today");
        var (points, complaints) = Planner.Turn(job, open.Models.Models, new PlanRequest(shelf.Today)
        {
            Today = asked.Design,
            Effort = PackEffort.Usual with
            {
                Stop = at.Stop,
                Told = (_, _) => at.Tell($"values are turned, and a design is proved for each; {Interlocked.Increment(ref looked)} steps so far"),
            },
        }, asked.Words);
        // Half a ruler would look like a whole one.
        at.Stop.ThrowIfCancellationRequested();
        List<string> said = [.. complaints];
        if (complaints.Count == 0)
            said.Add(points.Count == 0 ? "There is no design today that keeps every limit, so there is nothing to turn. The proposals say what clashes." : "Each value is found by proving designs and halving the way, not by trying some.");
        return new KeptFinds(said, []) { Drawings = TurningRuler.Of(points, ShownUnits.Metric) is { } ruler ? [new(ruler.Title, SvgCanvas.Write(ruler))] : [] }.ToBytes();
    }
}
