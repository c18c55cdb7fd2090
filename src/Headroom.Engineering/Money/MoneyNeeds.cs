namespace Headroom.Engineering.Money;

/// <summary>What the study of money takes from those before it.</summary>
/// <param name="Cables">The cable that is bought.</param>
/// <param name="MainsWatts">What the units take from the mains in an ordinary hour together [W]; null when not known.</param>
public sealed record MoneyNeeds(IReadOnlyList<LaidCable> Cables, double? MainsWatts);
