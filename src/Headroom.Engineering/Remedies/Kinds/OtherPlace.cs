using System.Globalization;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Remedies.Kinds;

/// <summary>A unit moved: into another room, to the other end of its own, or under a desk there.</summary>
internal sealed class OtherPlace : IRemedyKind
{
    // Nothing that is made for an office stands outdoors or under a roof.
    private static readonly string[] NoPlace = ["outdoors", "loft"];

    // How far behind its edge a thing stands under a desk, and how high over the floor [m]: common practice, no source.
    private const double UnderDesk = 0.4;
    private const double OverFloor = 0.15;

    /// <inheritdoc/>
    public IEnumerable<RemedyIdea> For(LedgerEntry entry, RemedyCase at)
    {
        if (!Entries.IsOfSound(entry) && !Entries.IsOfHeat(entry))
            return [];
        var racks = at.Survey.Racks.ToDictionary(rack => rack.Id, rack => rack.In);
        return Units(at).Where(unit => unit.Standing.In is not null && (Entries.IsOfSound(entry) || unit.Id == entry.Subject))
            .SelectMany(unit => Places(unit.Standing, racks.GetValueOrDefault(unit.Standing.In!, unit.Standing.In!), at).Select(place => Idea(unit, place, at)));
    }

    private static IEnumerable<(string Id, Standing Standing, Func<Design, Standing, Design> Put)> Units(RemedyCase at) =>
    [
        .. at.Design.Switches.Select(unit => (unit.Id, unit.Standing, (Func<Design, Standing, Design>)((design, place) => design with { Switches = [Delta.Switch(unit.Id) with { Standing = place }] }))),
        .. at.Design.Standby.Select(unit => (unit.Id, unit.Standing, (Func<Design, Standing, Design>)((design, place) => design with { Standby = [Delta.Standby(unit.Id) with { Standing = place }] }))),
    ];

    private static IEnumerable<(Standing To, string Words, bool Other)> Places(Standing now, string space, RemedyCase at)
    {
        foreach (var other in at.Survey.Spaces.Where(other => other.Id != space && other.Size is not null && !NoPlace.Contains(other.Kind)))
            yield return (new(other.Id, null, null), $"into {other.Id}", true);
        if (now.Unit is not null || at.Survey.Spaces.FirstOrDefault(one => one.Id == space)?.Size is not { } size)
            yield break;
        if (now.Spot is { } spot)
        {
            var end = At(size.Value.Length - spot.Value.X, size.Value.Width - spot.Value.Y, spot.Value.Z);
            yield return (new(now.In, end, null), $"to the other end of {space}, {end.Written}", false);
        }

        foreach (var (desk, under) in Desks(space, size.Value, at))
            yield return (new(now.In, under, null), $"under {desk}, {under.Written}", false);
    }

    // Nobody wrote to which side of its edge a desk reaches back: both are tried, the study says which hides it.
    private static IEnumerable<(string Desk, Given<Spot> At)> Desks(string space, Size room, RemedyCase at)
    {
        foreach (var desk in at.Survey.Screens.Where(screen => screen.In == space && screen.Kind == "desk"))
        {
            var (a, b) = (desk.From.Value, desk.To.Value);
            var (along, across) = (b.X - a.X, b.Y - a.Y);
            var long_ = Math.Max(1e-9, Math.Sqrt(along * along + across * across));
            foreach (var side in new[] { 1, -1 })
            {
                var (x, y) = ((a.X + b.X) / 2 - side * UnderDesk * across / long_, (a.Y + b.Y) / 2 + side * UnderDesk * along / long_);
                if (x > 0 && y > 0 && x < room.Length && y < room.Width)
                    yield return (desk.Id, At(x, y, OverFloor));
            }
        }
    }

    private static Given<Spot> At(double x, double y, double z)
    {
        var spot = new Spot(Math.Round(x, 2), Math.Round(y, 2), Math.Round(z, 2));
        return new(spot, string.Create(CultureInfo.InvariantCulture, $"{spot.X} x {spot.Y} x {spot.Z} m"), Origin.Assumed, null, Domain.Findings.Place.None);
    }

    private static RemedyIdea Idea((string Id, Standing Standing, Func<Design, Standing, Design> Put) unit, (Standing To, string Words, bool Other) place, RemedyCase at) =>
        new("move", $"{unit.Id} {place.Words}", unit.Put(Delta.Of(at), place.To))
        {
            BuysNothing = !place.Other,
            Minutes = Entries.Moving,
            Unpriced = place.Other ? "what leads its cables there" : null,
            Rough = place.Other ? "the drops end where they ended; leading them on is not worked out" : null,
        };
}
