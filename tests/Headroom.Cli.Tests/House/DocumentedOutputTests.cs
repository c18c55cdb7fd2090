namespace Headroom.Cli.Tests.House;

/// <summary>
/// What the pages show is what the command prints. Each block marked <c>console</c> that begins with "$ headroom" is run from
/// the root of the tree; messages (standard error) come before the result (standard output), as they do on a screen.
/// </summary>
public sealed class DocumentedOutputTests
{
    public static TheoryData<string> Pages => [.. AllPages()];

    [Theory, MemberData(nameof(Pages))]
    public void Shown_output_is_what_the_command_prints(string page)
    {
        var lines = Read(page);
        var renewed = lines.ToList();
        // From the end, so that a block that grows does not move those still to come.
        foreach (var block in ConsoleBlock.In(lines).Where(b => b.ShowsHeadroom).Reverse())
        {
            renewed.RemoveRange(block.FirstLine, block.Lines.Length);
            renewed.InsertRange(block.FirstLine, block.Exchanges().SelectMany(e => Renewed(page, e.Command, e.Shown)));
        }

        if (!lines.SequenceEqual(renewed))
            File.WriteAllLines(Repository.PathOf(page), renewed);
    }

    [Theory, MemberData(nameof(Pages))]
    public void A_block_that_shows_the_command_is_marked_so_that_it_is_run(string page) => Assert.All(
        ConsoleBlock.In(Read(page)).Where(b => b.ShowsHeadroom),
        block => Assert.True(block.Mark == "console", $"{page}:{block.FirstLine}: mark the block ```console, not ```{block.Mark}"));

    [Fact]
    public void The_first_page_shows_the_command_in_use() =>
        Assert.Contains(ConsoleBlock.In(Read("README.md")), block => block.ShowsHeadroom);

    // The lines that the page should hold: those it has when they agree, the fresh ones when they are to be accepted.
    private static IEnumerable<string> Renewed(string page, string command, string[] shown)
    {
        Assert.True(ConsoleBlock.IsPrompt(command), $"{page}: a block that begins with headroom runs nothing else: {command}");
        var result = Run.Headroom(ShellWords.Split(command[2..])[1..]);
        var actual = ShownOutput.Lines(result.Err + result.Out);
        if (ShownOutput.Agrees(shown, actual))
            return [command, .. shown];

        Assert.True(
            Golden.Accepting && !ShownOutput.IsAbridged(shown),
            $"{page}: {command}\n{Golden.Difference(string.Join('\n', shown), string.Join('\n', actual))}\nHEADROOM_ACCEPT=1 renews what the page shows.");
        return [command, .. actual];
    }

    private static IEnumerable<string> AllPages()
    {
        var docs = Repository.PathOf("docs");
        var pages = Directory.Exists(docs) ? Directory.GetFiles(docs, "*.md", SearchOption.AllDirectories) : [];
        return pages.Select(p => Path.GetRelativePath(Repository.Root, p).Replace('\\', '/')).Order().Prepend("README.md");
    }

    private static string[] Read(string page) => File.ReadAllLines(Repository.PathOf(page));
}
