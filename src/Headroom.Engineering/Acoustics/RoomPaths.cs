using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Acoustics;

/// <summary>Ways inside one room.</summary>
internal static class RoomPaths
{
    // A plane nearer than this doubles what goes into the room [m]: about a quarter of the wavelength at 300 Hz.
    private const double PlaneNear = 0.3;

    // Nearer than this a device is no point [m], and what that adds to the uncertainty [dB].
    private const double NoPoint = 0.5;
    private const double NearUncertainty = 3;

    // What is left of a loss at an edge in a furnished room is anyone's guess within this [dB]: common practice.
    private const double EdgeUncertainty = 3;

    // Desk, screen and body shadow and reflect [dB]: common practice.
    private const double OpenUncertainty = 1;

    // Nobody holds an ear closer [m].
    private const double LeastMetres = 0.1;

    /// <summary>The way from a spot of a room to an ear in it.</summary>
    public static SoundPath Of((SoundSource Source, Spot? Spot) from, (Listener Listener, SoundRoom Room) to, CupboardLoss loss, IReadOnlyList<Screen> screens)
    {
        if (to.Room.Question is { } question)
            return PathFinder.Ask(from.Source, question);
        if (from.Spot is not { } spot)
            return PathFinder.Ask(from.Source, $"where in {to.Room.Space.Id} does {from.Source.Id} stand? write its spot");
        if (to.Listener.Spot is not { Value: var ear })
            return PathFinder.Ask(from.Source, $"where in {to.Room.Space.Id} is {to.Listener.Id}? write the spot of the ear");
        var metres = Math.Max(LeastMetres, Distance(spot, ear));
        var directivity = Directivity(spot, to.Room.Space, from.Source.Space == to.Room.Space.Id);
        var (screen, difference) = InTheWay(screens, spot, ear);
        return new()
        {
            Source = from.Source, Way = "in the room", Spot = spot, Metres = metres, Directivity = directivity, Loss = loss.Value, LossOrigin = loss.Origin,
            Screen = screen, PathDifference = difference, Room = to.Room,
            Direct = Direct(PointSource.Share(directivity, metres) * Levels.Energy(-loss.Value), difference),
            Returned = Returned(to.Room, Levels.Energy(-loss.Value)),
            Uncertainty = loss.Uncertainty,
            DirectUncertainty = Precision.RootSum(OpenUncertainty, metres < NoPoint ? NearUncertainty : 0, difference > 0 ? EdgeUncertainty : 0),
            ReturnedUncertainty = to.Room.Uncertainty,
            Assumed = Assumed(from.Source, to.Room, loss, screen),
        };
    }

    /// <summary>Q by the planes near a spot: it stands on one, unless it is heard at the face of a cupboard, and every wall or ceiling close by doubles it.</summary>
    public static double Directivity(Spot spot, Space space, bool stands)
    {
        if (space.Size is not { Value: var size })
            return 2;
        var planes = stands ? 1 : 0;
        foreach (var near in (ReadOnlySpan<double>)[Math.Min(spot.X, size.Length - spot.X), Math.Min(spot.Y, size.Width - spot.Y), size.Height - spot.Z])
            planes += near < PlaneNear ? 1 : 0;
        return Math.Clamp(1 << planes, 2, 8);
    }

    /// <summary>The distance between two spots [m].</summary>
    public static double Distance(Spot one, Spot other) => Math.Sqrt(
        (one.X - other.X) * (one.X - other.X) + (one.Y - other.Y) * (one.Y - other.Y) + (one.Z - other.Z) * (one.Z - other.Z));

    /// <summary>What comes straight, by octave, past an edge if there is one.</summary>
    public static double[] Direct(double share, double? difference)
    {
        var direct = new double[Octaves.Count];
        for (var band = 0; band < direct.Length; band++)
            direct[band] = share * (difference is { } longer ? EdgeDiffraction.StandardShare(EdgeDiffraction.Fresnel(longer, Octaves.Hertz[band])) : 1);
        return direct;
    }

    /// <summary>The edge that takes most away, of those that have anything to do with a way.</summary>
    public static (Screen? Screen, double? Difference) InTheWay(IReadOnlyList<Screen> screens, Spot spot, Spot ear)
    {
        (Screen? Screen, double? Difference) found = (null, null);
        foreach (var screen in screens)
        {
            if (new ScreenGeometry(screen, spot).PathDifference(ear) is { } longer && longer > (found.Difference ?? double.NegativeInfinity))
                found = (screen, longer);
        }

        return found;
    }

    private static double[] Returned(SoundRoom room, double share)
    {
        var returned = new double[Octaves.Count];
        for (var band = 0; band < returned.Length; band++)
            returned[band] = share * room.Returned(band);
        return returned;
    }

    private static List<string> Assumed(SoundSource source, SoundRoom room, CupboardLoss loss, Screen? screen)
    {
        var assumed = new List<string>();
        if (source.Spot is null)
            assumed.Add($"nobody wrote where in {source.Space} {source.Id} is: its middle taken");
        if (room.Assumed is { } of)
            assumed.Add(of);
        if (loss.Assumed is { } kept)
            assumed.Add(kept);
        if (screen is { Kind: "desk", Depth: null })
            assumed.Add($"depth of {screen.Id} not written: {Words.Of(ScreenGeometry.AssumedDepth)} m taken");
        return assumed;
    }
}
