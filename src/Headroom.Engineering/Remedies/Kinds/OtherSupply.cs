using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Another supply of the same model.</summary>
internal sealed class OtherSupply : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfPower(entry))
            yield break;
        foreach (var unit in at.SwitchesOf(entry))
        {
            foreach (var supply in unit.Model.Supplies.Where(supply => supply.Id != unit.Supply?.Id && supply.Input == unit.Supply?.Input))
            {
                yield return new("supply", $"{unit.Id}: supply '{supply.Id}' in place of '{unit.Supply?.Id}'", Delta.Switch(at, Delta.Switch(unit.Id) with { Supply = supply.Id }))
                {
                    Cautions = [CautionTable.Mains],
                };
            }
        }
    }
}
