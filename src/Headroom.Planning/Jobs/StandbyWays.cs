using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Planning.Jobs;

/// <summary>Which standby supplies may do, and the most that each can hold.</summary>
internal static class StandbyWays
{
    /// <summary>How long all goes on where ports are switched off to spare the battery [s].</summary>
    public const double ShedSeconds = 300;

    /// <summary>The places that need one: where something must go on working, or all the line comes through.</summary>
    public static List<int> Places(Job job, IReadOnlyList<EndpointKind> kinds, int mainPlace)
    {
        var keep = job.Policy.Outage.Keep;
        if (keep.Count == 0)
            return [];
        return [.. kinds.Where(kind => keep.Contains(kind.Model.Kind) || kind.Members.Any(member => keep.Contains(member.Id)))
            .SelectMany(kind => kind.Places).Append(mainPlace).Distinct().Order()];
    }

    /// <summary>What may do, the cheapest first; each also with all switched off early that need not go on.</summary>
    public static List<StandbyWay> Of(Job job, Catalogue catalogue, UnitPrices prices)
    {
        var models = catalogue.Standby.Values
            .Where(model => !model.GivesDc && model.Real is not null && model.Runtime.Count > 0 && prices.Of(model) is not null)
            .OrderBy(model => prices.Of(model)!.Total).ThenBy(model => model.Id, StringComparer.Ordinal);
        var canShed = job.Policy.Outage is { Runtime: { } runtime, Keep.Count: > 0 } && runtime.Value.Value > 2 * ShedSeconds;
        return [.. models.SelectMany(model => canShed ? new[] { new StandbyWay(model, false), new(model, true) } : [new(model, false)])];
    }

    /// <summary>What else hangs on one: the boxes of the line, with the watts that a design of the job says, else an assumed figure.</summary>
    public static List<AlsoFed> Also(Job job, List<string> assumed)
    {
        var known = job.Designs.SelectMany(design => design.Standby).SelectMany(standby => standby.Also ?? []).ToList();
        var also = new List<AlsoFed>();
        foreach (var box in (job.Survey.Lines.Count > 0 ? job.Survey.Lines[0].Boxes : []))
        {
            var found = known.Find(fed => fed.Name == box);
            if (found is null)
                assumed.Add($"what the {box} draws is not written: 15 W taken");
            also.Add(found ?? new AlsoFed(box, Make.Given(new Watts(15))));
        }

        return also;
    }
}
