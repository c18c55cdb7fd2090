using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>Cautions and assumptions of all entries, each said once.</summary>
internal static class SheetNotes
{
    /// <summary>Writes them, as far as there are any.</summary>
    public static void Write(Page page, Ledger ledger)
    {
        var cautions = ledger.Entries.SelectMany(entry => entry.Cautions).DistinctBy(caution => caution.Code).ToList();
        if (cautions.Count > 0)
        {
            page.Gap();
            page.Line("Take care");
            foreach (var caution in cautions)
                WriteCaution(page, caution, 2);
        }

        var assumed = ledger.Entries.SelectMany(entry => entry.Assumed).Distinct().ToList();
        if (assumed.Count == 0)
            return;
        page.Gap();
        page.Line("Assumed");
        foreach (var text in assumed)
            page.Paragraph(text, 2, 4);
    }

    /// <summary>Writes one caution: its code, what it says, and who may do the work.</summary>
    public static void WriteCaution(Page page, Caution caution, int indent) =>
        page.Paragraph($"{caution.Code}  {Words.Sentence(caution.Text)} {Words.Sentence(caution.Who)}", indent, indent + 2);
}
