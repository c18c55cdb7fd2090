using Google.OrTools.Sat;

namespace Headroom.Planning.Packing;

/// <summary>
/// What to buy, with ports and loads of all boxes of a family in a place in sum only: it leaves something out, so that no packing costs less than it says.
/// What it proposes is packed exactly and studied; what fails is barred, and it is asked again.
/// </summary>
internal sealed class RelaxedModel : ISetSource
{
    private readonly PackProblem _problem;
    private readonly CpModel _model = new();
    private readonly FamilyTable _table;
    private readonly long _perBox;
    private readonly IntVar[,] _bought;
    private readonly BoolVar[] _extras;
    private readonly List<(int Place, int Family, WayClass Way, IntVar Var)> _served = [];
    private readonly LinearExprBuilder _cost = LinearExpr.NewBuilder();
    private readonly Dictionary<(int Place, int Family, long From), BoolVar> _atLeast = [];

    /// <summary>Builds the model.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="most">The most boxes of a family in one place.</param>
    /// <param name="perBox">What a box costs beyond its price, to have few of them.</param>
    public RelaxedModel(PackProblem problem, int most, long perBox = 0)
    {
        (_problem, _table, _perBox) = (problem, new FamilyTable(problem), perBox);
        _bought = new IntVar[problem.Places, _table.Families.Count];
        for (var place = 0; place < problem.Places; place++)
        {
            for (var family = 0; family < _table.Families.Count; family++)
                _bought[place, family] = Bought(place, family, most);
        }

        _extras = [.. problem.Extras.Select(_ => _model.NewBoolVar(""))];
        AddServed();
        for (var place = 0; place < problem.Places; place++)
            AddLinks(place);
        AddMost();
        AddExtras();
        for (var ear = 0; ear < problem.Bears.Count; ear++)
            AddHeard(ear);
        _model.Minimize(_cost);
    }

    /// <inheritdoc/>
    public FamilyTable Table => _table;

    /// <summary>Asks for at least some boxes of a family in a place.</summary>
    public void Keep(int place, string family, int least)
    {
        var number = _table.Boxes.FindIndex(box => box.Family == family);
        _model.Add(number < 0 ? LinearExpr.Constant(0) >= 1 : _bought[place, number] >= least);
    }

    /// <summary>Allows only some number of boxes in all.</summary>
    public void Boxes(int least, int most) => _model.AddLinearConstraint(All(), least, most);

    /// <inheritdoc/>
    public (BoughtSet? Set, long? Bound) Next(PackEffort effort)
    {
        var (status, solver) = Solving.Run(_model, effort with { Told = null });
        if (status == CpSolverStatus.Infeasible)
            return (null, null);
        return Solving.Found(status) ? (Read(solver), Solving.Bound(solver)) : (null, 0);
    }

    /// <inheritdoc/>
    public void BarWithin(BoughtSet set)
    {
        var more = new List<ILiteral>();
        for (var place = 0; place < _problem.Places; place++)
        {
            for (var family = 0; family < _table.Families.Count; family++)
            {
                if (AtLeast(place, family, set.Boxes.GetValueOrDefault((place, family)) + 1) is { } literal)
                    more.Add(literal);
            }
        }

        _model.AddBoolOr(more);
    }

    /// <inheritdoc/>
    public void BarHolding(BoughtSet set) =>
        _model.AddBoolOr(set.Boxes.Select(at => AtLeast(at.Key.Place, at.Key.Family, at.Value)!.Not()));

    /// <inheritdoc/>
    public void BarExactly(BoughtSet set)
    {
        var all = _model.NewBoolVar("");
        _model.Add(All() != set.Count).OnlyEnforceIf(all);
        var differs = set.Boxes.Select(at => AtLeast(at.Key.Place, at.Key.Family, at.Value)!.Not()).Append(all)
            .Concat(set.Extras.Select(extra => _extras[extra].Not()));
        _model.AddBoolOr(differs);
    }

    private IntVar Bought(int place, int family, int most)
    {
        var box = _table.Boxes[family];
        var may = _table.Families[family].Any(number => _problem.Boxes[number].Serves.Any(serve => _problem.Kinds[serve.Kind].Count > 0 && _problem.CanServe(place, box, serve.Kind)))
            || (_problem.Linked && _problem.Links[place].Must && box.Places?.Contains(place) != false);
        var bought = _model.NewIntVar(0, may ? Math.Min(most, box.Most ?? most) : 0, "");
        _cost.AddTerm(bought, box.Cost + _perBox);
        return bought;
    }

    // Each of a kind is served in some place by some family; what all boxes of a family have there is taken together.
    private void AddServed()
    {
        var all = _problem.Kinds.Select(_ => LinearExpr.NewBuilder()).ToArray();
        for (var place = 0; place < _problem.Places; place++)
        {
            for (var family = 0; family < _table.Families.Count; family++)
            {
                var ways = new List<(WayClass Way, IntVar Var)>();
                foreach (var way in _table.Ways[family].Where(way => _problem.CanServe(place, _table.Boxes[family], way.Kind)))
                {
                    var served = _model.NewIntVar(0, _problem.Kinds[way.Kind].Count, "");
                    ways.Add((way, served));
                    _served.Add((place, family, way, served));
                    all[way.Kind].Add(served);
                    _cost.AddTerm(served, way.Cost);
                }

                AddFamily(place, family, ways);
            }
        }

        for (var kind = 0; kind < all.Length; kind++)
            _model.Add(all[kind] == _problem.Kinds[kind].Count);
    }

    // What can be served by few groups of ports only needs enough of those: for each such set, and for any two of them together.
    private void AddFamily(int place, int family, List<(WayClass Way, IntVar Var)> ways)
    {
        if (ways.Count == 0)
            return;
        var bought = _bought[place, family];
        var sets = new List<HashSet<int>>();
        foreach (var (way, _) in ways)
            PortSets.Add(sets, way.Groups);
        foreach (var set in sets)
        {
            var ports = set.Sum(group => _table.Boxes[family].Groups[group]);
            _model.Add(LinearExpr.Sum(ways.Where(at => at.Way.Groups.IsSubsetOf(set)).Select(at => at.Var)) <= bought * ports);
        }

        foreach (var (loads, limit) in LoadRows.Of([.. ways.Select(at => at.Way.Loads)], _table.Limits[family]))
        {
            var load = LinearExpr.NewBuilder();
            for (var i = 0; i < loads.Length; i++)
                load.AddTerm(ways[i].Var, loads[i]);
            _model.Add(load <= bought * limit);
        }
    }

    // Links take ports as well: two for each box but the head, and those out of the place.
    private void AddLinks(int place)
    {
        if (!_problem.Linked)
            return;
        var links = _problem.Links[place];
        var ports = LinearExpr.NewBuilder();
        for (var family = 0; family < _table.Families.Count; family++)
            ports.AddTerm(_bought[place, family], _table.Boxes[family].Groups.Sum() - 2);
        ports.Add(2 - links.Line - links.Backbone);
        foreach (var served in _served.Where(served => served.Place == place))
            ports.AddTerm(served.Var, -1);
        var empty = _model.NewBoolVar("");
        _model.Add(ports >= 0).OnlyEnforceIf(empty.Not());
        _model.Add(InPlace(place) == 0).OnlyEnforceIf(empty);
        if (links.Must)
            _model.Add(empty == 0);
        if (links.Line > 0)
            AddOutward(place, empty, (links.Line, link => link.Outer));
        if (links.Backbone > 0)
            AddOutward(place, empty, (links.Backbone, link => link.BackboneFrom(place)));
    }

    // Some box must be able to have them, at the least cost at which any can.
    private void AddOutward(int place, BoolVar empty, (int Count, Func<PackLink, long?> Cost) of)
    {
        var able = Enumerable.Range(0, _table.Families.Count).Where(family => _table.Boxes[family].Links.Any(link => of.Cost(link) is not null)).ToList();
        _model.Add(LinearExpr.Sum(able.Select(family => _bought[place, family])) >= 1).OnlyEnforceIf(empty.Not());
        if (able.Count > 0)
            _cost.AddTerm((LinearExpr)empty.Not(), of.Count * able.Min(family => _table.Boxes[family].Links.Min(link => of.Cost(link) ?? long.MaxValue / 4096)));
    }

    private void AddMost()
    {
        for (var family = 0; family < _table.Families.Count; family++)
        {
            if (_table.Boxes[family].Most is { } most && _problem.Places > 1)
                _model.Add(LinearExpr.Sum(Enumerable.Range(0, _problem.Places).Select(place => _bought[place, family])) <= most);
        }
    }

    private void AddExtras()
    {
        foreach (var place in _problem.Extras.GroupBy(extra => extra.Place))
        {
            var of = Enumerable.Range(0, _extras.Length).Where(extra => _problem.Extras[extra].Place == place.Key).ToList();
            _model.AddExactlyOne(of.Select(extra => (ILiteral)_extras[extra]));
            var held = LinearExpr.NewBuilder();
            foreach (var extra in of)
            {
                held.AddTerm(_extras[extra], _problem.Extras[extra].Holds);
                _cost.AddTerm(_extras[extra], _problem.Extras[extra].Cost);
            }

            for (var family = 0; family < _table.Families.Count; family++)
                held.AddTerm(_bought[place.Key, family], -_table.Boxes[family].Draw);
            _model.Add(held >= 0);
            var plugs = LinearExpr.Sum(of.Select(extra => _extras[extra] * (_problem.Extras[extra].Plugs ?? 1000)));
            _model.Add(LinearExpr.WeightedSum(Enumerable.Range(0, _table.Families.Count).Select(family => _bought[place.Key, family]), _table.Boxes.Select(box => (long)box.Plugs)) + Between(place.Key) <= plugs);
        }
    }

    // Powers add: in millionths of what the listener bears, rounded down.
    private void AddHeard(int ear)
    {
        if (double.IsInfinity(_problem.Bears[ear]))
            return;
        var heard = LinearExpr.NewBuilder();
        for (var place = 0; place < _problem.Places; place++)
        {
            for (var family = 0; family < _table.Families.Count; family++)
                heard.AddTerm(_bought[place, family], (long)Math.Min(1e9, Math.Floor(_table.Boxes[family].Heard[place][ear] / _problem.Bears[ear] * 1e6)));
        }

        _model.Add(heard <= 1_000_000);
    }

    // Injectors and the like have plugs of their own.
    private LinearExpr Between(int place) =>
        LinearExpr.Sum(_served.Where(served => served.Place == place && served.Way.IsVia).Select(served => served.Var));

    private LinearExpr InPlace(int place) => LinearExpr.Sum(Enumerable.Range(0, _table.Families.Count).Select(family => _bought[place, family]));

    private LinearExpr All() => LinearExpr.Sum(Enumerable.Range(0, _problem.Places).Select(InPlace));

    // True for at least so many; null where there can never be that many.
    private BoolVar? AtLeast(int place, int family, long from)
    {
        if (_bought[place, family].Domain.Max() < from)
            return null;
        if (_atLeast.TryGetValue((place, family, from), out var known))
            return known;
        var literal = _model.NewBoolVar("");
        _model.Add(_bought[place, family] >= from).OnlyEnforceIf(literal);
        _model.Add(_bought[place, family] <= from - 1).OnlyEnforceIf(literal.Not());
        return _atLeast[(place, family, from)] = literal;
    }

    private BoughtSet Read(CpSolver solver)
    {
        var boxes = new Dictionary<(int, int), int>();
        for (var place = 0; place < _problem.Places; place++)
        {
            for (var family = 0; family < _table.Families.Count; family++)
            {
                if (solver.Value(_bought[place, family]) is var count and > 0)
                    boxes[(place, family)] = (int)count;
            }
        }

        return new(boxes, [.. Enumerable.Range(0, _extras.Length).Where(extra => solver.Value(_extras[extra]) == 1)]);
    }
}
