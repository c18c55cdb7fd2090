using Google.OrTools.Sat;

namespace Headroom.Planning.Packing;

/// <summary>Who goes where and how many boxes stand there, ports and loads of each place in sum: for campuses. No packing costs less than its bound.</summary>
internal sealed class AggregateModel
{
    private readonly PackProblem _problem;
    private readonly Pools _pools;
    private readonly CpModel _model = new();
    private readonly IntVar[,] _bought;
    private readonly Dictionary<(int Kind, int Place), IntVar> _goes = [];
    private readonly LinearExprBuilder _cost = LinearExpr.NewBuilder();

    /// <summary>Builds the model.</summary>
    public AggregateModel(PackProblem problem)
    {
        (_problem, _pools) = (problem, new Pools(problem));
        _bought = new IntVar[problem.Places, problem.Boxes.Count];
        for (var kind = 0; kind < problem.Kinds.Count; kind++)
        {
            foreach (var place in problem.Kinds[kind].Places)
                _goes[(kind, place)] = _model.NewIntVar(0, problem.Kinds[kind].Count, "");
            _model.Add(LinearExpr.Sum(problem.Kinds[kind].Places.Select(place => _goes[(kind, place)])) == problem.Kinds[kind].Count);
        }

        for (var place = 0; place < problem.Places; place++)
            AddPlace(place);
        _model.Minimize(_cost);
    }

    /// <summary>Solves it, once, from a solution that is known if there is one.</summary>
    /// <param name="effort">How hard to look.</param>
    /// <param name="known">A solution to begin with; null for none.</param>
    /// <param name="free">The places that may change; null for all.</param>
    public (PlaceShares? Shares, long? Bound) Solve(PackEffort effort, PlaceShares? known = null, IReadOnlySet<int>? free = null)
    {
        if (known is not null)
            Begin(_model, known, free);
        var (status, solver) = Solving.Run(_model, known is null ? effort : effort with { Told = null });
        if (!Solving.Found(status))
            return (null, status == CpSolverStatus.Infeasible ? null : 0);
        var goes = _goes.ToDictionary(pair => pair.Key, pair => (int)solver.Value(pair.Value));
        var bought = new int[_problem.Places, _problem.Boxes.Count];
        for (var place = 0; place < _problem.Places; place++)
        {
            for (var box = 0; box < _problem.Boxes.Count; box++)
                bought[place, box] = (int)solver.Value(_bought[place, box]);
        }

        return (new(goes, bought, (long)Math.Round(solver.ObjectiveValue)), Solving.Bound(solver));
    }

    private void Begin(CpModel model, PlaceShares known, IReadOnlySet<int>? free)
    {
        for (var place = 0; place < _problem.Places; place++)
        {
            for (var box = 0; box < _problem.Boxes.Count; box++)
                Set(model, _bought[place, box], known.Bought[place, box], free is not null && !free.Contains(place));
        }

        foreach (var (at, variable) in _goes)
            Set(model, variable, known.Goes[at], free is not null && !_problem.Kinds[at.Kind].Places.Any(free.Contains));
    }

    private static void Set(CpModel model, IntVar variable, long value, bool isFixed)
    {
        if (isFixed)
            model.Add(variable == value);
        else
            model.AddHint(variable, value);
    }

    private void AddPlace(int place)
    {
        var here = Enumerable.Range(0, _pools.Members.Count).Where(pool => _pools.Members[pool].Exists(kind => _problem.Kinds[kind].Places.Contains(place))).ToList();
        var most = here.Sum(pool => _pools.Members[pool].Where(kind => _problem.Kinds[kind].Places.Contains(place)).Sum(kind => _problem.Kinds[kind].Count));
        for (var box = 0; box < _problem.Boxes.Count; box++)
        {
            var can = _problem.Boxes[box].Places?.Contains(place) != false && most > 0;
            _bought[place, box] = _model.NewIntVar(0, can ? Math.Min(most, 30) : 0, "");
            _cost.AddTerm(_bought[place, box], _problem.Boxes[box].Cost);
        }

        var sets = new List<HashSet<int>>();
        foreach (var pool in here)
            PortSets.Add(sets, BoxesOf(pool));
        foreach (var set in sets)
            AddSet(place, set, [.. here.Where(pool => BoxesOf(pool).IsSubsetOf(set))]);
    }

    private void AddSet(int place, HashSet<int> set, List<int> inside)
    {
        var ports = LinearExpr.NewBuilder();
        foreach (var box in set)
            ports.AddTerm(_bought[place, box], _problem.Boxes[box].Groups.Sum());
        _model.Add(ports >= LinearExpr.Sum(inside.SelectMany(pool => Here(pool, place))));
        for (var row = 0; row < set.Min(box => _problem.Boxes[box].Limits.Count); row++)
        {
            var there = LinearExpr.NewBuilder();
            foreach (var box in set)
                there.AddTerm(_bought[place, box], _problem.Boxes[box].Limits[row]);
            foreach (var pool in inside)
            {
                foreach (var goes in Here(pool, place))
                    there.AddTerm(goes, -Load(pool, row));
            }

            _model.Add(there >= 0);
        }
    }

    private IEnumerable<IntVar> Here(int pool, int place) =>
        _pools.Members[pool].Where(kind => _problem.Kinds[kind].Places.Contains(place)).Select(kind => _goes[(kind, place)]);

    private HashSet<int> BoxesOf(int pool) =>
        [.. Enumerable.Range(0, _problem.Boxes.Count).Where(box => _problem.Boxes[box].Serves.Any(serve => serve.Kind == _pools.Members[pool][0]))];

    private long Load(int pool, int row) =>
        _problem.Boxes.SelectMany(box => box.Serves).Where(serve => serve.Kind == _pools.Members[pool][0]).Min(serve => serve.Loads[row]);
}
