namespace Headroom.Engineering.Power;

/// <summary>Asked and given on each pairset of a device with two signatures, in tenths of a watt, 0 to 65535.</summary>
/// <param name="RequestedTenthsA">Asked for on mode A.</param>
/// <param name="RequestedTenthsB">Asked for on mode B.</param>
/// <param name="AllocatedTenthsA">Given on alternative A.</param>
/// <param name="AllocatedTenthsB">Given on alternative B.</param>
public sealed record DualPower(int RequestedTenthsA, int RequestedTenthsB, int AllocatedTenthsA, int AllocatedTenthsB);
