namespace Headroom.Store;

/// <summary>A job in the store.</summary>
/// <param name="Id">Its name in addresses and commands.</param>
/// <param name="Name">The name people say.</param>
/// <param name="Head">The number of its last revision, from 1.</param>
/// <param name="Changed">When that was made.</param>
/// <param name="By">Who made it.</param>
public sealed record StoredJob(string Id, string Name, int Head, DateTimeOffset Changed, string By);
