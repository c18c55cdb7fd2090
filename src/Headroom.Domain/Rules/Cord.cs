using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;

namespace Headroom.Domain.Rules;

/// <summary>One end of a cord at a port.</summary>
/// <param name="Port">The port.</param>
/// <param name="From">What comes from there, in words.</param>
/// <param name="Outside">True when the end may lie outside the job: the far end of an uplink.</param>
/// <param name="At">Where it is written.</param>
internal readonly record struct Cord(PortRef Port, string From, bool Outside, Place At)
{
    /// <summary>All cord ends of a design.</summary>
    public static IEnumerable<Cord> Of(DesignView view)
    {
        foreach (var patch in view.Whole.Patch)
            yield return new(patch.To, patch.What, false, patch.At);
        foreach (var link in view.Uplinks)
        {
            yield return new(link.From, $"the uplink to {link.To}", false, link.At);
            yield return new(link.To, $"the uplink from {link.From}", true, link.At);
        }

        foreach (var injector in view.Whole.Injectors)
        {
            foreach (var from in injector.From)
                yield return new(from, $"the data side of {injector.Id}", false, injector.At);
        }
    }
}
