using Headroom.Engineering.Acoustics;

namespace Headroom.References.Tests.Sound;

internal static class BackgroundFigures
{
    private static readonly BackgroundRule[] Rules =
        [BackgroundRule.Engineering, BackgroundRule.Survey, BackgroundRule.Environment, BackgroundRule.Emission, BackgroundRule.EmissionSurvey, BackgroundRule.Insulation];

    internal static Figure Work(Printed printed)
    {
        var (given, asked) = Told.Split(printed.What);
        if (printed.Id == "BG-0")
            return BackgroundCorrection.K1(Told.Numbers(given)[0]);
        if (printed.Id[1] == 'V')
            return Rule(Rules.Single(rule => rule.Name == given), asked);
        var numbers = Told.Numbers(given);
        var (level, branch) = BackgroundCorrection.SourceAlone(numbers[0], numbers[1]);
        return asked == "branch" ? branch.ToString() : level;
    }

    // By what the rule does on both sides of its limits, not by what it says of itself.
    private static Figure Rule(BackgroundRule rule, string asked) => asked switch
    {
        "nothing taken off from" => Scan(difference => rule.At(difference) is { K1: 0, UpperBound: false }),
        "formula from" => Scan(difference => !rule.At(difference).UpperBound),
        _ => rule.Held is null ? (double?)null : rule.At(1).K1,
    };

    private static double Scan(Func<double, bool> holds) => Enumerable.Range(1, 40).Select(step => step / 2.0).First(holds);
}
