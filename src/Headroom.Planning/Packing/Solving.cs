using System.Globalization;
using Google.OrTools.Sat;

namespace Headroom.Planning.Packing;

/// <summary>Runs the solver so that the same problem has the same answer: one worker, bounded by work and not by seconds.</summary>
internal static class Solving
{
    /// <summary>Solves a model.</summary>
    /// <returns>How it ended, and the solver that holds the values.</returns>
    public static (CpSolverStatus Status, CpSolver Solver) Run(CpModel model, PackEffort effort)
    {
        var solver = new CpSolver
        {
            StringParameters = string.Create(CultureInfo.InvariantCulture, $"num_workers:1 max_deterministic_time:{effort.Work} linearization_level:2"),
        };
        using var stop = effort.Stop.Register(solver.StopSearch);
        if (effort.Told is null)
            return (solver.Solve(model), solver);
        using var teller = new Teller(effort.Told);
        return (solver.Solve(model, teller), solver);
    }

    /// <summary>True when the values of a solution can be read.</summary>
    public static bool Found(CpSolverStatus status) => status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;

    /// <summary>The bound as a whole number of coins: nothing lies between two of them.</summary>
    public static long Bound(CpSolver solver) => (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6);

    private sealed class Teller(Action<long, long> told) : CpSolverSolutionCallback
    {
        public override void OnSolutionCallback() => told((long)Math.Round(ObjectiveValue()), (long)Math.Ceiling(BestObjectiveBound() - 1e-6));
    }
}
