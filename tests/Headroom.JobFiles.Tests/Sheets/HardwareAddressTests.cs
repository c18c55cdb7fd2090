using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Tests.Sheets;

public sealed class HardwareAddressTests
{
    [Theory]
    [InlineData("02:00:5E:10:00:0a")]
    [InlineData("02-00-5e-10-00-0A")]
    [InlineData("0200.5e10.000a")]
    [InlineData("02005e10000A")]
    [InlineData("02005e-10000a")]
    [InlineData("02 00 5e 10 00 0a")]
    public void An_address_in_any_usual_form_is_one_address(string text) => Assert.Equal("02:00:5e:10:00:0a", HardwareAddress.Plain(text));

    [Theory]
    [InlineData("02:00:5e:10:00")]
    [InlineData("02:00:5e:10:00:0g")]
    [InlineData("0:200:5e:10:00:0a")]
    [InlineData("2:0:5e:10:0:a")]
    [InlineData("3.45E+11")]
    [InlineData("")]
    public void What_is_no_address_is_not_made_one(string text) => Assert.Null(HardwareAddress.Plain(text));

    [Fact]
    public void Zeros_that_were_lost_are_told_and_not_put_back()
    {
        var finding = SheetDesk.Finding(SheetDesk.Read("endpoints", "device;model;mac\na;pipit;2005100003\n"), "SHT015");
        Assert.Contains("002005100003", finding.Advice, StringComparison.Ordinal);
    }
}
