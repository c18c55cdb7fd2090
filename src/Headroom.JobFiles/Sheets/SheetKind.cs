namespace Headroom.JobFiles.Sheets;

/// <summary>A kind of sheet: what its rows are, and where they go in a job.</summary>
/// <param name="Name">The word for it: <c>drops</c>.</param>
/// <param name="Noun">What a row is.</param>
/// <param name="Fields">What its columns may become.</param>
/// <param name="Needs">The fields of which each group must have one among the columns.</param>
internal sealed record SheetKind(string Name, string Noun, IReadOnlyList<SheetField> Fields, IReadOnlyList<string[]> Needs)
{
    /// <summary>The field that tells which thing a row is about; null where rows have no name.</summary>
    public string? Key { get; init; }

    /// <summary>The keys in the job below which the rows go; of patching those within its design.</summary>
    public required IReadOnlyList<string> Section { get; init; }

    /// <summary>True when headings without a row below them say that there was nothing.</summary>
    public bool MayBeEmpty { get; init; }

    /// <summary>True when rows stand one after the other, not under a name.</summary>
    public bool IsList => Key is null;

    /// <summary>The field of a name; null when there is none.</summary>
    public SheetField? Find(string name) => Fields.FirstOrDefault(field => Yaml.YamlKey.Same(field.Name, name));
}
