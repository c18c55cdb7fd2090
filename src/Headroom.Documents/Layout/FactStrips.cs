using Headroom.Documents.Canvas;
using Headroom.Documents.Letters;

namespace Headroom.Documents.Layout;

/// <summary>Makes the strips of labels with what belongs to them.</summary>
internal static class FactStrips
{
    private const double LabelShare = 0.3;
    private const double Air = 3;
    private const double Wide = 360;

    /// <summary>The strips: two pairs beside each other where the sheet is wide enough.</summary>
    public static IEnumerable<Strip> Of(Facts facts, Box body)
    {
        var columns = body.Width >= Wide && facts.Pairs.Count > 3 ? 2 : 1;
        var width = body.Width / columns;
        for (var i = 0; i < facts.Pairs.Count; i += columns)
        {
            var pairs = facts.Pairs.Skip(i).Take(columns).Select((pair, c) => new Pair(pair.Label, pair.Value, new(body.X + c * width, 0, width - 8, 0))).ToList();
            yield return new Strip(pairs.Max(pair => pair.Height), (top, items) => pairs.ForEach(pair => pair.Place(top, items)));
        }

        yield return Strip.Room(6);
    }

    private sealed class Pair
    {
        private readonly List<string> _label;
        private readonly List<string> _value;
        private readonly Box _room;
        private readonly double _split;

        public Pair(string label, string value, Box room)
        {
            _room = room;
            _split = room.Width * LabelShare;
            _label = TextWrap.Lines(label, Lettering.Label, _split - Air);
            _value = TextWrap.Lines(value, Lettering.Body, room.Width - _split);
            IsBlank = value.Length == 0;
        }

        public double Height => Math.Max(IsBlank ? 16 : 0, Math.Max(_label.Count * Lettering.Label.Lead, _value.Count * Lettering.Body.Lead) + Air);

        private bool IsBlank { get; }

        public void Place(double top, List<Placed> items)
        {
            Write(_label, Lettering.Label, (_room.X, _split - Air, top + (Lettering.Body.Size - Lettering.Label.Size)), items);
            Write(_value, Lettering.Body, (_room.X + _split, _room.Width - _split, top), items);
            if (!IsBlank)
                return;
            var y = top + Height - 3;
            items.Add(new(new(_room.X + _split, y, _room.Width - _split, 0), "", canvas => canvas.Line(new(_room.X + _split, y), new(_room.Right, y), Stroke.Hairline with { Ink = Ink.Soft })));
        }

        private static void Write(List<string> lines, Lettering lettering, (double X, double Width, double Top) at, List<Placed> items)
        {
            for (var i = 0; i < lines.Count; i++)
            {
                var (line, top) = (lines[i], at.Top + i * lettering.Lead);
                if (line.Length > 0)
                    items.Add(new(new(at.X, top, Math.Min(at.Width, Typeface.Width(line, lettering)), lettering.Lead), line, canvas => canvas.Text(line, new(at.X, top + lettering.Size), lettering)));
            }
        }
    }
}
