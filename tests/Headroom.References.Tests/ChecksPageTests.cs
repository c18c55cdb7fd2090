namespace Headroom.References.Tests;

public sealed class ChecksPageTests
{
    [Fact]
    public async Task The_page_of_checks_shows_what_the_program_works_out_now()
    {
        var now = ChecksPage.Write();
        if (Environment.GetEnvironmentVariable("HEADROOM_ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(ChecksPage.Path)!);
            await File.WriteAllTextAsync(ChecksPage.Path, now, TestContext.Current.CancellationToken);
        }
        var then = File.Exists(ChecksPage.Path) ? await File.ReadAllTextAsync(ChecksPage.Path, TestContext.Current.CancellationToken) : "";
        Assert.True(now == then, $"docs/checks.md is stale. Look at the difference after: {ChecksPage.Refresh}\n{FirstDifference(then, now)}");
    }

    private static string FirstDifference(string then, string now) =>
        then.Split('\n').Zip(now.Split('\n')).Where(pair => pair.First != pair.Second)
            .Select(pair => $"page: {pair.First}\nnow:  {pair.Second}").FirstOrDefault("One ends before the other.");
}
