using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>Mains circuits of one kind beside a pathway.</summary>
/// <param name="Count">How many; 1 or more.</param>
/// <param name="Rating">What each is rated for [A]; null when not written.</param>
/// <param name="ThreePhase">True for three-phase circuits.</param>
public sealed record MainsCircuits(int Count, Given<Amperes>? Rating, bool ThreePhase);
