using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Catalogues;

/// <summary>A kind of model with what one becomes.</summary>
/// <typeparam name="T">The model.</typeparam>
internal sealed class ModelKind<T> : ModelKind
    where T : class
{
    // The keys of a kind are a table of many parts, and a job uses few kinds: made when first asked for.
    private readonly Lazy<ObjectShape<T>> _shape;
    private readonly Lazy<Field<IReadOnlyList<Entry<string, YamlNode>>>> _field;
    private readonly Func<Catalogue, IReadOnlyDictionary<string, T>> _get;
    private readonly Func<Catalogue, IReadOnlyDictionary<string, T>, Catalogue> _put;

    /// <summary>Makes the kind.</summary>
    public ModelKind(
        (string Key, string Noun, string Doc, string Example) words,
        Func<ObjectShape<T>> shape,
        Func<T, string, Place, T> name,
        (Func<Catalogue, IReadOnlyDictionary<string, T>> Get, Func<Catalogue, IReadOnlyDictionary<string, T>, Catalogue> Put) place)
        : base(words.Key, words.Noun)
    {
        _shape = new(shape);
        Name = name;
        (_get, _put) = place;
        _field = new(() => new(
            words.Key,
            new MapShape<string, YamlNode>(words.Noun, Shapes.Name($"{Words.A(words.Noun)} model"), new LateShape(Shape)) { KeyExample = words.Example },
            words.Doc,
            $"{{{words.Example}: {{...}}}}"));
    }

    /// <summary>The keys of a model.</summary>
    public ObjectShape<T> Shape => _shape.Value;

    /// <summary>Gives a model its name and place.</summary>
    public Func<T, string, Place, T> Name { get; }

    /// <inheritdoc/>
    public override Field<IReadOnlyList<Entry<string, YamlNode>>> Field => _field.Value;

    /// <inheritdoc/>
    public override IModelShelf? Shelf(Catalogue catalogue) => _get(catalogue) as ModelShelf<T>;

    /// <inheritdoc/>
    public override Catalogue Put(Catalogue catalogue, IReadOnlyDictionary<string, RawModel> raw) => _put(catalogue, new ModelShelf<T>(this, raw));

    /// <inheritdoc/>
    public override void Check(Catalogue catalogue, IEnumerable<string> ids, FieldReader reader)
    {
        var shelf = (ModelShelf<T>)_get(catalogue);
        foreach (var id in ids)
            shelf.Check(id, reader);
    }

    /// <inheritdoc/>
    public override YamlNode Complete(YamlNode under, YamlNode over) => Shape.Complete(under, over);
}
