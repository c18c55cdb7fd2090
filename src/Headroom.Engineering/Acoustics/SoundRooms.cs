using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Acoustics;

/// <summary>Works out what each space gives back: from its measured reverberation time, else from its surfaces in a word.</summary>
internal sealed class SoundRooms(Job job)
{
    // Diffuse-field theory in rooms like a box; handbook absorption on top of it; a guess on top of that [dB].
    private const double OfTheory = 2;
    private const double OfHandbook = 2.5;
    private const double OfGuess = 3.5;

    // Walls in a word: what of them is window and what is door.
    private const double WindowShare = 0.06;
    private const double DoorShare = 0.04;

    private readonly Dictionary<string, SoundRoom> _rooms = [];
    private readonly Dictionary<string, Space> _spaces = job.Survey.Spaces.ToDictionary(space => space.Id);

    /// <summary>A space by its id; null when there is none.</summary>
    public Space? Space(string? id) => id is not null && _spaces.TryGetValue(id, out var space) ? space : null;

    /// <summary>The room of a space.</summary>
    public SoundRoom Of(Space space)
    {
        if (!_rooms.TryGetValue(space.Id, out var room))
            _rooms[space.Id] = room = Make(space);
        return room;
    }

    private static SoundRoom Make(Space space)
    {
        if (space.Kind == "outdoors")
            return new(space, true, null, null, "outdoors: nothing comes back", 1, null, null);
        if (space.Size is not { } size)
            return new(space, false, null, null, "not known", OfTheory, $"how long, wide and high is {space.Id}?", null);
        var (volume, surface) = Extent(size.Value);
        if (space.Reverberation is { } time)
        {
            var absorption = Math.Min(RoomAcoustics.Absorption(volume, time.Value.Value), 0.95 * surface);
            return Of(space, [.. Enumerable.Repeat(absorption, Octaves.Count)], surface, ($"T60 {time.Written}, {Origins.Of(time)}", OfTheory, null));
        }

        var known = space.Surfaces is not null;
        return Of(space, ByWord(size.Value, space.Surfaces ?? "average"), surface, (
            $"{space.Surfaces ?? "average"} surfaces, {(known ? Origins.Of(Origin.Unstated, space.At) : "assumed")}",
            known ? OfHandbook : OfGuess,
            known ? null : $"nobody wrote how the surfaces of {space.Id} take sound: average taken"));
    }

    private static SoundRoom Of(Space space, double[] absorption, double surface, (string How, double Uncertainty, string? Assumed) told) => new(
        space, false, absorption, [.. absorption.Select(a => RoomAcoustics.Constant(a, surface))], told.How, told.Uncertainty, null, told.Assumed);

    private static (double Volume, double Surface) Extent(Size size) =>
        (size.Length * size.Width * size.Height, 2 * (size.Length * size.Width + (size.Length + size.Width) * size.Height));

    // Floor, ceiling and walls as the word usually means them; the ends of the scale repeat its neighbours.
    private static double[] ByWord(Size size, string word)
    {
        var floor = word == "soft" ? SurfaceTable.Carpet : word == "average" ? SurfaceTable.Vinyl : SurfaceTable.Concrete;
        var ceiling = word == "hard" ? SurfaceTable.Plasterboard : SurfaceTable.CeilingTile;
        var (ground, walls) = (size.Length * size.Width, 2 * (size.Length + size.Width) * size.Height);
        var absorption = new double[Octaves.Count];
        for (var band = 0; band < absorption.Length; band++)
        {
            var row = Math.Clamp(band - 1, 0, SurfaceTable.Bands - 1);
            absorption[band] = ground * (floor[row] + ceiling[row]) + walls * (
                (1 - WindowShare - DoorShare) * SurfaceTable.Plasterboard[row] + WindowShare * SurfaceTable.Window[row] + DoorShare * SurfaceTable.Door[row]);
        }

        return absorption;
    }
}
