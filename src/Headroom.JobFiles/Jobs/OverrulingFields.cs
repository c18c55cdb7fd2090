using Headroom.Domain.Jobs;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>Verdicts set aside by somebody.</summary>
internal static class OverrulingFields
{
    private static readonly Field<string> Entry = new("entry", Shapes.Text, "The entry of the ledger.", "cabling/K-09/length") { IsRequired = true };
    private static readonly Field<string> Because = new("because", Shapes.Text, "Why.", "\"tester record 31, all margins kept\"") { IsRequired = true };
    private static readonly Field<string> By = new("by", Shapes.Text, "Who.", "J. Marsh") { IsRequired = true };
    private static readonly Field<DateOnly> On = new("on", Shapes.Day, "When.", "2026-11-15") { IsRequired = true };

    /// <summary>An overruling.</summary>
    public static ObjectShape<Overruling> Shape { get; } = new(
        "overruling",
        [Entry, Because, By, On],
        values => new Overruling(values.Must(Entry), values.Must(Because), values.Must(By), values.Must(On), values.At))
    {
        About = "A verdict that somebody sets aside, with the reason that is kept.",
    };

    /// <summary>The overrulings.</summary>
    public static ListShape<Overruling> List { get; } = new("overruling", Shape) { IsQuiet = true };
}
