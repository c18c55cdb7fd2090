namespace Headroom.Engineering.Years;

/// <summary>What changes a site with the years.</summary>
[Flags]
public enum Change
{
    /// <summary>Nothing: the site as it is today.</summary>
    None = 0,

    /// <summary>Devices are added.</summary>
    Devices = 1,

    /// <summary>Batteries age.</summary>
    Batteries = 2,

    /// <summary>Dust takes air from fans.</summary>
    Dust = 4,

    /// <summary>Prices rise.</summary>
    Prices = 8,

    /// <summary>All of it.</summary>
    All = Devices | Batteries | Dust | Prices,
}
