using System.Text;
using Headroom.Cli.Text;

namespace Headroom.Cli.Tests.Commands;

/// <summary>Runs a command within the test: the same way as Main does, with texts in place of streams and a day that stays.</summary>
internal static class TestDesk
{
    public static ProcessResult Run(string[] arguments, string input = "")
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var desk = new Desk(output, error, () => new MemoryStream(Encoding.UTF8.GetBytes(input)), new Pen(Unicode: true, Colour: false), () => new DateOnly(2026, 11, 25));
        var code = Shell.Run(arguments, desk);
        return new(code, output.ToString(), error.ToString());
    }
}
