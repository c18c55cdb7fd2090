namespace Headroom.Engineering.Binding;

/// <summary>A switch in the tree that the uplinks make, with the line at its root.</summary>
/// <param name="unit">The switch.</param>
/// <param name="index">Its number in the tree.</param>
public sealed class NetworkNode(BoundSwitch unit, int index)
{
    /// <summary>The switch.</summary>
    public BoundSwitch Switch => unit;

    /// <summary>Its number in <see cref="BoundNetwork.Nodes"/>, those nearer to the line first.</summary>
    public int Index { get; internal set; } = index;

    /// <summary>The switch next to it on the way to the line; null at the root.</summary>
    public NetworkNode? Parent { get; internal set; }

    /// <summary>The root of its tree; itself at the root.</summary>
    public NetworkNode Root { get; internal set; } = null!;

    /// <summary>Links to the parent; several are one bundle. Empty at the root.</summary>
    public IReadOnlyList<SwitchLink> Up { get; internal set; } = [];

    /// <summary>Links to lines out of the house.</summary>
    public IReadOnlyList<SwitchLink> Lines { get; internal set; } = [];

    /// <summary>Switches from the root to it.</summary>
    public int Depth { get; internal set; }

    /// <summary>The id people say.</summary>
    public string Id => unit.Id;

    /// <summary>What the links to the parent carry together each way [bit/s]; null when one is not known or there are none.</summary>
    public double? UpBitsPerSecond
    {
        get
        {
            double? sum = Up.Count == 0 ? null : 0;
            foreach (var link in Up)
                sum += link.BitsPerSecond;
            return sum;
        }
    }
}
