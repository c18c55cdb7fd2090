namespace Headroom.Domain.Jobs;

/// <summary>A port of a unit, or the unit itself where it has but one: <c>sw-1/5</c>, <c>inj-1</c>.</summary>
/// <param name="Unit">The id of the unit.</param>
/// <param name="Port">The number printed on the port, from 1; null when not written.</param>
public sealed record PortRef(string Unit, int? Port)
{
    /// <inheritdoc/>
    public override string ToString() => Port is { } port ? $"{Unit}/{port}" : Unit;
}
