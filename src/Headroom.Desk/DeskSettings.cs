using Headroom.Store;

namespace Headroom.Desk;

/// <summary>How the desk is served.</summary>
/// <param name="Place">Where the jobs are.</param>
/// <param name="Address">Under which address of this machine.</param>
/// <param name="By">Who works at it, until somebody says another name.</param>
public sealed record DeskSettings(StorePlace Place, Uri Address, string By)
{
    /// <summary>Tells the time; that of this machine unless said otherwise.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;
}
