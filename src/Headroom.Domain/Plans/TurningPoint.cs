namespace Headroom.Domain.Plans;

/// <summary>The value of something at which the cheapest design changes.</summary>
/// <param name="On">What is turned, as asked for: <c>draw:bulrush</c>.</param>
/// <param name="What">What that is, in words: what each bulrush draws at its most.</param>
/// <param name="Unit">The unit of its values.</param>
/// <param name="Now">Its value today.</param>
/// <param name="Up">True towards higher values.</param>
/// <param name="At">The last value at which the design of today is still the cheapest; null when it does not change on the way looked at.</param>
/// <param name="Looked">How far was looked.</param>
/// <param name="Bought">What is bought today, in words.</param>
/// <param name="Total">What that costs in all.</param>
/// <param name="Then">What is bought beyond; null when it does not change, or when nothing does then.</param>
/// <param name="ThenTotal">What that costs in all.</param>
/// <param name="Proved">True when each design on the way was proved the cheapest.</param>
/// <param name="Points">Each value that was worked out with what the cheapest design then costs, in the order of the values; null where there is none.</param>
public sealed record TurningPoint(
    string On,
    string What,
    string Unit,
    double Now,
    bool Up,
    double? At,
    double Looked,
    string Bought,
    decimal Total,
    string? Then,
    decimal? ThenTotal,
    bool Proved,
    IReadOnlyList<TurnValue> Points);
