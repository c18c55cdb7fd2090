using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Years;

/// <summary>A copy of a job as it will be, with one whole design; it is studied as any job is.</summary>
/// <param name="Job">The job.</param>
/// <param name="Design">The design.</param>
/// <param name="Catalogue">The models as they will be.</param>
/// <param name="Added">What was added by then.</param>
internal sealed record LaterSite(Job Job, Design Design, Catalogue Catalogue, IReadOnlyList<AddedDevices> Added)
{
    /// <summary>The site of today.</summary>
    public static LaterSite Today(Job job, Design design, Catalogue catalogue) => new(Put(job, design), design, catalogue, []);

    /// <summary>The copy with another design or another survey.</summary>
    public LaterSite With(Design design, Survey survey) => this with { Job = Put(Job, design) with { Survey = survey }, Design = design };

    private static Job Put(Job job, Design design) => job with { Designs = [design], Chosen = design.Id };
}
