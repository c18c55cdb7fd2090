using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>Lines that are taxed alike.</summary>
/// <param name="Name">The name people say.</param>
/// <param name="Rate">The tax as a share of the price.</param>
public sealed record TaxGroup(string Name, Given<Share> Rate);
