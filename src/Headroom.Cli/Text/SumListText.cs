using Headroom.Engineering.Sums;

namespace Headroom.Cli.Text;

/// <summary>The list of all sums, discipline by discipline.</summary>
internal static class SumListText
{
    /// <summary>Writes it.</summary>
    public static string Write(IReadOnlyList<Sum> sums, Pen pen)
    {
        var page = new Page(pen);
        var width = sums.Max(sum => sum.Name.Length) + 2;
        foreach (var discipline in sums.GroupBy(sum => sum.Discipline))
        {
            page.Gap();
            page.Line(discipline.Key);
            foreach (var sum in discipline)
                page.Labelled(sum.Name, sum.Answers, 2, width);
        }

        page.Gap();
        page.Line(Words.Count(sums.Count, "sum", "sums"));
        return page.ToString();
    }
}
