using Headroom.Domain.Catalogues;

namespace Headroom.Planning.Jobs;

/// <summary>What a box of the packing is in the job.</summary>
/// <param name="Purchase">The switch.</param>
/// <param name="Setting">How it is set.</param>
/// <param name="Answers">What each kind takes on each of its groups of ports.</param>
/// <param name="Ways">The kind, the group and what goes between, in the order of the ways of the box.</param>
internal sealed record BoxWay(
    Purchase Purchase,
    SettingChoice Setting,
    IReadOnlyDictionary<(int Kind, int Group), PortAnswer> Answers,
    IReadOnlyList<(int Kind, int Group, InjectorModel? Via)> Ways);
