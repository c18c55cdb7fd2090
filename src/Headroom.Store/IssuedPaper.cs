namespace Headroom.Store;

/// <summary>A paper that was made and kept as it went out.</summary>
/// <param name="Id">Its number in the store.</param>
/// <param name="Job">The id of the job.</param>
/// <param name="Revision">The revision it was made of.</param>
/// <param name="Design">The design.</param>
/// <param name="Name">The name of its file.</param>
/// <param name="Title">Its title.</param>
/// <param name="At">When it was made.</param>
/// <param name="By">Who made it.</param>
/// <param name="Size">How long it is [bytes].</param>
public sealed record IssuedPaper(long Id, string Job, int Revision, string Design, string Name, string Title, DateTimeOffset At, string By, long Size);
