namespace Headroom.Cli.Tests.Shared;

public sealed class RepositoryTests
{
    [Fact]
    public void The_root_is_found_from_the_built_tests() => Assert.True(File.Exists(Repository.PathOf("src/Headroom.Cli/Program.cs")));

    [Fact]
    public void Outside_the_tree_there_is_no_root()
    {
        var outside = Path.GetPathRoot(AppContext.BaseDirectory)!;
        Assert.Contains(outside, Assert.Throws<DirectoryNotFoundException>(() => Repository.Find(outside)).Message, StringComparison.Ordinal);
    }
}
