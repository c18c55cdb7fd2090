namespace Headroom.JobFiles.Tests.Codes;

/// <summary>Every code on the page of findings is raised by something, with all that a finding says.</summary>
public sealed class FindingCodeTests
{
    public static TheoryData<string> Codes => [.. CodeInputs.Rows.Keys];

    [Theory, MemberData(nameof(Codes))]
    public void The_input_of_a_code_raises_it_with_place_and_advice(string code)
    {
        var found = CodeInputs.Rows[code]().ToList();
        Assert.True(found.Exists(finding => finding.Code == code), $"wanted {code}, found:\n{string.Join('\n', found.Take(10))}");
        Assert.All(found, finding =>
        {
            // An editor changes a text; which file that is its caller knows.
            Assert.True(finding.At.File.Length > 0 || (code.StartsWith("EDT", StringComparison.Ordinal) && finding.At.Line > 0));
            Assert.All(new[] { finding.Given, finding.Allowed, finding.Advice }, part => Assert.NotEmpty(part));
        });
    }

    // Rules (RUL) are told of a whole job; the tests of Domain have a made site for each.
    [Fact]
    public void No_code_of_the_page_is_without_an_input() => Assert.Equal(
        Manual.Codes().Select(code => code.Code).Where(code => !code.StartsWith("RUL", StringComparison.Ordinal)).Order(StringComparer.Ordinal),
        CodeInputs.Rows.Keys.Order(StringComparer.Ordinal));
}
