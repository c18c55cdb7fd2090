using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Thicker or screened cable: for one drop, or for all that share a pathway where the entry is about that.</summary>
internal sealed class OtherCable : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfCable(entry) && !Entries.IsOfVolts(entry))
            yield break;
        var drops = at.DropsOf(entry).Where(drop => Model(drop, at) is not null).ToList();
        if (drops.Count == 0)
            yield break;
        foreach (var model in at.Catalogue.Cables.Values.Where(model => model is { Stranded: false, CopperClad: false }))
        {
            var laid = drops.FindAll(drop => Better(model, drop, at));
            if (laid.Count == 0)
                continue;
            var what = laid.Count == 1 ? laid[0].Id : $"all of {entry.Subject}, {Words.List([.. laid.Select(drop => drop.Id)])}";
            yield return new("other cable", $"{what}: {model.Id}{(model.Screened == true ? ", screened," : "")} in place of {Words.List([.. laid.Select(drop => Model(drop, at)!.Id).Distinct()])}",
                Delta.Building(at, new() { Drops = [.. laid.Select(drop => new DropChange(drop.Id, Place.None) { Cable = model.Id })] }))
            {
                Minutes = laid.Exists(drop => drop.Existing) && at.Job.Money?.Labour is null ? Entries.HalfDay : default,
            };
        }
    }

    private static CableModel? Model(Drop drop, RemedyCase at) => drop.Pieces[0].Cable is { } cable ? at.Catalogue.Cables.GetValueOrDefault(cable) : null;

    // At least as thick and of no lower a category, and thicker or screened; outdoors only what the job lays outdoors already.
    private static bool Better(CableModel model, Drop drop, RemedyCase at)
    {
        if (Model(drop, at) is not { } now || model.Id == now.Id || Area(model) < Area(now) || string.CompareOrdinal(model.Category, now.Category) < 0)
            return false;
        if (!(Area(model) > Area(now)) && !(model.Screened == true && now.Screened != true) && !(model.MostTemperature?.Value.Value > now.MostTemperature?.Value.Value))
            return false;
        return !IsOutdoors(drop, at) || at.Survey.Drops.Any(other => IsOutdoors(other, at) && other.Pieces.Any(piece => piece.Cable == model.Id));
    }

    private static double Area(CableModel model) => model.Conductor?.Value.Value ?? 0;

    private static bool IsOutdoors(Drop drop, RemedyCase at) => at.Survey.Spaces.Any(space => (space.Id == drop.To || space.Id == drop.From) && space.Kind == "outdoors");
}
