namespace Headroom.Documents.Canvas;

/// <summary>Which end of a text stands at its place.</summary>
public enum Anchor
{
    /// <summary>Its beginning.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}
