using Headroom.Documents.Canvas;

namespace Headroom.Documents.Layout;

/// <summary>Lets strips run down sheet after sheet.</summary>
/// <param name="body">Where on a sheet they may stand.</param>
internal sealed class Flow(Box body)
{
    private readonly List<(List<Placed> Items, List<string> Bookmarks)> _sheets = [([], [])];
    private double _y = body.Y;
    private bool _isFresh = true;

    /// <summary>The sheets so far.</summary>
    public IReadOnlyList<(List<Placed> Items, List<string> Bookmarks)> Sheets => _sheets;

    /// <summary>Puts strips under what stands there.</summary>
    public void Put(IReadOnlyList<Strip> strips)
    {
        for (var i = 0; i < strips.Count; i++)
        {
            var strip = strips[i];
            if (strip.BeginsSheet && !_isFresh)
                TurnOver();
            else if (!_isFresh && _y + Together(strips, i) > body.Bottom)
                TurnOver();
            if (strip.IsRoom && (_isFresh || _y + strip.Height > body.Bottom))
                continue;
            if (_isFresh && strip.Head is { } head)
                Set(head);
            Set(strip);
        }
    }

    private void Set(Strip strip)
    {
        var (items, bookmarks) = _sheets[^1];
        strip.Place(_y, items);
        if (strip.Bookmark is { } bookmark)
            bookmarks.Add(bookmark);
        _y += strip.Height;
        _isFresh &= strip.Height <= 0 || strip.IsRoom;
    }

    private void TurnOver()
    {
        _sheets.Add(([], []));
        _y = body.Y;
        _isFresh = true;
    }

    // A strip with those that must stay with it; what would fill more than a sheet is let go.
    private double Together(IReadOnlyList<Strip> strips, int from)
    {
        var height = strips[from].IsRoom ? 0 : strips[from].Height;
        for (var i = from; strips[i].StaysWithNext && i + 1 < strips.Count; i++)
            height += strips[i + 1].Height;
        return height > body.Height ? strips[from].Height : height;
    }
}
