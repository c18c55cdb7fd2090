using System.Globalization;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Rules;

/// <summary>A range runs from the smaller to the greater value; the other way round one of the two was mistyped.</summary>
internal static class RangeRules
{
    /// <summary>Checks every written value of the survey.</summary>
    public static void Check(Job job, Slips slips)
    {
        foreach (var space in job.Survey.Spaces)
            Space(space, slips);
        foreach (var listener in job.Survey.Listeners)
            Value(listener.Limit, $"limit of listener {listener.Id}", slips);
        Sound(job.Survey, slips);
        foreach (var pathway in job.Survey.Pathways)
        {
            Value(pathway.Inside, $"inside of pathway {pathway.Id}", slips);
            Value(pathway.Area, $"area of pathway {pathway.Id}", slips);
            Value(pathway.Ambient, $"ambient of pathway {pathway.Id}", slips);
            Value(pathway.Apart, $"gap of pathway {pathway.Id}", slips);
            Value(pathway.LongestPull, $"longest pull of pathway {pathway.Id}", slips);
            Value(pathway.BendRadius, $"bend radius of pathway {pathway.Id}", slips);
        }

        foreach (var drop in job.Survey.Drops)
            Drop(drop, slips);
        foreach (var endpoint in job.Survey.Endpoints)
        {
            foreach (var (state, draw) in endpoint.Draws)
                Value(draw, $"{state} draw of endpoint {endpoint.Id}", slips);
        }

        foreach (var design in job.Designs)
            Design(design, slips);
        foreach (var reading in job.Readings)
            Text(reading.Written, $"reading at {reading.Where}", reading.At, slips);
    }

    /// <summary>Says whether a text is a range from the greater to the smaller number.</summary>
    /// <param name="written">The text as written.</param>
    /// <returns>True for <c>33..24 °C</c>.</returns>
    public static bool Reversed(string written)
    {
        var dots = written.IndexOf("..", StringComparison.Ordinal);
        return dots > 0
            && Number(written.AsSpan(0, dots)) is { } low
            && Number(written.AsSpan(dots + 2)) is { } high
            && low > high;
    }

    private static void Space(Space space, Slips slips)
    {
        Value(space.Reverberation, $"reverberation of space {space.Id}", slips);
        Value(space.Background, $"background of space {space.Id}", slips);
        foreach (var (name, temperature) in space.Temperatures)
            Value(temperature, $"temperature '{name}' of space {space.Id}", slips);
    }

    private static void Sound(Survey survey, Slips slips)
    {
        foreach (var wall in survey.Partitions)
        {
            Value(wall.Area, $"area of partition {wall.Id}", slips);
            Value(wall.Reduction, $"reduction of partition {wall.Id}", slips);
            Value(wall.DoorReduction, $"door reduction of partition {wall.Id}", slips);
        }

        foreach (var noise in survey.Noises)
        {
            Value(noise.Sound.Power, $"power of noise {noise.Id}", slips);
            Value(noise.Sound.Pressure, $"pressure of noise {noise.Id}", slips);
        }
    }

    private static void Drop(Drop drop, Slips slips)
    {
        foreach (var piece in drop.Pieces)
        {
            Value(piece.Length, $"length of drop {drop.Id}", slips);
            Value(piece.Ambient, $"ambient of drop {drop.Id}", slips);
        }
    }

    private static void Design(Design design, Slips slips)
    {
        foreach (var unit in design.Standby)
            Value(unit.BatteryAge, $"age of the batteries of {unit.Id}", slips);
        foreach (var unit in design.Switches)
        {
            foreach (var (port, limit) in unit.Setting.PortLimits)
                Value(limit, $"limit of port {unit.Id}/{port}", slips);
        }
    }

    private static void Value<T>(Given<T>? value, string what, Slips slips)
        where T : struct
    {
        if (value is not null)
            Text(value.Written, what, value.At, slips);
    }

    private static void Text(string written, string what, Place at, Slips slips)
    {
        if (!Reversed(written))
            return;
        var said = new Said($"the {what} is '{written}'", "a range runs from the smaller to the greater value", "Turn the two numbers round, or correct the wrong one.");
        slips.Add(RuleCodes.RangeReversed, at, said, written);
    }

    private static double? Number(ReadOnlySpan<char> text)
    {
        text = text.Trim();
        var end = 0;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] is '.' or '-' or '+' or '\u2212'))
            end++;
        var digits = text[..end].ToString().Replace('\u2212', '-');
        return double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : null;
    }
}
