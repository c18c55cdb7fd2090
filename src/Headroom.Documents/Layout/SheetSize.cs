namespace Headroom.Documents.Layout;

/// <summary>A size of paper.</summary>
/// <param name="Name">As people call it.</param>
/// <param name="Width">Upright [pt].</param>
/// <param name="Height">Upright [pt].</param>
public sealed record SheetSize(string Name, double Width, double Height)
{
    /// <summary>210 mm by 297 mm (ISO 216).</summary>
    public static SheetSize A4 { get; } = new("A4", 595.28, 841.89);

    /// <summary>8.5 in by 11 in (ANSI/ASME Y14.1, size A).</summary>
    public static SheetSize Letter { get; } = new("Letter", 612, 792);

    /// <summary>The sizes that can be asked for.</summary>
    public static IReadOnlyList<SheetSize> All { get; } = [A4, Letter];

    /// <summary>The sheet on its side.</summary>
    public SheetSize OnItsSide => this with { Width = Height, Height = Width };
}
