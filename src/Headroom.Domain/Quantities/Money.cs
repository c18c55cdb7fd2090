namespace Headroom.Domain.Quantities;

/// <summary>An amount of money in one currency; amounts of two currencies are never added.</summary>
/// <param name="Amount">The amount in major units.</param>
/// <param name="Currency">The three-letter code (ISO 4217).</param>
public readonly record struct Money(decimal Amount, string Currency);
