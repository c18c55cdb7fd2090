using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Yaml;

/// <summary>Values one after the other.</summary>
/// <param name="items">The values.</param>
/// <param name="isFlow">True when written in brackets.</param>
/// <param name="at">Where it begins.</param>
/// <param name="span">The indexes of its first character and behind its last.</param>
public sealed class YamlList(IReadOnlyList<YamlNode> items, bool isFlow, Place at, (int Start, int End) span) : YamlNode(at, span.Start, span.End)
{
    /// <summary>The values, in the order written.</summary>
    public IReadOnlyList<YamlNode> Items { get; } = items;

    /// <summary>True when written in brackets, <c>[a, b]</c>; false when written as lines.</summary>
    public bool IsFlow { get; } = isFlow;

    /// <inheritdoc/>
    public override string What => "a list";
}
