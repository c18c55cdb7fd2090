using Headroom.Documents.Papers;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Traffic;

namespace Headroom.Documents.Drawings.Traffic;

/// <summary>Finds the rows of the tree of uplinks, the line first.</summary>
internal sealed class TreeRows
{
    private readonly List<TreeRow> _rows = [];
    private readonly Dictionary<string, LedgerEntry> _entries;
    private readonly ILookup<string, SwitchTraffic> _behind;

    private TreeRows(PaperInput input)
    {
        _entries = input.Ledger.Entries.Where(entry => entry is { Discipline: "traffic", Quantity: "uplink" or "down" or "up" }).ToDictionary(entry => entry.Id);
        _behind = input.Results.Traffic.Switches.Where(one => one.Node.Parent is not null).ToLookup(one => one.Node.Parent!.Id);
        foreach (var root in input.Results.Traffic.Switches.Where(one => one.Node.Parent is null))
            Root(root);
    }

    /// <summary>The rows of a design.</summary>
    public static IReadOnlyList<TreeRow> Of(PaperInput input) => new TreeRows(input)._rows;

    private void Root(SwitchTraffic root)
    {
        int? above = null;
        foreach (var line in root.Node.Lines)
        {
            above = _rows.Count;
            var id = line.Far.Unit;
            var up = _entries.GetValueOrDefault($"traffic/{id}/up");
            _rows.Add(new(id, "line out of the house", 0, up is null ? [("down", _entries.GetValueOrDefault($"traffic/{id}/down"))] : [("down", _entries.GetValueOrDefault($"traffic/{id}/down")), ("up", up)], null));
        }

        Switch(root, above);
    }

    private void Switch(SwitchTraffic at, int? above)
    {
        var links = at.Node.Up.Count;
        List<(string, LedgerEntry?)> ways = at.Node.Parent is null ? [] : [(links > 1 ? $"{links} links" : "uplink", _entries.GetValueOrDefault($"traffic/{at.Node.Id}/uplink"))];
        var own = _rows.Count;
        _rows.Add(new(at.Node.Id, at.Node.Switch.Model.Id, above is { } row ? _rows[row].Depth + 1 : 0, ways, above));
        foreach (var one in _behind[at.Node.Id])
            Switch(one, own);
    }
}
