using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Plans;
using Headroom.Planning.Jobs;
using Headroom.Planning.Turning;

namespace Headroom.Planning;

/// <summary>Finds the cheapest designs of a job that keep every reserve, and says why no cheaper one does.</summary>
public static class Planner
{
    /// <summary>Plans a job.</summary>
    /// <param name="job">A job without errors; its readings are left out, as they are of what stood there before.</param>
    /// <param name="catalogue">The models there are.</param>
    /// <param name="request">What is wanted.</param>
    /// <returns>Designs to choose between, or why there is none; the same for the same input.</returns>
    public static Plan Propose(Job job, Catalogue catalogue, PlanRequest request)
    {
        var complaints = PinCheck.Of(job, catalogue, request);
        if (complaints.Count > 0)
            return Empty(job, request) with { Complaints = complaints };
        var work = new PlanWork(job with { Readings = [], Overrulings = [] }, catalogue, request);
        work.LookFirst();
        return work.Look() ? new Offer(work, job).Plan() : Empty(job, request) with
        {
            Refused = [.. work.Refused],
            Assumed = work.Assumed,
            Clashes = request.OnlyCheapest ? [] : new ClashFinder(job, catalogue, request).Find(work),
            Studied = work.Gate.Count,
            MayDiffer = request.Effort.Stop.IsCancellationRequested,
        };
    }

    /// <summary>Finds the values at which the cheapest design of a job changes.</summary>
    /// <param name="job">A job without errors.</param>
    /// <param name="catalogue">The models there are.</param>
    /// <param name="request">What is wanted.</param>
    /// <param name="on">What is turned, such as <c>draw:bulrush</c>, <c>price:wren</c>, <c>count:phone</c>, <c>noise:desk</c>, <c>runtime</c> or <c>reserve</c>; empty for the usual.</param>
    /// <returns>A turning point up and one down for each; without any what is wrong with what was asked.</returns>
    public static (IReadOnlyList<TurningPoint> Points, IReadOnlyList<string> Complaints) Turn(Job job, Catalogue catalogue, PlanRequest request, IReadOnlyList<string> on)
    {
        var complaints = PinCheck.Of(job, catalogue, request);
        if (complaints.Count > 0)
            return ([], complaints);
        var turner = new Turner(job, catalogue, request);
        var knobs = new Knobs(job, catalogue);
        var asked = (on.Count > 0 ? on : [.. turner.Usual()]).Select(knobs.Of).ToList();
        complaints = [.. asked.Select(one => one.Complaint).OfType<string>()];
        return complaints.Count > 0 ? ([], complaints) : ([.. asked.SelectMany(one => turner.Of(one.Knob!))], []);
    }

    private static Plan Empty(Job job, PlanRequest request) => new(job.Name, request.On, [], [], []);
}
