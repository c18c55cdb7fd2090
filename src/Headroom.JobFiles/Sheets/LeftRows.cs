namespace Headroom.JobFiles.Sheets;

/// <summary>What is known of rows that could not be taken over.</summary>
internal sealed class LeftRows
{
    private readonly HashSet<string> _texts = new(StringComparer.Ordinal);

    /// <summary>Rows of which nothing is known.</summary>
    public static LeftRows AnyRow { get; } = new() { Anything = true };

    /// <summary>True when whole sheets could not be read, so that any name may stand in them.</summary>
    public bool Anything { get; private init; }

    /// <summary>What stands in their cells.</summary>
    public IReadOnlySet<string> Texts => _texts;

    /// <summary>Notes a row.</summary>
    public void Add(SheetRow row) => _texts.UnionWith(row.Cells.Select(cell => cell.Text));

    /// <summary>Notes a name of which it has been said already that it leads nowhere.</summary>
    public void Add(string name) => _texts.Add(name);

    /// <summary>These rows and those of another sheet.</summary>
    public LeftRows And(LeftRows other)
    {
        var both = new LeftRows { Anything = Anything || other.Anything };
        both._texts.UnionWith(_texts);
        both._texts.UnionWith(other._texts);
        return both;
    }
}
