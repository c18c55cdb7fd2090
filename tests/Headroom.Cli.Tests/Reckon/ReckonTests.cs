using System.Text;
using Headroom.Cli.Text;
using Headroom.Cli.Tests.Commands;
using Headroom.Engineering.Sums;

namespace Headroom.Cli.Tests.Reckon;

public sealed class ReckonTests
{
    public static TheoryData<string> Names => [.. AllSums.All.Select(sum => sum.Name)];

    private static string[] Example(string name, params string[] options) => ["reckon", name, .. AllSums.Find(name)!.Example.Split(' '), .. options];

    [Fact]
    public void A_level_without_its_A_counts_as_weighted_and_says_so()
    {
        Assert.Contains("given: 49 dB, taken as", string.Join(' ', TestDesk.Run(["reckon", "level-at-distance", "power", "49", "dB", "distance", "3", "m"]).Out.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.DoesNotContain("taken as", TestDesk.Run(["reckon", "level-at-distance", "power", "49", "dBA", "distance", "3", "m"]).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_examples_of_all_sums_read_as_accepted()
    {
        var text = new StringBuilder();
        foreach (var sum in AllSums.All)
            text.Append("$ headroom ").AppendJoin(' ', Example(sum.Name)).Append('\n').Append(TestDesk.Run(Example(sum.Name)).Out).Append('\n');
        Golden.Agrees("reckon-examples.txt", text.ToString());
    }

    [Theory, MemberData(nameof(Names))]
    public void The_help_of_a_sum_fits_a_screen_and_its_example_works_as_it_stands(string name)
    {
        var help = TestDesk.Run(["reckon", name, "--help"]);
        Assert.Equal((0, ""), (help.ExitCode, help.Err));
        Assert.Equal(help, TestDesk.Run(["help", "reckon", name]));
        var lines = help.Out.Split('\n');
        Assert.StartsWith($"headroom reckon {name}", lines[0], StringComparison.Ordinal);
        Assert.All(lines, line => Assert.True(line.Length <= 80, line));
        Assert.True(lines.Length <= 30, $"{lines.Length} lines");
        var example = help.Out.Replace(" \\\n   ", "", StringComparison.Ordinal).Split('\n').Single(line => line.StartsWith("  headroom ", StringComparison.Ordinal));
        Assert.Equal($"  headroom {string.Join(' ', Example(name))}", example);
    }

    [Theory, MemberData(nameof(Names))]
    public void What_is_printed_keeps_to_the_page_and_begins_with_the_answer(string name) => Assert.All(new[] { "metric", "imperial" }, units =>
    {
        var result = TestDesk.Run(Example(name, "--units", units));
        Assert.True(result.ExitCode < 2, result.Err);
        Assert.Contains('.', result.Out.Split("\n\n")[0]);
        Assert.All(result.Out.Split('\n'), line => Assert.True(Columns.Of(line) <= Pen.Columns, line));
    });

    [Theory, MemberData(nameof(Names))]
    public void Its_json_is_what_the_schema_says(string name) =>
        Assert.Equal("", ShippedSchema.Faults("reckon", TestDesk.Run(Example(name, "--format", "json")).Out));

    [Theory, MemberData(nameof(Names))]
    public void Without_inputs_all_that_must_be_given_is_asked_for(string name)
    {
        var result = TestDesk.Run(["reckon", name]);
        var asked = result.Err.Split('\n').Where(line => line.Contains(" is missing: ", StringComparison.Ordinal)).Select(line => line.Split(' ')[1]);
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Assert.Equal(AllSums.Find(name)!.Inputs.Where(input => input.MustBeGiven).Select(input => input.Name), asked);
    }

    [Fact]
    public void The_list_is_what_the_schema_says_and_has_every_sum()
    {
        var list = TestDesk.Run(["reckon", "--list", "--format", "json"]).Out;
        Assert.Equal("", ShippedSchema.Faults("reckon", list));
        Assert.All(AllSums.All, sum => Assert.Contains($"\"name\": \"{sum.Name}\"", list, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("\"kind\": \"quantity\"", "\"kind\": \"thing\"")]
    [InlineData("\"mustBeGiven\": true", "\"mustBeGiven\": \"yes\"")]
    [InlineData("\"formula\":", "\"sum\":")]
    public void The_schema_refuses_another_shape(string right, string wrong) => Assert.NotEqual(
        "", ShippedSchema.Faults("reckon", TestDesk.Run(["reckon", "--list", "--format", "json"]).Out.Replace(right, wrong, StringComparison.Ordinal)));

    [Fact]
    public void Where_there_is_no_operating_point_it_says_so_and_no_figure_is_zero()
    {
        var result = TestDesk.Run("reckon far-end-volts volts 24 V length 100 m cable 26 AWG draw 12 W".Split(' '));
        Assert.Equal((1, ""), (result.ExitCode, result.Err));
        Assert.StartsWith("There is no operating point: 12 W are more than the run can carry", result.Out, StringComparison.Ordinal);
        Assert.Matches(@"far-end-volts +none", result.Out);
        Assert.DoesNotMatch(@"far-end-volts +0", result.Out);
    }

    [Fact]
    public void Passive_volts_bring_the_caution_with_them() => Assert.Multiple(
        () => Assert.Contains("ALWAYS-ON", TestDesk.Run("reckon far-end-volts volts 24 V length 20 m cable 24 AWG draw 5 W".Split(' ')).Out, StringComparison.Ordinal),
        () => Assert.Contains("OVER-VOLTS", TestDesk.Run("reckon far-end-volts volts 60 V length 20 m cable 24 AWG draw 5 W".Split(' ')).Out, StringComparison.Ordinal),
        () => Assert.DoesNotContain("care", TestDesk.Run("reckon far-end-volts volts 54 V length 20 m cable 24 AWG draw 5 W".Split(' ')).Out, StringComparison.Ordinal));

    [Fact]
    public void All_that_is_wrong_is_said_in_one_go_and_nothing_is_worked_out()
    {
        var result = TestDesk.Run("reckon far-end-volts volts 54 kg lenght 82 m cable 23 AWG pairs 3".Split(' '));
        Assert.Equal((2, ""), (result.ExitCode, result.Out));
        Golden.Agrees("reckon-refused.txt", result.Err);
    }
}
