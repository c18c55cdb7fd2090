using Headroom.Engineering.Sums;

namespace Headroom.Cli.Text;

/// <summary>The help of one sum: what it answers, a line to copy, what it takes, what it gives, and where the formula is published.</summary>
internal static class SumHelp
{
    /// <summary>Writes it.</summary>
    public static string Write(Sum sum)
    {
        var page = new Page(new Pen(Unicode: false, Colour: false));
        page.Paragraph($"headroom reckon {sum.Name} NAME VALUE...");
        page.Paragraph(Words.Sentence(sum.Answers), 2, 2);
        page.Gap();
        WriteExample(page, $"headroom reckon {sum.Name} {sum.Example}");
        page.Gap();
        var width = Math.Max(9, sum.Inputs.Max(input => input.Name.Length) + 2);
        foreach (var input in sum.Inputs)
            page.Labelled(input.Name, $"{input.Meaning}; {input.Allowed}{WhenAway(input)}", 2, width);
        page.Gap();
        page.Labelled("gives", string.Join(", ", sum.Outputs.Select(output => output.Unit.Length == 0 ? output.Name : $"{output.Name} ({output.Unit})")), 2, 9);
        page.Labelled("formula", sum.Formula.Replace("\n", "; ", StringComparison.Ordinal), 2, 9);
        return page.ToString();
    }

    // One that is too long for a line goes on as a shell takes it: a stroke at its end.
    private static void WriteExample(Page page, string example)
    {
        var lines = Wrap.Lines(example, Pen.Columns - 6);
        for (var at = 0; at < lines.Count; at++)
            page.Line($"{(at == 0 ? "  " : "    ")}{lines[at]}{(at < lines.Count - 1 ? " \\" : "")}");
    }

    private static string WhenAway(SumInput input) => input.Default is { } usual ? $"; {usual} when not given" : input.IsOptional ? "; may stay away" : "";
}
