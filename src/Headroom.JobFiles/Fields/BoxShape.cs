using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>Two or three lengths with an x between them, such as a size or a spot: <c>6 x 5 x 2.7 m</c>.</summary>
/// <typeparam name="T">What the lengths become.</typeparam>
/// <param name="what">What it is, in words: <c>length x width x height</c>.</param>
/// <param name="bounds">The range in which each length makes sense [m].</param>
/// <param name="make">Makes it of the lengths [m].</param>
internal sealed class BoxShape<T>(string what, Bounds bounds, Func<IReadOnlyList<Given<Metres>>, T> make) : ScalarShape<T>
{
    /// <summary>The unit in which messages tell the range.</summary>
    public string Unit { get; init; } = "m";

    /// <summary>The least number of lengths; the most is three.</summary>
    public int Least { get; init; } = 3;

    /// <inheritdoc/>
    public override string InWords => $"{what}, each {QuantityWords.Allowed(Metres.Units, bounds, Unit)}";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts)
    {
        const string Number = @"-?[0-9]*[.]?[0-9]+\s*(m|mm|cm|km|ft|in)?";
        var more = Least == 3 ? "{2}" : "{1,2}";
        return SchemaParts.Pattern($@"^\s*({Number}(\s*[x×]\s*{Number}){more}(\s+[a-z]+)*|{SchemaParts.Unknown})\s*$", "string");
    }

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        var parts = scalar.Text.Split(['x', '×'], StringSplitOptions.TrimEntries);
        if (parts.Length < Least || parts.Length > 3)
            return Refuse(Slips.NotAValue, scalar, reader);
        var unit = UnitOf(parts[^1]);
        var lengths = new List<Given<Metres>>(3);
        foreach (var part in parts)
        {
            if (Length(part, unit, scalar, reader) is not { } length)
                return false;
            lengths.Add(length);
        }

        value = make(lengths);
        return true;
    }

    // The unit behind the last length holds for those that have none of their own.
    private static string UnitOf(string last)
    {
        var rest = last.AsSpan();
        QuantityText.TakeOrigin(ref rest);
        return rest.TrimStart("-+0123456789.\u2212 ").ToString();
    }

    private Given<Metres>? Length(string part, string unit, YamlScalar whole, FieldReader reader)
    {
        var text = part.Length > 0 && (char.IsAsciiDigit(part[^1]) || part[^1] == '.') ? $"{part} {unit}".TrimEnd() : part;
        if (QuantityText.Read<Metres>(text, whole.At, out var problem) is not { } length)
        {
            QuantityWords.Refuse(whole, problem!.Kind == QuantitySlip.UnitMissing ? problem with { Advice = $"write the unit behind the last length, like '{reader.Example}'" } : problem, reader);
            return null;
        }

        if (bounds.Contains(length.Value.Value))
            return length;
        Refuse(Slips.OutOfBounds, whole, reader, "correct it, or leave it out when it is not known");
        return null;
    }
}
