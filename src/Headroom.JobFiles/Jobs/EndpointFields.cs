using Headroom.JobFiles.Catalogues;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Jobs;

/// <summary>What is connected.</summary>
internal static class EndpointFields
{
    private static readonly Field<string> Model = new("model", Shapes.Name("an endpoint model"), "The model in the catalogue; counted ones have it in their key.", "phone");

    private static readonly Field<IReadOnlyList<string>> Drop = new(
        "drop", new NamesShape("a drop"), "The drop it hangs on; a range of endpoints has a range of drops, one each.", "K-01");

    private static readonly Field<string> Near = new("near", Shapes.Name("a space"), "The space it is in or near, for those without a drop.", "reception");

    private static readonly Field<string> Mode = new(
        "mode", Shapes.Words([.. DrawFields.All.Select(state => state.Name)]), "The state it stays in, where it never leaves it.", "night");

    private static readonly Field<string> Hardware = new("hardware", Shapes.Text, "Its hardware address.", "02:00:5e:10:00:01");

    private static readonly ObjectShape<EndpointDraft> Keys = new("endpoint", [Model, Drop, Near, Mode, .. DrawFields.All, Hardware, TrafficFields.Traffic, RecorderFields.Recorder], Build)
    {
        About = "Something that is connected. Where a draw is written here, it stands in place of the model's.",
    };

    /// <summary>The endpoints by name, or counted by model.</summary>
    public static MapShape<EndpointKey, EndpointDraft> Map { get; } = new(
        "endpoint",
        new EndpointKeyShape(),
        new EitherShape<EndpointDraft>(
            (node => node is YamlMap, Keys),
            (node => node is YamlScalar { IsEmpty: true }, new NothingShape<EndpointDraft>(EndpointDraft.Of(null))),
            (_ => true, new As<string, EndpointDraft>(Shapes.Name("an endpoint model"), (model, _) => EndpointDraft.Of(model)))))
    {
        KeyExample = "ap-1",
    };

    private static EndpointDraft Build(Values values) => new(
        values.Get(Model), values.List(Drop), values.Get(Near), values.Get(Mode), DrawFields.Build(values), values.Get(Hardware))
    {
        Traffic = values.Get(TrafficFields.Traffic),
        Recorder = values.Get(RecorderFields.Recorder),
    };
}
