using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

internal static class AudibilityFigures
{
    internal static Figure Work(Printed printed)
    {
        var n = Told.Numbers(printed.What);
        return printed.Id switch
        {
            "AU-1" => Levels.Rise(0, n[0]),
            "AU-2" => Audibility.ForRise(n[0]),
            "CR-1" => Audibility.Of(n[0]).ToString(),
            "CR-2" => (double)Audibility.TonePenalty((int)n[0]),
            "CR-4" => Audibility.Tonal(n[0], n[1]),
            "CR-5" => (double)Audibility.ToneAdjustment(n[0]),
            "CR-7" or "LD-1" => Audibility.LoudnessRatio(n[0]),
            _ when printed.Id.StartsWith("AD", StringComparison.Ordinal) => Against(n, Told.Split(printed.What).Asked),
            _ => printed.What.EndsWith("prominence", StringComparison.Ordinal) ? Audibility.ProminentFrom(n[0]).Prominence : Audibility.ProminentFrom(n[0]).ToneToNoise,
        };
    }

    private static Figure Against(double[] n, string asked) => asked switch
    {
        "total" => Levels.Together(n[0], n[1]),
        "heard as" => Audibility.Of(n[0] - n[1]).ToString(),
        _ => n[0] - n[1] + (n.Length > 2 ? Audibility.TonePenalty((int)n[2]) : 0),
    };
}
