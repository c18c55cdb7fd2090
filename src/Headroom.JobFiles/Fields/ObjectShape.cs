using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A thing with keys.</summary>
/// <typeparam name="T">What it becomes.</typeparam>
/// <param name="noun">What it is called, without article: <c>drop</c>.</param>
/// <param name="fields">The keys it may have.</param>
/// <param name="build">Makes it of what was read; null when a finding was made.</param>
internal sealed class ObjectShape<T>(string noun, IReadOnlyList<Field> fields, Func<Values, T?> build) : Shape<T>, IObjectShape
    where T : class
{
    /// <inheritdoc/>
    public string Noun => noun;

    /// <inheritdoc/>
    public IReadOnlyList<Field> Fields => fields;

    /// <summary>True when its keys name enough by themselves: <c>limit of listener desk</c>, not <c>... of survey</c>.</summary>
    public bool IsQuiet { get; init; }

    /// <summary>True when it is made even if a key that it must have is missing, so that all the rest is still checked: a file as a whole.</summary>
    public bool GoesOn { get; init; }

    /// <summary>A key that it had once, with what to write in place of it; null for none.</summary>
    public FormerKey? Former { get; init; }

    /// <inheritdoc/>
    public string? About { get; init; }

    /// <inheritdoc/>
    public override bool NamesItself => IsQuiet;

    /// <inheritdoc/>
    public override string InWords => $"keys of {Words.A(noun)}: {Words.Or([.. fields.Select(key => key.Name)])}";

    /// <inheritdoc/>
    public override IEnumerable<Shape> Parts => fields.Select(key => key.Shape);

    private Field Like => fields.FirstOrDefault(key => key.IsRequired) ?? fields[0];

    /// <inheritdoc/>
    public override bool Read(YamlNode node, FieldReader reader, [MaybeNullWhen(false)] out T value)
    {
        value = null;
        if (node is not YamlMap map)
        {
            reader.Refuse(Slips.WrongKind, node.At, $"{Called(reader)} is {node.What}", InWords, $"write its keys, like '{{{Like.Name}: {Like.Example}}}'");
            return false;
        }

        var values = ReadFields(map, reader);
        if (!CheckRequired(values, map, reader) && !GoesOn)
            return false;
        value = build(values);
        return value is not null;
    }

    /// <inheritdoc/>
    public override YamlNode Complete(YamlNode under, YamlNode over)
    {
        if (under is not YamlMap below || over is not YamlMap above)
            return over;
        var entries = new List<YamlEntry>();
        foreach (var entry in below.Entries)
        {
            if (above.Find(entry.Key.Text) is not { } mine)
                entries.Add(entry);
            else
                entries.Add(mine with { Value = Find(entry.Key)?.Complete(entry.Value, mine.Value) ?? mine.Value });
        }

        entries.AddRange(above.Entries.Where(entry => below.Find(entry.Key.Text) is null));
        return new YamlMap(entries, above.IsFlow, above.At, (above.Start, above.End));
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => parts.Object(this);

    private Values ReadFields(YamlMap map, FieldReader reader)
    {
        var values = new Values(reader, map);
        for (var at = 0; at < map.Entries.Count; at++)
        {
            var entry = map.Entries[at];
            if (Find(entry.Key) is not { } field)
                RefuseKey(entry, at > 0 ? map.Entries[at - 1].Value : null, reader);
            else if (values.Entry(field) is { } before)
                Twice(entry.Key, before.Key, reader);
            else if (field.IsRequired && entry.Value is YamlScalar { IsEmpty: true } or YamlScalar { IsUnknown: true } && !field.Shape.TakesNothing)
                values.Put(field, null, entry);
            else
                values.Put(field, field.Read(entry.Value, reader), entry);
        }

        return values;
    }

    private Field? Find(YamlScalar key)
    {
        foreach (var field in fields)
        {
            if (YamlKey.Same(field.Name, key.Text))
                return field;
        }

        return null;
    }

    private bool CheckRequired(Values values, YamlMap map, FieldReader reader)
    {
        var whole = true;
        foreach (var field in fields.Where(field => field.IsRequired && !values.Has(field)))
        {
            whole = false;
            var entry = values.Entry(field);
            if (entry is not null && entry.Value is not YamlScalar { IsEmpty: true } and not YamlScalar { IsUnknown: true })
                continue;
            var at = entry?.Value.At ?? map.At;
            reader.Refuse(Slips.Missing, at, $"{Of(field.Name, reader)} is not written", field.Shape.InWords, $"write '{field.Name}: {field.Example}'");
        }

        return whole;
    }

    private void RefuseKey(YamlEntry entry, YamlNode? before, FieldReader reader)
    {
        var key = entry.Key;
        if (Parted(before, entry) is { } whole)
            reader.Refuse(Slips.Comma, key.At, $"'{Words.Short(key.Text)}' behind a comma in {Called(reader)}", "a point for decimals; between { and } a comma begins the next key", $"write '{Words.Short(whole)}' if that is meant");
        else
        {
            var known = fields.Select(field => field.Name);
            reader.Refuse(
                Slips.UnknownKey,
                key.At,
                $"{Called(reader)} has a key '{Words.Short(key.Text)}'",
                InWords,
                Former is { } former && YamlKey.Same(former.Name, key.Text) ? former.Advice : reader.Meant(key.Text, known, "take it out, or write it as a remark (# ...)"));
        }

        if (fields.Any(field => field.Shape.NamesItself))
            reader.LeaveOut();
    }

    // 18,5 m between braces is 18 and a key '5 m' without a value.
    private static string? Parted(YamlNode? before, YamlEntry entry) =>
        entry is { Key.Text: { Length: > 0 } rest, Value: YamlScalar { IsEmpty: true } } && char.IsAsciiDigit(rest[0])
        && before is YamlScalar { Text: { Length: > 0 } first } && char.IsAsciiDigit(first[^1])
            ? $"{first}.{rest}"
            : null;

    private static void Twice(YamlScalar key, YamlScalar before, FieldReader reader) => reader.Refuse(
        Slips.Twice,
        key.At,
        $"'{Words.Short(key.Text)}' a second time (first in line {before.At.Line}, column {before.At.Column})",
        "each key once",
        "keep one of them");

    private string Called(FieldReader reader) => reader.Name is { Length: > 0 } name ? name : "the " + noun;

    private static string Of(string field, FieldReader reader) => reader.Name is { Length: > 0 } name ? $"{field} of {name}" : field;
}
