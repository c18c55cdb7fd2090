namespace Headroom.Domain.Ledgers;

/// <summary>Which way a limit works.</summary>
public enum Sense
{
    /// <summary>The demand may be at most the limit.</summary>
    AtMost,

    /// <summary>The limit is what is there, the demand what is needed at least.</summary>
    AtLeast,
}
