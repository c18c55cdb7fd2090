using System.Collections;
using System.Diagnostics.CodeAnalysis;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Catalogues;

/// <summary>The models of one kind. A model is made of its text when it is first asked for: a job uses a handful of hundreds.</summary>
/// <typeparam name="T">The model.</typeparam>
/// <param name="kind">The kind.</param>
/// <param name="raw">The models as they stand in their files, by name.</param>
internal sealed class ModelShelf<T>(ModelKind<T> kind, IReadOnlyDictionary<string, RawModel> raw) : IReadOnlyDictionary<string, T>, IModelShelf
    where T : class
{
    private readonly Dictionary<string, T?> _made = [];

    /// <inheritdoc/>
    public IReadOnlyDictionary<string, RawModel> Raw => raw;

    /// <inheritdoc/>
    public IEnumerable<string> Keys => raw.Keys.Where(ContainsKey);

    /// <inheritdoc/>
    public IEnumerable<T> Values => raw.Keys.Select(Make).OfType<T>();

    /// <inheritdoc/>
    public int Count => Keys.Count();

    /// <inheritdoc/>
    public T this[string key] => TryGetValue(key, out var model) ? model : throw new KeyNotFoundException($"The catalogue has no {kind.Noun} '{key}'.");

    /// <inheritdoc/>
    public bool ContainsKey(string key) => Make(key) is not null;

    /// <inheritdoc/>
    public bool TryGetValue(string key, [MaybeNullWhen(false)] out T value)
    {
        value = Make(key);
        return value is not null;
    }

    /// <inheritdoc/>
    public void ReadAhead(string id) => Make(id);

    /// <inheritdoc/>
    public YamlNode? Whole(string id) => Likeness.Whole(kind, raw, id, null);

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<string, T>> GetEnumerator() =>
        raw.Keys.Select(id => (Id: id, Model: Make(id))).Where(one => one.Model is not null).Select(one => KeyValuePair.Create(one.Id, one.Model!)).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Makes a model and tells what is wrong with it.</summary>
    public T? Check(string id, FieldReader reader)
    {
        using var step = reader.Into($"{kind.Noun} {id}");
        return _made[id] = Likeness.Whole(kind, raw, id, reader) is { } node && reader.TryRead(kind.Shape, node, out var model)
            ? kind.Name(model, id, raw[id].At)
            : null;
    }

    // Pages ask from several threads; a model is made once, and everybody gets the same.
    private T? Make(string id)
    {
        lock (_made)
        {
            if (_made.TryGetValue(id, out var known))
                return known;
            return raw.ContainsKey(id) ? Check(id, new FieldReader(CatalogueFiles.CodePrefix)) : null;
        }
    }
}
