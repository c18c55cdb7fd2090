using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Catalogues;

/// <summary>The slips that only a catalogue can have.</summary>
internal static class ModelSlips
{
    public static readonly Slip PeakBelowTypical = new(30, "The most that a device draws is less than what it draws on a usual day.");
    public static readonly Slip NoDraws = new(31, "A device takes power over the cable, and nothing says how much it draws.");
    public static readonly Slip OverClass = new(32, "A device draws more than its class may.");
    public static readonly Slip PortsTwice = new(33, "A port belongs to two groups.");
    public static readonly Slip PortsMissing = new(34, "The numbers of the ports have a gap.");
    public static readonly Slip NotRising = new(35, "Fan levels that do not go on from 1 one by one, or of which a higher one is quieter or begins earlier.");
    public static readonly Slip Rising = new(36, "A curve or table that rises where it can only fall.");
    public static readonly Slip UnknownLike = new(37, "A model is like another that is in no catalogue.");
    public static readonly Slip LikeRing = new(38, "Models are like one another in a ring.");
    public static readonly Slip TwoFiles = new(39, "Two files of the same firm have a model of the same name; the later counts.");
    public static readonly Slip MoreThanRated = new(40, "A supply gives the ports more than it is rated for, or more real power than apparent.");
    public static readonly Slip Cells = new(41, "A table of models (CSV) that is not built as it must be.");
    public static readonly Slip LostMore = new(42, "A supply leaves more for the ports with one piece lost than with all, or a piece may be lost of one that is a single piece.");

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Slip> All { get; } =
    [
        PeakBelowTypical, NoDraws, OverClass, PortsTwice, PortsMissing, NotRising, Rising, UnknownLike, LikeRing, TwoFiles, MoreThanRated, Cells, LostMore,
    ];
}
