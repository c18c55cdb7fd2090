using System.Text.Json.Nodes;

namespace Headroom.JobFiles.Fields;

/// <summary>The pieces of a JSON Schema, and the definitions gathered while one is made.</summary>
internal sealed class SchemaParts
{
    /// <summary>A regular expression for the words that say that nobody knows.</summary>
    public const string Unknown = "unknown|[?]";

    /// <summary>The definitions of the things with keys, by what they are called.</summary>
    public SortedDictionary<string, JsonObject?> Definitions { get; } = new(StringComparer.Ordinal);

    /// <summary>A reference to a thing with keys, which is defined once.</summary>
    public JsonObject Object(IObjectShape shape)
    {
        if (Definitions.TryAdd(shape.Noun, null))
            Definitions[shape.Noun] = Define(shape);
        return new JsonObject { ["$ref"] = "#/$defs/" + shape.Noun.Replace(" ", "%20", StringComparison.Ordinal) };
    }

    /// <summary>A map whose keys and values have schemas of their own.</summary>
    public static JsonObject Map(JsonObject keys, JsonObject things) =>
        new() { ["type"] = "object", ["propertyNames"] = keys, ["additionalProperties"] = things };

    /// <summary>Any of several.</summary>
    public static JsonObject AnyOf(IEnumerable<JsonObject> ways) => new() { ["anyOf"] = new JsonArray([.. ways]) };

    /// <summary>One word of a list, or that nobody knows.</summary>
    public static JsonObject OneOf(IReadOnlyList<string> words) =>
        new() { ["enum"] = new JsonArray([.. words.Append("unknown").Append("?").Distinct().Select(word => JsonValue.Create(word))]) };

    /// <summary>A text that matches a regular expression.</summary>
    public static JsonObject Pattern(string pattern, params string[] types) =>
        new() { ["type"] = types.Length == 1 ? types[0] : Types(types), ["pattern"] = pattern };

    /// <summary>Several kinds of JSON value.</summary>
    public static JsonArray Types(params string[] types) => new([.. types.Select(type => JsonValue.Create(type))]);

    private JsonObject Define(IObjectShape shape)
    {
        var properties = new JsonObject();
        foreach (var field in shape.Fields)
        {
            properties[field.Name] = Property(field);
            if (OtherSpelling(field.Name) is { } other)
                properties[other] = Property(field);
        }

        var schema = new JsonObject { ["type"] = "object", ["properties"] = properties, ["additionalProperties"] = false };
        var required = shape.Fields.Where(field => field.IsRequired).Select(field => JsonValue.Create(field.Name)).ToArray();
        if (required.Length > 0)
            schema["required"] = new JsonArray([.. required]);
        return schema;
    }

    private JsonObject Property(Field field)
    {
        var schema = field.Shape.Schema(this);
        schema["description"] = $"{field.Doc} Allowed: {field.Shape.InWords}.";
        schema["examples"] = new JsonArray(field.Example);
        return schema;
    }

    private static string? OtherSpelling(string name) =>
        name.Contains('-') ? name.Replace('-', ' ') : name.Contains(' ') ? name.Replace(' ', '-') : null;
}
