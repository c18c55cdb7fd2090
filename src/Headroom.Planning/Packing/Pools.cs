namespace Headroom.Planning.Packing;

/// <summary>Kinds that every box serves the same way are one pool: they differ only in the places they are reached from.</summary>
internal sealed class Pools
{
    /// <summary>Reads a problem.</summary>
    public Pools(PackProblem problem)
    {
        var keys = new Dictionary<string, int>();
        Of = new int[problem.Kinds.Count];
        for (var kind = 0; kind < Of.Length; kind++)
        {
            var key = string.Join('|', problem.Boxes.Select(box => string.Join(';', box.Serves.Where(serve => serve.Kind == kind).Select(serve => $"{serve.Group},{string.Join('/', serve.Loads)},{serve.Via},{serve.Cost}"))));
            if (!keys.TryGetValue(key, out var pool))
                keys[key] = pool = keys.Count;
            Of[kind] = pool;
        }

        Members = [.. Enumerable.Range(0, keys.Count).Select(pool => Enumerable.Range(0, Of.Length).Where(kind => Of[kind] == pool).ToList())];
    }

    /// <summary>The pool of each kind.</summary>
    public int[] Of { get; }

    /// <summary>The kinds of each pool.</summary>
    public List<List<int>> Members { get; }
}
