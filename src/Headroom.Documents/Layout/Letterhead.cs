using Headroom.Domain.Firms;

namespace Headroom.Documents.Layout;

/// <summary>What a firm puts at the top of what it hands over.</summary>
/// <param name="Name">The firm.</param>
/// <param name="Lines">Address and how to reach it, a line each.</param>
public sealed record Letterhead(string Name, IReadOnlyList<string> Lines)
{
    /// <summary>The picture it signs with; null for none.</summary>
    public Artwork? Logo { get; init; }
}
