using System.Text.Json;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Sums;

namespace Headroom.Cli.Json;

/// <summary>All sums described as JSON, so that a program or a page can ask for inputs, check them and start the sum.</summary>
internal static class SumListJson
{
    /// <summary>The name of the shape.</summary>
    public const string Format = "headroom-sums/1";

    /// <summary>Writes them.</summary>
    public static string Write(IReadOnlyList<Sum> sums) => JsonText.Of(json =>
    {
        json.WriteString("format", Format);
        json.Each("sums", sums, sum => WriteSum(json, sum));
    });

    private static void WriteSum(Utf8JsonWriter json, Sum sum)
    {
        json.WriteString("name", sum.Name);
        json.WriteString("discipline", sum.Discipline);
        json.WriteString("answers", sum.Answers);
        json.Each("inputs", sum.Inputs, input => WriteInput(json, input));
        json.Each("outputs", sum.Outputs, output =>
        {
            json.WriteString("name", output.Name);
            json.WriteString("what", output.What);
            json.WriteString("unit", output.Unit);
        });
        json.WriteString("formula", sum.Formula);
        json.WriteString("source", sum.Source);
        json.WriteString("example", sum.Example);
    }

    private static void WriteInput(Utf8JsonWriter json, SumInput input)
    {
        json.WriteString("name", input.Name);
        json.WriteString("meaning", input.Meaning);
        json.WriteString("allowed", input.Allowed);
        json.WriteBoolean("mustBeGiven", input.MustBeGiven);
        json.WriteString("default", input.Default);
        switch (input)
        {
            case QuantityInput quantity:
                WriteQuantity(json, quantity);
                break;
            case NumberInput number:
                json.WriteString("kind", number.IsWhole ? "whole" : "number");
                json.Number("least", number.Bounds.Least);
                json.Number("most", number.Bounds.Most);
                break;
            case WordInput word:
                json.WriteString("kind", "word");
                json.Strings("words", word.Choices);
                break;
        }
    }

    // Least and most in the unit named; every unit that may be written stands beside it.
    private static void WriteQuantity(Utf8JsonWriter json, QuantityInput input)
    {
        json.WriteString("kind", input.IsList ? "list" : "quantity");
        json.WriteString("quantity", input.Units.What);
        json.WriteString("unit", input.Unit.Symbol);
        json.Strings("units", [.. input.Units.Units.Select(unit => unit.Symbol)]);
        json.Number("least", Rounded(input.Bounds.Least, input.Unit));
        json.Number("most", Rounded(input.Bounds.Most, input.Unit));
    }

    // To and fro between units leaves a last binary digit that nobody wrote.
    private static double Rounded(double value, Unit unit) => Math.Round(unit.FromBase(value), 9);
}
