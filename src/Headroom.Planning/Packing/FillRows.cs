using Google.OrTools.LinearSolver;

namespace Headroom.Planning.Packing;

/// <summary>
/// Rows that follow from what each box can take by itself: whatever a thing of each kind and a link are said to be worth, the boxes of a set must be able to
/// take all that is asked for. The worths come from a linear programme, first for all families and then for sets that it shows to be too little.
/// </summary>
/// <remarks>Source: duality of linear programmes and decomposition after Benders; any worths give a true row, so that the solver's last figures do not matter.</remarks>
internal sealed class FillRows
{
    // What it costs to leave a thing or a link out: far more than any box, so that it is done only where nothing else can be.
    private const double LeftOut = 1e7;

    private readonly PackProblem _problem;
    private readonly FamilyTable _table;
    private readonly List<int> _kinds;
    private readonly List<BoxFill>[] _fills;
    private readonly double _plugs;

    /// <summary>Reads a problem with one place that is used.</summary>
    public FillRows(PackProblem problem, FamilyTable table, int[] most)
    {
        (_problem, _table) = (problem, table);
        _plugs = problem.Extras.Count == 0 ? double.PositiveInfinity : problem.Extras.Max(extra => extra.Plugs ?? double.PositiveInfinity);
        _kinds = [.. Enumerable.Range(0, problem.Kinds.Count).Where(kind => problem.Kinds[kind].Count > 0)];
        _fills = [.. table.Families.Select((family, number) => most[number] == 0 ? [] : family.Select(box => new BoxFill(problem, problem.Boxes[box])).ToList())];
    }

    /// <summary>The row that says most when any boxes may be bought.</summary>
    /// <param name="costs">What a box of each family costs.</param>
    public SetRow? Root(double[] costs) => Row(Solve(Enumerable.Range(0, _fills.Length).ToDictionary(family => family, _ => (int?)null), costs, _plugs).Worths);

    /// <summary>What goes between and links of a set cost at the least, infinite when not all goes in; and the row that says so of other sets too.</summary>
    /// <param name="families">The set.</param>
    /// <param name="plugs">How many plugs its extra has; null for any number.</param>
    public (double Cost, SetRow? Row) Of(int[] families, int? plugs)
    {
        var (cost, worths) = Solve(families.GroupBy(family => family).ToDictionary(group => group.Key, group => (int?)group.Count()), new double[_fills.Length], plugs ?? double.PositiveInfinity);
        return (cost, (plugs ?? double.PositiveInfinity) < _plugs ? null : Row(worths));
    }

    // All that is asked is worth so much; each box takes at most so much of it, and each but one has two ends of a link.
    private SetRow? Row(Worths worths)
    {
        var asked = _kinds.Sum(kind => worths.OfKind[kind] * _problem.Kinds[kind].Count) - 2 * worths.OfLink - (worths.OfPlug > 0 ? worths.OfPlug * _plugs : 0);
        if (asked <= 1e-3)
            return null;
        return new([.. _fills.Select((fills, family) => ((fills.Count == 0 ? 0 : fills.Max(fill => fill.Most(worths))) - 2 * worths.OfLink - worths.OfPlug * _table.Boxes[family].Plugs) / asked)], asked);
    }

    // The boxes of a family in sum, each in one of its settings; a number of boxes is given, or may be any.
    private (double Cost, Worths Worths) Solve(Dictionary<int, int?> bought, double[] costs, double plugs)
    {
        using var solver = Solver.CreateSolver("GLOP");
        var served = _kinds.ToDictionary(kind => kind, kind => solver.MakeConstraint(_problem.Kinds[kind].Count, _problem.Kinds[kind].Count));
        var links = _problem.Linked ? solver.MakeConstraint(-2, -2) : solver.MakeConstraint(double.NegativeInfinity, double.PositiveInfinity);
        var left = served.Values.Select(row => LeaveOut(solver, row)).ToList();
        if (_problem.Linked)
            left.Add(LeaveOut(solver, links));
        var plugged = solver.MakeConstraint(double.NegativeInfinity, plugs);
        foreach (var (family, count) in bought)
        {
            var all = count is { } number ? solver.MakeConstraint(number, number) : null;
            foreach (var fill in _fills[family])
            {
                var boxes = fill.AddTo(solver, served, (links, plugged));
                solver.Objective().SetCoefficient(boxes, costs[family]);
                all?.SetCoefficient(boxes, 1);
            }
        }

        solver.Objective().SetMinimization();
        if (solver.Solve() != Solver.ResultStatus.OPTIMAL)
            return (0, new(new double[_problem.Kinds.Count], 0, 0));
        var ofKind = new double[_problem.Kinds.Count];
        foreach (var kind in _kinds)
            ofKind[kind] = served[kind].DualValue();
        var cost = left.Exists(open => open.SolutionValue() > 1e-5) ? double.PositiveInfinity : solver.Objective().Value();
        return (cost, new(ofKind, _problem.Linked ? links.DualValue() : 0, Math.Max(0, -plugged.DualValue())));
    }

    private static Variable LeaveOut(Solver solver, Constraint of)
    {
        var open = solver.MakeNumVar(0, double.PositiveInfinity, "");
        of.SetCoefficient(open, 1);
        solver.Objective().SetCoefficient(open, LeftOut);
        return open;
    }
}
