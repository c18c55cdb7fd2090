namespace Headroom.Engineering.Tests.Remedies;

/// <summary>Each kind of remedy by itself.</summary>
public sealed class RemedyKindTests
{
    public static TheoryData<string> Kinds => [.. KindCases.Rows.Keys];

    [Theory, MemberData(nameof(Kinds))]
    public void It_helps_where_it_must(string kind)
    {
        var (helps, words, _) = KindCases.Rows[kind];
        var result = RemedySite.Find(helps, kind);
        Assert.NotEmpty(result.Asked);
        Assert.True(
            result.Remedies.Any(remedy => remedy.Text.StartsWith(words, StringComparison.Ordinal)),
            $"asked {string.Join(", ", result.Asked.Select(entry => $"{entry.Id} {entry.Verdict} {entry.Left}"))}; studied {result.Studied}, no gain {result.NoGain}, dominated {result.Dominated}; found:\n{string.Join('\n', result.Remedies.Select(remedy => remedy.Text))}");
        Assert.All(result.Remedies, remedy => Assert.Equal(kind, remedy.Kind));
    }

    [Theory, MemberData(nameof(Kinds))]
    public void It_is_not_offered_where_it_has_no_place(string kind)
    {
        var result = RemedySite.Find(KindCases.Rows[kind].Not, kind);
        Assert.NotEmpty(result.Asked);
        Assert.Empty(result.Remedies);
    }
}
