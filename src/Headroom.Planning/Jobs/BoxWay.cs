namespace Headroom.Planning.Jobs;

/// <summary>What a box of the packing is in the job.</summary>
/// <param name="Purchase">The switch.</param>
/// <param name="Setting">How it is set.</param>
/// <param name="Answers">What each kind takes on each of its groups of ports.</param>
/// <param name="Ways">How it serves, in the order of the ways of the box.</param>
internal sealed record BoxWay(
    Purchase Purchase,
    SettingChoice Setting,
    IReadOnlyDictionary<(int Kind, int Group), PortAnswer> Answers,
    IReadOnlyList<BoxServe> Ways);
