using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Sums;

/// <summary>Reads pairs of a name and a value as people type them; quotation marks are needed for nothing.</summary>
public static class SumReader
{
    /// <summary>Reads what a sum is given.</summary>
    /// <param name="sum">The sum.</param>
    /// <param name="words">The words: names of inputs, each followed by its value in one word or several.</param>
    /// <returns>The values, or all that is wrong.</returns>
    public static SumReading Read(Sum sum, IReadOnlyList<string> words)
    {
        var complaints = new List<string>();
        var texts = Pairs(sum, words, complaints);
        var values = new Dictionary<SumInput, SumValue>();
        foreach (var input in sum.Inputs)
        {
            if (ValueOf(input, texts, complaints) is { } value)
                values[input] = value;
        }

        return complaints.Count > 0 ? new(null, complaints) : new(new SumGiven(values), []);
    }

    private static SumValue? ValueOf(SumInput input, Dictionary<string, string?> texts, List<string> complaints)
    {
        if (!texts.TryGetValue(input.Name, out var text))
        {
            if (input.MustBeGiven)
                complaints.Add($"{input.Name} is missing: {input.Meaning}; {input.Allowed}");
            return input.Default is { } usual ? input.Read(usual, out _)! with { IsDefault = true } : null;
        }

        if (text is null)
            return null;
        var value = input.Read(text, out var problem);
        if (problem is not null)
            complaints.Add($"{input.Name} is '{text}'; {problem.Allowed}; {problem.Advice}");
        return value;
    }

    // A name begins a pair; what follows up to the next name is its value. Null: named, but of no use.
    private static Dictionary<string, string?> Pairs(Sum sum, IReadOnlyList<string> words, List<string> complaints)
    {
        var pairs = new Dictionary<string, string?>();
        var split = Split(words);
        for (var at = 0; at < split.Count;)
        {
            var name = split[at++];
            var input = sum.Inputs.FirstOrDefault(input => input.Name == name);
            var from = at;
            while (at < split.Count && (at == from ? IsValue(sum, split[at], input) : !IsName(sum, split, at, input)))
                at++;
            Add(pairs, (sum, input, name), string.Join(' ', split.Skip(from).Take(at - from)), complaints);
        }

        return pairs;
    }

    private static void Add(Dictionary<string, string?> pairs, (Sum Sum, SumInput? Input, string Name) of, string value, List<string> complaints)
    {
        if (of.Input is null)
        {
            var names = of.Sum.Inputs.Select(input => input.Name).ToList();
            var near = Spelling.Nearest(of.Name, names);
            complaints.Add($"{of.Sum.Name} has no input '{of.Name}'; it takes {Words.List(names, most: 20)}{(near is null ? "" : $"; did you mean {near}?")}");
            if (near is not null)
                pairs.TryAdd(near, null);
        }
        else if (value.Length == 0)
        {
            complaints.Add($"{of.Name} has no value behind it; {of.Input.Allowed}");
            pairs.TryAdd(of.Name, null);
        }
        else if (pairs.TryGetValue(of.Name, out var before) && before is not null)
        {
            complaints.Add($"{of.Name} is given twice, '{before}' and '{value}'; {of.Input.Allowed}; give it once");
        }
        else
        {
            pairs[of.Name] = value;
        }
    }

    private static List<string> Split(IReadOnlyList<string> words)
    {
        var split = new List<string>();
        foreach (var word in words)
        {
            var sign = word.IndexOf('=', StringComparison.Ordinal);
            if (sign > 0 && word[..sign].All(letter => char.IsAsciiLetter(letter) || letter == '-'))
                split.AddRange([word[..sign], word[(sign + 1)..]]);
            else
                split.Add(word);
        }

        split.RemoveAll(word => word.Length == 0);
        return split;
    }

    // Right behind a name stands its value, even where that is a word which is the name of another input as well: "by port-limit".
    private static bool IsValue(Sum sum, string word, SumInput? input) => input?.Knows(word) == true || sum.Inputs.All(other => other.Name != word);

    // A word of letters that no value of this kind can hold, with a figure behind it: a name, though perhaps a misspelt one.
    private static bool IsName(Sum sum, List<string> words, int at, SumInput? before)
    {
        var word = words[at];
        if (sum.Inputs.Any(input => input.Name == word))
            return true;
        var isWord = word.Length > 2 && word.All(letter => char.IsAsciiLetter(letter) || letter == '-');
        return isWord && before?.Knows(word) != true && at + 1 < words.Count && IsFigure(words[at + 1]);
    }

    private static bool IsFigure(string word) => char.IsAsciiDigit(word[0]) || (word.Length > 1 && word[0] is '-' or '+' or '.' && char.IsAsciiDigit(word[1]));
}
