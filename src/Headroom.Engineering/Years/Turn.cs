using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Years;

/// <summary>An entry that becomes worse.</summary>
/// <param name="Entry">The entry as it is then.</param>
/// <param name="Year">In which year from today, 1 for the first.</param>
/// <param name="On">The day up to which it has happened: the end of the year, or of the month where that was looked for.</param>
/// <param name="Before">Its verdict a year before; null when there was no such entry.</param>
/// <param name="LeftBefore">What was left of it a year before [unit of the entry]; null when not known.</param>
/// <param name="By">The changes each of which is enough for it; none where only all of them together are.</param>
public sealed record Turn(LedgerEntry Entry, int Year, DateOnly On, Verdict? Before, double? LeftBefore, Change By);
