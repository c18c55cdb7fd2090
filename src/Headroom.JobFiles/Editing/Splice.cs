namespace Headroom.JobFiles.Editing;

/// <summary>One piece of a text with another in its place.</summary>
/// <param name="Start">The index of the first character replaced.</param>
/// <param name="End">The index behind the last; the same as <paramref name="Start"/> where something is only put in.</param>
/// <param name="Text">What stands there afterwards.</param>
internal readonly record struct Splice(int Start, int End, string Text)
{
    /// <summary>The text with the piece replaced; everything else stays as it is.</summary>
    public string Apply(string text) => string.Concat(text.AsSpan(0, Start), Text, text.AsSpan(End));
}
