using Xunit.Sdk;

namespace Headroom.Cli.Tests.Shared;

public sealed class RunTests
{
    [Fact]
    public void Exit_code_and_both_outputs_come_back_apart() =>
        Assert.Equal(new ProcessResult(3, "out\n", "err\n"), Shell("echo out; echo err >&2; exit 3"));

    [Fact]
    public void Arguments_arrive_as_they_were_given() =>
        Assert.Equal("a b|*|\n", Unix(new ProcessStart("sh", "-c", "printf '%s|' \"$@\"; echo", "sh", "a b", "*")).Out);

    [Fact]
    public void Input_folder_and_variables_are_handed_on()
    {
        var start = new ProcessStart("sh", "-c", "cat; pwd; echo \"$HEADROOM_SAMPLE\"")
        {
            Input = "typed\n",
            Folder = "/",
            Environment = new Dictionary<string, string?> { ["HEADROOM_SAMPLE"] = "set" },
        };
        Assert.Equal("typed\n/\nset\n", Unix(start).Out);
    }

    // More than a pipe holds, in both directions: a runner that reads one stream after the other would stand still.
    [Fact]
    public void Much_output_on_both_streams_does_not_block()
    {
        var result = Unix(new ProcessStart("sh", "-c", "tee /dev/stderr") { Input = new string('x', 300_000) });
        Assert.Equal((300_000, 300_000), (result.Out.Length, result.Err.Length));
    }

    [Fact]
    public void A_process_that_does_not_read_its_input_is_no_fault() =>
        Assert.Equal(0, Unix(new ProcessStart("true") { Input = new string('x', 300_000) }).ExitCode);

    [Fact]
    public void A_process_that_does_not_end_is_killed_and_fails()
    {
        var start = new ProcessStart("sh", "-c", "sleep 600; true") { Timeout = TimeSpan.FromMilliseconds(300) };
        Assert.StartsWith("Killed after 0.3 s: sh", Assert.Throws<FailException>(() => Unix(start)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_command_starts() => Assert.Equal(0, Run.Headroom("--version").ExitCode);

    private static ProcessResult Shell(string script) => Unix(new ProcessStart("sh", "-c", script));

    private static ProcessResult Unix(ProcessStart start)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "needs sh");
        return Run.Process(start);
    }
}
