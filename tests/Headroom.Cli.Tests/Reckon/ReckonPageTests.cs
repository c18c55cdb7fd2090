namespace Headroom.Cli.Tests.Reckon;

public sealed class ReckonPageTests
{
    [Fact]
    public void The_table_of_sums_is_what_their_descriptions_say()
    {
        var path = Repository.PathOf("docs/reckon.md");
        var page = File.ReadAllText(path).ReplaceLineEndings("\n");
        var made = ReckonPage.Of(page);
        if (Golden.Accepting)
            File.WriteAllText(path, made);
        else
            Assert.True(page == made, $"docs/reckon.md is stale: run the tests once with HEADROOM_ACCEPT=1 and look at what changed. {Golden.Difference(page, made)}");
    }
}
