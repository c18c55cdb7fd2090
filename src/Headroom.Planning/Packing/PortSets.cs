namespace Headroom.Planning.Packing;

/// <summary>Sets of groups of ports that alone can serve some kinds, and what they come to together.</summary>
internal static class PortSets
{
    // Rows beyond these are left out: the model then leaves a little more out, which the exact packing finds.
    private const int Most = 40;

    /// <summary>Adds a set, and its union with each that is there.</summary>
    public static void Add(List<HashSet<int>> sets, HashSet<int> set)
    {
        if (sets.Exists(known => known.SetEquals(set)))
            return;
        var before = sets.ToList();
        sets.Add(set);
        foreach (var other in before)
        {
            var union = new HashSet<int>(other);
            union.UnionWith(set);
            if (sets.Count < Most && !sets.Exists(known => known.SetEquals(union)))
                sets.Add(union);
        }
    }
}
