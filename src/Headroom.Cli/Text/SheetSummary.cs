using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>What stands above the table, in plain words.</summary>
internal static class SheetSummary
{
    /// <summary>Writes the paragraphs.</summary>
    public static void Write(Page page, Ledger ledger)
    {
        page.Gap();
        foreach (var paragraph in LedgerInWords.Paragraphs(ledger))
            page.Paragraph(paragraph);
        page.Gap();
    }
}
