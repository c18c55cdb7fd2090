using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Editing;

/// <summary>Something to be put into a text, as lines and in one line, so that it can follow the style of its neighbours.</summary>
/// <param name="Lines">Its lines, without the depth they will lie at; null when it is to stand behind its key.</param>
/// <param name="Flow">The same in braces or brackets, on one line.</param>
internal sealed record NewValue(IReadOnlyList<string>? Lines, string Flow)
{
    /// <summary>A design as the person, or another part of the program, wrote it.</summary>
    public static NewValue Design(string yaml, YamlMap map)
    {
        var lines = yaml.TrimStart('\uFEFF').ReplaceLineEndings("\n").TrimEnd().Split('\n');
        var isMarked = lines.Any(line => line.StartsWith("---", StringComparison.Ordinal) || line.StartsWith("...", StringComparison.Ordinal) || line.StartsWith('%'));
        return new(map.IsFlow || isMarked ? null : Flush(lines, map.At.Column - 1), YamlWriter.Flow(map));
    }

    /// <summary>A list with one item.</summary>
    public static NewValue ListOf(string item) => new(["- " + item], $"[{item}]");

    /// <summary>A map with this under one key.</summary>
    public NewValue Under(string key, int step) => new(
        Lines is null ? [$"{key}: {Flow}"] : [key + ":", .. Lines.Select(line => Deeper(line, step))],
        $"{{{key}: {Flow}}}");

    /// <summary>The lines at a depth, each begun with a new line.</summary>
    public string Below(int depth, string newLine) =>
        string.Concat((Lines ?? [Flow]).Select(line => newLine + Deeper(line, depth)));

    private static string Deeper(string line, int depth) => line.Length == 0 ? line : new string(' ', depth) + line;

    private static List<string> Flush(string[] lines, int depth) =>
        [.. lines.SkipWhile(string.IsNullOrWhiteSpace).Select(line => line[Math.Min(depth, line.Length - line.TrimStart(' ').Length)..].TrimEnd('\r'))];
}
