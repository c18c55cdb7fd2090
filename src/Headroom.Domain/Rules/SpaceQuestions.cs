using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Rules;

/// <summary>What is odd about the air and the quiet of a place.</summary>
internal static class SpaceQuestions
{
    // What network equipment and cables outdoors and under roofs meet, with room to spare (common practice, no source).
    private static readonly Bounds Usual = new(-40, 60);

    /// <summary>Asks about temperatures and limits.</summary>
    public static void Ask(JobNames names, Slips slips)
    {
        var survey = names.Job.Survey;
        foreach (var space in survey.Spaces)
        {
            foreach (var (name, temperature) in space.Temperatures)
                Air(temperature, $"temperature '{name}' of space {space.Id}", space.At, slips);
        }

        foreach (var pathway in survey.Pathways)
            Air(pathway.Ambient, $"ambient of pathway {pathway.Id}", pathway.At, slips);
        foreach (var drop in survey.Drops)
        {
            foreach (var piece in drop.Pieces)
                Air(piece.Ambient, $"ambient of drop {drop.Id}", drop.At, slips);
        }

        Limits(names, slips);
    }

    private static void Air(Given<Celsius>? air, string what, Place at, Slips slips)
    {
        if (air is null || Usual.Contains(air.Value.Value))
            return;
        var said = new Said($"the {what} is '{air.Written}'", $"it is usually {Usual.InWords(Celsius.Units.Shown)}", "Is the number right, and the unit?");
        slips.Add(RuleCodes.OddTemperature, air.At.Line > 0 ? air.At : at, said, air.Written);
    }

    private static void Limits(JobNames names, Slips slips)
    {
        foreach (var listener in names.Job.Survey.Listeners)
        {
            if (listener.Limit is not { } limit || names.Spaces.GetValueOrDefault(listener.In)?.Background is not { } background)
                continue;
            if (limit.Value.Value >= background.Value.Value)
                continue;
            var said = new Said(
                $"listener {listener.Id} may hear {limit.Written}",
                $"the background of {listener.In} alone is {background.Written}",
                "Is the limit meant for the equipment alone, or was one of the two misread?");
            slips.Add(RuleCodes.LimitBelowBackground, limit.At, said);
        }
    }
}
