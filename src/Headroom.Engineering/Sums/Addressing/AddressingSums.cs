namespace Headroom.Engineering.Sums.Addressing;

/// <summary>The sums of addresses.</summary>
internal static class AddressingSums
{
    /// <summary>The name of the discipline.</summary>
    public const string Discipline = "addressing";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Sum> All => [SubnetFor.Sum, AddressesToLend.Sum];
}
