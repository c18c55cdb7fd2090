namespace Headroom.Engineering.Years;

/// <summary>What was added of one kind, by some moment.</summary>
/// <param name="Name">The kind or model, as the policy calls it.</param>
/// <param name="Before">How many there are today.</param>
/// <param name="Count">How many were added since.</param>
/// <param name="Like">The device that the added ones are like: its model, its run, its traffic; null where there is none: then no run is known.</param>
/// <param name="Model">The model of the added ones; null when not known: then none could be added.</param>
/// <param name="WithoutPort">Added ones with a supply of their own for which no port of a switch is free.</param>
public sealed record AddedDevices(string Name, int Before, int Count, string? Like, string? Model, int WithoutPort);
