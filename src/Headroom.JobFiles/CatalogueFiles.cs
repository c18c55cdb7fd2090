using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Catalogues;
using Headroom.JobFiles.Files;

namespace Headroom.JobFiles;

/// <summary>Reads catalogue files: the shipped ones, and the firm's own over them.</summary>
public static class CatalogueFiles
{
    /// <summary>The letters in front of the codes of findings about what a catalogue says.</summary>
    public const string CodePrefix = "CAT";

    /// <summary>The folder of the shipped catalogue: <c>catalogue</c> beside the program, or in the nearest folder above it that has one.</summary>
    public static string ShippedFolder { get; } = FindShipped();

    /// <summary>Reads the shipped catalogue. A model is made of its text when it is first asked for, and its slips are told by <see cref="CheckShipped"/> only.</summary>
    /// <returns>The catalogue, or null with a finding when it is not there.</returns>
    public static Loaded<Catalogue> ReadShipped() => ReadFolder(ShippedFolder, LazyFile.Read);

    /// <summary>Reads the shipped catalogue and checks every model in it.</summary>
    /// <returns>The catalogue with all findings.</returns>
    public static Loaded<Catalogue> CheckShipped() => ReadFolder(ShippedFolder, null);

    /// <summary>Reads the firm's files over a catalogue. A model takes the place of one of the same name, or says <c>like:</c> and only what differs.</summary>
    /// <param name="paths">The files, as the person named them, YAML or CSV; the later counts.</param>
    /// <param name="under">The catalogue under them.</param>
    /// <returns>The catalogue with all findings about the files; null when one cannot be read at all.</returns>
    public static Loaded<Catalogue> Read(IEnumerable<string> paths, Catalogue under)
    {
        var book = new CatalogueBook();
        foreach (var path in paths)
            book.Add(path);
        return book.Over(under);
    }

    /// <summary>Reads the text of one catalogue file over a catalogue.</summary>
    /// <param name="text">The text, YAML.</param>
    /// <param name="name">The name that findings give it.</param>
    /// <param name="under">The catalogue under it.</param>
    /// <returns>The catalogue with all findings about the text; null when it cannot be read at all.</returns>
    public static Loaded<Catalogue> Parse(string text, string name, Catalogue under)
    {
        var book = new CatalogueBook();
        book.AddText(text, name);
        return book.Over(under);
    }

    /// <summary>Makes the models that a text names, so that whoever asks for them later need not wait.</summary>
    /// <param name="catalogue">The catalogue.</param>
    /// <param name="text">The text, such as that of a job file.</param>
    public static void ReadAhead(Catalogue catalogue, string text)
    {
        foreach (var kind in ModelKinds.All)
        {
            if (kind.Shelf(catalogue) is not { } shelf)
                continue;
            foreach (var id in shelf.Raw.Keys)
            {
                if (text.Contains(id, StringComparison.Ordinal))
                    shelf.ReadAhead(id);
            }
        }
    }

    /// <summary>All that is written about a model of the shipped catalogue.</summary>
    /// <param name="kindOrAny">The kind as a file has it, such as <c>switches</c>; empty for any kind.</param>
    /// <param name="id">The name of the model.</param>
    /// <returns>The facts in the order written; empty when there is no such model.</returns>
    public static IReadOnlyList<CatalogueFact> Facts(string kindOrAny, string id) =>
        ReadShipped().Value is { } shipped ? Facts(shipped, kindOrAny, id) : [];

    /// <summary>All that is written about a model, so that it can be shown whatever its kind.</summary>
    /// <param name="catalogue">The catalogue.</param>
    /// <param name="kindOrAny">The kind as a file has it, such as <c>switches</c>; empty for any kind.</param>
    /// <param name="id">The name of the model.</param>
    /// <returns>The facts in the order written, with those taken over from another model; empty when there is no such model.</returns>
    public static IReadOnlyList<CatalogueFact> Facts(Catalogue catalogue, string kindOrAny, string id) =>
        [.. ModelKinds.All.Where(kind => kindOrAny.Length == 0 || kind.Key == kindOrAny).SelectMany(kind => FactRows.Of(kind, catalogue, id))];

    /// <summary>The kinds of model, as a file has them, with the names of the models of a catalogue.</summary>
    /// <param name="catalogue">The catalogue.</param>
    /// <returns>The kinds with their models, in the order of the manual.</returns>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Names(Catalogue catalogue) =>
        ModelKinds.All.ToDictionary(kind => kind.Key, kind => (IReadOnlyList<string>)[.. kind.Shelf(catalogue)?.Raw.Keys ?? []]);

    private static Loaded<Catalogue> ReadFolder(string folder, Func<string, LazyFile?>? lazily)
    {
        if (!Directory.Exists(folder))
            return new(null, [new Finding(Severity.Error, FileCodes.Missing.Code, new Place(folder, 0, 0), "no such folder", "the shipped catalogue", "install the program again, or name the folder of the catalogue")]);
        var book = new CatalogueBook();
        foreach (var path in Directory.GetFiles(folder, "*.yaml").Order(StringComparer.Ordinal))
        {
            if (lazily?.Invoke(path) is { } file)
                book.Add(file);
            else
                book.Add(path, LazyFile.Shown(path));
        }

        return book.Over(Catalogue.Empty);
    }

    private static string FindShipped()
    {
        var beside = Path.Combine(AppContext.BaseDirectory, "catalogue");
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var here = Path.Combine(folder.FullName, "catalogue");
            if (File.Exists(Path.Combine(here, "switches.yaml")))
                return here;
        }

        return beside;
    }
}
