using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Text;

/// <summary>The inputs of a working with where each comes from, and its steps with the figures in one column at the right.</summary>
internal static class ExplainedWorking
{
    private const int Left = Explanation.Indent + Explanation.Label;
    private const int WidestName = 26;
    private const int WidestUnit = 8;

    /// <summary>Writes inputs, then steps.</summary>
    public static void Write(Page page, Working working, ExplainRequest request)
    {
        WriteInputs(page, [.. working.Inputs.Select(input => input with { Origin = request.Shorten(input.Origin) })]);
        WriteSteps(page, working.Steps);
    }

    private static void WriteInputs(Page page, IReadOnlyList<WorkingInput> inputs)
    {
        if (inputs.Count == 0)
            return;
        var pen = page.Pen;
        var values = inputs.Select(input => input.Value is { } value ? Numbers.Show(value) : "unknown").ToList();
        var name = Math.Min(WidestName, inputs.Max(input => Columns.Of(pen.Plain(input.Name))));
        var value = values.Max(Columns.Of);
        var unit = Math.Min(WidestUnit, inputs.Max(input => Columns.Of(pen.Plain(input.Unit))));
        var origin = Left + name + 2 + value + 1 + unit + 2;
        for (var i = 0; i < inputs.Count; i++)
        {
            var names = Wrap.Lines(pen.Plain(inputs[i].Name), name);
            var origins = Wrap.Lines(pen.Plain(inputs[i].Origin), Pen.Columns - origin);
            for (var line = 0; line < Math.Max(names.Count, origins.Count); line++)
            {
                var figure = line > 0 ? "" : Columns.Right(values[i], value) + (inputs[i].Value is null ? "" : " " + pen.Plain(inputs[i].Unit));
                page.Line(Start(i + line, "from") + Columns.Left(Part(names, line), name + 2) + Columns.Left(figure, value + 1 + unit + 2) + Part(origins, line));
            }
        }
    }

    private static void WriteSteps(Page page, IReadOnlyList<WorkingStep> steps)
    {
        if (steps.Count == 0)
            return;
        var pen = page.Pen;
        var shown = Aligned(steps);
        var value = Math.Max(1, shown.Max(Columns.Of));
        var unit = Math.Min(WidestUnit, steps.Max(step => Columns.Of(pen.Plain(step.Unit))));
        var room = Pen.Columns - Left - 2 - value - 1 - unit;
        for (var i = 0; i < steps.Count; i++)
        {
            var text = Wrap.Lines(pen.Plain(Told(steps[i])), shown[i].Length == 0 ? Pen.Columns - Left : room);
            for (var line = 0; line < text.Count; line++)
            {
                var symbol = steps[i].Value is null ? "" : " " + pen.Plain(steps[i].Unit);
                var figure = line < text.Count - 1 || shown[i].Length == 0 ? "" : "  " + Columns.Right(shown[i], value) + symbol;
                page.Line(Start(i + line, "worked") + (figure.Length == 0 ? text[line] : Columns.Left(text[line], room) + figure));
            }
        }
    }

    // Steps in the same unit stand with the same decimals, so that a sum can be followed down the column. A step with a unit and no value is unknown.
    private static string[] Aligned(IReadOnlyList<WorkingStep> steps)
    {
        var shown = new string[steps.Count];
        foreach (var group in steps.Select((step, index) => (step, index)).GroupBy(pair => pair.step.Unit))
        {
            var texts = Numbers.Together([.. group.Select(pair => pair.step.Value)]);
            foreach (var (text, pair) in texts.Zip(group))
                shown[pair.index] = pair.step.Value is null && pair.step.Unit.Length > 0 ? "unknown" : text;
        }

        return shown;
    }

    private static string Told(WorkingStep step) =>
        step.Name.Length == 0 ? step.Sum : step.Sum.Length == 0 ? step.Name : $"{step.Name}: {step.Sum}";

    private static string Start(int line, string label) =>
        new string(' ', Explanation.Indent) + Columns.Left(line == 0 ? label : "", Explanation.Label);

    private static string Part(IReadOnlyList<string> lines, int index) => index < lines.Count ? lines[index] : "";
}
