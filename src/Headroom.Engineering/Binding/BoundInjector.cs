using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Engineering.Binding;

/// <summary>An injector or midspan of a design with its model.</summary>
/// <param name="Placed">The injector as the design has it.</param>
/// <param name="Model">Its model.</param>
/// <param name="Space">The space it stands in; null when not said.</param>
public sealed record BoundInjector(PlacedInjector Placed, InjectorModel Model, string? Space)
{
    /// <summary>The id people say.</summary>
    public string Id => Placed.Id;
}
