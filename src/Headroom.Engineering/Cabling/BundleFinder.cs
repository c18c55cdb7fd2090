using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Cabling;

/// <summary>Finds which pieces are tied together: those of one pathway, or of one way between two spaces, of which the survey says the same number.</summary>
internal sealed class BundleFinder(Func<string, CableLoad?> loadOf)
{
    private readonly Dictionary<string, Draft> _drafts = [];
    private readonly List<Draft> _inOrder = [];

    /// <summary>The bundles of all runs, in the order of the survey.</summary>
    public List<CableBundle> Find(IReadOnlyList<BoundRun> runs)
    {
        foreach (var run in runs)
        {
            foreach (var piece in run.Pieces)
            {
                if (piece.Written?.Bundle is { Value.Value: > 1 } count && piece.Fibre is null)
                    DraftOf(run.Drop, piece.Written.By, count).Add(run.Drop.Id, piece, loadOf(run.Drop.Id));
            }
        }

        return _inOrder.ConvertAll(draft => draft.Whole(NameOf(draft)));
    }

    private Draft DraftOf(Drop drop, string? by, Given<Pieces> count)
    {
        var key = $"{by ?? $"{drop.From}\n{drop.To}"}\n{count.Value.Value}";
        if (!_drafts.TryGetValue(key, out var draft))
            _inOrder.Add(_drafts[key] = draft = new Draft(by, count));
        return draft;
    }

    private string NameOf(Draft draft) =>
        draft.By is { } by && _inOrder.TrueForAll(other => ReferenceEquals(other, draft) || other.By != by) ? by
        : draft.Drops.Count == 1 ? draft.Drops[0]
        : $"{draft.Drops[0]}..{draft.Drops[^1]}";

    private sealed class Draft(string? by, Given<Pieces> count)
    {
        private BoundPiece? _warmest;
        private BoundPiece? _hottest;
        private CableLoad? _load;
        private double? _heat;
        private double _jacket = double.PositiveInfinity;
        private bool _jacketAssumed;

        public string? By => by;

        public List<string> Drops { get; } = [];

        public void Add(string drop, BoundPiece piece, CableLoad? load)
        {
            if (Drops.Count == 0 || Drops[^1] != drop)
                Drops.Add(drop);
            if (_warmest is null || piece.Celsius > _warmest.Celsius)
                _warmest = piece;
            var jacket = piece.Copper?.MostTemperature?.Value.Value;
            _jacketAssumed |= jacket is null;
            _jacket = Math.Min(_jacket, jacket ?? BundleHeat.CommonJacketCelsius);
            if (load is null || piece.SquareMillimetres is not { } area)
                return;
            var heat = BundleHeat.WattsPerMetre(load.Conductors, load.ConductorAmperes, Conductor.OhmsPerMetre(area, Conductor.ReferenceCelsius, piece.Conductivity));
            if (!(heat <= _heat))
                (_heat, _hottest, _load) = (heat, piece, load);
        }

        public CableBundle Whole(string name) => new()
        {
            Name = name,
            Cables = count.Value.Value,
            CablesOrigin = Origins.Of(count),
            Drops = Drops,
            Warmest = _warmest!,
            Hottest = _hottest,
            Load = _load,
            WattsPerMetre = _heat,
            JacketCelsius = _jacket,
            JacketAssumed = _jacketAssumed,
        };
    }
}
