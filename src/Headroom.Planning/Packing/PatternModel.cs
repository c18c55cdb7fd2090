using Google.OrTools.LinearSolver;

namespace Headroom.Planning.Packing;

/// <summary>How many boxes of each pattern: a weak model for many boxes, but the strongest for one.</summary>
internal static class PatternModel
{
    // Seconds are a guard only: what is asked is proved in a fraction of them.
    private const int GuardMilliseconds = 60_000;

    /// <summary>The fewest boxes; the boxes are null when no better ones than known were found, and all is null when the solver gave up.</summary>
    public static (List<int[]>? Boxes, long Bound)? Solve(List<int[]> patterns, IReadOnlyList<(int Way, long Load, int Count)> items, (long Bound, int Known) known, PackEffort effort)
    {
        using var solver = Solver.CreateSolver("SCIP");
        solver.SetTimeLimit(GuardMilliseconds);
        var used = patterns.Select(_ => solver.MakeIntVar(0, known.Known, "")).ToList();
        for (var i = 0; i < items.Count; i++)
        {
            var row = solver.MakeConstraint(items[i].Count, double.PositiveInfinity);
            for (var p = 0; p < patterns.Count; p++)
            {
                if (patterns[p][i] > 0)
                    row.SetCoefficient(used[p], patterns[p][i]);
            }
        }

        var all = solver.MakeConstraint(known.Bound, known.Known);
        foreach (var variable in used)
        {
            all.SetCoefficient(variable, 1);
            solver.Objective().SetCoefficient(variable, 1);
        }

        solver.Objective().SetMinimization();
        var status = solver.Solve();
        if (status != Solver.ResultStatus.OPTIMAL || effort.Stop.IsCancellationRequested)
            return null;
        var fewest = (long)Math.Round(solver.Objective().Value());
        return (Boxes(patterns, items, used), fewest);
    }

    // Patterns cover at least what is asked: what is too much is left out again.
    private static List<int[]> Boxes(List<int[]> patterns, IReadOnlyList<(int Way, long Load, int Count)> items, List<Variable> used)
    {
        var left = items.Select(item => item.Count).ToArray();
        var boxes = new List<int[]>();
        for (var p = 0; p < patterns.Count; p++)
        {
            for (var times = (int)Math.Round(used[p].SolutionValue()); times > 0; times--)
            {
                var box = patterns[p].Select((count, i) => Math.Min(count, left[i])).ToArray();
                for (var i = 0; i < box.Length; i++)
                    left[i] -= box[i];
                boxes.Add(box);
            }
        }

        return boxes;
    }
}
