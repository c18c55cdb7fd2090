using System.Text;
using Headroom.Engineering.Sums;

namespace Headroom.Cli.Tests.Reckon;

/// <summary>The table of all sums on their page, made from the descriptions that drive the command.</summary>
internal static class ReckonPage
{
    public const string Begin = "<!-- the table of sums: made from their descriptions -->";

    /// <summary>The page: what stands before the mark is written by hand, the rest is made.</summary>
    public static string Of(string page)
    {
        var at = page.IndexOf(Begin, StringComparison.Ordinal);
        Assert.True(at >= 0, $"docs/reckon.md has no line '{Begin}'.");
        return page[..at] + Begin + "\n" + Table();
    }

    private static string Table()
    {
        var text = new StringBuilder();
        foreach (var discipline in AllSums.All.GroupBy(sum => sum.Discipline))
        {
            text.Append("\n## ").Append(Capital(discipline.Key)).Append("\n\n| sum | answers | takes | gives |\n| --- | --- | --- | --- |\n");
            foreach (var sum in discipline)
            {
                text.Append(Row([
                    $"`{sum.Name}`", Capital(sum.Answers),
                    string.Join("; ", sum.Inputs.Select(Input)),
                    string.Join(", ", sum.Outputs.Select(output => output.Unit.Length == 0 ? output.Name : $"{output.Name} [{output.Unit}]"))]));
            }

            text.Append("\n| sum | formula | source |\n| --- | --- | --- |\n");
            foreach (var sum in discipline)
                text.Append(Row([$"`{sum.Name}`", sum.Formula, sum.Source]));
        }

        return text.ToString();
    }

    private static string Input(SumInput input) => input.Name + (input switch
    {
        { Default: { } usual } => $" ({usual})",
        { IsOptional: true } => " (may stay away)",
        _ => "",
    });

    private static string Row(string[] cells) => $"| {string.Join(" | ", cells.Select(cell => cell.Replace("|", "\\|", StringComparison.Ordinal).Replace('\n', ' ')))} |\n";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
