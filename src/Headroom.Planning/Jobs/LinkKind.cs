namespace Headroom.Planning.Jobs;

/// <summary>Where a link of a switch leads.</summary>
internal enum LinkKind
{
    /// <summary>To the line.</summary>
    Line,

    /// <summary>To another place.</summary>
    Backbone,

    /// <summary>To the head of its place, or from it to the others.</summary>
    Inner,
}
