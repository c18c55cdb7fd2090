using Headroom.Engineering.Traffic;
using Headroom.References.Tests.Sound;

namespace Headroom.References.Tests.Runtime;

internal static class TrafficFigures
{
    private const double Camera = 4e6;

    internal static Figure Work(Printed printed)
    {
        var (what, numbers) = (printed.What, Told.Numbers(printed.What));
        return printed.Id.Split('/')[0] switch
        {
            "3.1" => printed.Id == "3.1/frames" ? FrameRate.MostPerSecond(numbers[0] * 1e6, (int)numbers[1]) : FrameRate.PayloadBitsPerSecond(1e9, (int)numbers[0], (int)numbers[1]) / 1e6,
            "3.2" => Voice(printed, what, numbers),
            "3.3" => Calls(printed, what, numbers),
            "3.4" => Pictures(printed, what),
            "3.5" => Mixed(printed, what, numbers),
            "3.6" => Marks(printed, what),
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static Figure Voice(Printed printed, string what, double[] numbers)
    {
        if (printed.Id is "3.2/g723" or "3.2/ilbc")
            return VoiceRate.BitsPerSecond(numbers[0] * 8 / (numbers[1] / 1000), numbers[1] / 1000, VoiceRate.HeaderOctets + VoiceRate.FrameOctets) / 1e3;
        var codec = Told.Numbers(printed.Id[4..].Replace("codec-", "", StringComparison.Ordinal))[0] * 1e3;
        var round = VoiceRate.HeaderOctets + (what.EndsWith("wire", StringComparison.Ordinal) ? VoiceRate.WireOctets : VoiceRate.FrameOctets)
            + (what.EndsWith("tagged", StringComparison.Ordinal) ? 4 : 0)
            + (what.EndsWith("IPv6", StringComparison.Ordinal) ? VoiceRate.HeaderOctetsOfSix - VoiceRate.HeaderOctets : 0);
        return VoiceRate.BitsPerSecond(codec, numbers[0] / 1000, round) / 1e3;
    }

    private static Figure Calls(Printed printed, string what, double[] numbers) => printed.Id switch
    {
        "3.3/two-erlang" => Trunks.Blocking(2, (int)numbers[0]),
        "3.3/blocking" => Trunks.Blocking(numbers[1], (int)numbers[0]),
        "3.3/table" => Trunks.Erlangs((int)numbers[0], numbers[1] / 100),
        "3.3/20-phones" when what.StartsWith("Erlang", StringComparison.Ordinal) => Trunks.Blocking(20 * 0.12, (int)numbers[0]),
        "3.3/20-phones" when what.StartsWith("call", StringComparison.Ordinal) => Trunks.CallCongestion(20, 0.12, (int)numbers[0]),
        "3.3/20-phones" => Trunks.TimeCongestion(20, 0.12, (int)numbers[0]),
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Pictures(Printed printed, string what) => what switch
    {
        "4 Mb/s, GB" => Recording.OctetsADay(Camera) / 1e9,
        "4 Mb/s, GiB" => Recording.OctetsADay(Camera) / (Recording.Tebibyte / 1024),
        "16 x 4 Mb/s, 30 d, TB" => 30 * Recording.OctetsADay(16 * Camera) / Recording.Terabyte,
        "16 x 4 Mb/s, 30 d, TiB" => 30 * Recording.OctetsADay(16 * Camera) / Recording.Tebibyte,
        "8 TB, 90 % usable, 16 x 4 Mb/s" => Recording.Days(Recording.UsableOctets(1, 0, 8e12, 0.1), Recording.OctetsADay(16 * Camera)),
        "the same, 40 % written" => Recording.Days(Recording.UsableOctets(1, 0, 8e12, 0.1), Recording.OctetsADay(16 * Camera, 0.4)),
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Mixed(Printed printed, string what, double[] numbers)
    {
        var load = numbers[^1];
        IReadOnlyList<double> twenty = [.. Enumerable.Range(1, 20).Select(n => (double)n)];
        return printed.Id switch
        {
            "3.5/queues" when what.StartsWith("M/M/1 W p99", StringComparison.Ordinal) => Queueing.StayQuantile(load, 0.99),
            "3.5/queues" when what.StartsWith("M/M/1 Wq", StringComparison.Ordinal) => Queueing.WaitOfRandom(load),
            "3.5/queues" when what.StartsWith("M/M/1 W", StringComparison.Ordinal) => Queueing.StayOfRandom(load),
            "3.5/queues" => Queueing.WaitOfAlike(load),
            // The row prints time in the system for both: the wait and the frame itself.
            "3.5/wait" => numbers[0] * 8 / numbers[1] * (what.EndsWith("M/D/1", StringComparison.Ordinal) ? 1 + Queueing.WaitOfAlike(0.8) : Queueing.StayOfRandom(0.8)),
            "3.5/35-users" => ActiveUsers.MoreThan(35, 0.1, 10),
            "3.5/quantiles" => ActiveUsers.Quantile((int)numbers[0], numbers[1], numbers[2]),
            "3.5/percentile" when what.StartsWith("rank", StringComparison.Ordinal) => Percentile.Rank(8640, 0.95),
            "3.5/percentile" => what[0] switch { 'n' => Percentile.Nearest(twenty, 0.95), 'l' => Percentile.Linear(twenty, 0.95), _ => Percentile.Weibull(twenty, 0.95) },
            "3.5/oversubscription" => SwitchCapacity.Oversubscription(Enumerable.Repeat(numbers[1] * 1e9, (int)numbers[0]), Enumerable.Repeat(numbers[3] * 1e9, (int)numbers[2])),
            "3.5/uplink-sum" => (16 * Camera + 20 * VoiceRate.BitsPerSecond(64e3, 0.02, VoiceRate.HeaderOctets + VoiceRate.FrameOctets) + 6 * 30e6) / 1e6,
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static Figure Marks(Printed printed, string what) => printed.Id switch
    {
        "3.6/classes" when what.StartsWith("word of ", StringComparison.Ordinal) => Markings.Find(what["word of ".Length..])!.Word,
        "3.6/classes" => Markings.Find(what["code point of ".Length..])!.Dscp,
        "3.6/assured" => Markings.Assured(what[2] - '0', what[3] - '0'),
        "3.6/priorities" => Figure.List(Enumerable.Range(0, 8).OrderBy(Markings.RankOfPriority)),
        "3.6/wifi" => Markings.UserPriority(46, what.EndsWith("table", StringComparison.Ordinal)),
        "3.6/octet" => Markings.Find(what)!.Octet,
        _ => PrintedTables.Nothing(printed),
    };
}
