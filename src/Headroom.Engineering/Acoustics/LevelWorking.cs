using Headroom.Domain.Ledgers;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Acoustics;

/// <summary>The working of a level at an ear.</summary>
internal static class LevelWorking
{
    private const string Formula =
        "L = 10 lg(10^(background/10) + Σ 10^(Li/10)), Li = LW + 10 lg Σ w (Q/(4 π r²) · edge + 4/R) − loss, over the octaves, w = share of the A-weighted energy";

    private const string Source =
        "direct and diffuse field: ISO 3744, Beranek; edge: ISO 9613-2:1996, 7.4; walls: ISO 12354-1; weighting: IEC 61672-1; background: ISO 3746; readings weighed by 1/u²: ISO/IEC Guide 98-3";

    /// <summary>The working for a listener.</summary>
    public static Working Of(ListenerSound sound)
    {
        var inputs = new List<WorkingInput>();
        var steps = new List<WorkingStep>();
        foreach (var one in sound.Worst?.Loud ?? [])
            Add(inputs, steps, one);
        foreach (var question in sound.Questions)
            steps.Add(new("not known", question, null, ""));
        inputs.Add(new("background", sound.Background?.Value, "dB(A)", Origins.Of(sound.Space?.Background)));
        inputs.Add(new("limit", sound.Limit, "dB(A)", sound.Limit is null ? "not known" : sound.LimitOrigin));
        Rooms(inputs, sound);
        AddTotal(steps, sound);
        return new(Formula, inputs, steps, Source);
    }

    private static void Add(List<WorkingInput> inputs, List<WorkingStep> steps, Contribution one)
    {
        var (path, id) = (one.Path, one.Path.Source.Id);
        inputs.Add(new($"LW of {id}", one.Power.Power!.Value.Value, "dB(A)", one.Choice is { } choice && one.Path.Source.Levels.Count > 1 ? $"{choice.Why}; {one.Power.How}" : one.Power.How));
        if (path.Metres is { } metres)
        {
            inputs.Add(new($"r to {id}", metres, "m", path.Way));
            inputs.Add(new($"Q of {id}", path.Directivity, "", "planes within 0.3 m"));
        }

        if (path.LossOrigin.Length > 0)
            inputs.Add(new($"loss round {id}", path.Loss, "dB", path.LossOrigin));
        if (path.Wall is { } wall && !inputs.Any(input => input.Name == $"reduction of {wall.Id}"))
            inputs.Add(new($"reduction of {wall.Id}", path.WallReduction, "dB", $"wall, door and gap together, {Origins.Of(Domain.Quantities.Origin.Unstated, wall.At)}"));
        if (path.Screen is { } screen)
            steps.Add(new($"edge of {screen.Id}", $"the way round it is {Words.Of(path.PathDifference ?? 0)} m longer than the straight one", path.PathDifference, "m"));
        if (one.Direct is { } direct)
            steps.Add(new($"{id}, straight", "LW + 10 lg Σ w Q/(4 π r²) − loss", direct, "dB(A)"));
        if (one.Returned is { } returned)
            steps.Add(new($"{id}, given back by the room", path.Wall is null ? "LW + 10 lg Σ w 4/R − loss" : "LW + 10 lg Σ w 4/R1 − R' + 10 lg(S/A2) − loss", returned, "dB(A)"));
        steps.Add(new($"{id} at the ear", $"both together, ± {SoundWords.Level(2 * one.Level.Uncertainty)}", one.Level.Value, "dB(A)"));
    }

    private static void Rooms(List<WorkingInput> inputs, ListenerSound sound)
    {
        foreach (var room in sound.Paths.SelectMany(path => new[] { path.From, path.Room }).OfType<SoundRoom>().DistinctBy(room => room.Space.Id))
        {
            if (room.Constant is { } constant)
                inputs.Add(new($"R of {room.Space.Id} at 1 kHz", constant[SoundRoom.Kilohertz], "m²", room.How));
        }
    }

    private static void AddTotal(List<WorkingStep> steps, ListenerSound sound)
    {
        if (sound.AsRead)
            steps.Add(new("equipment", "as read, for not all of it is known", sound.Equipment?.Value, "dB(A)"));
        else if (sound.Worst?.High is { } high)
            steps.Add(new("equipment", "all sources together", high.Value, "dB(A)"));
        foreach (var reading in sound.Readings)
        {
            if (reading is { Alone: { } alone, Predicted: { } predicted })
                steps.Add(new("read, the room taken out", $"{SoundWords.Level(predicted.Value)} predicted under its conditions, {(reading.Bound ? "an upper bound" : $"{Words.Of(Math.Round(reading.Apart ?? 0, 2))} joint uncertainties apart")}", alone.Value, "dB(A)"));
        }

        if (sound.Offset is { } offset && !sound.AsRead)
            steps.Add(new("equipment, readings counted", $"{offset.What}: {(offset.Value < 0 ? "" : "+")}{Words.Of(Math.Round(offset.Value, 2))} dB", sound.Equipment?.Value, "dB(A)"));
        if (sound.Total is { } total)
            steps.Add(new("with the background", $"± {SoundWords.Level(2 * total.Uncertainty)}", total.Value, "dB(A)"));
    }
}
