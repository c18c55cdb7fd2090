using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What an hour costs and how long things take.</summary>
internal static class LabourFields
{
    private static readonly Field<Given<Money>> HourCost = new("hour cost", new MoneyShape(), "What an hour costs the firm.", "34 EUR");
    private static readonly Field<Given<Money>> HourPrice = new("hour price", new MoneyShape(), "What an hour is charged; without it the margin says so.", "62 EUR");
    private static readonly Field<IReadOnlyList<Entry<string, ThreePoint>>> Tasks = new(
        "tasks",
        new MapShape<string, ThreePoint>("task", Shapes.Words([.. LabourTerms.Names]), new ThreePointShape("minutes", "min", (0, 10_000))) { KeyExample = "drop", ThingExample = "20 / 35 / 70 min", IsCompleted = true },
        "How long one of each takes: at best, most likely, at worst; 'job' once for the whole.",
        "{drop: 20 / 35 / 70 min, switch: 30 / 45 / 90 min}");
    private static readonly Field<ThreePoint> Difficulty = new(
        "difficulty", new ThreePointShape("a factor", "", (0.2m, 5)), "How much harder this site is than most, common to all tasks; 1 without it.", "0.9 / 1.1 / 1.5");
    private static readonly Field<string> Tax = new("tax", Shapes.Name("a group of tax"), "The group of its tax.", "standard");
    private static readonly Field<Given<Share>> CallBacks = new("call-backs", () => Sensible.Share, "What is put aside for coming back, as a share of the cost of the labour.", "4 %");

    /// <summary>The labour.</summary>
    public static ObjectShape<LabourTerms> Shape { get; } = new(
        "labour",
        [HourCost, HourPrice, Tasks, Difficulty, Tax, CallBacks],
        values => new LabourTerms(
            values.Get(HourCost),
            values.Get(HourPrice),
            values.List(Tasks).DistinctBy(entry => entry.Key).ToDictionary(entry => entry.Key, entry => entry.Value),
            values.Get(Difficulty),
            values.Get(Tax))
        {
            CallBacks = values.Get(CallBacks),
        });
}
