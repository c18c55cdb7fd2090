using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Acoustics;

/// <summary>Gathers what is heard of a design: switches, standby supplies, and what the client has already. Injectors have neither fan nor figure and are left out.</summary>
internal static class SoundSources
{
    /// <summary>All sources.</summary>
    public static List<SoundSource> Of(BoundDesign bound, Func<string, SwitchLoad> loadOf)
    {
        var racks = bound.Job.Survey.Racks.ToDictionary(rack => rack.Id);
        var sources = new List<SoundSource>();
        foreach (var s in bound.Switches)
        {
            var rack = RackOf(s.Placed.Standing, racks);
            sources.Add(new(s.Id, s.Model.Id, s.Space, SpotOf(s.Placed.Standing, rack), rack, s.Model.Sound?.Levels ?? [], s.Placed.At)
            {
                Fans = s.Model.Sound?.Fans, Body = s.Model.Body, Stated = s.Placed.Level, Load = loadOf(s.Id),
            });
        }

        foreach (var unit in bound.Design.Standby)
            sources.Add(Standby(unit, bound.Catalogue, RackOf(unit.Standing, racks)));
        foreach (var noise in bound.Job.Survey.Noises)
        {
            IReadOnlyList<FanLevel> levels = noise.Sound is { Power: null, Pressure: null } ? [] : [noise.Sound with { Level = 1 }];
            sources.Add(new(noise.Id, noise.Id, noise.In, noise.Spot, null, levels, noise.At) { Count = noise.Count });
        }

        return sources;
    }

    private static SoundSource Standby(PlacedStandby unit, Catalogue catalogue, Rack? rack)
    {
        var model = unit.Model is { } id ? catalogue.Standby.GetValueOrDefault(id) : null;
        return new(unit.Id, unit.Model ?? unit.Id, rack?.In ?? unit.Standing.In, SpotOf(unit.Standing, rack), rack, model?.Sound?.Levels ?? [], unit.At)
        {
            Fans = model?.Sound?.Fans, Body = model?.Body,
        };
    }

    private static Rack? RackOf(Standing standing, Dictionary<string, Rack> racks) =>
        standing.In is { } place && racks.TryGetValue(place, out var rack) ? rack : null;

    private static Given<Spot>? SpotOf(Standing standing, Rack? rack) => standing.Spot ?? rack?.Spot;
}
