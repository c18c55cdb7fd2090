using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

/// <summary>Many subtractions of one level from another, both drawn with normal errors: what the linear uncertainty is held against.</summary>
internal sealed record Subtractions(double[] Sorted, int Draws)
{
    private const int Many = 500_000;

    private static readonly Dictionary<(double, double, double), Subtractions> Done = [];

    internal static Subtractions Of(double reading, double background, double uncertainty)
    {
        lock (Done)
        {
            if (!Done.TryGetValue((reading, background, uncertainty), out var found))
                Done[(reading, background, uncertainty)] = found = Draw(reading, background, uncertainty);
            return found;
        }
    }

    internal double Answer(string asked) => asked switch
    {
        "median" => Sorted[Sorted.Length / 2],
        "5 %" => Sorted[Sorted.Length / 20],
        "95 %" => Sorted[Sorted.Length * 19 / 20],
        "deviation" => SoundMeter.Deviation(Sorted)!.Value,
        _ => 100.0 * (Draws - Sorted.Length) / Draws,
    };

    private static Subtractions Draw(double reading, double background, double uncertainty)
    {
        var random = new Random(1);
        var levels = new List<double>(Many);
        for (var i = 0; i < Many; i++)
        {
            // Box and Muller 1958: two independent normal numbers out of two uniform ones.
            var radius = Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * uncertainty;
            var angle = 2 * Math.PI * random.NextDouble();
            var left = Levels.Energy(reading + radius * Math.Cos(angle)) - Levels.Energy(background + radius * Math.Sin(angle));
            if (Levels.Of(left) is { } level)
                levels.Add(level);
        }

        levels.Sort();
        return new([.. levels], Many);
    }
}
