namespace Headroom.Domain.Ledgers;

/// <summary>What an entry comes to. The order is from good to bad.</summary>
public enum Verdict
{
    /// <summary>The limit holds and the reserve is kept; exactly kept counts as kept.</summary>
    Clear,

    /// <summary>Inside the limit, but not inside the reserve.</summary>
    Tight,

    /// <summary>An input is missing.</summary>
    Unknown,

    /// <summary>Beyond the limit.</summary>
    Short,
}
