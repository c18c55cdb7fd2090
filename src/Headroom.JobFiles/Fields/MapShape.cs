using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>Things keyed by a name, a number or a value.</summary>
/// <typeparam name="TKey">What a key becomes.</typeparam>
/// <typeparam name="T">What a thing becomes.</typeparam>
/// <param name="noun">What each is called, without article; empty when the key above names it.</param>
/// <param name="keys">What may stand as a key.</param>
/// <param name="things">What may stand behind it.</param>
internal sealed class MapShape<TKey, T>(string noun, Shape<TKey> keys, Shape<T> things) : Shape<IReadOnlyList<Entry<TKey, T>>>
{
    /// <summary>True when a thing that only says what differs takes over the entries it does not name; false when its map stands in place of the other.</summary>
    public bool IsCompleted { get; init; }

    /// <summary>How a key looks, for the manual and messages.</summary>
    public required string KeyExample { get; init; }

    /// <summary>How what stands behind a key looks, where it is one text.</summary>
    public string ThingExample { get; init; } = "";

    /// <inheritdoc/>
    public override bool NamesItself => noun.Length > 0;

    /// <inheritdoc/>
    public override string InWords => $"'{KeyExample}: ...' for each, with {things.InWords}";

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => [things];

    /// <inheritdoc/>
    public override bool Read(YamlNode node, FieldReader reader, [MaybeNullWhen(false)] out IReadOnlyList<Entry<TKey, T>> value)
    {
        value = null;
        if (node is not YamlMap map)
        {
            var name = noun.Length > 0 ? $"what stands in place of {Words.Plural(noun)}" : reader.Name;
            reader.Refuse(Slips.WrongKind, node.At, $"{name} is {node.What}", InWords, $"write each with its key in front, like '{KeyExample}: ...'");
            return false;
        }

        var entries = new List<Entry<TKey, T>>(map.Entries.Count);
        foreach (var entry in map.Entries)
            ReadEntry(entry, reader, entries);
        value = entries;
        return true;
    }

    /// <inheritdoc/>
    public override YamlNode Complete(YamlNode under, YamlNode over)
    {
        if (!IsCompleted || under is not YamlMap below || over is not YamlMap above)
            return over;
        var entries = below.Entries.Select(entry => above.Find(entry.Key.Text) is { } mine ? mine with { Value = things.Complete(entry.Value, mine.Value) } : entry);
        return new YamlMap(
            [.. entries, .. above.Entries.Where(entry => below.Find(entry.Key.Text) is null)], above.IsFlow, above.At, (above.Start, above.End));
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.Map(keys.Schema(parts), things.Schema(parts));

    private void ReadEntry(YamlEntry entry, FieldReader reader, List<Entry<TKey, T>> into)
    {
        var name = noun.Length > 0 ? $"{noun} {entry.Key.Text}" : entry.Key.Text;
        TKey? key;
        using (reader.Into(noun.Length > 0 ? $"the name of {Words.A(noun)}" : "a key", KeyExample))
        {
            if (!keys.Read(entry.Key, reader, out key))
            {
                reader.LeaveOut();
                return;
            }
        }

        using (reader.Into(name, ThingExample))
        {
            if (reader.TryRead(things, entry.Value, out var thing))
                into.Add(new Entry<TKey, T>(key, thing, entry.Key.At));
            else
                reader.LeaveOut();
        }
    }
}
