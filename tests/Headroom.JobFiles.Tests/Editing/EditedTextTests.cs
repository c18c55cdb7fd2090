using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Editing;

namespace Headroom.JobFiles.Tests.Editing;

public class EditedTextTests
{
    private static readonly Gen<string> Comment = Gen.OneOf("", "", " # note", "  # another: one");
    private static readonly Gen<string> LineAbove = Gen.OneOf("", "", "\n", "# on its own\n", "\n# two\n\n");
    private static readonly Gen<string> NewLine = Gen.OneOf("\n", "\r\n");
    private static readonly Gen<string> Mark = Gen.OneOf("", "\uFEFF");

    // Designs in lines with a random depth, comments and blank lines, or in braces.
    private static readonly Gen<string> DesignsInLines =
        Gen.Select(Gen.Select(LineAbove, Comment).Array[1, 4], Gen.Int[1, 4], Gen.Int[1, 3], Comment).Select((above, depth, step, comment) =>
            $"designs:{comment}\n" + string.Concat(above.Select((a, i) =>
                $"{Indented(a.Item1, depth)}{Pad(depth)}d{i}:{a.Item2}\n{Pad(depth + step)}like: d9{a.Item2}\n{Pad(depth + step)}uplinks: none\n")));

    private static readonly Gen<string> DesignsInBraces = Gen.Select(Gen.Int[1, 3], Comment).Select((count, comment) =>
        "designs: {" + string.Join(", ", Enumerable.Range(0, count).Select(i => $"d{i}: {{like: d9}}")) + $"}}{comment}\n");

    private static readonly Gen<string> Designs = Gen.OneOf(DesignsInLines, DesignsInBraces, Gen.OneOf("", "designs:\n", "designs: {}\n"));
    private static readonly Gen<string> Readings = Gen.OneOf("", "readings: []\n", "readings:\n", "readings:\n  - {what: ohms, at: x}\n", "readings:\n- {what: ohms} # a\n# b\n- what: volts\n  at: y\n");

    private static readonly Gen<string> Texts = Gen.Select(Mark, NewLine, LineAbove, Designs, Gen.Select(LineAbove, Readings, Gen.Bool))
        .Select((mark, newLine, above, designs, rest) =>
        {
            var text = "job: x # mine\n" + above + designs + rest.Item1 + rest.Item2;
            return mark + (rest.Item3 ? text.TrimEnd() : text).Replace("\n", newLine, StringComparison.Ordinal);
        });

    private static readonly Reading Ohms = new(
        "ohms", "K-01", 2, "Ω", null, "2 Ω", null, null, false, null, null, null, null, null, null, null, Place.None);

    [Fact]
    public void A_new_design_adds_lines_and_keeps_all_others() => Texts.Sample(text => KeepsLines(text, JobFileEditor.PutDesign(text, "new", DesignCases.Yaml)));

    [Fact]
    public void A_new_reading_adds_lines_and_keeps_all_others() => Texts.Sample(text => KeepsLines(text, JobFileEditor.AddReading(text, Ohms)));

    [Fact]
    public void A_replaced_design_keeps_every_line_outside_it() => DesignsInLines.Sample(designs =>
    {
        var text = "job: x\n" + designs + "\n# below\nreadings: []\n";
        var edited = JobFileEditor.PutDesign(text, "d0", DesignCases.Yaml).Text!;
        var before = text.Split('\n');
        var after = edited.Split('\n');
        var at = Array.FindIndex(before, line => line.TrimStart().StartsWith("d0:", StringComparison.Ordinal));
        return before.AsSpan(0, at + 1).SequenceEqual(after.AsSpan(0, at + 1)) && before.AsSpan(at + 3).SequenceEqual(after.AsSpan(at + 3));
    });

    [Fact]
    public void Line_ends_are_never_mixed() => Texts.Where(text => text.Contains("\r\n", StringComparison.Ordinal)).Sample(text =>
        !JobFileEditor.PutDesign(text, "d0", DesignCases.Yaml).Text!.Replace("\r\n", "", StringComparison.Ordinal).Contains('\n'));

    // Each old line is found again in the same order; where brackets were opened up or added to, its beginning and its comment are.
    private static bool KeepsLines(string before, Edit edit)
    {
        if (edit.Text is not { } after)
            return false;
        var now = after.Split('\n');
        var at = 0;
        foreach (var line in before.Split('\n'))
        {
            while (at < now.Length && !IsKept(line.TrimEnd('\r'), now[at].TrimEnd('\r')))
                at++;
            if (at++ >= now.Length)
                return false;
        }

        return now.Length >= before.Split('\n').Length;
    }

    private static bool IsKept(string line, string now)
    {
        if (line == now)
            return true;
        var close = line.LastIndexOfAny(['}', ']']);
        var start = line.StartsWith("designs:", StringComparison.Ordinal) || line.StartsWith("readings:", StringComparison.Ordinal);
        return start && close > 0
            && now.StartsWith(line[..line.IndexOf(':', StringComparison.Ordinal)], StringComparison.Ordinal)
            && now.EndsWith(line[(close + 1)..], StringComparison.Ordinal);
    }

    private static string Indented(string lines, int depth) => lines.Replace("#", Pad(depth) + "#", StringComparison.Ordinal);

    private static string Pad(int depth) => new(' ', depth);
}
