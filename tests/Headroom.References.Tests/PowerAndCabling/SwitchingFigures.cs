using System.Globalization;
using System.Text.RegularExpressions;
using Headroom.Engineering.Traffic;

namespace Headroom.References.Tests.PowerAndCabling;

internal static partial class SwitchingFigures
{
    internal static Figure Work(Printed printed) => printed.Id[0] == 'S' ? Capacity(printed) : Frames(printed);

    private static Figure Capacity(Printed printed)
    {
        var (what, ports) = (printed.What.Split(": ")[0], printed.What.Split(": ")[^1]);
        return what switch
        {
            "one way" => SwitchCapacity.OneWayBitsPerSecond(Ports(ports)) / 1e9,
            "both ways" => SwitchCapacity.BothWaysBitsPerSecond(Ports(ports)) / 1e9,
            "64-byte forwarding" => SwitchCapacity.FramesPerSecond(Ports(ports)) / 1e6,
            _ when what.StartsWith("oversubscription", StringComparison.Ordinal) => SwitchCapacity.Oversubscription(Ports(what.Split(" over ")[0]), Ports(what.Split(" over ")[1])),
            _ => PrintedTables.Nothing(printed),
        };
    }

    private static Figure Frames(Printed printed)
    {
        var rate = Rate(printed.Id[2..]);
        return printed.What switch
        {
            "TCP payload of 1460" => FrameRate.TcpBitsPerSecond(rate, 1460) / 1e6,
            "TCP payload of 1448" => FrameRate.TcpBitsPerSecond(rate, 1448) / 1e6,
            var what when what.StartsWith("share", StringComparison.Ordinal) => 100 * FrameRate.ShareOfLine((int)PrintedNumbers.In(what)[^1]),
            var what => FrameRate.MostPerSecond(rate, (int)PrintedNumbers.In(what)[^1]),
        };
    }

    private static IEnumerable<double> Ports(string text) => Group().Matches(text)
        .SelectMany(match => Enumerable.Repeat(Rate(match.Groups[2].Value), int.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)));

    private static double Rate(string text) => double.Parse(text[..^1], CultureInfo.InvariantCulture) * (text[^1] == 'G' ? 1e9 : 1e6);

    [GeneratedRegex(@"(\d+) × ([\d.]+[MG])")]
    private static partial Regex Group();
}
