using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Editing;

/// <summary>Puts one thing into the text of a job file and leaves all else as the person wrote it: comments, order, line ends, layout.</summary>
/// <remarks>Every edited text is read again. It is handed out only when it says what the old one said, and the change, and nothing else.</remarks>
public static class JobFileEditor
{
    private const string Designs = "designs";
    private const string Survey = "survey";
    private const string Readings = "readings";
    private const string Overrulings = "overrulings";

    /// <summary>Puts a design in, or replaces the one of the same id. Comments inside a replaced design, and deeper ones behind it, go with it.</summary>
    /// <param name="text">The text of the job file.</param>
    /// <param name="id">The id of the design.</param>
    /// <param name="yaml">What stands under the id: a map, in lines or in braces.</param>
    /// <returns>The edited text, or null with the findings that say why not.</returns>
    public static Edit PutDesign(string text, string id, string yaml)
    {
        var loaded = YamlText.Parse(yaml, "design");
        if (loaded is not { Ok: true, Value: YamlMap design })
            return new(null, [.. loaded.Findings, Refuse(EditCodes.NoDesign, new("design", 1, 1), ($"no whole design '{Words.Short(id)}'", "a map of keys", "mend what is to be put in"))]);
        return Change(text, Designs, (lines, root, section) =>
            new SectionEdit(lines, root).Put((Designs, section), (id, NewValue.Design(yaml, design))), Right);

        bool Right(YamlNode? before, YamlNode after) =>
            TreeCheck.IsMapWith(before, after, id, (_, written) => TreeCheck.Same(written, design));
    }

    /// <summary>Puts a reading behind the others.</summary>
    /// <param name="text">The text of the job file.</param>
    /// <param name="reading">The reading; its place in a file is not used.</param>
    /// <returns>The edited text, or null with the findings that say why not.</returns>
    public static Edit AddReading(string text, Reading reading) => PutItem(text, Readings, ItemText.Of(reading), _ => false);

    /// <summary>Puts an overruling in, or replaces the one of the same ledger entry.</summary>
    /// <param name="text">The text of the job file.</param>
    /// <param name="overruling">The overruling; its place in a file is not used.</param>
    /// <returns>The edited text, or null with the findings that say why not.</returns>
    public static Edit AddOverruling(string text, Overruling overruling) =>
        PutItem(text, Overrulings, ItemText.Of(overruling), item => (item.Find("entry")?.Value as YamlScalar)?.Text == overruling.Entry);

    /// <summary>Puts many entries, or items of a list, behind those that stand below some keys.</summary>
    /// <param name="text">The text of the job file.</param>
    /// <param name="path">The keys that lead to the place; what is missing of it is made.</param>
    /// <param name="rows">The entries; of a list their values.</param>
    /// <param name="isList">True when they stand one after the other, without keys.</param>
    /// <returns>The edited text, or null with the findings that say why not.</returns>
    internal static Edit PutRows(string text, IReadOnlyList<string> path, IReadOnlyList<YamlEntry> rows, bool isList)
    {
        return Change(text, path[0], (lines, root, _) => new RowsEdit(lines, root).Put(path, rows, isList), IsRight);
        bool IsRight(YamlNode? before, YamlNode after) =>
            TreeGraft.Put(before, [.. path.Skip(1)], rows, isList) is { } wanted && TreeCheck.Same(wanted, after);
    }

    private static Edit PutItem(string text, string key, string item, Func<YamlMap, bool> isReplaced)
    {
        var wanted = YamlText.Parse(item, key);
        if (wanted is not { Ok: true, Value: { } node })
            return new(null, wanted.Findings);
        int? index = null;
        return Change(text, key, Put, (before, after) => TreeCheck.IsListWith(before, after, index, node));

        Splice? Put(TextLines lines, YamlMap root, YamlEntry? section)
        {
            var found = (section?.Value as YamlList)?.Items.ToList().FindIndex(i => i is YamlMap map && isReplaced(map)) ?? -1;
            index = found < 0 ? null : found;
            return new SectionEdit(lines, root).Put((key, section), item, index);
        }
    }

    private static Edit Change(
        string text, string key, Func<TextLines, YamlMap, YamlEntry?, Splice?> change, Func<YamlNode?, YamlNode, bool> isRight)
    {
        var loaded = YamlText.Parse(text, "");
        if (!loaded.Ok)
            return new(null, loaded.Findings);
        if (loaded.Value is not YamlMap { Entries.Count: > 0 } root)
            return new(null, [Refuse(EditCodes.NoMap, loaded.Value!.At, (loaded.Value.What, "a job file: a map of keys", "see whether it is the right file"))]);
        var section = root.Entries.FirstOrDefault(e => e.Key.Text == key);
        if (change(new TextLines(text), root, section) is not { } splice)
            return new(null, [Refuse(EditCodes.OtherSection, section!.Value.At, ($"{section.Value.What} under '{key}'", key is Designs or Survey ? "a map of keys" : "a list", "correct the section, then try again"))]);
        var edited = splice.Apply(text);
        var again = YamlText.Parse(edited, "");
        return again.Ok && TreeCheck.IsMapWith(root, again.Value!, key, isRight)
            ? new(edited, again.Findings)
            : new(null, [Refuse(EditCodes.NotSafe, section?.Key.At ?? root.At, ($"a way of writing '{key}' in which nothing can be changed safely", "plain lines or brackets", "put it in by hand"))]);
    }

    private static Finding Refuse(FindingCode code, Place at, (string Given, string Allowed, string Advice) words) =>
        new(Severity.Error, code.Code, at, words.Given, words.Allowed, words.Advice);
}
