namespace Headroom.Desk.Shown;

/// <summary>A field that says where a thing is.</summary>
/// <param name="Name">Its name in the form.</param>
/// <param name="Label">What it is: along, across, port.</param>
/// <param name="Value">What it says.</param>
public sealed record MoveField(string Name, string Label, string Value)
{
    /// <summary>What it says when nothing stands in it; empty for nothing.</summary>
    public string Hint { get; init; } = "";

    /// <summary>What it said when all was well last; null where that is what it says.</summary>
    public string? Good { get; init; }

    /// <summary>The list of values it may take; null where any number will do.</summary>
    public string? List { get; init; }
}
