using System.Text.RegularExpressions;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;
using Headroom.Domain.Quantities;

namespace Headroom.Cli.Commands;

/// <summary>Finds the entries or figures somebody means: one by its id, by the end of it, or by any part that no other has; all of a thing by its name.</summary>
/// <param name="Ids">The whole ids; empty when it is not clear which.</param>
/// <param name="Complaint">What is wrong; null when nothing.</param>
internal sealed record EntrySearch(IReadOnlyList<string> Ids, string? Complaint)
{
    private const int MostListed = 12;

    /// <summary>The one whole id; null when there are several, or it is not clear which.</summary>
    public string? Id => Ids is [var one] ? one : null;

    /// <summary>Looks a word up in a ledger; where many are wanted, the name of a thing stands for all of it.</summary>
    public static EntrySearch Find(Ledger ledger, string word, bool many = false)
    {
        var ids = ledger.Entries.Select(entry => entry.Id).Concat(ledger.Figures.Select(figure => figure.Id)).Distinct().ToList();
        if (ids.Contains(word))
            return new([word], null);
        Predicate<string>[] ways =
        [
            id => $"/{id}".EndsWith($"/{word}", StringComparison.OrdinalIgnoreCase),
            id => $"/{id}/".Contains($"/{word}/", StringComparison.OrdinalIgnoreCase),
            id => id.Contains(word, StringComparison.OrdinalIgnoreCase),
        ];
        var matches = ways.Select(ids.FindAll).FirstOrDefault(found => found.Count > 0);
        return matches switch
        {
            null => new([], Spoken(ledger, word) ?? NoneOf(word, ids)),
            [var only] => new([only], null),
            _ when many && matches.Count <= MostListed && AreOfOne(matches, word) => new(matches, null),
            _ => new([], $"headroom: '{word}' may be any of {matches.Count}:\n" + Listed(matches)),
        };
    }

    // A discipline with a thing, or a thing: sound/desk, loft-pipe.
    private static bool AreOfOne(List<string> ids, string word)
    {
        var subjects = ids.ConvertAll(id => id.Split('/')[1]).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        return subjects.Count == 1 && word.Split('/').Contains(subjects[0], StringComparer.OrdinalIgnoreCase);
    }

    // A cable has no entry of its own, but the volts of the device behind it are told with its name.
    private static string? Spoken(Ledger ledger, string word)
    {
        var named = new Regex($@"(?<![\w-]){Regex.Escape(word)}(?![\w-])");
        var ids = ledger.Entries.Where(entry => named.IsMatch(entry.Story.Say(entry)) || named.IsMatch(entry.Question ?? "")).Select(entry => entry.Id).ToList();
        return ids.Count == 0 ? null : $"headroom: no entry is named '{word}', but it is spoken of in\n" + Listed(ids);
    }

    private static string NoneOf(string word, List<string> ids)
    {
        var near = Spelling.Nearest(word, ids) ?? Spelling.Nearest(word, ids.Select(id => id[(id.IndexOf('/', StringComparison.Ordinal) + 1)..]));
        return $"headroom: there is no entry '{word}'" + (near is null ? $"; the design has {Words.Count(ids.Count, "entry or figure", "entries and figures")}, which study --format csv lists" : $"; did you mean {near}?");
    }

    private static string Listed(List<string> matches)
    {
        var lines = matches.Take(MostListed).Select(id => "  " + id);
        return string.Join('\n', matches.Count > MostListed ? lines.Append($"  and {matches.Count - MostListed} more") : lines);
    }
}
