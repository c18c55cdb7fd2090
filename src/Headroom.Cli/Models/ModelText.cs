using Headroom.Cli.Text;

namespace Headroom.Cli.Models;

/// <summary>Models as text: a list by kind, or one in full.</summary>
internal static class ModelText
{
    private const int WidestId = 20;

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
            page.Edges($"{model.Id}    {model.Kind}", Path.GetFileName(model.From));
            page.Paragraph(Words.Sentence(model.About), 2, 2);
            page.Gap();
            var width = model.Rows.Select(row => Columns.Of(pen.Plain(row.Label))).DefaultIfEmpty().Max() + 2;
            foreach (var (label, text) in model.Rows)
                page.Labelled(label, text, 2, width);
        }

        return page.ToString();
    }
}
