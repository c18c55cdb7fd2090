using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>A name, or a range of names that stands for one thing each: <c>K-01..K-12</c>.</summary>
/// <param name="of">What it names, with article.</param>
internal sealed class NamesShape(string of) : ScalarShape<IReadOnlyList<string>>
{
    /// <inheritdoc/>
    public override string InWords => $"the name of {of}, or a range of names such as K-01..K-12";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) =>
        SchemaParts.Pattern($@"^{NameShape.Pattern}(\s*[.][.]\s*{NameShape.Pattern})?$", "string", "integer");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out IReadOnlyList<string> value)
    {
        var ends = scalar.Text.Split("..", StringSplitOptions.TrimEntries);
        value = null;
        if (ends.Length > 2 || !ends.All(NameShape.IsName))
            return Refuse(Slips.NotAName, scalar, reader, $"use letters and digits, with hyphens, points or single spaces between them, at most {NameShape.Most} characters");
        value = ends.Length == 1 ? ends : NameRange.Names(ends[0], ends[1]);
        if (value is null)
            return Refuse(JobSlips.NameRange, scalar, reader, $"write both ends with the same letters and as many digits, the smaller number first, at most {NameRange.Most} in all");
        return Budget.Spend(value.Count, scalar, reader);
    }
}
