using Headroom.Desk.Pages;
using Headroom.Desk.Shown;
using Headroom.Desk.Work;
using Headroom.JobFiles;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Headroom.Desk.Serving;

/// <summary>The models a job may use.</summary>
internal static class CatalogueRoutes
{
    /// <summary>Makes them answerable.</summary>
    public static void Map(WebApplication app) => app.MapGet("/catalogue", (RequestDelegate)Show);

    private static Task Show(HttpContext http)
    {
        var models = http.RequestServices.GetRequiredService<ModelShelf>().Now;
        var names = CatalogueFiles.Names(models.Models);
        var (kind, sought) = (http.Asked("kind") ?? "", http.Asked("q") ?? "");
        var lines = names.Where(one => kind.Length == 0 || one.Key == kind)
            .SelectMany(one => one.Value.Order(StringComparer.Ordinal).Select(id => Line(one.Key, id, CatalogueFiles.Facts(models.Models, one.Key, id))))
            .Where(line => Holds(line, sought)).ToList();
        return http.Page<CataloguePage>(new Dictionary<string, object?> { ["Own"] = ModelShelf.OwnModels, ["Kinds"] = names.Keys.ToList(), ["Kind"] = kind, ["Sought"] = sought, ["Models"] = lines, ["Findings"] = models.Findings });
    }

    private static ModelLine Line(string kind, string id, IReadOnlyList<CatalogueFact> facts) => new(
        kind, id, facts.FirstOrDefault(fact => fact.Path == "about")?.Value ?? "", [.. facts.Where(fact => fact.Path != "about").Select(fact => (fact.Path.Replace('.', ' '), fact.Value, fact.Origin))]);

    private static bool Holds(ModelLine line, string sought) => sought.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(word =>
        $"{line.Id} {line.About}".Contains(word, StringComparison.OrdinalIgnoreCase) || line.Facts.Any(fact => $"{fact.What} {fact.Value}".Contains(word, StringComparison.OrdinalIgnoreCase)));
}
