namespace Headroom.Cli.Tests.House;

/// <summary>Output as a page shows it; a line of three dots stands for any number of lines.</summary>
internal static class ShownOutput
{
    private const string AnyLines = "...";

    public static bool IsAbridged(IEnumerable<string> shown) => shown.Contains(AnyLines);

    /// <summary>The lines as a page can hold them: no spaces at a line's end, no empty lines at the end.</summary>
    public static string[] Lines(string output)
    {
        var lines = output.Split('\n').Select(line => line.TrimEnd()).ToList();
        while (lines.Count > 0 && lines[^1].Length == 0)
            lines.RemoveAt(lines.Count - 1);
        return [.. lines];
    }

    public static bool Agrees(ReadOnlySpan<string> shown, ReadOnlySpan<string> actual)
    {
        if (shown.IsEmpty)
            return actual.IsEmpty;
        if (shown[0] == AnyLines)
            return Agrees(shown[1..], actual) || (!actual.IsEmpty && Agrees(shown, actual[1..]));
        return !actual.IsEmpty && shown[0] == actual[0] && Agrees(shown[1..], actual[1..]);
    }
}
