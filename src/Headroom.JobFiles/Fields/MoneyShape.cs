using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>An amount with its currency: <c>212 EUR</c>.</summary>
internal sealed partial class MoneyShape : ScalarShape<Given<Money>>
{
    /// <summary>The largest amount.</summary>
    internal const decimal Most = 1_000_000;

    /// <inheritdoc/>
    public override string InWords => "an amount between 0 and 1000000 with the three letters of its currency";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) => SchemaParts.Pattern(
        $@"^\s*([0-9]+([.][0-9]+)?\s*[A-Z]{{3}}(\s+({string.Join('|', QuantityText.OriginWords)}))?|{SchemaParts.Unknown})\s*$", "string");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out Given<Money> value)
    {
        value = null;
        var rest = scalar.Text.AsSpan().Trim();
        var origin = QuantityText.TakeOrigin(ref rest);
        if (Plain(rest.ToString()) is not { } money)
            return Refuse(SlipOf(rest), scalar, reader);
        if (money.Amount > Most)
            return Refuse(Slips.OutOfBounds, scalar, reader, "correct it, or leave it out when it is not known");
        value = new Given<Money>(money, scalar.Text, origin, null, scalar.At);
        return true;
    }

    /// <summary>The amount of a text; null when it is none.</summary>
    internal static Money? Plain(string text) => Written().Match(text) is { Success: true } match
        ? new Money(decimal.Parse(match.Groups[1].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture), match.Groups[2].Value)
        : null;

    private static Slip SlipOf(ReadOnlySpan<char> text) =>
        text.Contains(',') ? Slips.Comma : decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _) ? Slips.NoUnit : Slips.NotAValue;

    // At most twelve digits, so that the amount always fits.
    [GeneratedRegex(@"^([0-9]{1,12}(?:\.[0-9]{1,6})?)\s*([A-Z]{3})$", RegexOptions.CultureInvariant)]
    private static partial Regex Written();
}
