using System.CommandLine;
using Headroom.Cli.Json;
using Headroom.Cli.Text;
using Headroom.Domain.Quantities;
using Headroom.Engineering.Sums;

namespace Headroom.Cli.Commands;

/// <summary><c>headroom reckon SUM [NAME VALUE]...</c>: parse, find, read, work out, print.</summary>
internal static class ReckonCommand
{
    private static readonly string[] Notes =
    [
        "A value goes from its name to the next name, with its unit; quotation marks only where the shell wants them: \"38 dB(A)\". Names may come in any order.",
        "'headroom reckon SUM --help' says what a sum takes. It ends with 0 when it is worked out, 1 when the answer is that it cannot be, 2 when something is wrong with what was given.",
    ];

    /// <summary>Builds the command.</summary>
    public static Command Build(Desk desk)
    {
        var command = new HeadroomCommand(
            "reckon",
            "Works out one sum by itself, without a job, and shows how",
            "SUM [NAME VALUE]...",
            "headroom reckon far-end-volts volts 54 V length 82 m cable 23 AWG draw 13 W",
            "headroom reckon --list") { Notes = Notes, HelpOf = HelpOf };
        var words = new WordArgument("a SUM", 0, int.MaxValue).AddTo(command);
        var list = new FlagOption("--list", "lists every sum with what it answers; as json with inputs, ranges and outputs");
        var units = new ValueOption("--units", "metric|imperial", "units of the text; json keeps those of the sum").OneOf("metric", "imperial");
        var format = new ValueOption("--format", "text|json", "text for people, json for programs").OneOf("text", "json");
        command.Add(list);
        command.Add(units);
        command.Add(format);
        command.SetAction(parsed =>
        {
            var given = parsed.GetValue(words) ?? [];
            var asJson = format.One(parsed) == "json";
            if (parsed.GetValue(list))
                return Listed(given, asJson, desk);
            return given is [var name, ..] && AllSums.Find(name) is { } sum
                ? Reckon(sum, given[1..], desk, answered => asJson ? SumJson.Write(answered) : SumSheet.Write(answered, new ShownUnits(units.One(parsed) == "imperial"), desk.Pen))
                : Refuse(desk, [NoSum(given)], "reckon --help");
        });
        return command;
    }

    private static int Listed(string[] words, bool asJson, Desk desk)
    {
        if (words.Length > 0)
            return Refuse(desk, [$"--list stands alone; '{words[0]}' is too much"], "reckon --help");
        desk.Out.Write(asJson ? SumListJson.Write(AllSums.All) : SumListText.Write(AllSums.All, desk.Pen));
        return ExitCode.NothingShort;
    }

    private static int Reckon(Sum sum, string[] words, Desk desk, Func<AnsweredSum, string> render)
    {
        var reading = SumReader.Read(sum, words);
        if (reading.Given is not { } given)
            return Refuse(desk, reading.Complaints, $"reckon {sum.Name} --help");
        var answer = sum.Work(given);
        desk.Out.Write(render(new AnsweredSum(sum, answer, SumWorking.Of(sum, given, answer))));
        return answer.Holds ? ExitCode.NothingShort : ExitCode.Short;
    }

    private static int Refuse(Desk desk, IReadOnlyList<string> complaints, string help)
    {
        foreach (var complaint in complaints)
            desk.Err.WriteLine($"headroom: {complaint}");
        desk.Err.WriteLine($"'headroom {help}' says what there is.");
        return ExitCode.NotWorked;
    }

    private static string NoSum(string[] given)
    {
        if (given.Length == 0)
            return "reckon needs a SUM; 'headroom reckon --list' lists all";
        var near = Spelling.Nearest(given[0], AllSums.All.Select(sum => sum.Name));
        return $"there is no sum '{given[0]}'" + (near is null ? "; 'headroom reckon --list' lists all" : $"; did you mean {near}?");
    }

    private static string? HelpOf(IReadOnlyList<string> words) =>
        words.Select(AllSums.Find).FirstOrDefault(sum => sum is not null) is { } sum ? SumHelp.Write(sum) : null;
}
