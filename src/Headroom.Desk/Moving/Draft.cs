namespace Headroom.Desk.Moving;

/// <summary>What was moved and is not saved: the fields that say something else than the job does, and how they were before each move. It goes to and fro with the page; here nothing of it is kept.</summary>
/// <param name="Now">What the fields say, by name; only those that differ.</param>
/// <param name="Before">The same before each move, the last first.</param>
internal sealed record Draft(IReadOnlyDictionary<string, string> Now, IReadOnlyList<IReadOnlyDictionary<string, string>> Before)
{
    private const int MostSteps = 60;
    private const char BetweenFields = '&';
    private const char BetweenSteps = ';';

    /// <summary>Nothing moved.</summary>
    public static Draft Empty { get; } = new(new Dictionary<string, string>(), []);

    /// <summary>How the fields go with the page.</summary>
    public string NowText => Text(Now);

    /// <summary>How the moves go with the page.</summary>
    public string BeforeText => string.Concat(Before.Select(step => BetweenSteps + Text(step)));

    /// <summary>True when something was moved.</summary>
    public bool Any => Now.Count > 0;

    /// <summary>Takes it back from the page. What cannot be read is as if it was not there.</summary>
    public static Draft Of(string now, string before) => new(Fields(now), [.. before.Split(BetweenSteps).Skip(1).Take(MostSteps).Select(Fields)]);

    /// <summary>After a move; the same when nothing was moved.</summary>
    public Draft Then(IReadOnlyDictionary<string, string> next) => Same(next, Now) ? this : new(next, [Now, .. Before.Take(MostSteps - 1)]);

    /// <summary>Before the last move; the same when there was none.</summary>
    public Draft Back() => Before.Count == 0 ? this : new(Before[0], [.. Before.Skip(1)]);

    private static bool Same(IReadOnlyDictionary<string, string> one, IReadOnlyDictionary<string, string> other) =>
        one.Count == other.Count && one.All(field => other.TryGetValue(field.Key, out var value) && value == field.Value);

    private static string Text(IReadOnlyDictionary<string, string> fields) =>
        string.Join(BetweenFields, fields.Select(field => $"{Uri.EscapeDataString(field.Key)}={Uri.EscapeDataString(field.Value)}"));

    private static Dictionary<string, string> Fields(string text)
    {
        var fields = new Dictionary<string, string>();
        foreach (var pair in text.Split(BetweenFields, StringSplitOptions.RemoveEmptyEntries).Select(pair => pair.Split('=')).Where(pair => pair.Length == 2))
            fields[Uri.UnescapeDataString(pair[0])] = Uri.UnescapeDataString(pair[1]);
        return fields;
    }
}
