using Headroom.Domain.Addresses;

namespace Headroom.Engineering.Addressing;

/// <summary>A device with its address and name.</summary>
/// <param name="Id">The id people say.</param>
/// <param name="Address">Its address; null when its subnet found no place or is full.</param>
/// <param name="Name">Its host name by the firm's pattern; null without a pattern.</param>
public sealed record AddressedDevice(string Id, Ip4? Address, string? Name);
