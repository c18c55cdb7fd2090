using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Acoustics;

/// <summary>Finds how sound comes from each source to each ear: in the room, out of a cupboard into the room, or through a wall.</summary>
internal sealed class PathFinder(Job job, Catalogue catalogue, SoundRooms rooms)
{
    // Farther apart than this in the plan, spaces without a wall written between them are left out [m]: rule of this program.
    private const double FarApart = 10;

    // A space no longer than this in any direction is small: where in it something stands matters little [m].
    private const double SmallSpace = 2.5;

    /// <summary>The way from a source to a listener.</summary>
    public SoundPath Of(SoundSource source, Listener listener)
    {
        var home = rooms.Space(source.Space);
        if (home is null || rooms.Space(listener.In) is not { } here)
            return Ask(source, $"where does {source.Id} stand? write its space");
        var cabinet = CupboardLoss.OfCabinet(source.Rack, catalogue);
        if (home.Id == here.Id)
            return RoomPaths.Of((source, source.Spot?.Value ?? Middle(home)), (listener, rooms.Of(here)), cabinet, Screens(here));
        if (home.Enclosure?.Beside == here.Id)
            return OutOfCupboard((source, home), (listener, here), cabinet.And(CupboardLoss.OfCupboard(home)));
        return Through(source, (home, here), cabinet) ?? NoWay(source, home, here);
    }

    private SoundPath OutOfCupboard((SoundSource Source, Space Home) from, (Listener Listener, Space Here) to, CupboardLoss loss)
    {
        var spot = from.Source.Spot?.Value ?? Middle(from.Home);
        if (spot is { } inside && from.Home.Corner is { } corner && to.Here.Corner is { } origin && to.Here.Size is { } size)
        {
            // Heard at the face of the cupboard: the nearest spot of the room to the thing itself.
            var face = new Spot(
                Math.Clamp(corner.Value.X + inside.X - origin.Value.X, 0, size.Value.Length),
                Math.Clamp(corner.Value.Y + inside.Y - origin.Value.Y, 0, size.Value.Width),
                Math.Clamp(corner.Value.Z + inside.Z - origin.Value.Z, 0, size.Value.Height));
            return RoomPaths.Of((from.Source, face), (to.Listener, rooms.Of(to.Here)), loss, Screens(to.Here)) with { Way = $"out of {from.Home.Id}" };
        }

        return Ask(from.Source, $"where is {from.Home.Id} in {to.Here.Id}? write the corner of both in the plan, and the size of both");
    }

    // Through the wall between the two, or out of a cupboard into a room and through that room's wall.
    private SoundPath? Through(SoundSource source, (Space Home, Space Here) ends, CupboardLoss cabinet)
    {
        foreach (var wall in job.Survey.Partitions)
        {
            if (wall.Beyond(ends.Here.Id) == ends.Home.Id)
                return WallPaths.Of(source, wall, (rooms.Of(ends.Home), rooms.Of(ends.Here)), cabinet);
        }

        if (rooms.Space(ends.Home.Enclosure?.Beside) is not { } room)
            return null;
        foreach (var wall in job.Survey.Partitions)
        {
            if (wall.Beyond(ends.Here.Id) == room.Id)
                return WallPaths.Of(source, wall, (rooms.Of(room), rooms.Of(ends.Here)), cabinet.And(CupboardLoss.OfCupboard(ends.Home)));
        }

        return null;
    }

    private static SoundPath NoWay(SoundSource source, Space home, Space here)
    {
        if (home.Floor is { } one && here.Floor is { } other && !string.Equals(one, other, StringComparison.OrdinalIgnoreCase))
            return new() { Source = source, Way = "another floor", LeftOut = $"{source.Id} is on another floor and was not counted" };
        if (Apart(home, here) is { } metres && metres > FarApart)
            return new() { Source = source, Way = "far away", LeftOut = $"{source.Id} is {Words.Of(metres)} m away behind walls nobody wrote, and was not counted" };
        return Ask(source, $"what is between {home.Id} and {here.Id}? write a partition between the two");
    }

    private static double? Apart(Space one, Space other)
    {
        if (one is not { Corner: { } a, Size: { } sa } || other is not { Corner: { } b, Size: { } sb })
            return null;
        var x = Gap(a.Value.X, sa.Value.Length, b.Value.X, sb.Value.Length);
        var y = Gap(a.Value.Y, sa.Value.Width, b.Value.Y, sb.Value.Width);
        return Math.Sqrt(x * x + y * y);
    }

    private static double Gap(double one, double length, double other, double otherLength) =>
        Math.Max(0, Math.Max(other - (one + length), one - (other + otherLength)));

    private static Spot? Middle(Space space) =>
        space.Size is { Value: var size } && Math.Max(size.Length, Math.Max(size.Width, size.Height)) <= SmallSpace
            ? new(size.Length / 2, size.Width / 2, size.Height / 2)
            : null;

    private List<Screen> Screens(Space space) => [.. job.Survey.Screens.Where(screen => screen.In == space.Id)];

    /// <summary>A way of which something is to be found out.</summary>
    public static SoundPath Ask(SoundSource source, string question) => new() { Source = source, Way = "not known", Question = question };
}
