using Headroom.Cli.Text;

namespace Headroom.Cli.Json;

/// <summary>A sum that was worked out, as JSON: numbers as worked out, each with its unit, null where there can be none.</summary>
internal static class SumJson
{
    /// <summary>The name of the shape.</summary>
    public const string Format = "headroom-reckon/1";


    /// <summary>Writes it.</summary>
    public static string Write(AnsweredSum answered) => JsonText.Of(json =>
    {
        var answer = answered.Answer;
        json.WriteString("format", Format);
        json.WriteString("sum", answered.Sum.Name);
        json.WriteString("answer", AnsweredSum.Tell(answer.Say, ShownUnits.Metric));
        json.WriteBoolean("holds", answer.Holds);
        json.Each("figures", answer.Figures, figure =>
        {
            json.WriteString("name", figure.Output.Name);
            json.WriteString("what", figure.Output.What);
            json.Number("value", figure.Value);
            json.WriteString("unit", figure.Output.Unit);
        });
        json.Strings("notes", [.. answer.Notes.Select(note => AnsweredSum.Tell(note, ShownUnits.Metric))]);
        json.Each("cautions", answer.Cautions, caution =>
        {
            json.WriteString("code", caution.Code);
            json.WriteString("text", caution.Text);
            json.WriteString("who", caution.Who);
        });
        WorkingJson.Write(json, answered.Working);
    });
}
