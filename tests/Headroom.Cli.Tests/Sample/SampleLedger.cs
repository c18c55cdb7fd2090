using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Tests.Sample;

/// <summary>Ledgers made by hand; every figure in them is invented.</summary>
internal static class SampleLedger
{
    private static readonly DateOnly Day = new(2026, 11, 25);

    private static readonly Caution Hot = new("C03", "the pipe lies under a hot roof", "ambient above 45 °C", "anyone who may go up there");

    private static readonly Working Restart = new(
        "asked = sum of what each port in use sets aside",
        [
            new("watts of class 4", 30, "W", "standard, IEEE 802.3 Table 33-1"),
            new("watts of class 3", 15.4, "W", "standard, IEEE 802.3 Table 33-1"),
            new("supply small of wren-b, for all powered ports together", 320, "W", "declared, catalogue/switches.yaml:61:14"),
        ],
        [
            new("class 4, ports 1-9", "9 x 30 W", 270, "W"),
            new("class 3, ports 10-14", "5 x 15.4 W", 77, "W"),
            new("dark", "ports 13 and 14 (ap-5, ap-6): lowest priority, highest port first, as the setting of the switch says", null, ""),
            new("asked", "", 361.4, "W"),
        ],
        "IEEE 802.3 clause 33, Table 33-1 (class powers)");

    /// <summary>One of everything a sheet can show.</summary>
    public static Ledger Full { get; } = Of(
        [
            Entry("power/sw-1/restart", "watts after an outage", "W", "power", 361.4, 320, 64) with
            {
                Peak = 380,
                Advice = ["a port limit of 15.4 W on ports 5-16 mends it at no cost", "a larger supply"],
                Beside =
                [
                    new("state", "typical", 142.6, 320, ""), new("state", "night", 188, 320, ""),
                    new("setting", "by port limit", 229, 320, ""), new("setting", "measured", null, 320, "ap-5 would stay dark"),
                ],
                Story = new Told(
                    "after an outage sw-1 asks 361 W by class and has 320 W, so ap-5 and ap-6 stay dark",
                    Restart,
                    new Holds("class-4 devices", "devices", 9, 7, 4),
                    new Holds("port limit on 5-16", "W", null, 17.1, null)),
            },
            Entry("power/K-18/volts", "volts at the far end", "V", "volts", null, null, null) with { Question = "how long is it? pace it, or read the sheath marks" },
            Entry("power/sw-2/watts", "watts, typical", "W", "power", 231, 320, 64) with
            {
                Studied = Verdict.Unknown, Parts = new(12, 14), Question = "what do cam-3 and cam-4 draw? read the label",
            },
            Entry("power/K-17/volts", "volts at the far end", "V", "volts", 18, 20.5, 3) with
            {
                Sense = Sense.AtLeast, PlusMinus = 3.1, Cautions = [Hot],
                Measured = [new(Volts(19.9), 20.5, -0.6, 0.9, true, "agrees")],
                Assumed = ["the joints have no resistance worth counting"],
            },
            Entry("power/sw-1/night", "watts, night", "W", "power", 226, 320, 64) with { Peak = 254.5, Cautions = [Hot], Assumed = ["every camera has its lamp on"] },
            Entry("cabling/K-09/length", "length of the link", "m", "length", 93, 90, 0) with
            {
                Overruled = new("K-09/length", "tester record 31, all margins kept", "J. Marsh", new(2026, 11, 15), Place.None),
            },
            .. Enumerable.Range(20, 20).Select(n => Entry($"power/K-{n}/amperes", "amperes in a pair", "A", "amperes", 0.175, 0.6, 0)),
        ],
        [
            new("power/sw-1/heat", "sw-1", "heat left in the cupboard", 38.25, "W", null, () => Restart),
            new("power/cupboard/warmth", "cupboard", "warmer than outside", 8.5, "K", null, () => Restart),
            new("power/sw-2/heat", "sw-2", "heat left where it stands", null, "W", "what does it draw itself? measure at the plug", () => Restart),
        ],
        [new("sw-1", "how many more access points can sw-1 take?", "two, if they are of class 3")],
        [new(Volts(49.1) with { Where = "K-30" }, "the design has no K-30")]);

    /// <summary>Nothing at all.</summary>
    public static Ledger Empty { get; } = Of([], [], [], []);

    public static Ledger Of(
        IReadOnlyList<LedgerEntry> entries, IReadOnlyList<Figure> figures, IReadOnlyList<Answer> answers, IReadOnlyList<LooseReading> loose) =>
        new("Fern Lane Veterinary Practice", "as-quoted", Day, ["power"], entries, figures, answers, loose);

    public static LedgerEntry Entry(string id, string what, string unit, string kind, double? demand, double? limit, double? reserve)
    {
        var parts = id.Split('/');
        return new()
        {
            Id = id, Discipline = parts[0], Subject = parts[1], Quantity = parts[2], What = what, Unit = unit, Kind = kind,
            Demand = demand, Limit = limit, Reserve = reserve,
            Studied = demand is null || limit is null ? Verdict.Unknown : Judge.Known(demand.Value, limit.Value, reserve ?? 0),
            Story = Told.Nothing,
        };
    }

    public static Reading Volts(double value) => new(
        "volts", "K-17", value, "V", 0.2, $"{value} V", "plug meter", false, false, new(2026, 11, 10), "typical", null, null, null, null, null, Place.None);
}
