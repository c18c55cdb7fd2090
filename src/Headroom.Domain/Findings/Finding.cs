namespace Headroom.Domain.Findings;

/// <summary>Something that is wrong, or looks wrong, in what was read.</summary>
/// <param name="Severity">Whether the work can go on.</param>
/// <param name="Code">The stable code, such as <c>JOB012</c>.</param>
/// <param name="At">Where it stands.</param>
/// <param name="Given">What was given.</param>
/// <param name="Allowed">What is allowed there.</param>
/// <param name="Advice">What to do about it.</param>
public sealed record Finding(Severity Severity, string Code, Place At, string Given, string Allowed, string Advice)
{
    /// <summary>The finding in one line: <c>file:line:column: severity CODE: given; allowed; advice</c>.</summary>
    /// <returns>The line, without an end of line.</returns>
    public override string ToString() =>
        $"{At}: {(Severity == Severity.Error ? "error" : "question")} {Code}: {Given}; {Allowed}; {InLine(Advice)}";

    // Some advice is a sentence for a page; behind a semicolon it goes on in small letters and without a full stop.
    private static string InLine(string advice)
    {
        var bare = advice.EndsWith('.') ? advice[..^1] : advice;
        return bare is [>= 'A' and <= 'Z', >= 'a' and <= 'z', ..] ? char.ToLowerInvariant(bare[0]) + bare[1..] : bare;
    }
}
