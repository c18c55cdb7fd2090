using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>A value with its unit.</summary>
/// <typeparam name="T">The quantity.</typeparam>
/// <param name="bounds">The range in which it makes sense, in the base unit.</param>
/// <param name="unit">The unit in which messages tell the range.</param>
internal sealed class QuantityShape<T>(Bounds bounds, string unit) : ScalarShape<Given<T>>
    where T : struct, IQuantity<T>
{
    /// <summary>True when it has two ends and a single value is not enough: <c>100..240 V</c>.</summary>
    public bool IsRange { get; init; }

    /// <inheritdoc/>
    public override string InWords => QuantityWords.Allowed(T.Units, bounds, unit) + (IsRange ? ", as a range with two ends" : "");

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.Pattern(QuantityWords.Pattern(T.Units, IsRange), "string");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out Given<T> value)
    {
        value = null;
        if (QuantityWords.Measure(scalar, T.Units, bounds, (reader, InWords)) is not { } found)
            return false;
        if (IsRange && !found.IsRange)
            return Refuse(Slips.NotAValue, scalar, reader);
        value = new Given<T>(T.Of(found.Value), scalar.Text, found.Origin, found.PlusMinus, scalar.At);
        return true;
    }
}
