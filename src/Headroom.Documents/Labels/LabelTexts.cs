using Headroom.Documents.Papers;

namespace Headroom.Documents.Labels;

/// <summary>The labels of a design.</summary>
internal static class LabelTexts
{
    /// <summary>All labels of some kinds, in the order of the kinds.</summary>
    public static IReadOnlyList<LabelText> Of(PaperInput input, IReadOnlyList<string> kinds) =>
        [.. LabelPlan.Kinds.Where(kinds.Contains).SelectMany(kind => kind switch { "ports" => Ports(input), "cables" => Cables(input), "units" => Units(input), _ => Closets(input) })];

    // The same name at the outlet and at the panel, each with the place of the other.
    private static IEnumerable<LabelText> Ports(PaperInput input) => input.Results.Bound.Runs.SelectMany(run => new[]
    {
        new LabelText("ports", run.Drop.Id, run.Drop.To is { } to ? [to] : []),
        new LabelText("ports", run.Drop.Id, [run.Drop.From]),
    });

    private static IEnumerable<LabelText> Cables(PaperInput input) => input.Results.Bound.Runs.SelectMany(run => new[]
    {
        new LabelText("cables", run.Drop.Id, run.Drop.To is { } to ? [$"to {to}"] : []),
        new LabelText("cables", run.Drop.Id, [$"from {run.Drop.From}"]),
    });

    private static IEnumerable<LabelText> Units(PaperInput input)
    {
        var names = new DeviceNames(input);
        return PlacedUnit.Of(input).Select(unit => new LabelText("units", unit.Id, [.. new[] { unit.Body?.Id ?? "", names.Address(unit.Id), unit.Where(input.Job) }.Where(line => line.Length > 0)]));
    }

    private static IEnumerable<LabelText> Closets(PaperInput input)
    {
        var bound = input.Results.Bound;
        var spaces = bound.Runs.Select(run => run.Drop.From).Concat(bound.Switches.Select(unit => unit.Space).OfType<string>()).Distinct().ToList();
        return spaces.Select(space => new LabelText("closets", space, [input.Job.Name]))
            .Concat(input.Job.Survey.Racks.Select(rack => new LabelText("closets", rack.Id, [$"rack in {rack.In}"])));
    }
}
