using Headroom.Documents.Canvas;
using Headroom.Documents.Layout;

namespace Headroom.Documents.Labels;

/// <summary>A code with the size in which it is printed.</summary>
/// <param name="Modules">The code.</param>
/// <param name="ModulePoints">The side of a module [pt], whole dots of the printer.</param>
/// <param name="Height">The height of bars, or of the whole with its quiet zone [pt].</param>
internal sealed record PlacedCode(CodeModules Modules, double ModulePoints, double Height)
{
    // Reference values 9.2 and 9.3: a module of a QR code is 4 dots of the printer at least; bars are at least 6.35 mm high and 15 % of their length.
    private const int LeastQrDots = 4;

    private const int MostDots = 12;
    private const double LeastBarsMillimetres = 6.35;
    private const double LeastBarsShare = 0.15;

    // Common practice, no source: what a hand-held reader takes from ordinary tape, and the camera of a phone at arm's length.
    private const double LeastBarMillimetres = 0.25;

    private const double LeastQrMillimetres = 0.33;

    /// <summary>The width with the quiet zone [pt].</summary>
    public double Width => Modules.WideWithQuiet * ModulePoints;

    /// <summary>The code as large as it may be in a room; null when it would be smaller than readers take.</summary>
    /// <param name="modules">The code.</param>
    /// <param name="room">The room, for the quiet zone too [pt].</param>
    /// <param name="dotsPerInch">The dots of the printer in an inch.</param>
    public static PlacedCode? Fit(CodeModules modules, (double Width, double Height) room, int dotsPerInch)
    {
        var dot = 72.0 / dotsPerInch;
        var least = (int)Math.Ceiling((modules.IsBars ? LeastBarMillimetres : LeastQrMillimetres) / 25.4 * dotsPerInch);
        least = modules.IsBars ? least : Math.Max(LeastQrDots, least);
        for (var dots = Math.Max(least, Most(modules, dotsPerInch)); dots >= least; dots--)
        {
            var width = modules.WideWithQuiet * dots * dot;
            var height = modules.IsBars ? Math.Max(LeastBarsMillimetres / 25.4 * 72, LeastBarsShare * modules.Wide * dots * dot) : width;
            if (width <= room.Width + 0.01 && height <= room.Height + 0.01)
                return new(modules, dots * dot, height);
        }

        return null;
    }

    /// <summary>The code at its place.</summary>
    /// <param name="at">The upper left corner of its quiet zone.</param>
    public Placed At(Spot at)
    {
        var box = new Box(at.X, at.Y, Width, Height);
        return new(box, "", canvas =>
        {
            var quiet = Modules.Quiet * ModulePoints;
            for (var y = 0; y < Modules.High; y++)
                Row(canvas, y, new Box(box.X + quiet, Modules.IsBars ? box.Y : box.Y + quiet + y * ModulePoints, 0, Modules.IsBars ? Height : ModulePoints));
        });
    }

    // Larger modules are easier to read, up to a millimetre or so.
    private static int Most(CodeModules modules, int dotsPerInch) => Math.Min(MostDots * dotsPerInch / 203, modules.IsBars ? dotsPerInch / 50 : dotsPerInch / 25);

    // Dark modules beside each other in one piece, so that no light shines through between them.
    private void Row(ICanvas canvas, int y, Box row)
    {
        for (var x = 0; x < Modules.Wide; x++)
        {
            var from = x;
            while (x < Modules.Wide && Modules.IsDark(x, y))
                x++;
            if (x > from)
                canvas.Rect(row with { X = row.X + from * ModulePoints, Width = (x - from) * ModulePoints }, Look.Solid(Ink.Black));
        }
    }
}
