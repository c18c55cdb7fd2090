namespace Headroom.Documents.Layout;

/// <summary>The smallest piece that is not split between two sheets.</summary>
/// <param name="Height">How high it is [pt].</param>
/// <param name="Place">Puts what stands in it at its place, with its upper edge at a height [pt].</param>
internal sealed record Strip(double Height, Action<double, List<Placed>> Place)
{
    /// <summary>True when it stays on one sheet with the next.</summary>
    public bool StaysWithNext { get; init; }

    /// <summary>What stands above it when it is the first on a sheet, such as the head of a table; null for nothing.</summary>
    public Strip? Head { get; init; }

    /// <summary>The bookmark that begins with it; null for none.</summary>
    public string? Bookmark { get; init; }

    /// <summary>True when it begins a new sheet.</summary>
    public bool BeginsSheet { get; init; }

    /// <summary>True for room between things: at the top of a sheet it is left out.</summary>
    public bool IsRoom { get; init; }

    /// <summary>Room.</summary>
    /// <param name="height">How high [pt].</param>
    public static Strip Room(double height) => new(height, (_, _) => { }) { IsRoom = true };
}
