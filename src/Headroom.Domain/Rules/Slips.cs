using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Domain.Rules;

/// <summary>Gathers findings; the same slip at the same place is kept once, however many ids or designs share the line.</summary>
/// <param name="mayBeThere">Where parts of a job could not be read: says of a name whether it may be one of theirs. Then only names that lead nowhere are told. Null for a whole job.</param>
internal sealed class Slips(Func<string, bool>? mayBeThere = null)
{
    // Looking for the name that was meant compares with every known one. Thousands of wrong names in a large job must not
    // become a square of comparisons: the first few hundred get a guess, the others only the list of what exists.
    private const int GuessesAfforded = 1_000_000;

    private readonly List<Finding> findings = [];
    private readonly HashSet<(string Code, Place At, string Key)> seen = [];
    private readonly Dictionary<string, HashSet<(string Code, string Given)>> byDesign = [];
    private string? design;
    private IReadOnlyList<string> under = [];
    private int guesses = GuessesAfforded;

    /// <summary>What was found, in the order found.</summary>
    public IReadOnlyList<Finding> Findings => findings;

    /// <summary>Begins a design. What was found in the designs it is like is not found again in what it takes over.</summary>
    /// <param name="id">The design.</param>
    /// <param name="likes">The designs it is like, which came before.</param>
    public void Begin(string id, IReadOnlyList<string> likes)
    {
        (design, under) = (id, likes);
        byDesign[id] = [];
    }

    /// <summary>Ends the designs.</summary>
    public void End() => design = null;

    /// <summary>Adds a finding unless the same slip at the same place is there already.</summary>
    /// <param name="rule">The rule that is broken.</param>
    /// <param name="at">Where.</param>
    /// <param name="said">The finding in words.</param>
    /// <param name="key">What makes it the same slip again; null for the words of what was given.</param>
    public void Add(RuleCode rule, Place at, Said said, string? key = null)
    {
        if (mayBeThere is null)
            Keep(rule, at, said, key);
    }

    /// <summary>Adds the finding for a name that leads nowhere, with the name that was probably meant.</summary>
    /// <param name="rule">The rule that is broken.</param>
    /// <param name="at">Where.</param>
    /// <param name="missing">The name.</param>
    /// <param name="known">The names that would have been right.</param>
    public void Unknown(RuleCode rule, Place at, Missing missing, IEnumerable<string> known)
    {
        if ((at.Line > 0 && seen.Contains((rule.Code, at, missing.Name))) || mayBeThere?.Invoke(missing.Name) == true)
            return;
        var names = known as IReadOnlyCollection<string> ?? [.. known];
        var meant = Guess(missing.Name, names);
        var said = new Said(
            $"{missing.Of} names the {missing.Kind} '{missing.Name}'",
            names.Count == 0
                ? $"there is no {missing.Kind} {missing.Where}"
                : $"{Article(missing.Kind)} {missing.Kind} {missing.Where} is one of {Some(names)}",
            meant is null ? $"Correct the name, or add the {missing.Kind}." : $"did you mean '{meant}'?");
        Keep(rule, at, said, missing.Name);
    }

    /// <summary>The first few of many names.</summary>
    /// <param name="names">The names.</param>
    /// <returns>Up to six names, and how many there are besides.</returns>
    public static string Some(IReadOnlyCollection<string> names) =>
        string.Join(", ", names.Take(6)) + (names.Count > 6 ? $" and {names.Count - 6} more" : "");

    private void Keep(RuleCode rule, Place at, Said said, string? key)
    {
        if (seen.Add((rule.Code, at, key is null || at.Line == 0 ? said.Given : key)) && !IsTakenOver(rule, said.Given))
            findings.Add(new Finding(rule.Severity, rule.Code, at, said.Given, said.Allowed, said.Advice));
    }

    // A unit that a design changes stands at the design's own line; what was wrong with it before is still the other design's slip.
    private bool IsTakenOver(RuleCode rule, string given)
    {
        if (design is null)
            return false;
        byDesign[design].Add((rule.Code, given));
        return under.Any(id => byDesign.TryGetValue(id, out var found) && found.Contains((rule.Code, given)));
    }

    private static string Article(string word) => word[0] is 'a' or 'e' or 'i' or 'o' ? "an" : "a";

    private string? Guess(string name, IReadOnlyCollection<string> names)
    {
        if (guesses < names.Count)
            return null;
        guesses -= names.Count;
        return Spelling.Nearest(name, names);
    }
}
