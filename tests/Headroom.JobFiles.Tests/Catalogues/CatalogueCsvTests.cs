using System.Text;
using Headroom.Domain.Catalogues;
using Headroom.JobFiles.Tests.Sheets;

namespace Headroom.JobFiles.Tests.Catalogues;

/// <summary>A firm's models as a table; all of them invented.</summary>
public sealed class CatalogueCsvTests
{
    private const string Table = """
        as;id;like;kind;power.class;power.type;draws.typical (W);draws.peak;weight;price
        endpoints;lantern;;access point;3;;5,2;9,7 W;0,6 kg;89 EUR
        endpoint;pipit-loud;pipit;;;;3,1;5,9 W;;
        cables;own-24;cat5e-24;;;;;;;
        """;

    private const string Ports = "as,id,ports.1..8.media,ports.1..8.power,ports.1..8.speed,supplies.small.rated,sound.levels.1.power\nswitches,own-8,copper,at,1 Gb/s,180 W,3.9 B\n";

    private static readonly Catalogue Shipped = CatalogueFiles.ReadShipped().Value!;

    [Fact]
    public void A_row_is_a_model_and_says_only_what_differs_where_it_is_like_another()
    {
        var catalogue = Read(Table);
        var lantern = catalogue.Endpoints["lantern"];
        Assert.Equal((5.2, 9.7, 3), (lantern.Draws["typical"].Value.Value, lantern.Draws["peak"].Value.Value, lantern.Power!.Class));
        Assert.Equal((3.1, Shipped.Endpoints["pipit"].Power!.Class), (catalogue.Endpoints["pipit-loud"].Draws["typical"].Value.Value, catalogue.Endpoints["pipit-loud"].Power!.Class));
        Assert.Contains("own-24", catalogue.Cables.Keys);
    }

    [Fact]
    public void Headings_lead_from_key_to_key_and_over_ranges_of_ports()
    {
        var model = Read(Ports).Switches["own-8"];
        Assert.Equal((1, 8), (model.Ports[0].First, model.Ports[0].Last));
        Assert.Equal(39, model.Sound!.Levels[0].Power!.Value.Value, 1e-9);
    }

    [Fact]
    public void A_table_says_the_same_as_a_file_in_lines()
    {
        var lines = CatalogueFiles.Parse("catalogue: 1\nendpoints: {lantern: {kind: access point, power: {class: 3}, draws: {typical: 5.2 W, peak: 9.7 W}, weight: 0.6 kg, price: 89 EUR}}\n", "own.yaml", Shipped).Value!;
        Assert.Equal(Told(lines), Told(Read(Table)));
    }

    [Theory]
    [InlineData("as;id;kindd\nendpoints;x;phone\n", "own.csv:2:13: error CAT001")]
    [InlineData("as;id;kind;power;weight\nendpoints;x;phone;none;3\n", "own.csv:2:24: error CAT006")]
    [InlineData("as;id;kind;power;weight (kg)\nendpoints;x;phone;none;1.500\n", "own.csv:2:24: error SHT010")]
    [InlineData("as;id;kind;power;weight (kg)\nendpoints;x;phone;none;#REF!\n", "own.csv:2:24: error SHT017")]
    [InlineData("as;id\nphones;x\n", "own.csv:2:1: error CAT041")]
    [InlineData("id;kind\nx;phone\n", "own.csv:1:1: error CAT041")]
    [InlineData("as;id;power;power.class\nendpoints;x;none;3\n", "own.csv:2:18: error CAT041")]
    [InlineData("as;id;kind\nendpoints;x;\"phone\n", "own.csv:2:13: error SHT001")]
    public void A_slip_in_a_table_is_found_at_its_cell(string text, string expected)
    {
        using var folder = new SheetFolder("");
        folder.Put("own.csv", text);
        var found = folder.Plain(string.Join('\n', CatalogueFiles.Read([folder.PathOf("own.csv")], Shipped).Findings));
        Assert.Contains(expected, found, StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_in_an_older_encoding_is_read()
    {
        using var folder = new SheetFolder("");
        File.WriteAllBytes(folder.PathOf("own.csv"), Encoding.Latin1.GetBytes(Table.Replace("lantern", "laterne-ü", StringComparison.Ordinal)));
        Assert.Contains("laterne-ü", CatalogueFiles.Read([folder.PathOf("own.csv")], Shipped).Value!.Endpoints.Keys);
    }

    private static Catalogue Read(string text)
    {
        using var folder = new SheetFolder("");
        folder.Put("own.csv", text);
        var read = CatalogueFiles.Read([folder.PathOf("own.csv")], Shipped);
        Assert.Equal("", string.Join('\n', read.Findings));
        return read.Value!;
    }

    private static IEnumerable<(string, string)> Told(Catalogue catalogue) =>
        CatalogueFiles.Facts(catalogue, "endpoints", "lantern").Select(fact => (fact.Path, fact.Value)).Order();
}
