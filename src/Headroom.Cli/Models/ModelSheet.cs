using System.Text.RegularExpressions;
using Headroom.Domain.Catalogues;
using Headroom.JobFiles;

namespace Headroom.Cli.Models;

/// <summary>A model as shown: what is written about it, in the order written.</summary>
/// <param name="Kind">The kind, as catalogue files name it.</param>
/// <param name="Id">Its name.</param>
/// <param name="Facts">What is written, the line about it included.</param>
internal sealed partial record ModelSheet(string Kind, string Id, IReadOnlyList<CatalogueFact> Facts)
{
    private const string AboutKey = "about";

    /// <summary>The kinds of model.</summary>
    public static IReadOnlyList<string> Kinds { get; } = [.. CatalogueFiles.Names(Catalogue.Empty).Keys];

    /// <summary>One line about it; empty when none was written.</summary>
    public string About => Facts.FirstOrDefault(fact => fact.Path == AboutKey) is { } about ? about.Value : "";

    /// <summary>The rows below the line about it.</summary>
    public IEnumerable<CatalogueFact> Rows => Facts.Where(fact => fact.Path != AboutKey);

    /// <summary>All models of a catalogue, by kind and name.</summary>
    public static IReadOnlyList<ModelSheet> All(Catalogue catalogue) =>
    [
        .. from kind in CatalogueFiles.Names(catalogue)
           from id in kind.Value.Order(StringComparer.Ordinal)
           select new ModelSheet(kind.Key, id, CatalogueFiles.Facts(catalogue, kind.Key, id)),
    ];

    /// <summary>What a key is called: <c>supplies.small.port volts</c> is the port volts of the supply small.</summary>
    public static string Label(CatalogueFact fact) => Joint().Replace(fact.Path, " ");

    // A point between keys: not one of the two of a range (1..24), not the one of a number (2.5).
    [GeneratedRegex(@"(?<![.])(?<!\d(?=\.\d))\.(?!\.)")]
    private static partial Regex Joint();

    /// <summary>Whether a text stands anywhere in it, in large or small letters.</summary>
    public bool Holds(string text) => Id.Contains(text, StringComparison.OrdinalIgnoreCase)
        || Facts.Any(fact => $"{Label(fact)} {fact.Value} {fact.Origin}".Contains(text, StringComparison.OrdinalIgnoreCase));
}
