using Headroom.Domain.Jobs;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>What the firm charges and wants to keep.</summary>
internal static class MoneyFields
{
    private static readonly Field<Given<Share>> Margin = new("margin", () => Sensible.Margin, "What is to remain of each price, as a share of the price; a mark-up is a share of the cost and is not meant.", "28 %");
    private static readonly Field<Given<Share>> LeastMargin = new("least margin", () => Sensible.Margin, "The least that must remain of the whole.", "18 %");
    private static readonly Field<Given<Share>> Discount = new("discount", () => Sensible.Margin, "What is taken off the whole.", "3 %");
    private static readonly Field<IReadOnlyList<Entry<string, Given<Share>>>> Tax = new(
        "tax", new MapShape<string, Given<Share>>("tax", Shapes.Name("a group of tax"), Sensible.Tax) { KeyExample = "standard", ThingExample = "19 %" }, "Tax by its group; the first is the usual one.", "{standard: 19 %, free: 0 %}");
    private static readonly Field<bool> TaxBy = new("tax by", new WordShape<bool>(("group", false), ("line", true)), "Whether tax is rounded once for each group or line by line; by group without it.", "group");
    private static readonly Field<Enum> Ties = new(
        "ties", new WordShape<Enum>(("away", TieRule.Away), ("even", TieRule.Even), ("up", TieRule.Up)), "Where half a smallest coin goes: away from zero, to the even digit, or upwards; away without it.", "away");
    private static readonly Field<Given<Money>> Budget = new("budget", new MoneyShape(), "The most the client will pay, tax included.", "6500 EUR");
    private static readonly Field<LabourTerms> Labour = new("labour", () => LabourFields.Shape, "What an hour costs and how long things take.", "{hour cost: 34 EUR, tasks: {drop: 20 / 35 / 70 min}}");
    private static readonly Field<IReadOnlyList<Entry<string, Given<Money>>>> Each = new(
        "each", new MapShape<string, Given<Money>>("price of each", Shapes.Words("cord", "label", "panel"), new MoneyShape()) { KeyExample = "cord", ThingExample = "1.90 EUR", IsCompleted = true }, "What small things cost the firm.", "{cord: 1.90 EUR, label: 0.14 EUR}");
    private static readonly Field<IReadOnlyList<string>> LeaveOut = new("leave out", new ListShape<string>("name", Shapes.Name("a model or unit")) { OrOne = true }, "Models, or ids of units, that the client has already or buys elsewhere.", "[workstation, printer]");
    private static readonly Field<IReadOnlyList<ExtraLine>> Lines = new("lines", () => LineFields.List, "Lines of the offer that do not follow from the design.", "[{what: skip for the old cable, cost: 90 EUR}]");
    private static readonly Field<OwningTerms> Owning = new("owning", () => OwningFields.Shape, "What is to be known about the cost of owning it.", "{years: 5, energy: 0.29 EUR}");
    private static readonly Field<Afterwards> After = new("afterwards", () => AfterwardsFields.Shape, "What the job took in the end.", "{hours: 41 h, material: 2310 EUR}");

    /// <summary>The keys that are the same for all jobs of a firm.</summary>
    public static IReadOnlyList<Field> OfTheFirm => [Margin, LeastMargin, Tax, TaxBy, Ties, Labour, Each, Owning];

    /// <summary>The money of a job.</summary>
    public static ObjectShape<MoneyTerms> Shape { get; } = new("offer", [Margin, LeastMargin, Discount, Tax, TaxBy, Ties, Budget, Labour, Each, LeaveOut, Lines, Owning, After], Build)
    {
        About = "What the firm charges and wants to keep. Costs and margins are for its own eyes.",
    };

    private static MoneyTerms Build(Values values) => new(
        values.Get(Margin),
        values.Get(LeastMargin),
        values.Get(Discount),
        [.. values.List(Tax).Select(entry => new TaxGroup(entry.Key, entry.Value))],
        values.Maybe(TaxBy) ?? false,
        (TieRule?)values.Get(Ties) ?? TieRule.Away,
        values.Get(Budget),
        values.At)
    {
        Labour = values.Get(Labour),
        Each = values.List(Each).DistinctBy(entry => entry.Key).ToDictionary(entry => entry.Key, entry => entry.Value),
        LeaveOut = values.List(LeaveOut),
        Lines = values.List(Lines),
        Owning = values.Get(Owning),
        Afterwards = values.Get(After),
    };
}
