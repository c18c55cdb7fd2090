using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Plans;
using Headroom.Planning.Jobs;

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
        return work.Look() ? new Offer(work, job).Plan() : Empty(job, request) with
        {
            Refused = [.. work.Refused],
            Assumed = work.Assumed,
            Clashes = request.OnlyCheapest ? [] : new ClashFinder(job, catalogue, request).Find(work),
            Studied = work.Gate.Count,
            MayDiffer = request.Effort.Stop.IsCancellationRequested,
        };
    }

    private static Plan Empty(Job job, PlanRequest request) => new(job.Name, request.On, [], [], []);
}
