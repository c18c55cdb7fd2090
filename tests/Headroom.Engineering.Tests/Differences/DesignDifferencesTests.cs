using Headroom.Engineering.Differences;

namespace Headroom.Engineering.Tests.Differences;

public sealed class DesignDifferencesTests
{
    [Theory]
    [InlineData("switches: {sw-1: {model: redshank}}", "sw-1: redshank in place of wren-b")]
    [InlineData("switches: {sw-1: {level: 2, in: hall}}", "sw-1: stands in hall in place of closet; level 2 in place of 1")]
    [InlineData("switches: {sw-1: {reserves-by: port-limit, port-limit: {1..2: 15.4 W}}}", "sw-1: reserves by port-limit in place of as the model does; port limits 15.4 W on 1-2 in place of none")]
    [InlineData("switches: {sw-1: {priority: {3: critical, ap-1: high}}}", "sw-1: priorities critical on 3 and high for ap-1 in place of none")]
    [InlineData("switches: {sw-1: {retries: yes}}", "sw-1: retries yes in place of as the model does")]
    [InlineData("switches: {sw-2: {model: tarn}}", "sw-2: only in the second: tarn")]
    [InlineData("patch: {K-1: sw-1/9}", "patch: K-1 on sw-1/9 in place of sw-1/1")]
    [InlineData("patch: {K-1: none}", "patch: K-1 on none in place of sw-1/1")]
    [InlineData("uplinks: [{from: sw-1/25, to: line, media: copper}]", "uplinks: sw-1/25 to line copper in place of none")]
    public void What_differs_is_said_in_words(string second, string told) => Assert.Equal([told], TwoDesigns.Told(second));

    [Fact]
    public void A_unit_that_the_second_has_not_is_named()
    {
        var job = TwoDesigns.Job("switches: {sw-2: {model: tarn}}");
        var told = DesignDifferences.Of(TwoDesigns.Design(job, "second"), TwoDesigns.Design(job, "first"));
        Assert.Equal([new DesignDifference("sw-2", "only in the first: tarn")], told);
    }

    [Fact]
    public void Designs_that_are_the_same_do_not_differ() => Assert.Empty(TwoDesigns.Told("switches: {sw-1: {level: 1}}"));
}
