using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>A cord as people say it: <c>1 m of patch-26</c>.</summary>
internal sealed class CordShape : ScalarShape<RunPiece>
{
    private const string Of = " of ";

    /// <inheritdoc/>
    public override string InWords => $"{Sensible.Run.InWords}, with ' of ' and the cable model behind it";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) =>
        SchemaParts.Pattern($@"^([0-9.]+\s*(m|mm|cm|ft|in)(\s+[a-z]+)?(\s+of\s+{NameShape.Pattern})?|{SchemaParts.Unknown})$", "string");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out RunPiece value)
    {
        value = null;
        var of = scalar.Text.IndexOf(Of, StringComparison.Ordinal);
        var length = new YamlScalar(of < 0 ? scalar.Text : scalar.Text[..of], scalar.Style, scalar.At, (scalar.Start, scalar.End));
        var model = of < 0 ? null : scalar.Text[(of + Of.Length)..].Trim();
        if (model is not null && !NameShape.IsName(model))
            return Refuse(Slips.NotAName, scalar, reader);
        if (!Sensible.Run.Read(length, reader, out var metres))
            return false;
        value = new RunPiece(metres, model, null, null, null);
        return true;
    }
}
