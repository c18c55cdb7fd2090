using Headroom.Domain.Quantities;
using Headroom.Engineering.Cabling;

namespace Headroom.Engineering.Sums.Cabling;

/// <summary>How long a link may be where it is warm.</summary>
internal static class LinkLength
{
    private static readonly QuantityInput Temperature = new("temperature", "of the cable along most of its way", Celsius.Units, new(-40, 90, "°C"));
    private static readonly WordInput Screen = new("screen", "whether the cable has one", "no", "yes") { Default = "no", DefaultWhy = "an unscreened cable, the worse case" };
    private static readonly QuantityInput Length = new("length", "length of the link, panel to outlet", Metres.Units, new(0.1, 500, "m")) { IsOptional = true };

    private static readonly SumOutput Longest = new("longest", "m", "longest link, panel to outlet");
    private static readonly SumOutput Factor = new("loss-factor", "", "loss of the cable as a multiple of that at 20 °C");
    private static readonly SumOutput Left = new("left", "m", "left of it");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "link-length",
        Discipline = CablingSums.Discipline,
        Answers = "how long may a copper link be where it is warm?",
        Inputs = [Temperature, Screen, Length],
        Outputs = [Longest, Left, Factor],
        Formula = "H = 90 m / k; k = 1 + 0.4 % per K from 20 to 40 °C and 0.6 % above, screened 0.2 %",
        Source = "ANSI/TIA-568-C.2 6.4.7, quoted in a message to IEEE 802.3; up to 0.8 m shorter than the table of its annex G",
        Example = "temperature 45 C length 78 m",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var screened = given.Word(Screen) == "yes";
        var factor = WarmLength.LossFactor(given[Temperature], screened);
        var longest = WarmLength.LongestMetres(given[Temperature], screened);
        var figures = new List<SumFigure> { Longest.Is(longest), Factor.Is(factor) };
        var left = longest - given.Maybe(Length);
        if (left is not null)
            figures.Insert(1, Left.Is(left));
        return new SumAnswer(
            left is null ? $"At {new Told(given[Temperature], "°C")} a link may be {new Told(longest, "m")} long, panel to outlet."
            : left >= 0 ? $"At {new Told(given[Temperature], "°C")} a link may be {new Told(longest, "m")} long: {new Told(left.Value, "m")} are left."
            : (FormattableString)$"At {new Told(given[Temperature], "°C")} a link may be {new Told(longest, "m")} long: it is {new Told(-left.Value, "m")} too long.",
            figures,
            [new("k", screened ? $"1 + 0.2 % · ({Words.Of(given[Temperature])} − 20)" : $"0.4 % per K from 20 °C, 0.6 % from 40 °C, up to {Words.Of(given[Temperature])} °C", factor, ""), new("H", $"{Words.Of(ChannelLimits.LinkMetres)} m / {Words.Of(factor)}", longest, "m")])
        {
            Holds = !(left < 0),
            Notes = given[Temperature] > WarmLength.WarmestCelsius ? [$"Beyond {new Told(WarmLength.WarmestCelsius, "°C")} the standard gives no figure: its last slope is drawn on."] : [],
        };
    }
}
