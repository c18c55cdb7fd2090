namespace Headroom.Planning.Packing;

/// <summary>Sets of boxes of one place that are found at once: so many of one kind of box as it takes, and such with another beside them. Good ones, not the best.</summary>
internal sealed class QuickSets
{
    // So many boxes are tried, so many sets are mixed with others, and so many are told.
    private const int MostBoxes = 60;
    private const int MostMixed = 6;
    private const int MostTold = 40;

    private readonly PackProblem _problem;
    private readonly int _place;
    private readonly QuickFill _fill;
    private readonly List<int> _kept;
    private readonly List<int> _may;
    private readonly Dictionary<string, (long Cost, List<PackedBox> Boxes)> _found = [];

    private QuickSets(PackProblem problem, int place, IReadOnlyList<string> kept)
    {
        (_problem, _place, _fill) = (problem, place, new QuickFill(problem, place));
        _kept = [.. kept.Select(family => Enumerable.Range(0, problem.Boxes.Count).First(number => problem.Boxes[number].Family == family))];
        // What there is only so much of is for the search, that looks at all places together.
        _may = [.. Enumerable.Range(0, problem.Boxes.Count).Where(number => problem.Boxes[number] is var box && box.Most is null && box.Places?.Contains(place) != false)];
    }

    /// <summary>The sets, the cheapest first.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="place">The place that is filled.</param>
    /// <param name="kept">Families of boxes that stay there, each as often as there are such.</param>
    public static List<QuickSet> Of(PackProblem problem, int place, IReadOnlyList<string> kept)
    {
        var sets = new QuickSets(problem, place, kept);
        sets.Find();
        return [.. sets._found.Values.SelectMany(set => sets.WithExtras(set.Cost, set.Boxes)).OrderBy(set => set.Cost).ThenBy(set => set.Boxes.Count).Take(MostTold)];
    }

    private void Find()
    {
        if (_kept.Count > 0)
            Try(_kept);
        foreach (var number in _may)
            Alone(number);
        // One less of them, and the cheapest other that takes what is left.
        foreach (var (_, boxes) in _found.Values.OrderBy(set => set.Cost).Take(MostMixed).ToList())
        {
            var most = boxes.Skip(_kept.Count).Select(box => box.Box).ToList();
            foreach (var number in most.Count > 1 ? _may.Where(number => _problem.Boxes[number].Cost < _problem.Boxes[most[0]].Cost) : [])
                Try([.. _kept, .. most.Skip(1), number]);
        }
    }

    private void Alone(int number)
    {
        for (var count = 1; count <= MostBoxes;)
        {
            var left = Try([.. _kept, .. Enumerable.Repeat(number, count)]);
            if (left == 0 || (count > 1 && left >= _fill.Asked))
                return;
            count += Math.Max(1, left / Math.Max(1, _problem.Boxes[number].Groups.Sum()));
        }
    }

    private int Try(IReadOnlyList<int> boxes)
    {
        if (IsTooLoud(boxes))
            return _fill.Asked;
        var (left, filled) = _fill.Of(boxes);
        if (filled is not null)
            _found[string.Join(',', boxes.Order())] = (_fill.Cost(filled), filled);
        return left;
    }

    private bool IsTooLoud(IReadOnlyList<int> boxes) => Enumerable.Range(0, _problem.Bears.Count)
        .Any(ear => boxes.Sum(number => _problem.Boxes[number].Heard[_place][ear]) > _problem.Bears[ear] * (1 + 1e-9));

    private IEnumerable<QuickSet> WithExtras(long cost, List<PackedBox> boxes)
    {
        var here = Enumerable.Range(0, _problem.Extras.Count).Where(extra => _problem.Extras[extra].Place == _place).ToList();
        if (here.Count == 0)
            return [new(cost, boxes, null)];
        var draw = boxes.Sum(box => _problem.Boxes[box.Box].Draw);
        var plugs = boxes.Sum(box => _problem.Boxes[box.Box].Plugs + box.Items.Sum(item => _problem.Boxes[box.Box].Serves[item.Key].Via is null ? 0 : item.Value));
        return here.Where(extra => _problem.Extras[extra].Holds >= draw && !(_problem.Extras[extra].Plugs < plugs)).Select(extra => new QuickSet(cost + _problem.Extras[extra].Cost, boxes, extra));
    }
}
