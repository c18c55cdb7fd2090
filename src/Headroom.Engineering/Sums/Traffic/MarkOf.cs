using Headroom.Engineering.Traffic;

namespace Headroom.Engineering.Sums.Traffic;

/// <summary>How a class of traffic is marked.</summary>
internal static class MarkOf
{
    private static readonly WordInput Class = new("class", "class of traffic", [.. Markings.All.Select(one => one.Name.Replace(' ', '-'))]);

    private static readonly SumOutput Dscp = new("dscp", "", "code point");
    private static readonly SumOutput Octet = new("octet", "", "whole octet");
    private static readonly SumOutput Upper = new("upper-bits", "", "upper three bits, which equipment without a table goes by");
    private static readonly SumOutput Wifi = new("wifi", "", "user priority on Wi-Fi");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "marking",
        Discipline = TrafficSums.Discipline,
        Answers = "how is traffic to be marked?",
        Inputs = [Class],
        Outputs = [Dscp, Octet, Upper, Wifi],
        Formula = "a table; octet = 4 · code point, upper bits = code point / 8",
        Source = "RFC 4594, figure 3, and RFC 8325, from memory; code points RFC 2474, 2597, 3246",
        Example = "class telephony",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var mark = Markings.All.First(one => one.Name.Replace(' ', '-') == given.Word(Class));
        var wifi = Markings.UserPriority(mark.Dscp, byTable: true);
        return new SumAnswer(
            $"{mark.Word}, code point {mark.Dscp}: {mark.For}.",
            [Dscp.Is(mark.Dscp), Octet.Is(mark.Octet), Upper.Is(mark.UpperBits), Wifi.Is(wifi)],
            [new("octet", $"4 · {mark.Dscp}", mark.Octet, ""), new("upper three bits", $"{mark.Dscp} / 8", mark.UpperBits, ""), new("on Wi-Fi", "table of RFC 8325", wifi, "")])
        {
            Notes = wifi != mark.UpperBits ? [$"By the upper bits alone it gets priority {mark.UpperBits} on Wi-Fi instead of {wifi}: set the table there."] : [],
        };
    }
}
