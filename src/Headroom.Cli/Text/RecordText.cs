using System.Globalization;
using Headroom.Domain.Ledgers;
using Headroom.Engineering.Record;

namespace Headroom.Cli.Text;

/// <summary>What a firm's record says, for people.</summary>
/// <param name="folder">The folder, as the person named it.</param>
/// <param name="opened">Whether each figure is opened.</param>
internal sealed class RecordText(string folder, bool opened)
{
    /// <summary>Writes it.</summary>
    public string Write(RecordResult result, Pen pen)
    {
        var page = new Page(pen);
        page.Paragraph($"{folder} · up to {result.Terms.On.ToString("d MMM yyyy", CultureInfo.InvariantCulture)} · a place is hot from {Numbers.Show(result.Terms.HotCelsius, "°C")} on");
        RecordFleetText.Write(page, result, Open);
        RecordJobText.Write(page, result, Open);
        RecordReadingText.Write(page, result, Open);
        WriteMissing(page, result);
        if (!opened)
        {
            page.Gap();
            page.Paragraph($"How each figure was worked out, and from which line: headroom record {Words.Quoted(folder)} --working");
        }

        return page.ToString();
    }

    // A file that is not there is no file that says nothing.
    private static void WriteMissing(Page page, RecordResult result)
    {
        if (result.Missing.Count == 0)
            return;
        page.Gap();
        page.Line("Missing");
        foreach (var part in result.Missing)
            page.Labelled(part.File, Words.Sentence(part.Means), 2, 14);
    }

    private void Open(Page page, string head, Working working)
    {
        if (!opened)
            return;
        page.Gap();
        page.Paragraph(head, Explanation.Indent, Explanation.Indent);
        page.Labelled("formula", working.Formula, Explanation.Indent, Explanation.Label);
        var inputs = working.Inputs.Select(input => input with { Origin = input.Origin.Replace(folder + "/", "", StringComparison.Ordinal) }).ToList();
        ExplainedWorking.Write(page, working with { Inputs = inputs }, new ExplainRequest("", ShownUnits.Metric));
        page.Labelled("source", working.Source, Explanation.Indent, Explanation.Label);
    }
}
