using Headroom.Domain.Catalogues;

namespace Headroom.Planning.Jobs;

/// <summary>A way in which a box of the packing serves a kind.</summary>
/// <param name="Kind">The kind, by number.</param>
/// <param name="Group">The group of ports of the switch, by number.</param>
/// <param name="Via">What goes between; null when nothing does.</param>
/// <param name="Unit">Which of the midspans beside the switch that is, from 1; 0 for an injector of its own.</param>
internal readonly record struct BoxServe(int Kind, int Group, InjectorModel? Via, int Unit);
