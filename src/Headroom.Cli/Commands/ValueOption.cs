using System.CommandLine;
using Headroom.Cli.Text;
using Headroom.Domain.Quantities;

namespace Headroom.Cli.Commands;

/// <summary>An option with a value, with its own complaints: none given, given twice, or not one of those allowed.</summary>
internal class ValueOption : Option<string[]>
{
    /// <summary>An option that takes a value.</summary>
    /// <param name="name">The option as typed: <c>--format</c>.</param>
    /// <param name="value">What its value is called in the help.</param>
    /// <param name="about">What it does.</param>
    /// <param name="often">Whether it may be given several times.</param>
    public ValueOption(string name, string value, string about, bool often = false)
        : base(name)
    {
        HelpName = value;
        Description = about;
        Arity = ArgumentArity.ZeroOrMore;
        Validators.Add(result =>
        {
            if (result.Tokens.Count < result.IdentifierTokenCount || result.Tokens.Any(token => token.Value.Length == 0))
                result.AddError($"{name} needs a value: {value}");
            else if (!often && result.Tokens.Count > 1)
                result.AddError($"{name} was given {result.Tokens.Count} times; once is enough");
        });
    }

    /// <summary>Refuses what a function has a complaint about.</summary>
    public ValueOption Checked(Func<string, string?> complaint)
    {
        Validators.Add(result =>
        {
            foreach (var problem in result.Tokens.Select(token => complaint(token.Value)).OfType<string>().Distinct())
                result.AddError($"{Name} {problem}");
        });
        return this;
    }

    /// <summary>Allows some words only.</summary>
    public ValueOption OneOf(params string[] allowed) => Checked(given => Complaint(given, allowed));

    /// <summary>The values given; empty when none.</summary>
    public string[] All(ParseResult parsed) => parsed.GetValue(this) ?? [];

    /// <summary>The value given; null when none.</summary>
    public string? One(ParseResult parsed) => All(parsed).FirstOrDefault();

    /// <summary>What is wrong with a word that must be one of some; null when nothing.</summary>
    public static string? Complaint(string given, IReadOnlyList<string> allowed)
    {
        if (allowed.Contains(given))
            return null;
        var near = Spelling.Nearest(given, allowed) is { } word ? $"; did you mean {word}?" : "";
        return $"is {Words.Or(allowed)}, not '{given}'{near}";
    }
}
