using Headroom.Domain.Findings;
using Headroom.Domain.Jobs;
using Headroom.JobFiles.Fields;

namespace Headroom.JobFiles.Jobs;

/// <summary>A job file as a whole.</summary>
internal static class JobFields
{
    private static readonly Field<int> Format = new("headroom", new FormatShape(), "The version of the format.", "1") { IsRequired = true };
    private static readonly Field<string> Name = new("job", Shapes.Text, "The name people say.", "Fern Lane Veterinary Practice") { IsRequired = true };
    private static readonly Field<Client> Client = new("client", ClientFields.Shape, "Who it is for: a name, or keys.", "{name: Fern Lane Veterinary Practice, paper: A4, currency: GBP}");
    private static readonly Field<Policy> Policy = new("policy", PolicyFields.Shape, "The house rules; each has a default that the ledger shows.", "{reserve: {power: 20 %}}");
    private static readonly Field<Survey> Survey = new("survey", SurveyFields.Shape, "What the building dictates.", "{spaces: {reception: {size: 6 x 5 x 2.7 m}}}");
    private static readonly Field<string> Chosen = new("chosen", Shapes.Name("a design"), "The design that is studied when none is named.", "as-quoted");

    private static readonly Field<IReadOnlyList<Entry<string, Design>>> Designs = new(
        "designs", DesignFields.Map, "The answers.", "{as-quoted: {switches: {sw-1: {model: wren-b, in: A, unit: 3}}}}");

    private static readonly Field<IReadOnlyList<Reading>> Readings = new(
        "readings", ReadingFields.List, "What was measured.", "[{what: sound, at: desk, value: 47.6 dB(A), on: 2026-11-14}]");

    private static readonly Field<IReadOnlyList<Overruling>> Overrulings = new(
        "overrulings", OverrulingFields.List, "Verdicts that somebody set aside.", "[{entry: cabling/K-09/length, because: tester record 31, by: J. Marsh, on: 2026-11-15}]");

    private static readonly Field<MoneyTerms> Money = new("money", new OnDemand<MoneyTerms>(() => MoneyFields.Shape), "What the firm charges and wants to keep.", "{margin: 28 %, tax: {standard: 19 %}}");

    /// <summary>The file.</summary>
    public static ObjectShape<Job> Shape { get; } = new("job file", [Format, Name, Client, Policy, Survey, Chosen, Designs, Money, Readings, Overrulings], Build) { GoesOn = true };

    private static Job Build(Values values) => new(
        values.Get(Name) ?? "",
        values.Get(Client),
        values.Get(Policy) ?? Domain.Jobs.Policy.None,
        values.Get(Survey) ?? SurveyFields.None,
        [.. values.List(Designs).Select(entry => entry.Value with { Id = entry.Key, At = entry.At })],
        values.Get(Chosen),
        values.List(Readings),
        values.List(Overrulings),
        new Place(values.At.File, 0, 0))
    {
        Money = values.Get(Money),
    };
}
