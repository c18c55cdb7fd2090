namespace Headroom.JobFiles.Fields;

/// <summary>The slips that a table of fields can find by itself.</summary>
internal static class Slips
{
    public static readonly Slip UnknownKey = new(1, "A key that this thing does not have.");
    public static readonly Slip Twice = new(2, "The same thing is written twice, perhaps once by itself and once inside a range.");
    public static readonly Slip Missing = new(3, "A key that this thing must have is not there, or its value is not known.");
    public static readonly Slip WrongKind = new(4, "A list, a map of keys or a text stands where another of the three belongs.");
    public static readonly Slip Empty = new(5, "A key without a value. Nothing is taken for it; leaving the key out says the same.");
    public static readonly Slip NoUnit = new(6, "A number without a unit.");
    public static readonly Slip OtherUnit = new(7, "A unit that is not one of this quantity, or a word behind the unit that is no origin.");
    public static readonly Slip Comma = new(8, "A comma or another mark inside a number.");
    public static readonly Slip NotAValue = new(9, "A text that is no value of the kind that belongs there.");
    public static readonly Slip OutOfBounds = new(10, "A value outside the range in which it makes sense.");
    public static readonly Slip NotAChoice = new(11, "A word that is not one of those to choose from.");
    public static readonly Slip NotAName = new(12, "A name that cannot be one: it holds other characters than letters, digits, hyphens, points and single spaces, or is too long.");
    public static readonly Slip Reversed = new(13, "A range whose larger end stands first.");
    public static readonly Slip Format = new(14, "A file of a format that this program does not know.");
    public static readonly Slip Excluding = new(15, "Two keys of which only one may be there.");
    public static readonly Slip TooLong = new(16, "A text longer than anything that is shown.");
    public static readonly Slip NotAPort = new(17, "A text that names no port.");

    public static readonly Slip BandMissing = new(19, "A sound spectrum that lacks a band.");

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Slip> All { get; } =
    [
        UnknownKey, Twice, Missing, WrongKind, Empty, NoUnit, OtherUnit, Comma, NotAValue, OutOfBounds,
        NotAChoice, NotAName, Reversed, Format, Excluding, TooLong, NotAPort, BandMissing,
    ];
}
