namespace Headroom.Desk.Shown;

/// <summary>Background work as a page shows it.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Job">The job in addresses.</param>
/// <param name="Said">How far it is, in a sentence.</param>
/// <param name="IsOver">True when nothing more will come.</param>
public sealed record TaskModel(long Id, string Job, string Said, bool IsOver);
