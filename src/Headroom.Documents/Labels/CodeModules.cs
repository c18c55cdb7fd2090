using ZXing;
using ZXing.Common;
using ZXing.OneD;
using ZXing.QrCode;
using ZXing.QrCode.Internal;

namespace Headroom.Documents.Labels;

/// <summary>A code in its modules, without the quiet zone around it.</summary>
/// <param name="Wide">Modules in a row.</param>
/// <param name="High">Rows of modules; 1 for bars.</param>
/// <param name="Quiet">Modules that must stay free around it.</param>
/// <param name="IsDark">Whether a module is dark, by column and row.</param>
internal sealed record CodeModules(int Wide, int High, int Quiet, Func<int, int, bool> IsDark)
{
    /// <summary>True for bars.</summary>
    public bool IsBars => High == 1;

    /// <summary>Modules in a row with the quiet zone on both sides.</summary>
    public int WideWithQuiet => Wide + 2 * Quiet;

    /// <summary>A QR code that bears the loss of 15 % of it.</summary>
    /// <remarks>Source: ISO/IEC 18004, quiet zone of 4 modules.</remarks>
    public static CodeModules Qr(string text)
    {
        var matrix = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, new Dictionary<EncodeHintType, object> { [EncodeHintType.MARGIN] = 0, [EncodeHintType.ERROR_CORRECTION] = ErrorCorrectionLevel.M });
        return Of(matrix, matrix.Height, 4);
    }

    /// <summary>Bars in Code 128.</summary>
    /// <remarks>Source: ISO/IEC 15417, quiet zone of 10 modules.</remarks>
    public static CodeModules Bars(string text) =>
        Of(new Code128Writer().encode(text, BarcodeFormat.CODE_128, 0, 1, new Dictionary<EncodeHintType, object> { [EncodeHintType.MARGIN] = 0 }), 1, 10);

    private static CodeModules Of(BitMatrix matrix, int high, int quiet) => new(matrix.Width, high, quiet, (x, y) => matrix[x, y]);
}
