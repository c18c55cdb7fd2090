using System.CommandLine;
using Headroom.Cli.Text;

namespace Headroom.Cli.Commands;

/// <summary>The help: what a command does, lines to copy, its options. Short enough for one screen.</summary>
internal static class HelpPage
{
    private const string Example = "headroom study examples/barn-vets/job.yaml";

    /// <summary>Writes the list of all commands.</summary>
    public static int WriteAll(TextWriter to, int exitCode)
    {
        var page = new Page(new Pen(Unicode: false, Colour: false));
        page.Paragraph("headroom works out what is left of every limit of a small-office network, and shows how.");
        page.Gap();
        page.Line("  " + Example);
        page.Gap();
        foreach (var entry in CommandList.All)
            page.Labelled(entry.Name, entry.About, 2, 12);
        page.Labelled("--version", "prints the version", 2, 12);
        page.Gap();
        page.Line("'headroom COMMAND --help' says what a command takes.");
        to.Write(page.ToString());
        return exitCode;
    }

    /// <summary>Writes the help of one command.</summary>
    public static int Write(TextWriter to, Command command)
    {
        var page = new Page(new Pen(Unicode: false, Colour: false));
        var path = string.Join(' ', command.Parents.OfType<Command>().Select(parent => parent.Name).Append(command.Name));
        var own = command as HeadroomCommand;
        page.Paragraph($"headroom {path} {own?.Usage}".TrimEnd());
        page.Paragraph(command.Description + ".", 2, 2);
        page.Gap();
        foreach (var example in own?.Examples ?? [])
            page.Line("  " + example);
        page.Gap();
        foreach (var sub in command.Subcommands)
            page.Labelled($"{sub.Name} {(sub as HeadroomCommand)?.Usage}".TrimEnd(), sub.Description!, 2, 28);
        WriteOptions(page, command);
        page.Gap();
        foreach (var note in own?.Notes ?? [])
            page.Paragraph(note);
        to.Write(page.ToString());
        return ExitCode.NothingShort;
    }

    private static void WriteOptions(Page page, Command command)
    {
        var options = command.Options.Where(option => !option.Hidden).ToList();
        var width = options.Count == 0 ? 0 : Math.Min(26, options.Max(option => Label(option).Length) + 2);
        foreach (var option in options)
        {
            if (Label(option).Length + 2 <= width)
            {
                page.Labelled(Label(option), option.Description!, 2, width);
                continue;
            }

            page.Line("  " + Label(option));
            page.Labelled("", option.Description!, 2, width);
        }
    }

    private static string Label(Option option) => option.HelpName is { } value ? $"{option.Name} {value}" : option.Name;
}
