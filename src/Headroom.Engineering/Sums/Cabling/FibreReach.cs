using Headroom.Engineering.Cabling;
using static Headroom.Engineering.Sums.Cabling.FibreInputs;

namespace Headroom.Engineering.Sums.Cabling;

/// <summary>Whether a fibre link carries a port type.</summary>
internal static class FibreReach
{
    private static readonly WordInput Port = new("port", "port type of IEEE 802.3", [.. FibrePort.All.Select(port => port.Type).Distinct()]);

    private static readonly SumOutput Left = new("loss-left", "dB", "left of what the link may lose");
    private static readonly SumOutput Loss = new("loss", "dB", "what the link may lose when all is sound");
    private static readonly SumOutput Channel = new("channel-loss", "dB", "what the port type allows");
    private static readonly SumOutput Reach = new("reach", "m", "how far the port type reaches on it");
    private static readonly SumOutput Longest = new("longest", "m", "longest link with these connections and splices");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "fibre-reach",
        Discipline = CablingSums.Discipline,
        Answers = "does a fibre link carry a port type?",
        Inputs = [Port, Fibre, Length, Connections, Splices],
        Outputs = [Left, Loss, Channel, Reach, Longest],
        Formula = "length within the reach, and length · dB/km + connections · 0.75 dB + splices · 0.3 dB within the channel loss",
        Source = "IEEE Std 802.3, clauses 38, 52 and 59, mostly from memory; losses: TIA-568.3-D, from memory",
        Example = "port 10GBASE-SR fibre OM4 length 300 m splices 2",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var nanometres = given.Word(Port).Contains("-S", StringComparison.Ordinal) ? 850 : 1310;
        if (FibrePort.Of(given.Word(Port), given.Word(Fibre)) is not { } port || FibreLoss.DecibelsPerKilometre(port.Fibre, nanometres) is not { } perKilometre)
        {
            return new SumAnswer(
                $"It cannot be: {given.Word(Port)} is not made for {given.Word(Fibre)}.",
                [Left.Is(null), Loss.Is(null), Channel.Is(null), Reach.Is(null), Longest.Is(null)],
                []) { Holds = false };
        }

        var (metres, fixedLoss) = (given[Length], FibreLoss.Decibels(0, perKilometre, (int)given[Connections], (int)given[Splices]));
        var loss = FibreLoss.Decibels(metres, perKilometre, (int)given[Connections], (int)given[Splices]);
        var left = port.ChannelDecibels - loss;
        var byLoss = 1000 * (port.ChannelDecibels - fixedLoss) / perKilometre;
        return new SumAnswer(
            Say(port, metres, left),
            [Left.Is(left), Loss.Is(loss), Channel.Is(port.ChannelDecibels), Reach.Is(port.ReachMetres), Longest.Is(byLoss < port.LeastMetres ? null : Math.Min(port.ReachMetres, byLoss))],
            [
                new("fibre", $"{Words.Of(metres)} m · {Words.Of(perKilometre)} dB/km at {nanometres} nm", loss - fixedLoss, "dB"),
                new("connections and splices", $"{Words.Of(given[Connections])} · {Words.Of(FibreLoss.PairDecibels)} + {Words.Of(given[Splices])} · {Words.Of(FibreLoss.SpliceDecibels)}", fixedLoss, "dB"),
                new("left", $"{Words.Of(port.ChannelDecibels)} − {Words.Of(loss)}", left, "dB"),
            ])
        {
            Holds = port.Carries(metres, loss) && metres >= port.LeastMetres,
            Cautions = [CautionTable.Laser],
        };
    }

    private static FormattableString Say(FibrePort port, double metres, double left) => metres < port.LeastMetres
        ? $"{port.Type} needs {new Told(port.LeastMetres, "m")} of fibre at least."
        : metres > port.ReachMetres
            ? $"{port.Type} reaches {new Told(port.ReachMetres, "m")} on {port.Fibre}: the link is {new Told(metres - port.ReachMetres, "m")} too long."
            : left < 0
                ? $"The length is within the {new Told(port.ReachMetres, "m")} of {port.Type}, but the loss is not: {new Told(-left, "dB")} too much."
                : (FormattableString)$"It carries {port.Type}: {new Told(left, "dB")} are left, and it reaches {new Told(port.ReachMetres, "m")}.";
}
