namespace Headroom.Engineering.Power;

/// <summary>What the standard makes a source do with what it sees on the pairs.</summary>
public enum SourceAnswer
{
    /// <summary>It must accept.</summary>
    Accepts,

    /// <summary>It must reject.</summary>
    Rejects,

    /// <summary>It may do either; equipment differs.</summary>
    Either,
}
