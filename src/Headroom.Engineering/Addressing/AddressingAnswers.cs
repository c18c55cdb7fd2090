using Headroom.Domain.Ledgers;

namespace Headroom.Engineering.Addressing;

/// <summary>Answers the questions people ask about addresses.</summary>
internal static class AddressingAnswers
{
    /// <summary>The answers for every subnet with a range.</summary>
    public static IEnumerable<Answer> Of(AddressingResult result)
    {
        foreach (var subnet in result.Subnets)
        {
            if (subnet.Range is not { } range)
                continue;
            yield return new Answer(subnet.Subnet.Id, "Which addresses?", $"{range}, mask {range.Mask}{(subnet.Subnet.Vlan is { } vlan ? $", number {vlan} on the switches" : "")}; router {subnet.Router}"
                + $"{(subnet.Pool is { } pool ? $"; lent out {pool.First} to {pool.Last}" : "")}{(subnet.Six is { } six ? $"; version 6 {six}" : "")}.");
            if (subnet.Devices.Count > 0)
                yield return new Answer(subnet.Subnet.Id, "Which device has which?", $"{string.Join(", ", subnet.Devices.Select(Told))}.");
        }
    }

    private static string Told(AddressedDevice device) => $"{device.Id}{(device.Name is { } name ? $" ({name})" : "")} {device.Address?.ToString() ?? "none left"}";
}
