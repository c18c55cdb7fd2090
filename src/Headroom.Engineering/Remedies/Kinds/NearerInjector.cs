using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>The injector that is there, moved into the room of its device: only the cord there is left between them.</summary>
internal sealed class NearerInjector : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfVolts(entry) && !Entries.IsOfPower(entry))
            yield break;
        foreach (var endpoint in at.EndpointsOf(entry))
        {
            if (endpoint is not { Port.Injector: { Model.Ports: 1 } injector, Run.Drop: { To: { } far } drop } || far == injector.Space || far == drop.From)
                continue;
            yield return new("nearer", $"{injector.Id} into {far}, at its end of {drop.Id}", Delta.Of(at) with
            {
                Injectors = [Delta.Injector(injector.Id) with { Standing = new Standing(far, null, null) }],
            })
            {
                Minutes = Entries.Moving,
                Rough = $"whether there is a socket in {far} is to be seen there; nothing of a standby supply in the closet reaches it",
            };
        }
    }
}
