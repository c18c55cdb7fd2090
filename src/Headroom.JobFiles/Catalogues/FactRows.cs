using Headroom.Domain.Catalogues;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Catalogues;

/// <summary>Walks through what is written about a model.</summary>
internal static class FactRows
{
    /// <summary>The facts about a model of a kind, in the order written.</summary>
    public static IEnumerable<CatalogueFact> Of(ModelKind kind, Catalogue catalogue, string id) =>
        kind.Shelf(catalogue)?.Whole(id) is { } node ? Walk(kind.Key, "", node) : [];

    private static IEnumerable<CatalogueFact> Walk(string kind, string path, YamlNode node) => node switch
    {
        YamlMap map => map.Entries.SelectMany(entry => Walk(kind, path.Length == 0 ? entry.Key.Text : $"{path}.{entry.Key.Text}", entry.Value)),
        YamlList list => [Fact(kind, path, string.Join(", ", list.Items.OfType<YamlScalar>().Select(item => item.Text)), list)],
        YamlScalar scalar => [Fact(kind, path, scalar.Text, scalar)],
        _ => [],
    };

    private static CatalogueFact Fact(string kind, string path, string text, YamlNode node)
    {
        var value = text.AsSpan();
        // Only behind a number is a last word an origin; in a sentence it is a word.
        var origin = text.Length > 0 && (char.IsAsciiDigit(text[0]) || text[0] is '-' or '.') ? QuantityText.TakeOrigin(ref value) : Origin.Unstated;
        return new CatalogueFact(kind, path, value.ToString(), origin == Origin.Unstated ? "" : text[(value.Length + 1)..].Trim(), node.At);
    }
}
