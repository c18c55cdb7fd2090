namespace Headroom.Desk.Work;

/// <summary>Keeps what was worked out last, so many things and no more.</summary>
internal sealed class Recent<TKey, TValue>(int most)
    where TKey : notnull
    where TValue : class
{
    private readonly Lock _door = new();
    private readonly Dictionary<TKey, LinkedListNode<(TKey Key, Lazy<TValue?> Value)>> _kept = [];
    private readonly LinkedList<(TKey Key, Lazy<TValue?> Value)> _order = [];

    /// <summary>The thing, made when it is not kept; two who ask at once wait for one making.</summary>
    public TValue? Get(TKey key, Func<TValue?> make)
    {
        Lazy<TValue?> value;
        lock (_door)
        {
            if (_kept.TryGetValue(key, out var node))
                _order.Remove(node);
            else
                node = new((key, new Lazy<TValue?>(make, LazyThreadSafetyMode.ExecutionAndPublication)));
            _order.AddFirst(node);
            _kept[key] = node;
            if (_order.Count > most)
            {
                _kept.Remove(_order.Last!.Value.Key);
                _order.RemoveLast();
            }

            value = node.Value.Value;
        }

        return value.Value;
    }
}
