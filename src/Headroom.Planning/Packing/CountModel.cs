using Google.OrTools.Sat;

namespace Headroom.Planning.Packing;

/// <summary>The exact model: each box by itself, and of each kind how many it serves by each way.</summary>
internal sealed class CountModel
{
    private readonly PackProblem _problem;
    private readonly IReadOnlyList<PackSlot> _slots;
    private readonly CpModel _model = new();
    private readonly List<SlotParts> _parts = [];
    private readonly LinearExprBuilder _cost = LinearExpr.NewBuilder();
    private readonly LinearExprBuilder[] _served;

    /// <summary>Builds the model.</summary>
    public CountModel(PackProblem problem, IReadOnlyList<PackSlot> slots)
    {
        (_problem, _slots) = (problem, slots);
        _served = [.. problem.Kinds.Select(_ => LinearExpr.NewBuilder())];
        foreach (var slot in slots)
            Add(slot);
        for (var kind = 0; kind < problem.Kinds.Count; kind++)
            _model.Add(_served[kind] == problem.Kinds[kind].Count);
        AddMost();
        AddTotals();
        if (problem.Linked)
            new LinkRows(problem, _model, slots, _parts).Add();
        _model.Minimize(_cost);
    }

    /// <summary>Bars a filling that was found before: some way must serve more than it did.</summary>
    public void Bar(IReadOnlyList<PackedBox> filling)
    {
        var more = new List<ILiteral>();
        for (var i = 0; i < _slots.Count; i++)
        {
            foreach (var way in _parts[i].Ways)
            {
                var was = filling[i].Box == way.Box ? filling[i].Items.GetValueOrDefault(way.Way) : 0;
                var literal = _model.NewBoolVar("");
                _model.Add(way.Var >= was + 1).OnlyEnforceIf(literal);
                more.Add(literal);
            }
        }

        _model.AddBoolOr(more);
    }

    /// <summary>Bars what is too much for a box, and all that is more: of something it must serve less.</summary>
    public void TooMuch(int box, IReadOnlyDictionary<int, int> items)
    {
        foreach (var parts in _parts)
        {
            if (parts.Chosen.Find(chosen => chosen.Box == box) is not { } chosen)
                continue;
            var less = new List<ILiteral> { chosen.Var.Not() };
            foreach (var way in parts.Ways.Where(way => way.Box == box && items.ContainsKey(way.Way)))
            {
                var literal = _model.NewBoolVar("");
                _model.Add(way.Var <= items[way.Way] - 1).OnlyEnforceIf(literal);
                less.Add(literal);
            }

            _model.AddBoolOr(less);
        }
    }

    /// <summary>Allows only so many things that go between in a place.</summary>
    public void Between(int place, int most)
    {
        var between = Enumerable.Range(0, _slots.Count).Where(i => _slots[i].Place == place)
            .SelectMany(i => _parts[i].Ways).Where(way => _problem.Boxes[way.Box].Serves[way.Way].Via is not null).Select(way => way.Var);
        _model.Add(LinearExpr.Sum(between) <= most);
    }

    /// <summary>Allows only so much to be spent.</summary>
    public void Costs(long most) => _model.Add(_cost <= most);

    /// <summary>Solves it.</summary>
    public Packed Solve(PackEffort effort)
    {
        var (status, solver) = Solving.Run(_model, effort);
        if (status == CpSolverStatus.Infeasible)
            return Packed.Nothing;
        if (!Solving.Found(status))
            return new(null, 0, []);
        var boxes = new List<PackedBox>();
        foreach (var parts in _parts)
        {
            if (parts.Packed(solver) is { } box)
                boxes.Add(box);
        }

        return new((long)Math.Round(solver.ObjectiveValue), Solving.Bound(solver), boxes);
    }

    private void Add(PackSlot slot)
    {
        var parts = new SlotParts(slot.Place);
        foreach (var number in slot.Boxes)
            AddBox(slot, parts, number);
        var used = LinearExpr.Sum(parts.Chosen.Select(chosen => chosen.Var));
        _model.Add(used <= 1);
        if (slot.Must)
            _model.Add(used == 1);
        else if (_parts.Count > 0 && _slots[_parts.Count - 1].Alike == slot.Alike)
            _model.Add(used <= LinearExpr.Sum(_parts[^1].Chosen.Select(chosen => chosen.Var)));
        if (slot.Must && _parts.Count > 0 && _slots[_parts.Count - 1].Alike == slot.Alike)
            _model.Add(Filled(parts) <= Filled(_parts[^1]));
        _parts.Add(parts);
    }

    // Of boxes alike the fuller comes first: what differs only in their order is looked at once.
    private static LinearExpr Filled(SlotParts parts) => LinearExpr.WeightedSum(parts.Ways.Select(way => way.Var), parts.Ways.Select((_, i) => 101L + i));

    private void AddBox(PackSlot slot, SlotParts parts, int number)
    {
        var box = _problem.Boxes[number];
        var chosen = _model.NewBoolVar("");
        parts.Chosen.Add(new(number, chosen));
        _cost.AddTerm(chosen, box.Cost);
        var ports = box.Groups.Select(_ => LinearExpr.NewBuilder()).ToArray();
        var first = parts.Ways.Count;
        for (var way = 0; way < box.Serves.Count; way++)
        {
            var serve = box.Serves[way];
            if (_problem.Kinds[serve.Kind].Count == 0 || !_problem.CanServe(slot.Place, box, serve.Kind))
                continue;
            var count = _model.NewIntVar(0, Math.Min(_problem.Kinds[serve.Kind].Count, box.Groups[serve.Group]), "");
            parts.Ways.Add(new(number, way, count));
            _served[serve.Kind].Add(count);
            ports[serve.Group].Add(count);
            _cost.AddTerm(count, serve.Cost);
        }

        AddLinks(parts, (number, box), ports);
        for (var group = 0; group < ports.Length; group++)
            _model.Add(ports[group] <= (LinearExpr)chosen * box.Groups[group]);
        AddLoads((box, chosen), [.. parts.Ways.Skip(first)]);
    }

    private void AddLoads((PackBox Box, BoolVar Chosen) of, List<SlotParts.WayVar> ways)
    {
        foreach (var (loads, limit) in LoadRows.Of([.. ways.Select(way => of.Box.Serves[way.Way].Loads)], of.Box.Limits))
        {
            var load = LinearExpr.NewBuilder();
            for (var i = 0; i < loads.Length; i++)
                load.AddTerm(ways[i].Var, loads[i]);
            _model.Add(load <= (LinearExpr)of.Chosen * limit);
        }
    }

    private void AddLinks(SlotParts parts, (int Number, PackBox Box) of, LinearExprBuilder[] ports)
    {
        if (!_problem.Linked)
            return;
        foreach (var link in of.Box.Links)
        {
            var size = of.Box.Groups[link.Group];
            var inner = _model.NewIntVar(0, link.Inner is null ? 0 : size, "");
            var outer = _model.NewIntVar(0, link.Outer is null ? 0 : size, "");
            var toOthers = link.BackboneFrom(parts.Place);
            var backbone = _model.NewIntVar(0, toOthers is null ? 0 : size, "");
            parts.Links.Add(new(of.Number, link.Group, inner, outer, backbone));
            ports[link.Group].Add(inner).Add(outer).Add(backbone);
            _cost.AddTerm(inner, link.Inner ?? 0).AddTerm(outer, link.Outer ?? 0).AddTerm(backbone, toOthers ?? 0);
        }
    }

    // How many there may be of a family in all, such as what the client owns.
    private void AddMost()
    {
        foreach (var family in _problem.Boxes.Where(box => box.Most is not null).GroupBy(box => box.Family))
        {
            var chosen = _parts.SelectMany(parts => parts.Chosen).Where(chosen => _problem.Boxes[chosen.Box].Family == family.Key).Select(chosen => chosen.Var).ToList();
            if (chosen.Count > family.First().Most!.Value)
                _model.Add(LinearExpr.Sum(chosen) <= family.First().Most!.Value);
        }
    }

    // Follows from the rest, yet the solver proves nothing without it: what is bought must cover what is asked.
    private void AddTotals()
    {
        foreach (var cover in CoverRows.Of(_problem, Enumerable.Range(0, _problem.Kinds.Count).ToList()))
        {
            var sum = LinearExpr.NewBuilder();
            foreach (var chosen in _parts.SelectMany(parts => parts.Chosen))
            {
                if (cover.OfBox[chosen.Box] > 0)
                    sum.AddTerm(chosen.Var, cover.OfBox[chosen.Box]);
            }

            _model.Add(sum >= cover.Asked);
        }
    }
}
