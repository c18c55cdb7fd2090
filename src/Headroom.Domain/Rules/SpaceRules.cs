using System.Globalization;
using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Rules;

/// <summary>What stands somewhere fits there.</summary>
internal static class SpaceRules
{
    // One rack unit, IEC 60297: 44.45 mm.
    private const double MetresPerUnit = 0.04445;

    /// <summary>Checks the sizes of the survey and that listeners and racks fit their spaces.</summary>
    public static void Check(JobNames names, Slips slips)
    {
        foreach (var space in names.Job.Survey.Spaces)
            Extent(space, slips);
        foreach (var rack in names.Job.Survey.Racks)
            Rack(rack, names, slips);
        foreach (var pathway in names.Job.Survey.Pathways)
        {
            Positive(pathway.Inside?.Value.Value, $"inside of pathway {pathway.Id}", pathway.Inside?.At ?? pathway.At, slips);
            Positive(pathway.Area?.Value.Value, $"area of pathway {pathway.Id}", pathway.Area?.At ?? pathway.At, slips);
        }

        foreach (var listener in names.Job.Survey.Listeners)
        {
            if (names.Spaces.TryGetValue(listener.In, out var space))
                Inside(listener.Spot, space, $"listener {listener.Id}", slips);
        }
    }

    /// <summary>Checks that a spot lies in its space.</summary>
    /// <param name="spot">The spot; null when not surveyed.</param>
    /// <param name="space">The space.</param>
    /// <param name="who">Who or what is there.</param>
    /// <param name="slips">Where the finding goes.</param>
    public static void Inside(Given<Spot>? spot, Space space, string who, Slips slips)
    {
        if (spot is null || space.Size is not { } size)
            return;
        Along("x", (spot.Value.X, size.Value.Length, "long"), (spot, space, who), slips);
        Along("y", (spot.Value.Y, size.Value.Width, "wide"), (spot, space, who), slips);
        Along("z", (spot.Value.Z, size.Value.Height, "high"), (spot, space, who), slips);
    }

    private static void Along(
        string axis, (double Is, double Most, string Way) along, (Given<Spot> Spot, Space Space, string Who) what, Slips slips)
    {
        // A hair's breadth for binary digits: 0.1 + 0.2 is not outside 0.3.
        if (along.Is >= -1e-9 && along.Is <= along.Most + 1e-9)
            return;
        var said = new Said(
            $"{what.Who} is at {axis} = {Show(along.Is)} m in {what.Space.Id}",
            $"{what.Space.Id} is {Show(along.Most)} m {along.Way} ({what.Space.Size!.Written}), so {axis} lies between 0 and {Show(along.Most)} m",
            "Correct the spot or the size of the space.");
        slips.Add(RuleCodes.OutsideSpace, what.Spot.At, said);
    }

    private static void Extent(Space space, Slips slips)
    {
        if (space.Size is not { } size)
            return;
        Positive(size.Value.Length, $"length of space {space.Id}", size.At, slips);
        Positive(size.Value.Width, $"width of space {space.Id}", size.At, slips);
        Positive(size.Value.Height, $"height of space {space.Id}", size.At, slips);
    }

    private static void Rack(Rack rack, JobNames names, Slips slips)
    {
        Positive(rack.Height?.Value.Value, $"height of rack {rack.Id}", rack.Height?.At ?? rack.At, slips);
        Positive(rack.Depth?.Value.Value, $"depth of rack {rack.Id}", rack.Depth?.At ?? rack.At, slips);
        if (rack.Height is not { } height || names.Spaces.GetValueOrDefault(rack.In)?.Size is not { } size)
            return;
        var metres = height.Value.Value * MetresPerUnit;
        if (metres <= size.Value.Height)
            return;
        var said = new Said(
            $"rack {rack.Id} is {height.Written} high, which is {Show(metres)} m",
            $"{rack.In} is {Show(size.Value.Height)} m high ({size.Written})",
            "Correct the height of the rack or the size of the space.");
        slips.Add(RuleCodes.RackTooTall, height.At, said);
    }

    private static void Positive(double? value, string what, Place at, Slips slips)
    {
        if (value is null or > 0)
            return;
        slips.Add(
            RuleCodes.NoExtent,
            at,
            new($"the {what} is {value.Value.ToString(CultureInfo.InvariantCulture)}", "it is more than 0", "Measure it, or leave it out when it is not known."));
    }

    private static string Show(double metres) => QuantityText.Show(metres);
}
