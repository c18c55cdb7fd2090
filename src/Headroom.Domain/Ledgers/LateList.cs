using System.Collections;

namespace Headroom.Domain.Ledgers;

/// <summary>A list that is worked out when somebody first looks at it, and kept. What a study tells beside its verdicts need not be told when nobody asks.</summary>
/// <typeparam name="T">What it lists.</typeparam>
/// <param name="make">Works it out; must give the same each time.</param>
public sealed class LateList<T>(Func<IReadOnlyList<T>> make) : IReadOnlyList<T>
{
    private IReadOnlyList<T>? _made;

    /// <inheritdoc/>
    public int Count => Made.Count;

    /// <inheritdoc/>
    public T this[int index] => Made[index];

    private IReadOnlyList<T> Made => _made ??= make();

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => Made.GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
