using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>Nothing written, where that says enough.</summary>
/// <typeparam name="T">What it becomes.</typeparam>
/// <param name="meaning">Its meaning.</param>
internal sealed class NothingShape<T>(T meaning) : Shape<T>
{
    /// <inheritdoc/>
    public override string InWords => "nothing";

    /// <inheritdoc/>
    public override bool TakesNothing => true;

    /// <inheritdoc/>
    public override bool IsScalar => true;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => new() { ["type"] = "null" };

    /// <inheritdoc/>
    public override bool Read(YamlNode node, FieldReader reader, [MaybeNullWhen(false)] out T value)
    {
        value = meaning;
        return true;
    }
}
