using Headroom.Cli.Text;

namespace Headroom.Cli.Tests.Commands;

public sealed class DeskTests
{
    [Fact]
    public void A_reader_that_has_read_enough_ends_the_command_in_peace()
    {
        using var closed = new ClosedPipe();
        using var error = new StringWriter();
        var desk = new Desk(closed, error, () => Stream.Null, new Pen(Unicode: true, Colour: false), () => new DateOnly(2026, 11, 25));
        Assert.Equal((0, ""), (Shell.Run(["--help"], desk), error.ToString()));
    }

    [Fact]
    public void A_fault_of_our_own_is_said_without_a_trace()
    {
        using var output = new StringWriter();
        using var error = new StringWriter { NewLine = "\n" };
        var desk = new Desk(output, error, () => throw new InvalidOperationException("secret"), new Pen(Unicode: true, Colour: false), () => new DateOnly(2026, 11, 25));
        Assert.Equal((2, ""), (Shell.Run(["check", "-"], desk), output.ToString()));
        Assert.StartsWith("headroom: this is a fault of headroom itself, not of the job (InvalidOperationException).", error.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error.ToString(), StringComparison.Ordinal);
    }

    private sealed class ClosedPipe : StringWriter
    {
        public override void Write(string? value) => throw new IOException("broken pipe");

        public override void Flush() => throw new IOException("broken pipe");
    }
}
