using System.Globalization;
using System.Text;
using Headroom.Domain.Jobs;

namespace Headroom.JobFiles.Editing;

/// <summary>Writes a design that says what differs from another as it stands in a job file.</summary>
public static class DesignText
{
    private const string Uplinks = "uplinks";

    // Where what is taken away stood.
    private static readonly (string Key, Func<Design, IEnumerable<string>> Ids)[] Sections =
    [
        ("switches", design => design.Switches.Select(unit => unit.Id)), ("injectors", design => design.Injectors.Select(unit => unit.Id)), ("standby", design => design.Standby.Select(unit => unit.Id)),
        ("fittings", design => design.Fittings.Select(fitting => fitting.Id)), ("patch", design => design.Patch.Select(patch => patch.What)), (Uplinks, _ => [Uplinks]),
    ];

    /// <summary>The text below the id of the design: sections in lines, each unit in braces.</summary>
    /// <param name="design">The design, as written and not whole. It takes nothing away and has no fittings.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentException">It takes something away or has fittings, which cannot be written here.</exception>
    public static string Of(Design design) => Of(design, null);

    /// <summary>True when it can be written: it has no fittings of its own, and all that it takes away is of the design it is like.</summary>
    /// <param name="design">The design, as written and not whole.</param>
    /// <param name="under">The design it is like, whole; null for none.</param>
    public static bool CanWrite(Design design, Design? under) => design.Fittings.Count == 0 && design.Removed.All(id => under is not null && Sections.Any(section => section.Ids(under).Contains(id)));

    /// <summary>The text below the id of a design that may take something away, which is written as <c>none</c> behind its name.</summary>
    /// <param name="design">The design, as written and not whole. It has no fittings.</param>
    /// <param name="under">The design it is like, whole; null for none.</param>
    /// <returns>The text.</returns>
    /// <exception cref="ArgumentException">It cannot be written, as <see cref="CanWrite"/> says.</exception>
    public static string Of(Design design, Design? under)
    {
        if (!CanWrite(design, under))
            throw new ArgumentException("a design that has fittings, or takes away what the design it is like has not, is not written here", nameof(design));
        List<(string Id, string Value)> With(string key, IEnumerable<(string, string)> things) =>
            [.. design.Removed.Where(id => Sections.First(section => section.Ids(under!).Contains(id)).Key == key).Select(id => (id, "none")), .. things];
        var text = new StringBuilder();
        if (design.Like is { } like)
            text.Append("like: ").Append(YamlWriter.Text(like)).Append('\n');
        Section(text, "switches", 0, With("switches", design.Switches.Select(unit => (unit.Id, UnitText.Of(unit)))));
        Section(text, "injectors", 0, With("injectors", design.Injectors.Select(unit => (unit.Id, UnitText.Of(unit)))));
        Section(text, "standby", 0, With("standby", design.Standby.Select(unit => (unit.Id, UnitText.Of(unit)))));
        Section(text, "fittings", 0, With("fittings", []));
        if (design.Uplinks is { } uplinks)
            text.Append("uplinks: [").AppendJoin(", ", uplinks.Select(UnitText.Of)).Append("]\n");
        else if (design.Removed.Contains(Uplinks))
            text.Append("uplinks: none\n");
        Section(text, "patch", 0, With("patch", design.Patch.Select(patch => (patch.What, patch.To.ToString()))));
        if (design.Building is { } building)
            Building(text, building);
        return text.ToString();
    }

    /// <summary>A link on one line.</summary>
    /// <param name="link">The link.</param>
    public static string Link(Uplink link) => UnitText.Of(link);

    private static void Building(StringBuilder text, BuildingChange building)
    {
        text.Append("building:\n");
        Section(text, "drops", 2, [.. building.Drops.Select(change => (change.Id, ChangeText.Of(change)))]);
        Section(text, "pathways", 2, [.. building.Pathways.Select(change => (change.Id, ChangeText.Of(change)))]);
        Section(text, "spaces", 2, [.. building.Spaces.Select(change => (change.Id, ChangeText.Of(change)))]);
        Section(text, "partitions", 2, [.. building.Partitions.Select(change => (change.Id, ChangeText.Of(change)))]);
        Section(text, "racks", 2, [.. building.Racks.Select(change => (change.Id, ChangeText.Of(change)))]);
        Section(text, "lines", 2, [.. building.Lines.Select(change => (change.Id, ChangeText.Of(change)))]);
        Section(text, "endpoints", 2, [.. building.Endpoints.Select(change => (change.Id, ChangeText.Of(change)))]);
    }

    private static void Section(StringBuilder text, string key, int depth, List<(string Id, string Value)> things)
    {
        if (things.Count == 0)
            return;
        text.Append(CultureInfo.InvariantCulture, $"{new string(' ', depth)}{key}:\n");
        foreach (var (id, value) in things)
            text.Append(CultureInfo.InvariantCulture, $"{new string(' ', depth + 2)}{YamlWriter.Text(id)}: {value}\n");
    }
}
