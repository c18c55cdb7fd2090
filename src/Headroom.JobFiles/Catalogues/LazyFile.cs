using Headroom.Domain.Findings;
using Headroom.JobFiles.Files;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Catalogues;

/// <summary>A shipped file of one kind of model, of which only the names are looked for at first.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Models">The models.</param>
internal sealed record LazyFile(ModelKind Kind, IReadOnlyList<RawModel> Models)
{
    /// <summary>The name that places in a shipped file are told by, the same on every machine.</summary>
    public static string Shown(string path) => "catalogue/" + Path.GetFileName(path);

    /// <summary>Looks for the names; null when the file is not built as the shipped ones are, and is to be read as any other.</summary>
    public static LazyFile? Read(string path)
    {
        if (TextFile.Read(path).Value is not { } text)
            return null;
        var lines = new LazyLines(text);
        var kind = ModelKinds.All.FirstOrDefault(kind => kind.Key == lines.Kind);
        return kind is null || !lines.IsPlain ? null : new LazyFile(kind, [.. lines.Blocks.Select(block => Model(block, Shown(path)))]);
    }

    private static RawModel Model(LazyLines.Block block, string path) =>
        new(block.Id, new Place(path, block.Line, LazyLines.Depth + 1), () => Keys(block, path));

    private static YamlNode? Keys(LazyLines.Block block, string path) =>
        YamlText.Parse(block.Text, new Place(path, block.Line, 1)).Value is YamlMap { Entries: [var only] } ? only.Value : null;
}
