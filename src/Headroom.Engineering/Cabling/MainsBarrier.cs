namespace Headroom.Engineering.Cabling;

/// <summary>What lies between mains and data cables. Source: EN 50174-2.</summary>
public enum MainsBarrier
{
    /// <summary>Nothing, or plastic.</summary>
    NoneOrPlastic,

    /// <summary>Open metal such as a wire basket.</summary>
    OpenMetal,

    /// <summary>Perforated metal.</summary>
    PerforatedMetal,

    /// <summary>Solid metal: a steel or aluminium wall.</summary>
    SolidMetal,
}
