using Headroom.Cli.Text;
using Headroom.JobFiles;

namespace Headroom.Cli.Models;

/// <summary>Models as text: a list by kind, or one in full.</summary>
internal static class ModelText
{
    private const int WidestId = 20;
    private const int WidestLabel = 36;

    /// <summary>Lists models below the name of their kind.</summary>
    public static string List(IReadOnlyList<ModelSheet> models, Pen pen)
    {
        var page = new Page(pen);
        var width = models.Count == 0 ? 0 : Math.Min(WidestId, models.Max(model => Columns.Of(pen.Plain(model.Id)))) + 2;
        foreach (var kind in models.GroupBy(model => model.Kind))
        {
            page.Gap();
            page.Line(kind.Key);
            foreach (var model in kind)
                page.Labelled(model.Id, model.About, 2, width);
        }

        page.Gap();
        page.Line(models.Count == 0 ? "No model is like that." : Words.Count(models.Count, "model", "models"));
        return page.ToString();
    }

    /// <summary>Shows models in full.</summary>
    public static string Show(IReadOnlyList<ModelSheet> models, Pen pen)
    {
        var page = new Page(pen);
        foreach (var model in models)
        {
            page.Gap();
            page.Edges($"{model.Id}    {model.Kind}", model.Facts.Count == 0 ? "" : Path.GetFileName(model.Facts[0].At.File));
            page.Paragraph(Words.Sentence(model.About), 2, 2);
            page.Gap();
            WriteRows(page, [.. model.Rows]);
        }

        return page.ToString();
    }

    // The value as written beside its key; where it comes from stands behind it.
    private static void WriteRows(Page page, IReadOnlyList<CatalogueFact> facts)
    {
        var width = Math.Min(WidestLabel, facts.Select(fact => Columns.Of(page.Pen.Plain(ModelSheet.Label(fact)))).DefaultIfEmpty().Max()) + 2;
        foreach (var fact in facts)
        {
            var label = Columns.Fit(page.Pen.Plain(ModelSheet.Label(fact)), width - 2, page.Pen.Cut);
            page.Labelled(label, fact.Origin.Length == 0 ? fact.Value : $"{fact.Value}  {fact.Origin}", 2, width);
        }
    }
}
