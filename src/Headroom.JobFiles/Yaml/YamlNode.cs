using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Yaml;

/// <summary>A piece of a YAML text that knows where it stands, so that every finding and every edit can point at it.</summary>
/// <param name="at">Where it begins.</param>
/// <param name="start">The index of its first character in the text.</param>
/// <param name="end">The index behind its last character.</param>
public abstract class YamlNode(Place at, int start, int end)
{
    /// <summary>Where it begins.</summary>
    public Place At { get; } = at;

    /// <summary>The index of its first character in the text, from 0.</summary>
    public int Start { get; } = start;

    /// <summary>The index behind its last character; the same as <see cref="Start"/> for an empty value.</summary>
    public int End { get; } = end;

    /// <summary>What it is, for a message: <c>a list</c>.</summary>
    public abstract string What { get; }
}
