using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Years;

/// <summary>What is taken for granted of the years.</summary>
internal static class YearAssumptions
{
    /// <summary>The sentences, for what was added by the last year.</summary>
    public static List<string> Of(Job job, YearState last)
    {
        var assumed = new List<string> { "nobody changes a battery, a setting or a device, but for what is added" };
        foreach (var added in last.Added.Where(added => added.Count > 0))
        {
            assumed.Add(added.Like is { } like
                ? $"an added {added.Name} is like {like}: {added.Model}, with a run of its own as long as that one's"
                : $"an added {added.Name} is a {added.Model} of which no run is known");
        }

        if (job.Policy.Years is { AirLost: not null, CleanedEvery: null })
            assumed.Add("dust is never taken out, since 'cleaned every' is not written");
        if (job.Money is not null)
            assumed.Add("money is that of the offer of today, made in that year; what is added is not in it");
        return assumed;
    }
}
