using Headroom.Documents.Papers;
using Headroom.Engineering;
using Headroom.Engineering.Money;
using Headroom.JobFiles;

namespace Headroom.Documents.Tests.Papers;

public sealed class OrderTests
{
    private static readonly PaperInput Barn = WithSuppliers();

    [Fact]
    public void Every_piece_of_goods_is_on_the_order_of_one_supplier_and_the_orders_cost_what_the_goods_do()
    {
        var money = Barn.Results.Money!;
        var orders = SupplierOrder.Of(money);
        Assert.Equal(["Hazel Wholesale", "Rowan and Daughters", null], orders.Select(order => order.Supplier));
        var goods = money.Lines.Where(line => line is { IsLabour: false, Option: null }).ToList();
        Assert.Equal(goods.Count, orders.Sum(order => order.Lines.Count));
        Assert.Equal(goods.Sum(line => line.Cost ?? 0), SupplierOrder.Together(orders));
        Assert.Equal(["wren-b"], orders[0].Lines.Select(SupplierOrder.ModelOf));
        Assert.Contains("cat6-23", orders[1].Lines.Select(SupplierOrder.ModelOf));
    }

    [Theory]
    [InlineData("wren-b, supply small", "wren-b")]
    [InlineData("cable cat6-23", "cat6-23")]
    [InlineData("cable cat6-23 of K-15", "cat6-23")]
    [InlineData("panel panel-1", "panel-1")]
    [InlineData("patch cords", "patch cords")]
    public void A_line_is_of_a_model(string what, string model) => Assert.Equal(model, SupplierOrder.ModelOf(new PricedLine(what, 1, "", null, null, null, null)));

    private static PaperInput WithSuppliers()
    {
        var catalogue = CatalogueFiles.ReadShipped().Value!;
        var text = File.ReadAllText(Path.Combine(Repository.Root, "examples", "barn-vets", "job.yaml"))
            + "\nprices:\n  - {model: wren-b, cost: 261 EUR, supplier: Hazel Wholesale, on: 2026-11-01}\n  - {model: cat6-23, cost: 0.55 EUR, supplier: Rowan and Daughters}\n  - {model: bulrush, cost: 150 EUR, supplier: Rowan and Daughters}\n";
        var read = JobFile.Parse(text, "job.yaml", catalogue);
        Assert.True(read.Ok, string.Join("; ", read.Findings.Select(finding => finding.ToString())));
        var request = new StudyRequest(null, new DateOnly(2026, 11, 25), [], null);
        return new PaperInput(read.Value!, Study.Results(read.Value!, catalogue, request), Study.Run(read.Value!, catalogue, request));
    }
}
