using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;
using Headroom.Domain.Shown;
using Headroom.Engineering.Acoustics;

namespace Headroom.Documents.Papers;

/// <summary>What is heard at every ear: background, equipment, limit, what brings most, and a blank for the reading.</summary>
internal static class SoundSheet
{
    private const double Hand = 60;

    /// <summary>What stands on it; null without a listener.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input)
    {
        var listeners = input.Results.Sound.Listeners;
        if (listeners.Count == 0)
            return null;
        var limits = input.Entries(inside: false).Where(entry => entry.Discipline == AcousticLedger.Discipline).ToList();
        return
        [
            new Facts([("meter, class", ""), ("calibrated", ""), ("date", ""), ("by", "")]),
            new Table(
                [
                    new("ear"), new("where"), new("limit [dB(A)]", Anchor.End), new("from") { Grows = true }, new("background [dB(A)]", Anchor.End), new("equipment [dB(A)]", Anchor.End), new("together [dB(A)]", Anchor.End), new("case"),
                    new("read, all off") { Least = Hand }, new("read, all on") { Least = Hand }, new("while, time") { Least = Hand },
                ],
                [.. listeners.Select(RowOf)]),
            .. limits.Count == 0 ? [] : new Block[] { EntryTable.Of(limits, input.Units), EntryTable.Legend },
            .. Brings(listeners),
            .. listeners.SelectMany(one => one.Questions).Distinct().Select(question => new Words(Written.Asked(question), Lettering.Body with { Face = Face.Slanted })),
            new Words("Read with everything off and with everything on at one spot, within minutes of each other, doors as on an ordinary day. What lies less than 3 dB over the background is an upper bound only.", Lettering.Label),
        ];
    }

    private static Row RowOf(ListenerSound one) => Written.ToFill(
        one.Listener.Id, one.Space?.Id ?? one.Listener.In, one.Limit is { } limit ? Numbers.Show(limit) : "none said", one.Limit is null ? "" : Written.Origin(one.LimitOrigin),
        Level(one.Background), Level(one.Equipment), Level(one.Total), one.Worst?.Name ?? "");

    private static IEnumerable<Block> Brings(IReadOnlyList<ListenerSound> listeners)
    {
        var rows = listeners.SelectMany(one => (one.Worst?.Loud ?? []).OrderByDescending(part => part.Level.Value).Take(4).Select(part =>
            Row.Of(one.Listener.Id, part.Path.Source.Id, part.Path.Way, part.Path.Metres is { } metres ? Numbers.Show(Math.Round(metres, 1)) : "", Level(part.Level)))).ToList();
        if (rows.Count == 0)
            yield break;
        yield return new Heading("What brings most");
        yield return new Table([new("ear"), new("source"), new("way") { Grows = true }, new("distance [m]", Anchor.End), new("at the ear [dB(A)]", Anchor.End)], rows);
    }

    private static string Level(Estimate? level) => level is { } known ? $"{Numbers.Show(Math.Round(known.Value, 1))} {Numbers.Spread(2 * known.Uncertainty, "")}".Replace(" ± 0", "", StringComparison.Ordinal) : "?";
}
