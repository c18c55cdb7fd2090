using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Catalogues;

/// <summary>The models of one kind as they stand in their files.</summary>
internal interface IModelShelf
{
    /// <summary>The models by name, in the order written.</summary>
    IReadOnlyDictionary<string, RawModel> Raw { get; }

    /// <summary>Makes a model now that is sure to be asked for soon.</summary>
    void ReadAhead(string id);

    /// <summary>The keys of a model with everything it takes over from others; null when there is no such model or its line of likeness is broken.</summary>
    YamlNode? Whole(string id);
}
