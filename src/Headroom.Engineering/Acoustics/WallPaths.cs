using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Acoustics;

/// <summary>Ways through a wall into the next room, where only what that room gives back is heard.</summary>
internal static class WallPaths
{
    // Sound reduction on site against the label, and the ways round the wall [dB]: common practice.
    private const double WallUncertainty = 2.5;

    /// <summary>The way out of one room through a wall into another.</summary>
    public static SoundPath Of(SoundSource source, Partition wall, (SoundRoom From, SoundRoom To) rooms, CupboardLoss loss)
    {
        if ((Question(wall) ?? rooms.From.Question ?? rooms.To.Question) is { } question)
            return PathFinder.Ask(source, question);
        if (rooms.From.Open || rooms.To.Open)
            return new() { Source = source, Way = "through an outer wall", LeftOut = $"{source.Id} is behind an outer wall and was not counted" };
        var reduction = Reduction(wall);
        var returned = new double[Octaves.Count];
        for (var band = 0; band < returned.Length; band++)
        {
            returned[band] = Levels.Energy(-loss.Value + Enclosures.NextRoomLessThis(reduction, wall.Area!.Value.Value, rooms.To.Absorption![band]))
                * rooms.From.Returned(band);
        }

        return new()
        {
            Source = source, Way = $"through {wall.Id}", Loss = loss.Value, LossOrigin = loss.Origin, Wall = wall, WallReduction = reduction, Room = rooms.To, From = rooms.From,
            Direct = new double[Octaves.Count], Returned = returned,
            Uncertainty = Precision.RootSum(rooms.From.Uncertainty, rooms.To.Uncertainty, loss.Uncertainty, WallUncertainty),
            Assumed = [.. new[] { rooms.From.Assumed, rooms.To.Assumed, loss.Assumed }.OfType<string>()],
        };
    }

    /// <summary>Sound reduction of a wall with its door and gap, all of it known [dB].</summary>
    public static double Reduction(Partition wall)
    {
        var door = wall.Door?.Value.Value ?? 0;
        var gap = wall.Gap?.Value.Value ?? 0;
        return Enclosures.Composite(
            new WallPart(wall.Area!.Value.Value - door - gap, wall.Reduction!.Value.Value), new WallPart(door, wall.DoorReduction?.Value.Value ?? 0), new WallPart(gap, 0));
    }

    private static string? Question(Partition wall) =>
        wall.Area is null ? $"how large is the wall {wall.Id}, door included?"
        : wall.Reduction is null ? $"what is the wall {wall.Id} made of? its sound reduction is wanted"
        : wall is { Door: not null, DoorReduction: null } ? $"what door is in {wall.Id}? its sound reduction is wanted"
        : null;
}
