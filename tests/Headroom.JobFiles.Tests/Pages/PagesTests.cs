using System.Text.Json.Nodes;
using Headroom.JobFiles.Yaml;
using Json.Schema;

namespace Headroom.JobFiles.Tests.Pages;

/// <summary>Schema and manual come from the fields that check: the committed pages are up to date, and agree with the reader.</summary>
public sealed class PagesTests
{
    public static TheoryData<string> Pages => new("job-file.md", "catalogue.md", "findings.md", "record-sheets.md", "firm.md", "schema/job.schema.json", "schema/catalogue.schema.json", "schema/firm.schema.json");

    private static string Text(string page) => page switch
    {
        "job-file.md" => Manual.JobFile(),
        "catalogue.md" => Manual.Catalogue(),
        "findings.md" => Manual.Findings(),
        "record-sheets.md" => Manual.Record(),
        "firm.md" => Manual.Firm(),
        "schema/job.schema.json" => Schemas.Job(),
        "schema/firm.schema.json" => Schemas.Firm(),
        _ => Schemas.Catalogue(),
    };

    [Theory, MemberData(nameof(Pages))]
    public void A_committed_page_is_what_the_fields_say(string page)
    {
        var path = Path.Combine(Repository.Root, "docs", page);
        if (Environment.GetEnvironmentVariable("HEADROOM_ACCEPT") == "1")
            File.WriteAllText(path, Text(page));
        Assert.True(File.Exists(path) && File.ReadAllText(path).ReplaceLineEndings("\n") == Text(page), $"docs/{page} is stale: run the tests once with HEADROOM_ACCEPT=1 and look at what changed");
    }

    [Fact]
    public void Every_code_stands_once_on_the_page_of_findings() =>
        Assert.Equal(Manual.Codes().Count(), Manual.Codes().Select(code => code.Code).Distinct().Count());

    [Fact]
    public void The_examples_of_the_manual_are_read_without_a_finding()
    {
        var catalogue = CatalogueFiles.ReadShipped().Value!;
        Assert.DoesNotContain(JobFile.Parse(Block(Manual.JobFile()), "job.yaml", catalogue).Findings, f => f.Severity == Domain.Findings.Severity.Error);
        Assert.Empty(CatalogueFiles.Parse(Block(Manual.Catalogue()), "own.yaml", catalogue).Findings);
    }

    [Fact]
    public void The_schema_accepts_every_shipped_file()
    {
        var job = JsonSchema.FromText(Schemas.Job());
        Assert.All(Directory.GetFiles(Path.Combine(Repository.Root, "examples"), "job.yaml", SearchOption.AllDirectories), file => Assert.True(Valid(job, File.ReadAllText(file)), file));
        Assert.True(Valid(JsonSchema.FromText(Schemas.Firm()), File.ReadAllText(Path.Combine(Repository.Root, "examples", "firm.yaml"))));
        var catalogue = JsonSchema.FromText(Schemas.Catalogue());
        Assert.All(Directory.GetFiles(Path.Combine(Repository.Root, "catalogue"), "*.yaml"), file => Assert.True(Valid(catalogue, File.ReadAllText(file)), file));
    }

    [Theory]
    [InlineData("headroom: 1\njob: x\nsurvey: {drops: {K-1: {from: a, length: 90}}}\n")]
    [InlineData("headroom: 1\njob: x\nsurvey: {drops: {K-1: {from: a, lenght: 90 m}}}\n")]
    [InlineData("headroom: 1\njob: x\nsurvey: {spaces: {a: {kind: kichen}}}\n")]
    [InlineData("job: x\n")]
    public void The_schema_refuses_what_the_reader_refuses(string text)
    {
        Assert.False(JobFile.Parse(text, "job.yaml", null).Ok);
        Assert.False(Valid(JsonSchema.FromText(Schemas.Job()), text));
    }

    private static bool Valid(JsonSchema schema, string yaml) =>
        schema.Evaluate(System.Text.Json.JsonDocument.Parse(Node(YamlText.Parse(yaml, "x").Value!)?.ToJsonString() ?? "null").RootElement).IsValid;

    private static JsonNode? Node(YamlNode node) => node switch
    {
        YamlMap map => new JsonObject(map.Entries.Select(entry => KeyValuePair.Create(entry.Key.Text, Node(entry.Value)))),
        YamlList list => new JsonArray([.. list.Items.Select(Node)]),
        YamlScalar { IsEmpty: true } => null,
        YamlScalar scalar => Plain(scalar),
        _ => null,
    };

    // As an editor's YAML reader would type it: plain numbers and yes/no are no texts.
    private static JsonValue Plain(YamlScalar scalar) =>
        scalar.Style == YamlStyle.Plain && long.TryParse(scalar.Text, System.Globalization.CultureInfo.InvariantCulture, out var number) ? JsonValue.Create(number) : JsonValue.Create(scalar.Text);

    private static string Block(string page)
    {
        var start = page.IndexOf("```yaml\n", StringComparison.Ordinal) + 8;
        return page[start..page.IndexOf("```", start, StringComparison.Ordinal)];
    }
}
