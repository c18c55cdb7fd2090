using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Files;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Catalogues;

/// <summary>Gathers the models of several files, and makes a catalogue of them.</summary>
internal sealed class CatalogueBook
{
    private readonly Dictionary<ModelKind, Dictionary<string, RawModel>> _models = [];
    private readonly Dictionary<ModelKind, List<string>> _toCheck = [];
    private readonly FieldReader _reader = new(CatalogueFiles.CodePrefix);
    private readonly List<Finding> _findings = [];
    private bool _broken;

    /// <summary>Adds a file, YAML or CSV, all of whose models are checked; findings name it as told, else by its path.</summary>
    public void Add(string path, string? name = null)
    {
        if (path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
        {
            AddTree(CatalogueCsv.Read(path));
            return;
        }

        var text = TextFile.Read(path);
        if (text.Value is null)
            Broken(text.Findings);
        else
            AddText(text.Value, name ?? path);
    }

    /// <summary>Adds the text of a file.</summary>
    public void AddText(string text, string name) => AddTree(YamlText.Parse(text, name));

    /// <summary>Adds a file whose models are read when they are asked for.</summary>
    public void Add(LazyFile file)
    {
        foreach (var model in file.Models)
            Of(file.Kind)[model.Id] = model;
    }

    /// <summary>The catalogue, over another.</summary>
    public Loaded<Catalogue> Over(Catalogue under)
    {
        var catalogue = under;
        foreach (var (kind, models) in _models)
            catalogue = kind.Put(catalogue, Together(kind.Shelf(under)?.Raw, models));
        foreach (var (kind, ids) in _toCheck)
            kind.Check(catalogue, ids, _reader);
        _findings.AddRange(_reader.Findings);
        if (_findings.Count == 0)
            return new(_broken ? null : catalogue, []);
        // A model that is like another with a slip has the same slip at the same place.
        var once = _findings.DistinctBy(finding => (finding.Code, finding.At));
        return new(_broken ? null : catalogue, [.. once.OrderBy(finding => finding.At.File, StringComparer.Ordinal).ThenBy(finding => finding.At.Line).ThenBy(finding => finding.At.Column)]);
    }

    private void AddTree(Loaded<YamlNode> tree)
    {
        _findings.AddRange(tree.Findings);
        if (tree.Value is null)
            _broken = true;
        else if (CatalogueFields.Shape.Read(tree.Value, _reader, out var kinds))
            AddModels(kinds);
        else
            _broken = true;
    }

    private void AddModels(IReadOnlyDictionary<ModelKind, IReadOnlyList<Entry<string, YamlNode>>> kinds)
    {
        foreach (var (kind, entry) in kinds.SelectMany(kind => kind.Value.Select(entry => (kind.Key, entry))))
        {
            var models = Of(kind);
            if (models.TryGetValue(entry.Key, out var before))
                _reader.Ask(ModelSlips.TwoFiles, entry.At, $"{kind.Noun} {entry.Key} stands in {before.At} too", "each model in one file; here the later counts", "take one of them out");
            models[entry.Key] = new RawModel(entry.Key, entry.At, () => entry.Value);
            if (!_toCheck.TryGetValue(kind, out var ids))
                _toCheck[kind] = ids = [];
            ids.Add(entry.Key);
        }
    }

    private void Broken(IReadOnlyList<Finding> findings)
    {
        _broken = true;
        _findings.AddRange(findings);
    }

    private Dictionary<string, RawModel> Of(ModelKind kind)
    {
        if (!_models.TryGetValue(kind, out var models))
            _models[kind] = models = [];
        return models;
    }

    // A model that is like one of its own name is like the one under it; so that one is kept.
    private static Dictionary<string, RawModel> Together(IReadOnlyDictionary<string, RawModel>? under, Dictionary<string, RawModel> over)
    {
        var all = under is null ? [] : new Dictionary<string, RawModel>(under);
        foreach (var (id, model) in over)
            all[id] = all.TryGetValue(id, out var before) ? model.Over(before) : model;
        return all;
    }
}
