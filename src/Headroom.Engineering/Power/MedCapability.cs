namespace Headroom.Engineering.Power;

/// <summary>What an LLDP-MED device is able to tell. Source: TIA-1057, 10.2.2, from memory; one value decoded by an independent program.</summary>
[Flags]
public enum MedCapability
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>These capabilities.</summary>
    Capabilities = 1,

    /// <summary>Network policy.</summary>
    NetworkPolicy = 2,

    /// <summary>Location.</summary>
    Location = 4,

    /// <summary>Extended power as a source.</summary>
    SourcePower = 8,

    /// <summary>Extended power as a device.</summary>
    DevicePower = 16,

    /// <summary>Inventory.</summary>
    Inventory = 32,
}
