using Google.OrTools.LinearSolver;

namespace Headroom.Planning.Packing;

/// <summary>What one box takes in parts: its ports, its limits, links that take ports as well.</summary>
internal sealed class BoxFill
{
    private readonly PackProblem _problem;
    private readonly PackBox _box;
    private readonly List<int> _ways;
    private readonly List<PackLink> _links;
    private readonly List<(long[] Loads, long Limit)> _rows;
    private readonly Lazy<(Solver Solver, List<Variable> Ways, List<Variable> Links)> _one;

    /// <summary>Reads a box.</summary>
    public BoxFill(PackProblem problem, PackBox box)
    {
        (_problem, _box) = (problem, box);
        _ways = [.. Enumerable.Range(0, box.Serves.Count).Where(way => problem.Kinds[box.Serves[way].Kind].Count > 0)];
        _links = problem.Linked ? [.. box.Links.Where(link => link.Inner is not null)] : [];
        _rows = LoadRows.Of([.. _ways.Select(way => box.Serves[way].Loads)], box.Limits);
        _one = new(One);
    }

    /// <summary>The most that goes into it is worth.</summary>
    public double Most(Worths worths)
    {
        var (solver, ways, links) = _one.Value;
        for (var i = 0; i < ways.Count; i++)
            solver.Objective().SetCoefficient(ways[i], worths.OfKind[_box.Serves[_ways[i]].Kind] - _box.Serves[_ways[i]].Cost - (_box.Serves[_ways[i]].Via is null ? 0 : worths.OfPlug));
        for (var i = 0; i < links.Count; i++)
            solver.Objective().SetCoefficient(links[i], worths.OfLink - _links[i].Inner!.Value);
        solver.Objective().SetMaximization();
        return solver.Solve() == Solver.ResultStatus.OPTIMAL ? solver.Objective().Value() : double.PositiveInfinity;
    }

    /// <summary>Adds some number of such boxes to a linear programme.</summary>
    /// <returns>Their number.</returns>
    public Variable AddTo(Solver solver, IReadOnlyDictionary<int, Constraint> served, (Constraint Links, Constraint Plugs) of)
    {
        var boxes = solver.MakeNumVar(0, double.PositiveInfinity, "");
        var (ways, ends) = Build(solver, boxes);
        for (var i = 0; i < ways.Count; i++)
        {
            var serve = _box.Serves[_ways[i]];
            served[serve.Kind].SetCoefficient(ways[i], 1);
            if (serve.Via is not null)
                of.Plugs.SetCoefficient(ways[i], 1);
            solver.Objective().SetCoefficient(ways[i], serve.Cost);
        }

        of.Plugs.SetCoefficient(boxes, _box.Plugs);
        of.Links.SetCoefficient(boxes, -2);
        for (var i = 0; i < ends.Count; i++)
        {
            of.Links.SetCoefficient(ends[i], 1);
            solver.Objective().SetCoefficient(ends[i], _links[i].Inner!.Value);
        }

        return boxes;
    }

    private (Solver, List<Variable>, List<Variable>) One()
    {
        var solver = Solver.CreateSolver("GLOP");
        var (ways, links) = Build(solver, null);
        return (solver, ways, links);
    }

    // Without a number of boxes: one.
    private (List<Variable> Ways, List<Variable> Links) Build(Solver solver, Variable? boxes)
    {
        var ways = _ways.Select(way => solver.MakeNumVar(0, _problem.Kinds[_box.Serves[way].Kind].Count, "")).ToList();
        var links = _links.Select(link => solver.MakeNumVar(0, double.PositiveInfinity, "")).ToList();
        for (var group = 0; group < _box.Groups.Count; group++)
        {
            var row = AtMost(solver, boxes, _box.Groups[group]);
            for (var i = 0; i < ways.Count; i++)
            {
                if (_box.Serves[_ways[i]].Group == group)
                    row.SetCoefficient(ways[i], 1);
            }

            for (var i = 0; i < links.Count; i++)
            {
                if (_links[i].Group == group)
                    row.SetCoefficient(links[i], 1);
            }
        }

        foreach (var (loads, limit) in _rows)
        {
            var row = AtMost(solver, boxes, 1);
            for (var i = 0; i < ways.Count; i++)
                row.SetCoefficient(ways[i], limit > 0 ? loads[i] / (double)limit : loads[i] > 0 ? 1e6 : 0);
        }

        return (ways, links);
    }

    private static Constraint AtMost(Solver solver, Variable? boxes, double each)
    {
        var row = solver.MakeConstraint(double.NegativeInfinity, boxes is null ? each : 0);
        if (boxes is not null)
            row.SetCoefficient(boxes, -each);
        return row;
    }
}
