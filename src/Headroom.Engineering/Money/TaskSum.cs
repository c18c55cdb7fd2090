namespace Headroom.Engineering.Money;

/// <summary>Hours of one kind of task.</summary>
/// <param name="Task">The task.</param>
/// <param name="Count">How many of it.</param>
/// <param name="Minutes">The mean of one, on a site like most; null when nobody wrote it.</param>
/// <param name="Deviation">Its standard deviation in minutes; null likewise.</param>
public sealed record TaskSum(string Task, int Count, decimal? Minutes, decimal? Deviation);
