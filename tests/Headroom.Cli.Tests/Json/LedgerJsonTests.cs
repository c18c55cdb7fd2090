using System.Text.Json;
using Headroom.Cli.Json;
using Headroom.Cli.Tests.Sample;

namespace Headroom.Cli.Tests.Json;

public sealed class LedgerJsonTests
{
    [Fact]
    public void The_shape_is_as_accepted() => Golden.Agrees("ledger.json", LedgerJson.Write(SampleLedger.Full with { Entries = [.. SampleLedger.Full.Entries.Take(6)] }, workings: false));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void It_is_what_the_schema_says(bool workings) => Assert.Equal("", ShippedSchema.Faults("ledger", LedgerJson.Write(SampleLedger.Full, workings)));

    [Fact]
    public void An_empty_ledger_is_what_the_schema_says() => Assert.Equal("", ShippedSchema.Faults("ledger", LedgerJson.Write(SampleLedger.Empty, workings: false)));

    [Theory]
    [InlineData("\"verdict\": \"short\"", "\"verdict\": \"worse\"")]
    [InlineData("\"limit\": 320", "\"limit\": \"320 W\"")]
    [InlineData("\"sense\": \"at-most\",", "")]
    [InlineData("\"subject\": ", "\"thing\": ")]
    [InlineData("headroom-ledger/1", "headroom-ledger/2")]
    public void The_schema_refuses_another_shape(string right, string wrong) =>
        Assert.NotEqual("", ShippedSchema.Faults("ledger", LedgerJson.Write(SampleLedger.Full, workings: false).Replace(right, wrong, StringComparison.Ordinal)));

    [Fact]
    public void Numbers_are_not_rounded_and_no_number_is_null()
    {
        var third = SampleLedger.Entry("power/a/watts", "watts", "W", "power", 1.0 / 3, double.PositiveInfinity, double.NaN);
        using var json = JsonDocument.Parse(LedgerJson.Write(SampleLedger.Of([third], [], [], []), workings: false));
        var entry = json.RootElement.GetProperty("entries")[0];
        Assert.Equal(1.0 / 3, entry.GetProperty("demand").GetDouble());
        Assert.Equal(JsonValueKind.Null, entry.GetProperty("limit").ValueKind);
        Assert.Equal(JsonValueKind.Null, entry.GetProperty("reserve").ValueKind);
    }
}
