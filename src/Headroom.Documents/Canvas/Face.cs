namespace Headroom.Documents.Canvas;

/// <summary>The letters there are.</summary>
public enum Face
{
    /// <summary>For sentences and tables.</summary>
    Plain,

    /// <summary>For the figure that matters and for headings.</summary>
    Strong,

    /// <summary>For questions and for where something comes from.</summary>
    Slanted,

    /// <summary>For workings, where units stand under each other.</summary>
    Mono,
}
