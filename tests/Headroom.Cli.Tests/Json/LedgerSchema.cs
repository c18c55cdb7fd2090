using System.Text.Json;
using Json.Schema;

namespace Headroom.Cli.Tests;

/// <summary>Holds JSON against the schema that is shipped.</summary>
internal static class LedgerSchema
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(File.ReadAllText(Repository.PathOf("docs/schema/ledger.schema.json")));

    /// <summary>What the schema has against it; empty when nothing.</summary>
    public static string Faults(string json)
    {
        using var document = JsonDocument.Parse(json);
        var result = Schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        if (result.IsValid)
            return "";
        var details = (result.Details ?? []).Where(detail => detail.Errors is not null);
        return string.Join('\n', details.Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Values)}").DefaultIfEmpty("refused"));
    }
}
