namespace Headroom.Cli.Tests.House;

/// <summary>A fenced block of a page: where its first inner line is (from 0), what it is marked as, and its lines.</summary>
internal sealed record ConsoleBlock(int FirstLine, string Mark, string[] Lines)
{
    private const string Fence = "```";
    private static readonly string[] Prompts = ["$ headroom", "$ ./headroom"];

    /// <summary>Whether the block begins by showing the command in use.</summary>
    public bool ShowsHeadroom => Lines.Length > 0 && IsPrompt(Lines[0]);

    /// <summary>Each command of the block with the lines shown below it.</summary>
    public IEnumerable<(string Command, string[] Shown)> Exchanges()
    {
        for (var at = 0; at < Lines.Length;)
        {
            var shown = Lines.Skip(at + 1).TakeWhile(line => !line.StartsWith("$ ", StringComparison.Ordinal)).ToArray();
            yield return (Lines[at], shown);
            at += 1 + shown.Length;
        }
    }

    public static bool IsPrompt(string line) =>
        Prompts.Any(p => line == p || line.StartsWith(p + " ", StringComparison.Ordinal));

    public static IEnumerable<ConsoleBlock> In(string[] page)
    {
        for (var at = 0; at < page.Length; at++)
        {
            if (!page[at].StartsWith(Fence, StringComparison.Ordinal))
                continue;

            var inner = page.Skip(at + 1).TakeWhile(line => !line.StartsWith(Fence, StringComparison.Ordinal)).ToArray();
            yield return new ConsoleBlock(at + 1, page[at][Fence.Length..].Trim(), inner);
            at += 1 + inner.Length;
        }
    }
}
