using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>A cooler route: the pieces that lie in the warmest pathway take another one.</summary>
internal sealed class CoolerWay : IRemedyKind
{
    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfCable(entry) && !Entries.IsOfVolts(entry))
            yield break;
        var ways = at.Survey.Pathways.ToDictionary(way => way.Id);
        foreach (var group in at.DropsOf(entry).SelectMany(drop => drop.Pieces.Select(piece => (drop, piece))).Where(one => one.piece.By is { } by && ways.ContainsKey(by)).GroupBy(one => one.piece.By!))
        {
            var hot = ways[group.Key];
            foreach (var other in at.Survey.Pathways.Where(other => other.Id != hot.Id && Celsius(other) < Celsius(hot)))
            {
                var drops = group.Select(one => one.drop).Distinct().ToList();
                yield return Idea(at, drops, hot.Id, other.Id);
                if (drops.Count > 1)
                {
                    foreach (var drop in drops)
                        yield return Idea(at, [drop], hot.Id, other.Id);
                }
            }
        }
    }

    private static double? Celsius(Pathway way) => way.Ambient is { } air ? air.Value.Value + (air.PlusMinus ?? 0) : null;

    private static RemedyIdea Idea(RemedyCase at, List<Drop> drops, string from, string to) => new(
        "cooler way",
        $"{Words.List([.. drops.Select(drop => drop.Id)], most: 8)} by {to} in place of {from}",
        Delta.Building(at, new() { Drops = [.. drops.Select(drop => new DropChange(drop.Id, Place.None) { Pieces = [.. drop.Pieces.Select(piece => Led(piece, from, to))] })] }))
    {
        Minutes = at.Job.Money?.Labour is null ? Entries.HalfDay : default,
        Rough = $"the same length was taken; whether {to} leads there is for a look on site to say",
    };

    private static RunPiece Led(RunPiece piece, string from, string to) => piece.By == from ? piece with { By = to, Ambient = null } : piece;
}
