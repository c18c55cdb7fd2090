using System.Text.Json;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Json;

/// <summary>A working as JSON.</summary>
internal static class WorkingJson
{
    /// <summary>Writes the working into the object at hand.</summary>
    public static void Write(Utf8JsonWriter json, Working working)
    {
        json.WriteStartObject("working");
        json.WriteString("formula", working.Formula);
        json.Each("inputs", working.Inputs, input =>
        {
            json.WriteString("name", input.Name);
            json.Number("value", input.Value);
            json.WriteString("unit", input.Unit);
            json.WriteString("origin", input.Origin);
        });
        json.Each("steps", working.Steps, step =>
        {
            json.WriteString("name", step.Name);
            json.WriteString("sum", step.Sum);
            json.Number("value", step.Value);
            json.WriteString("unit", step.Unit);
        });
        json.WriteString("source", working.Source);
        json.WriteEndObject();
    }
}
