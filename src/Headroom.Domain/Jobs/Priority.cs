namespace Headroom.Domain.Jobs;

/// <summary>Who is served first and dropped last (IEEE 802.3 clause 79 and RFC 3621 have the same three).</summary>
public enum Priority
{
    /// <summary>Served first.</summary>
    Critical,

    /// <summary>Served after the critical ones.</summary>
    High,

    /// <summary>Served last; the way a port is when nobody says otherwise.</summary>
    Low,
}
