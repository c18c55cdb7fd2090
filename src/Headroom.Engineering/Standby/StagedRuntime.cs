namespace Headroom.Engineering.Standby;

/// <summary>How long a battery holds a load that changes in stages; two methods, of which the smaller counts.</summary>
public static class StagedRuntime
{
    // The section method is looked through in steps of this share of the time, then closed in on.
    private const double StepShare = 0.02;
    private const int Halvings = 60;

    /// <summary>By the share used: a stage uses its time over the time the battery would hold its load.</summary>
    /// <param name="table">The battery.</param>
    /// <param name="stages">The stages by time, the first from 0; watts of what the table is of.</param>
    /// <returns>The time until all is used [s]; null when a stage that is reached is heavier than the table goes.</returns>
    /// <remarks>Source: sum of used shares; the cautious one where the load falls. Not checked against a measured discharge.</remarks>
    public static double? ByShareUsed(DischargeTable table, ReadOnlySpan<LoadStage> stages)
    {
        Check(stages);
        var used = 0.0;
        for (var i = 0; i < stages.Length; i++)
        {
            if (table.AtLeastSeconds(stages[i].Watts) is not { } holds)
                return null;
            var left = (1 - used) * holds;
            if (i == stages.Length - 1 || stages[i].FromSeconds + left <= stages[i + 1].FromSeconds)
                return stages[i].FromSeconds + left;
            used += (stages[i + 1].FromSeconds - stages[i].FromSeconds) / holds;
        }

        return null;
    }

    /// <summary>By sections: every change of the load asks for a battery of its own from its moment to the end.</summary>
    /// <param name="table">The battery.</param>
    /// <param name="stages">The stages by time, the first from 0; watts of what the table is of.</param>
    /// <returns>The time until the sizes add up to the battery there is, at most the longest of the table [s]; null when the first stage is heavier than the table goes.</returns>
    /// <remarks>Source: section method of IEEE Std 485 (Hoxie), from memory; the cautious one where the load rises.</remarks>
    public static double? BySections(DischargeTable table, ReadOnlySpan<LoadStage> stages)
    {
        Check(stages);
        if (Size(table, stages, table.ShortestSeconds) > 1)
            return null;
        var (low, high) = (table.ShortestSeconds, table.ShortestSeconds);
        while (true)
        {
            high = Math.Min(table.LongestSeconds, Next(stages, low));
            if (Size(table, stages, high) > 1)
                break;
            if (high >= table.LongestSeconds)
                return high;
            low = high;
        }

        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Size(table, stages, middle) > 1 ? (low, middle) : (middle, high);
        }

        return low;
    }

    /// <summary>The smaller of both methods.</summary>
    /// <param name="table">The battery.</param>
    /// <param name="stages">The stages by time, the first from 0; watts of what the table is of.</param>
    /// <returns>The time [s]; null when either method has none.</returns>
    /// <remarks>Source: neither method is known to be right, so that the smaller is shown.</remarks>
    public static double? Smaller(DischargeTable table, ReadOnlySpan<LoadStage> stages) =>
        ByShareUsed(table, stages) is { } used && (stages.Length == 1 ? used : BySections(table, stages)) is { } sections ? Math.Min(used, sections) : null;

    // Never over the beginning of a stage, where the size may jump.
    private static double Next(ReadOnlySpan<LoadStage> stages, double seconds)
    {
        var next = seconds * (1 + StepShare);
        foreach (var stage in stages)
        {
            if (stage.FromSeconds > seconds && stage.FromSeconds < next)
                return stage.FromSeconds;
        }

        return next;
    }

    // Shorter than the table's first row the battery gives at least that row's power; what is relieved for so short is not counted.
    private static double Size(DischargeTable table, ReadOnlySpan<LoadStage> stages, double seconds)
    {
        var (size, before) = (0.0, 0.0);
        foreach (var stage in stages)
        {
            var (lasts, more) = (seconds - stage.FromSeconds, stage.Watts - before);
            before = stage.Watts;
            if (lasts <= 0)
                break;
            if (lasts >= table.ShortestSeconds)
                size += more / table.Watts(Math.Min(lasts, table.LongestSeconds))!.Value;
            else if (more > 0)
                size += more / table.MostWatts;
        }

        return size;
    }

    private static void Check(ReadOnlySpan<LoadStage> stages)
    {
        if (stages.Length == 0 || stages[0].FromSeconds != 0)
            throw new ArgumentException($"there are {stages.Length} stages; there must be one or more, the first from 0 s.", nameof(stages));
        for (var i = 0; i < stages.Length; i++)
        {
            Require.AtLeast(0, stages[i].Watts, "W", nameof(stages));
            if (i > 0)
                Require.AtLeast(stages[i - 1].FromSeconds, stages[i].FromSeconds, "s", nameof(stages));
        }
    }
}
