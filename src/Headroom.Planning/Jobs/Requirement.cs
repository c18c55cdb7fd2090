using Headroom.Domain.Jobs;

namespace Headroom.Planning.Jobs;

/// <summary>Something that is asked of a design and might be given up.</summary>
/// <param name="Words">What is asked.</param>
/// <param name="Relaxed">What giving it up means.</param>
/// <param name="Without">The job and the request without it.</param>
internal sealed record Requirement(string Words, string Relaxed, Func<Job, PlanRequest, (Job, PlanRequest)> Without)
{
    /// <summary>All that a job and a request ask, what is given up most easily first.</summary>
    public static IEnumerable<Requirement> All(Job job, PlanRequest request) => [.. OfPins(request), .. OfPolicy(job), .. OfListeners(job)];

    private static IEnumerable<Requirement> OfPins(PlanRequest request)
    {
        var pins = request.Pins;
        if (pins.Fanless)
            yield return Pin("no switch has a fan", "allow fans", at => at with { Fanless = false });
        if (pins.Models.Count > 0)
            yield return Pin($"only {string.Join(", ", pins.Models)} may be used", "allow other models", at => at with { Models = [] });
        foreach (var id in pins.Keep)
            yield return Pin($"{id} stays", $"let {id} go", at => at with { Keep = [.. at.Keep.Where(other => other != id)] });
        foreach (var space in pins.NotIn)
            yield return Pin($"nothing stands in {space}", $"allow {space}", at => at with { NotIn = [.. at.NotIn.Where(other => other != space)] });
    }

    private static IEnumerable<Requirement> OfPolicy(Job job)
    {
        if (job.Policy.Growth.Count > 0)
            yield return new("the growth that the policy asks for", "leave growth out", (at, request) => (at, request with { Pins = request.Pins with { WithoutGrowth = true } }));
        if (job.Policy.Outage.Runtime is { } runtime)
            yield return Policy($"{runtime.Written} on battery", "ask no minutes on battery", at => at with { Outage = at.Outage with { Runtime = null } });
        if (job.Policy.Outage.Keep.Count > 0)
            yield return Policy($"{string.Join(", ", job.Policy.Outage.Keep)} go on in an outage", "let them stop in an outage", at => at with { Outage = OutagePolicy.None });
        if (job.Policy.Failures is { SupplyMayFail: true } rules)
            yield return Policy("every switch goes on when one of its supplies fails", "let a switch stop with its supply", at => at with { Failures = rules with { SupplyMayFail = false } });
        if (job.Money?.Budget is { } budget)
            yield return new($"no more than {budget.Written}", "raise the budget", (at, request) => (at with { Money = at.Money! with { Budget = null } }, request));
        foreach (var kind in new[] { "power", "ports", "temperature", "rack", "weight", "depth", "sound", "runtime", "uplink", "port speed", "volts", "apparent" })
        {
            if (job.Policy.ReserveOf(kind) is var reserve && (reserve.Share ?? reserve.Amount) > 0)
                yield return Policy($"a reserve of {reserve.Written} of {kind}", $"keep no reserve of {kind}", at => at with { Reserves = new Dictionary<string, Reserve>(at.Reserves) { [kind] = Reserve.Nothing } });
        }
    }

    private static IEnumerable<Requirement> OfListeners(Job job)
    {
        foreach (var listener in job.Survey.Listeners)
        {
            if (listener.Limit is { } limit)
                yield return new($"{limit.Written} at {listener.Id}", $"ask no limit at {listener.Id}", (at, request) => (at with { Survey = at.Survey with { Listeners = [.. at.Survey.Listeners.Where(other => other.Id != listener.Id)] } }, request));
        }
    }

    private static Requirement Pin(string words, string relaxed, Func<PlanPins, PlanPins> without) => new(words, relaxed, (job, request) => (job, request with { Pins = without(request.Pins) }));

    private static Requirement Policy(string words, string relaxed, Func<Policy, Policy> without) => new(words, relaxed, (job, request) => (job with { Policy = without(job.Policy) }, request));
}
