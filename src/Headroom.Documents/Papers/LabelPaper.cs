using Headroom.Documents.Labels;
using Headroom.Documents.Layout;
using Headroom.Domain.Firms;

namespace Headroom.Documents.Papers;

/// <summary>All labels of a design on the usual sheet of labels.</summary>
internal static class LabelPaper
{
    /// <summary>What stands on it; null when there is no label.</summary>
    public static IReadOnlyList<Block>? Blocks(PaperInput input) =>
        LabelTexts.Of(input, LabelPlan.Kinds) is { Count: > 0 } texts ? [new Words(string.Join(", ", texts.Select(text => text.Id).Distinct()))] : null;

    /// <summary>The labels; one whose name does not fit there, which only names of more than 64 letters do, is left free.</summary>
    public static IReadOnlyList<LaidSheet> Lay(Paper paper, PaperInput input, SheetSize size) =>
        LabelSheets.Lay(LabelTexts.Of(input, LabelPlan.Kinds), new LabelPlan(LabelStock.Common.First(stock => stock.Paper == size.Name))).Sheets;
}
