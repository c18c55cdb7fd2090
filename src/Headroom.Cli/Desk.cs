using System.Text;
using Headroom.Cli.Text;

namespace Headroom.Cli;

/// <summary>What a command works at: where the result and the messages go, where input comes from, how it may write, and what day it is.</summary>
/// <param name="Out">The result, and nothing else.</param>
/// <param name="Err">Findings and other messages.</param>
/// <param name="Input">Standard input as bytes.</param>
/// <param name="Pen">What the result can be written with.</param>
/// <param name="Calendar">Says what day it is; asked only where a day is needed, since the local time zone takes a while to read.</param>
internal sealed record Desk(TextWriter Out, TextWriter Err, Func<Stream> Input, Pen Pen, Func<DateOnly> Calendar)
{
    private const int Utf8 = 65001;

    /// <summary>The day.</summary>
    public DateOnly Today => Calendar();

    /// <summary>Whether the messages go to a terminal, so that progress is worth telling.</summary>
    public bool SomebodyLooksOn { get; init; }

    /// <summary>The desk of this process.</summary>
    public static Desk OfProcess()
    {
        var unicode = Console.OutputEncoding.CodePage == Utf8 && !IsSet("HEADROOM_ASCII") && !IsDumb;
        var colour = !IsSet("NO_COLOR") && !IsDumb && !Console.IsOutputRedirected;
        return new(
            Writer(Console.OpenStandardOutput(), Console.IsOutputRedirected),
            Writer(Console.OpenStandardError(), Console.IsErrorRedirected),
            Console.OpenStandardInput,
            new Pen(unicode, colour),
            () => DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime)) { SomebodyLooksOn = !Console.IsErrorRedirected && !IsDumb };
    }

    private static bool IsDumb => Environment.GetEnvironmentVariable("TERM") == "dumb";

    // Both are set and not empty to be on, whatever the value (no-color.org).
    private static bool IsSet(string variable) => !string.IsNullOrEmpty(Environment.GetEnvironmentVariable(variable));

    // Into a file or pipe it is UTF-8 on every system, as JSON must be; a terminal that knows less gets its own encoding.
    private static StreamWriter Writer(Stream stream, bool redirected)
    {
        var encoding = redirected || Console.OutputEncoding.CodePage == Utf8 ? new UTF8Encoding(encoderShouldEmitUTF8Identifier: false) : Console.OutputEncoding;
        return new StreamWriter(stream, encoding, bufferSize: 16 * 1024) { NewLine = "\n" };
    }
}
