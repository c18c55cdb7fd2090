using Headroom.Domain.Findings;
using Headroom.JobFiles.Catalogues;
using Headroom.JobFiles.Files;
using Headroom.JobFiles.Sheets;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles;

/// <summary>Reads a firm's models from a table (CSV): a row a model, the names of its fields as headings, with points between their keys.</summary>
public static class CatalogueCsv
{
    private const string KindHeading = "as";
    private const string NameHeading = "id";

    /// <summary>Reads the table of a file.</summary>
    /// <param name="path">The file, as the person named it.</param>
    /// <returns>The models as a catalogue file would have them, or null with the findings that say why not.</returns>
    public static Loaded<YamlNode> Read(string path) => Table(path, TextFile.ReadAs(path, bytes => SheetEncoding.Decode(bytes.Span, path, null)));

    /// <summary>Reads the text of a table.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The name that findings give it.</param>
    /// <returns>The models as a catalogue file would have them, or null with the findings that say why not.</returns>
    public static Loaded<YamlNode> Parse(string text, string file) => Table(file, new(new SheetText(text, SheetEncoding.Utf8, false, null), []));

    private static Loaded<YamlNode> Table(string file, Loaded<SheetText> read)
    {
        var slips = new SheetSlips();
        slips.Take(read.Findings);
        if (read.Value is not { } text)
            return new(null, slips.Findings);
        slips.Take(TextGuard.Characters(text.Text, new Place(file, 1, 1)));
        var found = SheetSeparator.Find(text.Text, null);
        var table = new SheetTableReader(text.Text, file, slips).Read(found.Sign, found.From);
        var tree = table is null ? null : Tree(table, found.Sign, (file, slips));
        return new(slips.Stands ? null : tree, slips.Findings);
    }

    private static YamlMap? Tree(SheetTable table, char separator, (string File, SheetSlips Slips) at)
    {
        var headings = table.Header.Select(cell => SheetHeading.Written(cell.Text)).ToList();
        var (kind, name) = (headings.FindIndex(heading => heading.Words == KindHeading), headings.FindIndex(heading => heading.Words == NameHeading));
        if (kind < 0 || name < 0)
        {
            at.Slips.Refuse(Code, table.Header[0].At, ($"no columns '{KindHeading}' and '{NameHeading}'", "as;id;kind;power.class;..., with a row for each model", $"head the column that says 'endpoints' or 'switches' with '{KindHeading}', and the one with the names with '{NameHeading}'"));
            return null;
        }

        var numbers = SheetNumbers.Find(table.Rows.SelectMany(row => row.Cells.Select(cell => cell.Text).Where(IsNumeric)), null, separator);
        YamlNode root = new YamlMap([new YamlEntry(Scalar("catalogue", table.Header[0].At), Scalar("1", table.Header[0].At))], true, table.Header[0].At, (0, 0));
        foreach (var row in table.Rows)
        {
            if (KindOf(row, kind, at.Slips) is not { } key || row.Cell(name) is not { Text.Length: > 0 } id)
                continue;
            YamlNode model = new YamlMap([], true, row.At, (0, 0));
            for (var column = 0; column < headings.Count; column++)
            {
                if (column != kind && column != name && row.Cell(column) is { Text.Length: > 0 } cell && Value(cell, headings[column].Unit, numbers, at.Slips) is { } value)
                    model = Put(model, headings[column].Words, value, (cell.At, at.Slips)) ?? model;
            }

            root = TreeGraft.Put(root, [key], [new YamlEntry(Scalar(id.Text, id.At), model)], isList: false) ?? root;
        }

        return root as YamlMap;
    }

    private static YamlNode? Put(YamlNode model, string words, YamlScalar value, (Place At, SheetSlips Slips) place)
    {
        var keys = Keys(words);
        var put = TreeGraft.Put(model, [.. keys.SkipLast(1)], [new YamlEntry(Scalar(keys[^1], place.At), value)], isList: false);
        if (put is null)
            place.Slips.Refuse(Code, place.At, ($"'{Words.Short(words)}' lies below a field that has a value of its own", "one heading for each value", "take one of the two columns out"));
        return put;
    }

    private static string? KindOf(SheetRow row, int column, SheetSlips slips)
    {
        var word = row.Cell(column)?.Text ?? "";
        if (ModelKinds.All.FirstOrDefault(kind => kind.Key == word || kind.Noun == word) is { } known)
            return known.Key;
        slips.Refuse(Code, row.At, ($"row {row.Number} is to be taken as '{Words.Short(word)}'", $"one of {Words.Or([.. ModelKinds.All.Select(kind => kind.Key)])}", "choose one of them"));
        return null;
    }

    private static YamlScalar? Value(SheetCell cell, string? unit, SheetNumbers numbers, SheetSlips slips)
    {
        if (Mangled.Find(cell.Text, CellKind.Measured) is { } slip)
        {
            slips.Refuse(slip.Code, cell.At, ($"{cell.Name} '{Words.Short(cell.Text)}'", slip.Allowed, slip.Advice));
            return null;
        }

        if (!IsNumeric(cell.Text))
            return Scalar(cell.Text, cell.At);
        var (text, code, ways) = numbers.Plain(cell.Text);
        if (text is null)
        {
            slips.Refuse(code!, cell.At, ($"{cell.Name} '{Words.Short(cell.Text)}'", $"a number with one decimal sign, here a {numbers.Word}", $"it may be {ways}: write it without a mark between thousands"));
            return null;
        }

        return Scalar(unit is not null && char.IsAsciiDigit(text[^1]) ? $"{text} {unit}" : text, cell.At);
    }

    // Points lead from key to key; two of them are the sign of a range, as in ports.1..24.power.
    private static List<string> Keys(string words) =>
        [.. words.Replace("..", "\n", StringComparison.Ordinal).Split('.', StringSplitOptions.TrimEntries).Select(key => key.Replace("\n", "..", StringComparison.Ordinal))];

    private static bool IsNumeric(string text) => text.Length > 0 && (char.IsAsciiDigit(text[0]) || (text.Length > 1 && text[0] is '-' or '+' or '.' && char.IsAsciiDigit(text[1])));

    private static YamlScalar Scalar(string text, Place at) => new(text, YamlStyle.Plain, at, (0, 0));

    private static FindingCode Code => new(ModelSlips.Cells.Code(CatalogueFiles.CodePrefix), ModelSlips.Cells.Meaning);
}
