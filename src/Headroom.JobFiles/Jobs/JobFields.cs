using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Fields;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Jobs;

/// <summary>A job file as a whole.</summary>
internal static class JobFields
{
    private static readonly Field<int> Format = new("headroom", new FormatShape(), "The version of the format.", "1") { IsRequired = true };
    private static readonly Field<string> Name = new("job", Shapes.Text, "The name people say.", "Fern Lane Veterinary Practice") { IsRequired = true };
    private static readonly Field<Client> Client = new("client", () => ClientFields.Shape, "Who it is for: a name, or keys.", "{name: Fern Lane Veterinary Practice, paper: A4, currency: GBP}");
    private static readonly Field<Policy> Policy = new("policy", () => PolicyFields.Shape, "The house rules; each has a default that the ledger shows.", "{reserve: {power: 20 %}}");
    private static readonly Field<Survey> Survey = new("survey", () => SurveyFields.Shape, "What the building dictates.", "{spaces: {reception: {size: 6 x 5 x 2.7 m}}}");
    private static readonly Field<string> Chosen = new("chosen", Shapes.Name("a design"), "The design that is studied when none is named.", "as-quoted");

    private static readonly Field<IReadOnlyList<Entry<string, Design>>> Designs = new(
        "designs", () => DesignFields.Map, "The answers.", "{as-quoted: {switches: {sw-1: {model: wren-b, in: A, unit: 3}}}}");

    private static readonly Field<IReadOnlyList<Reading>> Readings = new(
        "readings", () => ReadingFields.List, "What was measured.", "[{what: sound, at: desk, value: 47.6 dB(A), on: 2026-11-14}]");

    private static readonly Field<IReadOnlyList<Price>> Prices = new("prices", () => PriceFields.All, "What goods cost.", "[{model: wren-b, cost: 212 EUR, on: 2026-11-20}]");
    private static readonly Field<IReadOnlyList<FleetRow>> Fleet = new("fleet", () => FleetFields.All, "What the firm has in the field, at all of its sites.", "[{model: wren-b, units: 120, service: 240 years, failed: 3, spares: 1, supplier: 14 d}]");
    private static readonly Field<IReadOnlyList<SheetPlan>> Sheets = new(
        JobFile.SheetsKey, new LaterShape<IReadOnlyList<SheetPlan>>(() => SheetFields.List), "Sheets (CSV) whose rows count as if they stood here.", "[{file: drops.csv, as: drops, otherwise: {from: cupboard}}]");
    private static readonly Field<IReadOnlyList<Overruling>> Overrulings = new(
        "overrulings", () => OverrulingFields.List, "Verdicts that somebody set aside.", "[{entry: cabling/K-09/length, because: tester record 31, by: J. Marsh, on: 2026-11-15}]");

    private static readonly Field<MoneyTerms> Money = new("money", () => MoneyFields.Shape, "What the firm charges and wants to keep.", "{margin: 28 %, tax: {standard: 19 %}}");

    /// <summary>The file.</summary>
    public static ObjectShape<Job> Shape { get; } = new("job file", [Format, Name, Client, Policy, Sheets, Survey, Chosen, Designs, Prices, Money, Fleet, Readings, Overrulings], Build) { GoesOn = true };

    private static Job Build(Values values) => new(
        values.Get(Name) ?? "",
        values.Get(Client),
        values.Get(Policy) ?? Domain.Jobs.Policy.None,
        values.Get(Survey) ?? SurveyFields.None,
        [.. values.List(Designs).Select(entry => entry.Value with { Id = entry.Key, At = entry.At })],
        values.Get(Chosen),
        values.List(Readings),
        values.List(Overrulings),
        new Place(values.At.File, 0, 0)) { Prices = values.List(Prices), Money = values.Get(Money), Fleet = values.List(Fleet) };
}
