using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json.Nodes;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>Mains circuits as people say them: <c>3 circuits of 16 A</c>, <c>1 circuit of 32 A three-phase</c>.</summary>
internal sealed class MainsCircuitsShape : ScalarShape<MainsCircuits>
{
    private const int Most = 200;
    private const string ThreePhase = "three-phase";

    /// <inheritdoc/>
    public override string InWords => $"1 to {Most} circuits with their rating, such as '3 circuits of 16 A', with 'three-phase' behind it where they are";

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaParts parts) =>
        SchemaParts.Pattern($@"^\s*[0-9]+\s+circuits?(\s+of\s+[0-9.]+\s*(A|mA)(\s+[a-z]+)?)?(\s+{ThreePhase})?\s*$", "string");

    /// <inheritdoc/>
    protected override bool ReadText(YamlScalar scalar, FieldReader reader, [MaybeNullWhen(false)] out MainsCircuits value)
    {
        value = null;
        var text = scalar.Text.AsSpan().Trim();
        var threePhase = text.EndsWith(ThreePhase, StringComparison.Ordinal);
        if (threePhase)
            text = text[..^ThreePhase.Length].TrimEnd();
        var word = text.IndexOf("circuit", StringComparison.Ordinal);
        if (word <= 0 || !int.TryParse(text[..word].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var count))
            return Refuse(Slips.NotAValue, scalar, reader);
        if (count is < 1 or > Most)
            return Refuse(Slips.OutOfBounds, scalar, reader, "correct the number");
        if (!Rating(text[(word + "circuit".Length)..], scalar, reader, out var rating))
            return false;
        value = new MainsCircuits(count, rating, threePhase);
        return true;
    }

    private bool Rating(ReadOnlySpan<char> rest, YamlScalar scalar, FieldReader reader, out Given<Amperes>? rating)
    {
        rating = null;
        rest = rest.TrimStart('s').Trim();
        if (rest.IsEmpty)
            return true;
        if (!rest.StartsWith("of ", StringComparison.Ordinal))
            return Refuse(Slips.NotAValue, scalar, reader);
        var amperes = new YamlScalar(rest[3..].Trim().ToString(), scalar.Style, scalar.At, (scalar.Start, scalar.End));
        return Sensible.Mains.Read(amperes, reader, out rating);
    }
}
