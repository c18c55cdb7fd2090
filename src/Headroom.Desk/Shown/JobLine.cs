namespace Headroom.Desk.Shown;

/// <summary>A job in the list of jobs.</summary>
/// <param name="Id">The job in addresses.</param>
/// <param name="Name">The name people say.</param>
/// <param name="Changed">When it was changed last, and by whom.</param>
/// <param name="Revision">Its last revision.</param>
/// <param name="Worst">Its worst entry; null when nothing is worked out.</param>
/// <param name="Next">What to do next.</param>
/// <param name="Money">What the offer comes to; empty when not known.</param>
public sealed record JobLine(string Id, string Name, string Changed, int Revision, KeptRow? Worst, string Next, string Money);
