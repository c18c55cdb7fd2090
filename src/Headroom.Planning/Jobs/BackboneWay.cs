using Headroom.Domain.Catalogues;
using Headroom.Domain.Jobs;

namespace Headroom.Planning.Jobs;

/// <summary>The link of a place to the place it hangs on.</summary>
/// <param name="Parent">The place it hangs on, by number.</param>
/// <param name="Drop">The fibre between them; null where none is surveyed: copper is then taken.</param>
/// <param name="Module">The module at both ends; null for copper.</param>
internal sealed record BackboneWay(int Parent, Drop? Drop, ModuleModel? Module);
