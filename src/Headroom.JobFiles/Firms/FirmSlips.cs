using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Firms;

/// <summary>The slips that only a firm's own file can have.</summary>
internal static class FirmSlips
{
    public static readonly Slip NoLogo = new(50, "The picture of a firm is not there, or cannot be read.");
    public static readonly Slip LargeLogo = new(51, "The picture of a firm is larger than a paper can carry by mail.");
    public static readonly Slip NoPicture = new(52, "The picture of a firm is no PNG, or an SVG that does not hold plain shapes alone.");
    public static readonly Slip Faint = new(53, "A colour in which nobody could read a name on white paper.");
    public static readonly Slip Pattern = new(54, "A pattern of numbers that holds a part that nothing can be put in for.");
    public static readonly Slip Layout = new(55, "A layout of labels of which some would lie over each other or beyond the sheet.");

    public static readonly Slip OtherCurrency = new(56, "A firm that offers in one currency, and a job whose offer is in another.");

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Slip> All { get; } = [NoLogo, LargeLogo, NoPicture, Faint, Pattern, Layout, OtherCurrency];

    /// <summary>The slips of every file that a firm's file can have too.</summary>
    public static IReadOnlyList<Slip> Shared { get; } =
    [
        Slips.UnknownKey, Slips.Twice, Slips.Missing, Slips.WrongKind, Slips.Empty, Slips.NoUnit, Slips.OtherUnit, Slips.Comma, Slips.NotAValue,
        Slips.OutOfBounds, Slips.NotAChoice, Slips.NotAName, Slips.Reversed, Slips.Format, Slips.Excluding, Slips.TooLong,
    ];
}
