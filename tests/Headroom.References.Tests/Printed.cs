using System.Globalization;

namespace Headroom.References.Tests;

/// <summary>One published figure: row, what it is of, value as printed, unit, tolerance, and where it comes from.</summary>
internal sealed record Printed(string Id, string What, string Expected, string Unit, string Tolerance, string Source)
{
    // "exact" is for data that the program holds as printed: the last bits of a change of unit are all that may differ.
    private const double ExactShare = 1e-12;

    /// <summary>Name of the row, by file and id, and of the figure in it.</summary>
    internal string Name => $"{Reference}/{Id} {What}";

    /// <summary>The file of the reference that it stands in; ids repeat between files.</summary>
    internal string Reference { get; init; } = "power-and-cabling";

    internal bool IsNumber => Tolerance.Length > 0;

    internal double Number => double.Parse(Expected, CultureInfo.InvariantCulture);

    /// <summary>Places behind the point, as printed.</summary>
    internal int Places => Expected.Contains('.', StringComparison.Ordinal) ? Expected.Length - 1 - Expected.IndexOf('.', StringComparison.Ordinal) : 0;

    internal bool AgreesWith(Figure figure) => IsNumber
        ? figure.Number is { } number && Math.Abs(number - Number) <= Allowed
        : figure.Text == Expected;

    /// <summary>Whether a number rounds to what is printed, whatever the row's own tolerance.</summary>
    internal bool RoundsTo(double number) => Math.Abs(number - Number) <= 0.5 * Math.Pow(10, -Places) * BinarySlack;

    // A value exactly on half a digit may fall on either side in binary: a millionth of the tolerance lets it in.
    private const double BinarySlack = 1 + 1e-6;

    private double Allowed => Tolerance switch
    {
        "exact" => Math.Abs(Number) * ExactShare,
        [.. var share, ' ', '%'] => Math.Abs(Number) * double.Parse(share, CultureInfo.InvariantCulture) / 100,
        _ => double.Parse(Tolerance, CultureInfo.InvariantCulture) * BinarySlack,
    };

    internal static Printed From(string[] fields) => new(fields[0], fields[1], fields[2], fields[3], fields[4], fields[5]);
}
