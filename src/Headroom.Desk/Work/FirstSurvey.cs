using System.Globalization;
using System.Text;
using Headroom.Desk.Shown;
using Headroom.Domain.Catalogues;
using Headroom.JobFiles.Editing;
using Headroom.Store;

namespace Headroom.Desk.Work;

/// <summary>A first survey from a few questions: how many of what, and who must not hear it.</summary>
internal static class FirstSurvey
{
    private const int Most = 500;

    // What a question counts: the kind in the catalogue and the model people mostly mean there.
    private static readonly (string Key, string Label, string Kind)[] Counted =
    [
        ("people", "How many people work at a screen?", "other"),
        ("phones", "How many telephones?", "phone"),
        ("points", "How many access points?", "access point"),
        ("cameras", "How many cameras?", "camera"),
    ];

    /// <summary>The questions, with the models there are.</summary>
    public static IReadOnlyList<NewJobQuestion> Questions(Catalogue models) => [.. Counted.Select(one => new NewJobQuestion(one.Key, one.Label, Models(models, one.Kind)))];

    /// <summary>The job of the answers; or what is wrong with them, by question.</summary>
    public static (JobText? Text, string What, IReadOnlyDictionary<string, string> Wrong) Of(IReadOnlyDictionary<string, string> typed, Catalogue models)
    {
        var wrong = new Dictionary<string, string>();
        var name = typed.GetValueOrDefault("name")?.Trim() ?? "";
        if (name.Length == 0)
            wrong[""] = "the job has no name";
        var endpoints = new StringBuilder();
        foreach (var (key, _, kind) in Counted)
        {
            var text = typed.GetValueOrDefault(key)?.Trim() ?? "";
            var known = Models(models, kind);
            var model = typed.GetValueOrDefault(key + "-model") is { Length: > 0 } given ? given : known.FirstOrDefault();
            if (text.Length == 0 || text == "0")
                continue;
            if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count > Most)
                wrong[key] = $"'{text}': a whole number from 0 to {Most}";
            else if (model is null || !known.Contains(model))
                wrong[key] = "choose one of the models of the catalogue";
            else
                endpoints.Append(CultureInfo.InvariantCulture, $"    {count} x {model}: {{near: office}}\n");
        }

        if (wrong.Count == 0 && endpoints.Length == 0)
            wrong["people"] = "at least one of these is more than 0";
        return wrong.Count > 0 ? (null, "", wrong) : (JobText.Of(Written(name, typed.GetValueOrDefault("listener")?.Trim() ?? "", endpoints.ToString())), "begun from a few questions", wrong);
    }

    private static string Written(string name, string listener, string endpoints) =>
        $$"""
        # Begun from a few questions. Whatever is left out is unknown, and is asked for when a sum needs it.
        headroom: 1
        job: {{YamlWriter.Text(name)}}
        policy:
          reserve: {power: 20 %, ports: 2}
        survey:
          spaces:
            office: {kind: open office}
            cupboard: {kind: cupboard}

        """ + (listener.Length == 0 ? "" : $"  listeners:\n    listener: {{in: office, limit: 40 dB(A) assumed, why: {YamlWriter.Text(listener)}}}\n") + "  endpoints:\n" + endpoints;

    // The name that says what it is comes first.
    private static List<string> Models(Catalogue models, string kind) =>
        [.. models.Endpoints.Keys.Where(id => models.Endpoints[id].Kind == kind).OrderBy(id => id == "workstation" ? 0 : 1).ThenBy(id => id, StringComparer.Ordinal)];
}
