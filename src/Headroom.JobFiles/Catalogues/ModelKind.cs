using Headroom.Domain.Catalogues;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Catalogues;

/// <summary>A kind of model.</summary>
/// <param name="key">The key under which a file has them: <c>switches</c>.</param>
/// <param name="noun">What one is called: <c>switch</c>.</param>
internal abstract class ModelKind(string key, string noun)
{
    /// <summary>The key under which a file has them.</summary>
    public string Key => key;

    /// <summary>What one is called.</summary>
    public string Noun => noun;

    /// <summary>The field of a catalogue file that has them as they stand there.</summary>
    public abstract Field<IReadOnlyList<Entry<string, YamlNode>>> Field { get; }

    /// <summary>The models of a catalogue as they stand in their files; null when they were never in one.</summary>
    public abstract IModelShelf? Shelf(Catalogue catalogue);

    /// <summary>A catalogue with the models of this kind put in place.</summary>
    public abstract Catalogue Put(Catalogue catalogue, IReadOnlyDictionary<string, RawModel> raw);

    /// <summary>Tells what is wrong with some of the models of a catalogue.</summary>
    public abstract void Check(Catalogue catalogue, IEnumerable<string> ids, FieldReader reader);

    /// <summary>The keys of a model that says only what differs from another.</summary>
    public abstract YamlNode Complete(YamlNode under, YamlNode over);
}
