using Google.OrTools.LinearSolver;
using Headroom.Planning.Packing;

namespace Headroom.Bench;

/// <summary>A campus as a plain integer programme in CBC: how many of each model stand in each place, and how many of each kind go there.</summary>
internal static class PlainProgramme
{
    /// <summary>The cost and the bound that it comes to in some time.</summary>
    public static (double? Cost, double Bound) Solve(PackProblem problem, double seconds)
    {
        using var solver = Solver.CreateSolver("CBC");
        solver.SetTimeLimit((long)(seconds * 1000));
        var served = problem.Kinds.Select(kind => solver.MakeConstraint(kind.Count, kind.Count)).ToList();
        for (var place = 0; place < problem.Places; place++)
        {
            foreach (var box in problem.Boxes)
            {
                var count = solver.MakeIntVar(0, 30, "");
                solver.Objective().SetCoefficient(count, box.Cost);
                var ports = solver.MakeConstraint(double.NegativeInfinity, 0);
                var watts = solver.MakeConstraint(double.NegativeInfinity, 0);
                ports.SetCoefficient(count, -box.Groups[0]);
                watts.SetCoefficient(count, -box.Limits[0]);
                foreach (var serve in box.Serves.Where(serve => problem.Kinds[serve.Kind].Places.Contains(place)))
                {
                    var goes = solver.MakeIntVar(0, problem.Kinds[serve.Kind].Count, "");
                    served[serve.Kind].SetCoefficient(goes, 1);
                    ports.SetCoefficient(goes, 1);
                    watts.SetCoefficient(goes, serve.Loads[0]);
                }
            }
        }

        solver.Objective().SetMinimization();
        var status = solver.Solve();
        var found = status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE;
        return (found ? solver.Objective().Value() : null, solver.Objective().BestBound());
    }
}
