using Headroom.Documents.Canvas;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace Headroom.Documents.Letters;

/// <summary>Hands our fonts to the PDF library, which finds none by itself.</summary>
internal sealed class FontShelf : IFontResolver
{
    private static readonly Dictionary<(Face, double), XFont> Fonts = [];
    private static readonly Lock Door = new();

    private FontShelf()
    {
    }

    /// <summary>The font of a face and size.</summary>
    public static XFont Of(Face face, double size)
    {
        lock (Door)
        {
            GlobalFontSettings.FontResolver ??= new FontShelf();
            if (!Fonts.TryGetValue((face, size), out var font))
                Fonts[(face, size)] = font = new XFont(Typeface.Of(face).Name, size, XFontStyleEx.Regular, new XPdfFontOptions(PdfFontEncoding.Unicode));
            return font;
        }
    }

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName) => Enum.TryParse<Face>(faceName, ignoreCase: true, out var face) ? Typeface.Of(face).Bytes : null;

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        Enum.TryParse<Face>(familyName, ignoreCase: true, out _) ? new FontResolverInfo(familyName) : null;
}
