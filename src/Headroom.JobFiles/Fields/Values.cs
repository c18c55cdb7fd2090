using Headroom.Domain.Findings;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>What was read of one thing, by its fields.</summary>
internal sealed class Values(FieldReader reader, YamlMap map)
{
    private readonly Dictionary<Field, (object? Value, YamlEntry Entry)> _values = [];

    /// <summary>For findings that concern several fields.</summary>
    public FieldReader Reader => reader;

    /// <summary>Where the thing stands.</summary>
    public Place At => map.At;

    /// <summary>Notes what was read for a field.</summary>
    public void Put(Field field, object? value, YamlEntry entry) => _values[field] = (value, entry);

    /// <summary>The entry of a field, when its key is there.</summary>
    public YamlEntry? Entry(Field field) => _values.TryGetValue(field, out var found) ? found.Entry : null;

    /// <summary>True when the value of a field is known.</summary>
    public bool Has(Field field) => _values.TryGetValue(field, out var found) && found.Value is not null;

    /// <summary>The value of a field, or null when it is not known.</summary>
    public T? Get<T>(Field<T> field)
        where T : class => _values.TryGetValue(field, out var found) ? (T?)found.Value : null;

    /// <summary>The number, choice or day of a field, or null when it is not known.</summary>
    public T? Maybe<T>(Field<T> field)
        where T : struct => _values.TryGetValue(field, out var found) && found.Value is T value ? value : null;

    /// <summary>The value of a field that the thing must have.</summary>
    public T Must<T>(Field<T> field)
        where T : notnull => (T)_values[field].Value!;

    /// <summary>The list of a field, empty when it is not known.</summary>
    public IReadOnlyList<T> List<T>(Field<IReadOnlyList<T>> field) => Get(field) ?? [];
}
