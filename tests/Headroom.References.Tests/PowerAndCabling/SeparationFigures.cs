using Headroom.Engineering.Cabling;

namespace Headroom.References.Tests.PowerAndCabling;

internal static class SeparationFigures
{
    internal static Figure Work(Printed printed) => printed.What switch
    {
        "none or plastic" => Base(printed, MainsBarrier.NoneOrPlastic),
        "open metal" => Base(printed, MainsBarrier.OpenMetal),
        "perforated metal" => Base(printed, MainsBarrier.PerforatedMetal),
        "solid metal" => Base(printed, MainsBarrier.SolidMetal),
        "2 three-phase circuits of 32 A count as" => MainsSeparation.CountOf(2, 32, threePhase: true),
        "open metal beside more than 75 circuits" => MainsSeparation.Millimetres(SeparationClass.B, MainsBarrier.OpenMetal, 76),
        "fluorescent fittings" => 1000 * MainsSeparation.FluorescentMetres,
        "class b, no barrier, 5 circuits" => MainsSeparation.Millimetres(SeparationClass.B, MainsBarrier.NoneOrPlastic, 5),
        "class c, basket, 20 circuits" => MainsSeparation.Millimetres(SeparationClass.C, MainsBarrier.OpenMetal, 20),
        "class c, no barrier, 14 circuits" => MainsSeparation.Millimetres(SeparationClass.C, MainsBarrier.NoneOrPlastic, 14),
        "class b, basket, 40 circuits" => MainsSeparation.Millimetres(SeparationClass.B, MainsBarrier.OpenMetal, 40),
        "any class, solid metal" => Enum.GetValues<SeparationClass>().Max(cls => MainsSeparation.Millimetres(cls, MainsBarrier.SolidMetal, 99)),
        var what when what.StartsWith("P for ", StringComparison.Ordinal) => MainsSeparation.CircuitFactor((int)PrintedNumbers.In(what)[0]),
        _ => PrintedTables.Nothing(printed),
    };

    private static Figure Base(Printed printed, MainsBarrier barrier) =>
        MainsSeparation.BaseMillimetres(Enum.Parse<SeparationClass>(printed.Id[3..], ignoreCase: true), barrier);
}
