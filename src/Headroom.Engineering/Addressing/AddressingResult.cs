using Headroom.Domain.Jobs;
using Headroom.Engineering.Binding;

namespace Headroom.Engineering.Addressing;

/// <summary>Everything the study of addresses worked out.</summary>
/// <param name="Bound">The design it was worked out for.</param>
/// <param name="Plan">What the site may use.</param>
/// <param name="Subnets">The subnets, in the order written.</param>
/// <param name="Homeless">Devices for which no subnet is.</param>
/// <param name="NamesClashing">Names that two devices would have, with their ids.</param>
/// <param name="NamesWrong">Names that no host may have, with what is wrong.</param>
public sealed record AddressingResult(
    BoundDesign Bound,
    AddressPlan Plan,
    IReadOnlyList<AddressedSubnet> Subnets,
    IReadOnlyList<string> Homeless,
    IReadOnlyList<(string Name, string Ids)> NamesClashing,
    IReadOnlyList<(string Name, string Why)> NamesWrong);
