using Headroom.Domain.Quantities;
using Headroom.Engineering.Racking;

namespace Headroom.Engineering.Sums.Racking;

/// <summary>What a strip of outlets carries.</summary>
internal static class StripCurrent
{
    private static readonly QuantityInput Loads = new("loads", "what each thing takes from the mains", Watts.Units, new(0.1, 5000, "W")) { IsList = true };
    private static readonly QuantityInput Mains = new("volts", "mains voltage", Volts.Units, new(90, 480, "V"));
    private static readonly QuantityInput Factor = new("power-factor", "watts over volt-amperes", Share.Units, new(30, 100, "%")) { Default = "90 %", DefaultWhy = "supplies with correction (common practice, no source)" };

    private static readonly SumOutput Current = new("current", "A", "current on the strip");

    /// <summary>The sum.</summary>
    public static Sum Sum { get; } = new()
    {
        Name = "strip-current",
        Discipline = RackingSums.Discipline,
        Answers = "what does a strip of mains outlets carry?",
        Inputs = [Loads, Mains, Factor],
        Outputs = [Current],
        Formula = "I = Σ P / (U · cos φ)",
        Source = "P = U I cos φ",
        Example = "loads 2 x 210 W, 60 W volts 230 V",
        Work = Work,
    };

    private static SumAnswer Work(SumGiven given)
    {
        var watts = given.All(Loads).Sum();
        var current = StripLoad.Amperes(watts, given[Mains], given[Factor]);
        return new SumAnswer(
            $"The strip carries {new Told(current, "A")}: compare it with what is printed on it.",
            [Current.Is(current)],
            [new("watts", "the sum", watts, "W"), new("current", $"{Words.Of(watts)} / {Words.Of(given[Mains])} / {Words.Of(given[Factor])}", current, "A")])
        {
            Cautions = [CautionTable.OutletStrip],
        };
    }
}
