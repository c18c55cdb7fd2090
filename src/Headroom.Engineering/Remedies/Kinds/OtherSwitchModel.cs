using Headroom.Domain.Catalogues;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Another switch model that has every port in use, with each of its supplies.</summary>
internal sealed class OtherSwitchModel : IRemedyKind
{
    private static readonly string[] Others = ["dark", "outage"];

    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (Entries.IsOfCable(entry) || Others.Contains(entry.Kind))
            yield break;
        foreach (var unit in at.Bound.Switches.Where(unit => Entries.IsOfSound(entry) || at.SwitchesOf(entry).Contains(unit)))
        {
            var taken = at.PortsTaken(unit.Id);
            foreach (var model in at.Catalogue.Switches.Values.Where(model => model.Id != unit.Model.Id && Fits(model, unit, taken)))
            {
                foreach (var supply in model.Supplies.Where(supply => supply.Input != "dc" || unit.Supply?.Input == "dc"))
                    yield return Idea(at, unit, model, model.Supplies.Count > 1 ? supply.Id : null);
            }
        }
    }

    private static RemedyIdea Idea(RemedyCase at, BoundSwitch unit, SwitchModel model, string? supply)
    {
        // The first supply is the usual one and need not be written.
        var written = supply == model.Supplies[0].Id ? null : supply;
        return new("switch model", $"{unit.Id}: {model.Id}{(supply is null ? "" : $", supply '{supply}',")} in place of {unit.Model.Id}", Delta.Switch(at, Delta.Switch(unit.Id) with { Model = model.Id, Supply = written }));
    }

    // Every cord finds a port of the same kind under the same number, and a port that gave power gives power.
    private static bool Fits(SwitchModel model, BoundSwitch unit, HashSet<int> taken) => taken.All(port =>
        unit.PortGroupOf(port) is { } own && model.Ports.FirstOrDefault(group => group.First <= port && port <= group.Last) is { } other
        && other.Media == own.Media && (own.Poe is null || other.Poe is not null));
}
