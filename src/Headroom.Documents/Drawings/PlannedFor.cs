namespace Headroom.Documents.Drawings;

/// <summary>What of the planner a drawing shows.</summary>
public enum PlannedFor
{
    /// <summary>Designs to choose between.</summary>
    Designs,

    /// <summary>Values at which the cheapest design changes.</summary>
    Turns,
}
