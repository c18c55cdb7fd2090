using Headroom.Domain.Findings;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Catalogues;

/// <summary>A model as it stands in a file, before anything is made of it.</summary>
/// <param name="id">Its name.</param>
/// <param name="at">Where it begins.</param>
/// <param name="read">Reads its keys; asked once, and only when somebody wants the model.</param>
internal sealed class RawModel(string id, Place at, Func<YamlNode?> read)
{
    private readonly Lazy<YamlNode?> _node = new(read);

    /// <summary>Its name.</summary>
    public string Id => id;

    /// <summary>Where it begins.</summary>
    public Place At => at;

    /// <summary>The model of the same name in the catalogue under this one; null when there is none.</summary>
    public RawModel? Under { get; init; }

    /// <summary>The same model, over another of its name.</summary>
    public RawModel Over(RawModel under) => new(id, at, () => Node) { Under = under };

    /// <summary>Its keys; null when they cannot be read.</summary>
    public YamlNode? Node => _node.Value;
}
