using System.Text.Json;
using Json.Schema;

namespace Headroom.Cli.Tests;

/// <summary>Holds JSON against the schemas that are shipped.</summary>
internal static class ShippedSchema
{
    private static readonly Dictionary<string, Lazy<JsonSchema>> Schemas = new[] { "ledger", "reckon", "compare", "jobs", "record", "remedies", "restart", "years", "acceptance", "plan", "turn" }.ToDictionary(
        name => name, name => new Lazy<JsonSchema>(() => JsonSchema.FromText(File.ReadAllText(Repository.PathOf($"docs/schema/{name}.schema.json")))));

    /// <summary>What a schema has against it; empty when nothing.</summary>
    public static string Faults(string schema, string json)
    {
        using var document = JsonDocument.Parse(json);
        var result = Schemas[schema].Value.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        if (result.IsValid)
            return "";
        var details = (result.Details ?? []).Where(detail => detail.Errors is not null);
        return string.Join('\n', details.Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Values)}").DefaultIfEmpty("refused"));
    }
}
