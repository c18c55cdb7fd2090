using System.Globalization;

namespace Headroom.References.Tests;

/// <summary>What the program makes of a printed figure: a number, or a word where the print has words.</summary>
internal readonly record struct Figure(double? Number, string Text)
{
    public static implicit operator Figure(double number) => new(number, number.ToString("R", CultureInfo.InvariantCulture));

    // Null stands for "there is no answer", which the reference prints as "none".
    public static implicit operator Figure(double? number) => number is { } found ? found : "none";

    public static implicit operator Figure(string text) => new(null, text);

    public static implicit operator Figure(bool answer) => answer ? "yes" : "no";

    /// <summary>Several answers in one line, as the print lists them.</summary>
    internal static Figure List<T>(IEnumerable<T> answers, string between = " ") =>
        string.Join(between, answers.Select(answer => answer is bool yes ? (yes ? "yes" : "no") : Convert.ToString(answer, CultureInfo.InvariantCulture)));
}
