using System.Text;

namespace Headroom.References.Tests;

/// <summary>The tables of this project, read from the files built into it.</summary>
internal static class Csv
{
    /// <summary>Rows below the heading; every row has as many fields as the heading.</summary>
    internal static IReadOnlyList<string[]> Read(string name)
    {
        using var stream = typeof(Csv).Assembly.GetManifestResourceStream(name + ".csv")
            ?? throw new InvalidOperationException($"Data/{name}.csv is not in the test project.");
        using var reader = new StreamReader(stream);
        var rows = new List<string[]>();
        while (reader.ReadLine() is { } line)
            rows.Add(Fields(line));
        Assert.All(rows, row => Assert.Equal(rows[0].Length, row.Length));
        return rows[1..];
    }

    // A quote inside a quoted field is doubled, so it closes and opens the field again: it must then be kept once.
    private static string[] Fields(string line)
    {
        var fields = new List<StringBuilder> { new() };
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '"')
            {
                if (!quoted && i > 0 && line[i - 1] == '"')
                    fields[^1].Append('"');
                quoted = !quoted;
            }
            else if (line[i] == ',' && !quoted)
                fields.Add(new StringBuilder());
            else
                fields[^1].Append(line[i]);
        }
        return [.. fields.Select(field => field.ToString())];
    }
}
