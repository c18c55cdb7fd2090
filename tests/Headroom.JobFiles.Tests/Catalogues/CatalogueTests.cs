using Headroom.Domain.Catalogues;
using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Tests.Catalogues;

/// <summary>The shipped catalogue and a firm's own over it.</summary>
public sealed class CatalogueTests
{
    [Fact]
    public void The_shipped_catalogue_holds_what_it_must_and_has_no_findings()
    {
        var loaded = CatalogueFiles.CheckShipped();
        Assert.Empty(loaded.Findings);
        var catalogue = loaded.Value!;
        Assert.True(catalogue.Switches.Count >= 25 && catalogue.Endpoints.Count >= 20);
        Assert.All(new[] { catalogue.Injectors.Count, catalogue.Cables.Count, catalogue.Fibres.Count, catalogue.Modules.Count, catalogue.Standby.Count, catalogue.Batteries.Count, catalogue.Fans.Count, catalogue.Cabinets.Count }, count => Assert.True(count >= 4));
    }

    [Fact]
    public void A_model_made_when_asked_for_is_the_one_that_was_checked()
    {
        var (late, strict) = (CatalogueFiles.ReadShipped(), CatalogueFiles.CheckShipped().Value!);
        Assert.Empty(late.Findings);
        Assert.Equal(strict.Switches.Keys.Order(), late.Value!.Switches.Keys.Order());
        Assert.All(strict.Switches, pair => Assert.Equal(Told("switches", strict, pair.Key), Told("switches", late.Value!, pair.Key)));
        Assert.All(strict.Endpoints, pair => Assert.Equal(Told("endpoints", strict, pair.Key), Told("endpoints", late.Value!, pair.Key)));
    }

    [Fact]
    public void A_firms_model_takes_the_place_of_a_shipped_one_or_says_only_what_differs()
    {
        var shipped = CatalogueFiles.ReadShipped().Value!;
        var loaded = CatalogueFiles.Parse("catalogue: 1\nendpoints:\n  pipit-loud: {like: pipit, draws: {typical: 3.1 W, peak: 5.9 W}}\n", "own.yaml", shipped);
        Assert.DoesNotContain(loaded.Findings, f => f.Severity == Severity.Error);
        Assert.Equal(5.9, loaded.Value!.Endpoints["pipit-loud"].Draws["peak"].Value.Value);
        Assert.Equal(shipped.Endpoints["pipit"].Power!.Class, loaded.Value.Endpoints["pipit-loud"].Power!.Class);
    }

    [Theory]
    [InlineData("  x: {kind: phone, power: {class: 3}, draws: {typical: 9 W, peak: 4 W}}", "error CAT030")]
    [InlineData("  x: {kind: phone, power: {class: 2}, draws: {typical: 9 W, peak: 12 W}}", "question CAT032")]
    [InlineData("  x: {kind: phone, power: {class: 9}}", "error CAT")]
    [InlineData("  x: {like: nothing-like-it}", "error CAT")]
    [InlineData("  x: {kind: fone}", "error CAT011")]
    public void An_impossible_model_is_found(string model, string expected)
    {
        var loaded = CatalogueFiles.Parse($"catalogue: 1\nendpoints:\n{model}\n", "own.yaml", Catalogue.Empty);
        Assert.True(loaded.Findings.Any(f => f.ToString().Contains(expected, StringComparison.Ordinal)), string.Join('\n', loaded.Findings));
    }

    [Fact]
    public void A_word_of_a_sentence_is_no_origin()
    {
        var own = CatalogueFiles.Parse("catalogue: 1\nendpoints:\n  lantern: {about: draws are as declared, kind: phone, power: none, draws: {typical: 3 W declared}}\n", "own.yaml", Catalogue.Empty).Value!;
        var facts = CatalogueFiles.Facts(own, "endpoints", "lantern").ToDictionary(fact => fact.Path);
        Assert.Equal(("draws are as declared", ""), (facts["about"].Value, facts["about"].Origin));
        Assert.Equal(("3 W", "declared"), (facts["draws.typical"].Value, facts["draws.typical"].Origin));
    }

    private static string Told(string kind, Catalogue catalogue, string id) => string.Join('\n', CatalogueFiles.Facts(catalogue, kind, id).Select(fact => fact.ToString()));
}
