using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Headroom.JobFiles.Catalogues;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Firms;
using Headroom.JobFiles.Jobs;

namespace Headroom.JobFiles;

/// <summary>The JSON Schemas (2020-12) of the files people write, made from the same fields that check them.</summary>
public static class Schemas
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The schema of a job file.</summary>
    /// <returns>The text of the schema, the same each time.</returns>
    public static string Job() => Text("A Headroom job file", JobFields.Shape);

    /// <summary>The schema of a catalogue file.</summary>
    /// <returns>The text of the schema, the same each time.</returns>
    public static string Catalogue() => Text("A Headroom catalogue file", CatalogueFields.Shape);

    /// <summary>The schema of a firm's own file.</summary>
    /// <returns>The text of the schema, the same each time.</returns>
    public static string Firm() => Text("A Headroom firm file", FirmFields.Shape);

    private static string Text(string title, Shape shape)
    {
        var parts = new SchemaParts();
        var root = shape.Schema(parts);
        var definitions = new JsonObject();
        foreach (var (noun, definition) in parts.Definitions)
            definitions[noun] = definition;
        var schema = new JsonObject { ["$schema"] = "https://json-schema.org/draft/2020-12/schema", ["title"] = title };
        foreach (var (key, value) in root.ToList())
            schema[key] = value?.DeepClone();
        schema["$defs"] = definitions;
        return schema.ToJsonString(Indented) + "\n";
    }
}
