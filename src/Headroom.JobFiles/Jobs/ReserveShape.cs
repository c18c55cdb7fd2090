using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>What is to stay free, or to be added: a share of the limit, or an amount in the limit's own unit.</summary>
/// <param name="units">The units of an amount; null when only a share may be written.</param>
/// <param name="unit">The unit in which the amount is kept.</param>
/// <param name="mostShare">The largest share that makes sense.</param>
internal sealed class ReserveShape(UnitTable? units, string unit, double mostShare) : ScalarShape<Reserve>
{
    // Of every kind the shown unit; more than this is a slip whatever the kind.
    private static readonly Bounds Amount = new(0, 1e12);

    /// <inheritdoc/>
    public override string InWords => QuantityWords.Allowed(Share.Units, new Bounds(0, mostShare), "%")
        + (units is null ? "" : $", or {units.What} in {units.Symbols}");

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.AnyOf([
        SchemaParts.Pattern(QuantityWords.Pattern(Share.Units), "string"),
        .. units is null ? [] : new[] { SchemaParts.Pattern(QuantityWords.Pattern(units), units.Find("") is null ? ["string"] : ["string", "integer"]) }]);

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out Reserve value)
    {
        var isShare = units is null || scalar.Text.Contains('%');
        var table = isShare ? Share.Units : units!;
        var found = QuantityWords.Measure(scalar, table, isShare ? new Bounds(0, mostShare) : Amount, (reader, InWords));
        value = found is not { } measured ? null
            : isShare ? new Reserve(measured.Value, null, scalar.Text, measured.Origin, scalar.At)
            : new Reserve(null, table.Find(unit)!.FromBase(measured.Value), scalar.Text, measured.Origin, scalar.At);
        return value is not null;
    }
}
