namespace Headroom.Documents.Canvas;

/// <summary>The colours of the inks.</summary>
public static class Inks
{
    /// <summary>The colour of an ink on a white sheet.</summary>
    /// <param name="ink">The ink.</param>
    /// <returns>Red, green and blue, as <c>#rrggbb</c>.</returns>
    public static string Colour(Ink ink) => ink switch
    {
        Ink.Soft => "#6a6053",
        Ink.Rule => "#cdc3b1",
        Ink.Fill => "#efe9dd",
        Ink.Rust => "#9c3413",
        Ink.Ochre => "#8a5d00",
        Ink.Paper => "#ffffff",
        Ink.Black => "#000000",
        _ => "#211d18",
    };
}
