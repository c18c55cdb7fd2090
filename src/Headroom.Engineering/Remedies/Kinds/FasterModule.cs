using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>Other modules at both ends of an uplink: faster, or for a longer reach or more loss.</summary>
internal sealed class FasterModule : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!(Entries.IsOfTraffic(entry) && entry.Kind == "uplink") && entry.Quantity is not ("loss" or "reach"))
            yield break;
        var links = at.Design.Uplinks ?? [];
        foreach (var link in links.Where(link => link.From.Unit == entry.Subject || link.To.Unit == entry.Subject || link.Drop == entry.Subject))
        {
            if (link.Module is not { } now || !at.Catalogue.Modules.TryGetValue(now, out var own))
                continue;
            foreach (var model in at.Catalogue.Modules.Values.Where(model => model.Id != now && model.Media == own.Media && model.Speed.Value.Value >= own.Speed.Value.Value))
            {
                // A module that receives another colour than it sends is one of a pair: what is the other cannot be told here.
                if (model.Receives is not null)
                    continue;
                yield return new("modules", $"the link from {link.From} to {link.To}: modules {model.Id} in place of {now}", Delta.Of(at) with
                {
                    Uplinks = [.. links.Select(one => one == link ? one with { Module = model.Id, FarModule = null } : one)],
                })
                {
                    Cautions = model.Media is "multimode" or "singlemode" ? [CautionTable.Laser] : [],
                };
            }
        }
    }
}
