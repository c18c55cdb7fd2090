using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>Things one after the other.</summary>
/// <typeparam name="T">What each becomes.</typeparam>
/// <param name="noun">What each is called, without article.</param>
/// <param name="things">What each may be.</param>
internal sealed class ListShape<T>(string noun, Shape<T> things) : Shape<IReadOnlyList<T>>
{
    /// <summary>True when a single thing may stand without brackets.</summary>
    public bool OrOne { get; init; }

    /// <summary>True when the number in the list names each well enough: <c>reading 3</c>.</summary>
    public bool IsQuiet { get; init; }

    /// <inheritdoc/>
    public override bool NamesItself => IsQuiet;

    /// <inheritdoc/>
    public override string InWords => OrOne ? $"{things.InWords}, or several in a list" : $"a list, of which each is {things.InWords}";

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => [things];

    /// <inheritdoc/>
    public override bool Read(YamlNode node, FieldReader reader, [MaybeNullWhen(false)] out IReadOnlyList<T> value)
    {
        value = null;
        if (node is not YamlList list)
            return OrOne ? ReadOne(node, reader, out value) : RefuseKind(node, reader);
        var items = new List<T>(list.Items.Count);
        for (var i = 0; i < list.Items.Count; i++)
        {
            using var step = reader.Into($"{noun} {i + 1}");
            if (reader.TryRead(things, list.Items[i], out var item))
                items.Add(item);
            else
                reader.LeaveOut();
        }

        value = items;
        return true;
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts)
    {
        var one = things.Schema(parts);
        var many = new JsonObject { ["type"] = "array", ["items"] = one };
        return OrOne ? SchemaParts.AnyOf([things.Schema(parts), many]) : many;
    }

    private bool ReadOne(YamlNode node, FieldReader reader, [MaybeNullWhen(false)] out IReadOnlyList<T> value)
    {
        value = things.Read(node, reader, out var one) ? [one] : null;
        return value is not null;
    }

    private bool RefuseKind(YamlNode node, FieldReader reader)
    {
        var name = IsQuiet ? $"what stands in place of {Words.Plural(noun)}" : reader.Name;
        reader.Refuse(Slips.WrongKind, node.At, $"{name} is {node.What}", InWords, "put it into a list: '[...]', or lines that begin with '- '");
        return false;
    }
}
