using System.Globalization;

namespace Headroom.Domain.Shown;

/// <summary>How numbers and days are written on papers in a country. Job files, data for programs and the command line do not follow it.</summary>
/// <param name="Tag">The language and country, as a tag of BCP 47.</param>
/// <param name="Point">The decimal sign.</param>
/// <param name="Group">What stands between thousands of money.</param>
/// <param name="DayPattern">How a day is written.</param>
/// <remarks>Signs and patterns are from memory of common practice, no source; a space between thousands does not break.</remarks>
public sealed record NumberManner(string Tag, char Point, string Group, string DayPattern)
{
    private const string Space = "\u00A0";

    private static readonly AsyncLocal<NumberManner?> Now = new();

    // Until a firm asks for another manner, nobody has to look.
    private static volatile bool _isUsed;

    /// <summary>The manner where nobody says another: a point, and the month in letters, so that nobody takes one day for the other.</summary>
    public static NumberManner Plain { get; } = new("en", '.', Space, "d MMM yyyy");

    /// <summary>The manners there are.</summary>
    public static IReadOnlyList<NumberManner> All { get; } =
    [
        Plain,
        new("en-GB", '.', ",", "d MMM yyyy"), new("en-IE", '.', ",", "d MMM yyyy"), new("en-US", '.', ",", "MMM d, yyyy"), new("en-CA", '.', ",", "MMM d, yyyy"), new("en-AU", '.', ",", "d MMM yyyy"),
        new("en-NZ", '.', ",", "d MMM yyyy"), new("de-DE", ',', ".", "dd.MM.yyyy"), new("de-AT", ',', Space, "dd.MM.yyyy"), new("de-CH", '.', "’", "dd.MM.yyyy"), new("fr-FR", ',', Space, "dd/MM/yyyy"),
        new("fr-BE", ',', Space, "dd/MM/yyyy"), new("fr-CH", '.', "’", "dd.MM.yyyy"), new("nl-NL", ',', ".", "dd-MM-yyyy"), new("nl-BE", ',', ".", "dd/MM/yyyy"), new("es-ES", ',', ".", "dd/MM/yyyy"),
        new("pt-PT", ',', Space, "dd/MM/yyyy"), new("it-IT", ',', ".", "dd/MM/yyyy"), new("da-DK", ',', ".", "dd.MM.yyyy"), new("sv-SE", ',', Space, "yyyy-MM-dd"), new("nb-NO", ',', Space, "dd.MM.yyyy"),
        new("fi-FI", ',', Space, "d.M.yyyy"), new("pl-PL", ',', Space, "dd.MM.yyyy"), new("cs-CZ", ',', Space, "dd.MM.yyyy"),
    ];

    /// <summary>The manner in which numbers are written just now.</summary>
    public static NumberManner Current => _isUsed ? Now.Value ?? Plain : Plain;

    /// <summary>Writes numbers in this manner until what is returned is disposed of, here and in what is begun here.</summary>
    public IDisposable Use()
    {
        _isUsed = true;
        var before = new Before(Now.Value);
        Now.Value = this;
        return before;
    }

    /// <summary>A number that was written with a point, in this manner.</summary>
    /// <param name="plain">The number, without signs between thousands.</param>
    public string Written(string plain) => Point == '.' ? plain : plain.Replace('.', Point);

    /// <summary>An amount of money that was written with a point, in this manner, thousands apart.</summary>
    /// <param name="plain">The amount, without signs between thousands.</param>
    public string Amount(string plain)
    {
        var end = plain.IndexOf('.', StringComparison.Ordinal) is var at and >= 0 ? at : plain.Length;
        var written = Written(plain);
        for (var i = end - 3; i > (plain[0] == '-' ? 1 : 0); i -= 3)
            written = written.Insert(i, Group);
        return written;
    }

    /// <summary>A day in this manner.</summary>
    /// <param name="day">The day.</param>
    public string Day(DateOnly day) => day.ToString(DayPattern, CultureInfo.InvariantCulture);

    private sealed class Before(NumberManner? manner) : IDisposable
    {
        public void Dispose() => Now.Value = manner;
    }
}
