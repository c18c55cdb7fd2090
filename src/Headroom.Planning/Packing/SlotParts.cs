using Google.OrTools.Sat;

namespace Headroom.Planning.Packing;

/// <summary>The variables of one slot.</summary>
internal sealed class SlotParts(int place)
{
    /// <summary>Where it stands.</summary>
    public int Place { get; } = place;

    /// <summary>What it is.</summary>
    public List<ChosenVar> Chosen { get; } = [];

    /// <summary>What it serves.</summary>
    public List<WayVar> Ways { get; } = [];

    /// <summary>Its links.</summary>
    public List<LinkVar> Links { get; } = [];

    /// <summary>Whether the others of its place link to it; null where nothing is linked.</summary>
    public BoolVar? Head { get; set; }

    /// <summary>The box in a solution; null when the slot is empty.</summary>
    public PackedBox? Packed(CpSolver solver)
    {
        if (Chosen.FirstOrDefault(chosen => solver.Value(chosen.Var) == 1) is not { } box)
            return null;
        var items = Ways.Where(way => way.Box == box.Box && solver.Value(way.Var) > 0).ToDictionary(way => way.Way, way => (int)solver.Value(way.Var));
        var links = Links.Where(link => link.Box == box.Box)
            .Select(link => new PackedLinks(link.Group, (int)solver.Value(link.Inner), (int)solver.Value(link.Outer), (int)solver.Value(link.Backbone)))
            .Where(link => link.Inner + link.Outer + link.Backbone > 0);
        return new(Place, box.Box, items, [.. links]) { IsHead = Head is not null && solver.Value(Head) == 1 };
    }

    /// <summary>That a slot is a box.</summary>
    internal sealed record ChosenVar(int Box, BoolVar Var);

    /// <summary>How many a box serves by one of its ways.</summary>
    internal sealed record WayVar(int Box, int Way, IntVar Var);

    /// <summary>Links on one group of ports.</summary>
    internal sealed record LinkVar(int Box, int Group, IntVar Inner, IntVar Outer, IntVar Backbone);
}
