namespace Headroom.Documents.Layout;

/// <summary>Labels with what belongs to them, in two columns of pairs where there is room.</summary>
/// <param name="Pairs">The pairs; an empty value is a line to write on.</param>
public sealed record Facts(IReadOnlyList<(string Label, string Value)> Pairs) : Block;
