using System.CommandLine;
using Headroom.Cli.Commands;

namespace Headroom.Cli.Tests.Commands;

public sealed class HelpTests
{
    public static TheoryData<string> Paths => [.. CommandList.All.SelectMany(Walk)];

    [Theory, MemberData(nameof(Paths))]
    public void The_help_of_every_command_fits_a_screen_and_begins_with_its_name(string path)
    {
        var result = TestDesk.Run([.. path.Split(' '), "--help"]);
        Assert.Equal((0, ""), (result.ExitCode, result.Err));
        var lines = result.Out.Split('\n');
        Assert.StartsWith($"headroom {path}", lines[0], StringComparison.Ordinal);
        Assert.All(lines, line => Assert.True(line.Length <= 80, line));
        Assert.True(lines.Length <= 30, $"{lines.Length} lines");
    }

    [Theory, MemberData(nameof(Paths))]
    public void Every_command_has_an_example_that_it_understands(string path)
    {
        var lines = TestDesk.Run([.. path.Split(' '), "--help"]).Out.Split('\n');
        var examples = lines.Skip(1).Where(line => line.StartsWith("  headroom ", StringComparison.Ordinal)).Select(line => line.Trim().Split(' ')[1..]).ToList();
        Assert.NotEmpty(examples);
        Assert.All(examples, example =>
        {
            Assert.StartsWith(path.Split(' ')[0], example[0], StringComparison.Ordinal);
            Assert.Empty(CommandList.Find(example[0])!.Build(Desk.OfProcess()).Parse(example[1..]).Errors);
        });
    }

    [Theory, MemberData(nameof(Paths))]
    public void Every_option_says_what_it_does(string path) => Assert.All(
        Find(path).Options, option => Assert.False(string.IsNullOrWhiteSpace(option.Description), option.Name));

    [Fact]
    public void The_list_of_commands_is_as_accepted() => Golden.Agrees("help.txt", TestDesk.Run(["--help"]).Out);

    [Fact]
    public void Help_can_be_asked_for_in_front_and_behind() =>
        Assert.Equal(TestDesk.Run(["study", "--help"]), TestDesk.Run(["help", "study"]));

    [Fact]
    public void The_help_of_study_is_as_accepted() => Golden.Agrees("help-study.txt", TestDesk.Run(["study", "-h"]).Out);

    private static IEnumerable<string> Walk(CommandEntry entry) =>
        entry.Build(Desk.OfProcess()).Subcommands.Select(sub => $"{entry.Name} {sub.Name}").Prepend(entry.Name);

    private static Command Find(string path)
    {
        var words = path.Split(' ');
        var command = CommandList.Find(words[0])!.Build(Desk.OfProcess());
        return words.Skip(1).Aggregate(command, (at, word) => at.Subcommands.Single(sub => sub.Name == word));
    }
}
