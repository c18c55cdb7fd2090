using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Standby;

/// <summary>The lines out of the house that a design uses.</summary>
internal static class OutsideLines
{
    /// <summary>The line of a name; null when the survey has none.</summary>
    public static Line? Find(BoundDesign bound, string name)
    {
        foreach (var line in bound.Job.Survey.Lines)
        {
            if (line.Id == name)
                return line;
        }

        return null;
    }

    /// <summary>How long after the mains is back all lines that uplinks lead to are there [s]: the slowest counts; null when one is not known, or there is none.</summary>
    public static double? BootSeconds(BoundDesign bound)
    {
        double? slowest = null;
        foreach (var link in bound.Design.Uplinks ?? [])
        {
            if (IsUnit(bound, link.To.Unit))
                continue;
            if (Find(bound, link.To.Unit)?.Boot is not { } boot)
                return null;
            slowest = Math.Max(slowest ?? 0, boot.Value.Value);
        }

        return slowest;
    }

    private static bool IsUnit(BoundDesign bound, string name)
    {
        foreach (var s in bound.Switches)
        {
            if (s.Id == name)
                return true;
        }

        return false;
    }
}
