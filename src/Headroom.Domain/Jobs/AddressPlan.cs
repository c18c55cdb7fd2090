using Headroom.Domain.Addresses;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Jobs;

/// <summary>What addresses the site may use, and how its devices are to be called.</summary>
/// <param name="From">The range that addresses are taken from; null when not written.</param>
/// <param name="Elsewhere">Ranges that are used elsewhere, such as behind a tunnel, and are kept clear.</param>
/// <param name="Six">The range of version 6; null when there is none.</param>
/// <param name="Growth">How much each subnet is to grow, as a share of what it needs today; null when not written.</param>
/// <param name="Names">The firm's pattern for names, such as <c>{role}-{place}-{number}</c>; null when not written.</param>
/// <param name="Suffix">What stands behind every name, such as <c>barn.internal</c>; null when nothing.</param>
/// <param name="Subnets">The subnets, in the order written: a new one at the end moves no other.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record AddressPlan(
    Given<Ip4Range>? From,
    IReadOnlyList<Given<Ip4Range>> Elsewhere,
    Given<Ip6Range>? Six,
    Given<Share>? Growth,
    string? Names,
    string? Suffix,
    IReadOnlyList<Subnet> Subnets,
    Place At);
