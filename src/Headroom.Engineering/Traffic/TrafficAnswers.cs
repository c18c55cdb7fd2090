using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Traffic;

/// <summary>Answers the questions people ask about traffic.</summary>
internal static class TrafficAnswers
{
    /// <summary>The answers.</summary>
    public static IEnumerable<Answer> Of(TrafficResult result)
    {
        var (calls, streams) = (false, false);
        foreach (var port in result.Ports)
            (calls, streams) = (calls || port.Demand?.Calls > 0, streams || port.Demand?.StreamUp > 0);
        if (calls || streams)
            yield return new Answer("traffic", "How is traffic to be marked?", Marks(calls, streams));
        foreach (var at in result.Switches)
        {
            if (at.Node.Lines.Count > 0 && at.Behind.Known == at.Behind.All && result.Recorders.Count > 0 && Watching(result, at) is { } text)
                yield return new Answer(at.Node.Lines[0].Far.Unit, "How many pictures can be watched from outside at once?", text);
        }
    }

    private static string Marks(bool calls, bool streams)
    {
        var parts = new List<string>();
        if (calls)
        {
            parts.Add(Mark("voice", "telephony"));
            parts.Add(Mark("what sets calls up", "signalling"));
        }

        if (streams)
            parts.Add(Mark("pictures of cameras", "broadcast video"));
        parts.Add(Mark("everything else", "standard"));
        var wifi = calls ? " Equipment that goes by the upper three bits puts 46 into queue 5, on Wi-Fi that of pictures: map 46 to the voice queue there (RFC 8325)." : "";
        return $"{Words.Capital(Words.List(parts))} (RFC 4594); every switch on the way must trust the marks, else they do nothing.{wifi}";
    }

    private static string Mark(string what, string name) => Markings.Find(name) is { } mark ? $"{what} {mark.Word} ({mark.Dscp})" : what;

    private static string? Watching(TrafficResult result, SwitchTraffic at)
    {
        var line = result.Bound.Job.Survey.Lines.FirstOrDefault(one => one.Id == at.Node.Lines[0].Far.Unit);
        var largest = result.Recorders.SelectMany(one => one.Records).Max(one => TrafficStudy.FiguresOf(one)?.Stream?.Value.Value);
        if (line?.Up is not { } up || largest is not > 0)
            return null;
        var left = up.Value.Value - result.Bound.Job.Policy.ReserveOf("uplink").Of(up.Value.Value / 1e6) * 1e6 - at.Line.Up;
        var count = Math.Max(0, (int)Math.Floor(left / largest.Value));
        return $"{count} of {Words.Of(largest.Value / 1e6)} Mb/s each, with the reserve kept: {Words.Of(Math.Max(0, left) / 1e6)} Mb/s are left out of the house at a busy moment.";
    }
}
