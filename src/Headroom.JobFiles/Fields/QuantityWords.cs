using System.Text.RegularExpressions;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>Reads values with units, whatever the quantity, and says what is wrong with them.</summary>
internal static class QuantityWords
{
    private const string Number = @"[-+\u2212]?([0-9]+([.][0-9]*)?|[.][0-9]+)";

    /// <summary>What is allowed, in words: <c>a length between 0.1 and 2000 m</c>.</summary>
    public static string Allowed(UnitTable units, Bounds bounds, string unit) =>
        $"{units.What} {bounds.InWords(units.Find(unit) ?? units.Shown)}";

    /// <summary>The regular expression that a value matches, for the schema.</summary>
    public static string Pattern(UnitTable units, bool isRange = false)
    {
        var symbols = units.Units.SelectMany(unit => unit.Aliases.Prepend(unit.Symbol)).Distinct().OrderByDescending(symbol => symbol.Length);
        var second = isRange ? $@"\s*[.][.]\s*{Number}" : $@"(\s*([.][.]|±|\+-|\+/-)\s*{Number})?";
        return $@"^\s*({Number}{second}\s*({string.Join('|', symbols.Select(Escape))})(\s+({string.Join('|', QuantityText.OriginWords)}))?|{SchemaParts.Unknown})\s*$";
    }

    /// <summary>Reads a value and checks both its ends; null when a finding was made.</summary>
    public static Measurement? Measure(YamlScalar scalar, UnitTable units, Bounds bounds, (FieldReader Reader, string Allowed) place)
    {
        if (QuantityText.Measure(scalar.Text, units, out var problem) is not { } found)
        {
            Refuse(scalar, problem!, place.Reader);
            return null;
        }

        if (bounds.Contains(found.Low) && bounds.Contains(found.High))
            return found;
        place.Reader.Refuse(
            Slips.OutOfBounds, scalar.At, Given(scalar, place.Reader), place.Allowed, "correct it, or leave it out when it is not known");
        return null;
    }

    /// <summary>Adds the finding for a text that is no such value.</summary>
    public static void Refuse(YamlScalar scalar, QuantityProblem problem, FieldReader reader) =>
        reader.Refuse(SlipOf(problem.Kind), scalar.At, Given(scalar, reader), problem.Allowed, problem.Advice);

    private static string Given(YamlScalar scalar, FieldReader reader) => $"{reader.Name} is '{Words.Short(scalar.Text)}'";

    private static Slip SlipOf(QuantitySlip kind) => kind switch
    {
        QuantitySlip.UnitMissing => Slips.NoUnit,
        QuantitySlip.UnitUnknown => Slips.OtherUnit,
        QuantitySlip.Comma => Slips.Comma,
        QuantitySlip.Reversed => Slips.Reversed,
        _ => Slips.NotAValue,
    };

    // As the regular expressions of JSON Schema want it: '/' and letters stay, what has a meaning goes into brackets.
    private static string Escape(string symbol) => Regex.Replace(symbol, @"[.*+?()|\[\]{}^$\\]", match => $"[{match.Value}]");
}
