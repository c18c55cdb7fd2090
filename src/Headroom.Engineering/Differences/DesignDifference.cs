namespace Headroom.Engineering.Differences;

/// <summary>One thing in which two designs differ.</summary>
/// <param name="Subject">The unit, or <c>patch</c> and <c>uplinks</c>.</param>
/// <param name="Text">What differs, in words: what the second has, in place of what the first has.</param>
public sealed record DesignDifference(string Subject, string Text);
