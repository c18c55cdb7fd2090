using Headroom.JobFiles.Catalogues;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Jobs;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Tests.Fields;

/// <summary>The example that the manual, the schema and messages show for a field is taken by the field itself.</summary>
public sealed class FieldExampleTests
{
    public static TheoryData<string, string> Examples => [.. Fields().Select(one => (one.Key, one.Field.Example))];

    [Theory, MemberData(nameof(Examples))]
    public void The_example_of_a_field_is_taken_by_the_field(string field, string example)
    {
        var reader = new FieldReader("JOB");
        var node = YamlText.Parse($"{field[(field.LastIndexOf('/') + 1)..]}: {example}\n", "example").Value as YamlMap;
        Assert.NotNull(node);
        using var step = reader.Into("the example");
        Fields().First(one => one.Key == field).Field.Read(node.Entries[0].Value, reader);
        Assert.Equal("", string.Join('\n', reader.Findings));
    }

    [Fact]
    public void There_are_fields_to_look_at() => Assert.True(Fields().Count() > 150, $"only {Fields().Count()}");

    private static IEnumerable<(string Key, Field Field)> Fields() =>
        Things(JobFields.Shape, []).Concat(Things(CatalogueFields.Shape, [])).SelectMany(thing => thing.Fields.Select(field => ($"{thing.Noun}/{field.Name}", field))).DistinctBy(one => one.Item1);

    private static IEnumerable<IObjectShape> Things(Shape shape, HashSet<Shape> seen)
    {
        if (!seen.Add(shape))
            yield break;
        if (shape is IObjectShape thing)
            yield return thing;
        foreach (var inner in shape.Parts.SelectMany(part => Things(part, seen)))
            yield return inner;
    }
}
