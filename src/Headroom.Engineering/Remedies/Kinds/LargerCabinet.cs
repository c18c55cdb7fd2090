using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>A larger, deeper or quieter cabinet in place of a rack.</summary>
internal sealed class LargerCabinet : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfRack(entry) && !Entries.IsOfSound(entry))
            yield break;
        foreach (var rack in at.Survey.Racks.Where(rack => Entries.IsOfSound(entry) || rack.Id == entry.Subject || Stands(rack, entry.Subject, at)))
        {
            foreach (var model in at.Catalogue.Cabinets.Values.Where(model => model.Kind == "cabinet" && model.Id != rack.Cabinet && !(model.Inside?.Value.Value < rack.Height?.Value.Value)))
            {
                yield return new("cabinet", $"{rack.Id}: the cabinet {model.Id}", Delta.Building(at, new() { Racks = [Of(rack, model)] }))
                {
                    Minutes = Entries.HalfDay,
                    Goods = [model.Body.Price],
                    Cautions = rack.Fixed == "wall" ? [CautionTable.WallLoad] : [],
                };
            }
        }
    }

    // A figure that the model does not give is asked for in the building as it was; so the old one stays.
    private static RackChange Of(Rack rack, CabinetModel model) => new(rack.Id, Place.None)
    {
        Cabinet = model.Id,
        Height = model.Inside,
        Depth = model.UsableDepth,
        Load = model.Load,
    };

    private static bool Stands(Rack rack, string unit, RemedyCase at) => at.Design.Switches.Any(one => one.Id == unit && one.Standing.In == rack.Id)
        || at.Design.Standby.Any(one => one.Id == unit && one.Standing.In == rack.Id);
}
